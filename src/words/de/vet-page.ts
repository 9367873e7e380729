import type { VetPage } from '../en/vet-page.ts';
import type { Figures } from '../figures.ts';

const between = (f: Figures, low: number, high: number) =>
  f.number(low, 1) === f.number(high, 1) ? f.grams(high, 1) : `${f.number(low, 1)} bis ${f.grams(high, 1)}`;

export const vetPage = (f: Figures): VetPage => ({
  title: 'Für die Tierarztpraxis',
  help: 'Eine Seite zum Mitnehmen, auf A4 oder Letter. Sie zeigt, was du notiert hast, und sagt, was nicht bekannt ist.',
  print: 'Diese Seite drucken',
  working: 'Wird ausgerechnet, was das Futter enthält…',
  madeOn: (day) => `Erstellt am ${day} aus eigenen Aufzeichnungen der Haltung. Keine Diagnose.`,
  notKnown: 'nicht bekannt',
  more: (n) => `und ${f.number(n)} mehr`,
  facts: {
    species: 'Tier',
    age: 'Alter',
    sex: 'Geschlecht',
    sexes: { female: 'weiblich', male: 'männlich' },
    weight: 'Gewicht',
    health: 'Gesundheit',
    healthNone: 'nichts notiert',
    vetSaid: (what) => `${what} (laut Tierarztpraxis)`,
    since: (what, day) => `${what}, seit ${day}`,
    weightOn: (grams, day) => `${f.grams(grams, 1)} am ${day}`,
    refuses: 'Verweigert',
    died: (day) => `gestorben am ${day}`,
    moved: (day) => `abgegeben am ${day}`,
  },
  food: {
    title: 'Futter am Tag',
    none: 'Was es bekommt, ist nicht bekannt: Keine fertige Charge wird an dieses Tier verfüttert.',
    ofMix: (grams, mix, day) => `${f.grams(grams, 1)} von ${mix}, gemacht am ${day}`,
    ofMixUnknown: (mix, day) => `${mix}, gemacht am ${day}: Menge nicht bekannt`,
    ofFood: (grams, food) => `${f.grams(grams, 1)} ${food}`,
    ofFoodUnknown: (food) => `${food}: Menge nicht bekannt`,
    fed: (days, of, mix, beside) =>
      `An ${f.number(days)} der letzten ${f.number(of)} Tage als gefüttert abgehakt: im Mittel ${f.grams(mix, 1)} Mischung und ${f.grams(beside, 1)} daneben am Tag.`,
    notTicked: 'Was es wirklich bekam, wurde in den letzten 30 Tagen nicht abgehakt.',
    eaten: (low, high, offered, days) =>
      `Gefressen, nach Resten aus ${f.count(days, { one: 'Nacht', other: 'Nächten' })}: ${between(f, low, high)} von ${f.grams(offered, 1)} angebotenem Futter pro Nacht.`,
    changing: (day, of) => `Das Futter wird umgestellt: Tag ${f.number(day)} von ${f.number(of)}.`,
    taken: (low, high, offered, days) =>
      `Genommen, nach Resten aus ${f.count(days, { one: 'Nacht', other: 'Nächten' })}: ${between(f, low, high)} von ${f.grams(offered, 1)} angebotenem Futter pro Nacht. Nicht alle Verstecke wurden durchsucht: Etwas davon kann noch dort liegen.`,
    eatenUnknown:
      'Was es davon frisst, ist nicht bekannt: In den letzten 30 Tagen wurden keine Reste notiert.',
    foods: 'Zutaten der Mischung, nach Gewicht',
    share: (food, percent) => `${food} ${f.percent(percent, 1)}`,
  },
  contents: {
    title: 'Was das Futter enthält',
    per100: 'je 100 g, wie gefüttert, Mischung und Pellets zusammen',
    nutrient: 'Inhalt',
    offered: 'Angeboten',
    dry: 'In der Trocken­masse',
    eaten: 'Gefressen',
    taken: 'Genommen',
    known: 'Bekannt von',
    atLeast: (amount) => `mindestens ${amount}`,
    range: (low, high) => `${low} bis ${high}`,
    estimated: 'gesch.',
    ratio: 'Calcium zu Phosphor',
    toOne: (ratio) => `${f.number(ratio, 2)} : 1`,
    sources: (tables, own) =>
      `Werte der Mischung: ${f.percent(tables, 0)} aus veröffentlichten Lebensmitteltabellen, ${f.percent(own, 0)} von Etiketten oder aus eigenen Angaben. Werte daneben: vom Etikett, wie aufbewahrt.`,
    knownHelp:
      '„Bekannt von“: Anteil des Futters, dessen Wert bekannt oder geschätzt ist (gesch.). Rohfaser und Ballaststoffe sind zwei Maße.',
    failed: (why) => `Was das Futter enthält, ließ sich nicht ausrechnen: ${why}`,
    none: 'Was das Futter enthält, ist nicht bekannt: In keine Charge für dieses Tier wurde etwas abgewogen.',
  },
  weights: {
    title: 'Gewichte der letzten 90 Tage',
    none: 'In den letzten 90 Tagen nicht gewogen.',
    count: (n) => f.count(n, { one: 'Wiegung', other: 'Wiegungen' }),
    before: (days) => `Etwa ${f.number(days)} Tage davor`,
    last: 'Zuletzt',
    lowest: 'Niedrigstes',
    highest: 'Höchstes',
    on: (grams, day) => `${f.grams(grams, 1)}, ${day}`,
    change: (grams, percent) =>
      `${f.bodyGrams(grams)} (seitdem ${percent < 0 ? '−' : '+'}${f.percent(Math.abs(percent), 0)})`,
    usual: 'Gesund, nach eigener Angabe',
    grown: 'Erwachsene dieser Art',
    span: (low, high, source) => `${f.number(low)} bis ${f.grams(high)} (${source})`,
    lost: (percent, since, from, to) =>
      `Seit ${since} ${f.percent(percent, 0)} abgenommen: von ${f.bodyGrams(from)} auf ${f.bodyGrams(to)}.`,
    gained: (percent, since, from, to) =>
      `Seit ${since} ${f.percent(percent, 0)} zugenommen: von ${f.bodyGrams(from)} auf ${f.bodyGrams(to)}.`,
    behind: (to) => `Wächst langsamer, als für die Art veröffentlicht ist: jetzt ${f.bodyGrams(to)}.`,
    picture: (n, lowest, highest) =>
      `Bild von ${f.count(n, { one: 'Wiegung', other: 'Wiegungen' })}, von ${f.grams(lowest, 1)} bis ${f.grams(highest, 1)}`,
    key: 'Punkte: Wiegungen. Linie: geglättet. Gestrichelte senkrechte Linien: eine neue Charge oder neues Futter.',
  },
  changes: {
    title: 'Änderungen der letzten 90 Tage',
    none: 'Keine notiert.',
    firstBatch: (name) => `Erste Charge: ${name}.`,
    batch: (name) => `Neue Charge: ${name}, dieselben Zutaten.`,
    batchIn: (name, added) => `Neue Charge: ${name}, neu darin ${f.list(added)}.`,
    batchOut: (name, out) => `Neue Charge: ${name}, nicht mehr darin ${f.list(out)}.`,
    batchBoth: (name, added, out) =>
      `Neue Charge: ${name}, neu darin ${f.list(added)}, nicht mehr darin ${f.list(out)}.`,
    otherFoods: (n) => f.count(n, { one: 'weitere Zutat', other: 'weitere Zutaten' }),
    beside: (names) => `Neben der Mischung jetzt: ${f.list(names)}.`,
    besideNone: 'Neben der Mischung gibt es nichts mehr.',
    packOpened: (name) => `Neue Packung geöffnet: ${name}.`,
    packBought: (name) => `Neue Packung gekauft: ${name}.`,
    trial: (food, results) => `Neues Futter probiert: ${food}; ${f.list(results)}.`,
    seen: {
      first: (n) => `${times(n)} zuerst gefressen`,
      eaten: (n) => `${times(n)} gefressen`,
      hoarded: (n) => `${times(n)} gehamstert`,
      left: (n) => `${times(n)} liegen gelassen`,
      upset: (n) => `${times(n)} nicht vertragen`,
    },
    verdict: { liked: 'mag es', refused: 'verweigert es', undecided: 'noch nicht entschieden' },
    begun: (what) => `Notiert: ${what}.`,
    over: (what) => `Vorbei: ${what}.`,
  },
  notes: {
    title: 'Was zu Hause auffiel',
    none: 'In den letzten 90 Tagen nichts notiert.',
    vet: (text) => `Aus der Tierarztpraxis: ${text}`,
  },
  contacts: {
    vet: 'Übliche Tierarztpraxis',
    emergency: (phone) => `Notfall ${phone}`,
    keeper: 'Haltung, Telefon',
  },
});

function times(n: number): string {
  return n === 1 ? 'einmal' : n === 2 ? 'zweimal' : `${n}-mal`;
}
