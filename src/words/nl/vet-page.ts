import type { VetPage } from '../en/vet-page.ts';
import type { Figures } from '../figures.ts';

const between = (f: Figures, low: number, high: number) =>
  f.number(low, 1) === f.number(high, 1) ? f.grams(high, 1) : `${f.number(low, 1)} tot ${f.grams(high, 1)}`;

export const vetPage = (f: Figures): VetPage => ({
  title: 'Voor de dierenarts',
  help: 'Eén bladzijde om mee te nemen, op A4 of Letter. Er staat op wat je genoteerd hebt, en wat niet bekend is.',
  print: 'Deze bladzijde afdrukken',
  working: 'Wordt uitgerekend wat er in het voer zit…',
  madeOn: (day) => `Gemaakt op ${day} uit eigen aantekeningen van de houder. Geen diagnose.`,
  notKnown: 'niet bekend',
  more: (n) => `en nog ${f.number(n)}`,
  facts: {
    species: 'Dier',
    age: 'Leeftijd',
    sex: 'Geslacht',
    sexes: { female: 'vrouwtje', male: 'mannetje' },
    weight: 'Gewicht',
    health: 'Gezondheid',
    healthNone: 'niets genoteerd',
    vetSaid: (what) => `${what} (volgens een dierenarts)`,
    since: (what, day) => `${what}, sinds ${day}`,
    weightOn: (grams, day) => `${f.grams(grams, 1)} op ${day}`,
    refuses: 'Weigert',
    died: (day) => `gestorven op ${day}`,
    moved: (day) => `weggegeven op ${day}`,
  },
  food: {
    title: 'Voer per dag',
    none: 'Wat het krijgt, is niet bekend: er wordt geen afgemaakte batch aan gevoerd.',
    ofMix: (grams, mix, day) => `${f.grams(grams, 1)} van ${mix}, gemaakt op ${day}`,
    ofMixUnknown: (mix, day) => `${mix}, gemaakt op ${day}: hoeveel is niet bekend`,
    ofFood: (grams, food) => `${f.grams(grams, 1)} ${food}`,
    ofFoodUnknown: (food) => `${food}: hoeveel is niet bekend`,
    fed: (days, of, mix, beside) =>
      `Op ${f.number(days)} van de laatste ${f.number(of)} dagen afgevinkt als gevoerd: gemiddeld ${f.grams(mix, 1)} mengsel en ${f.grams(beside, 1)} ernaast per dag.`,
    notTicked: 'Wat het echt kreeg, is de laatste 30 dagen niet afgevinkt.',
    eaten: (low, high, offered, days) =>
      `Gegeten, naar de resten van ${f.count(days, { one: 'nacht', other: 'nachten' })}: ${between(f, low, high)} van ${f.grams(offered, 1)} per nacht.`,
    changing: (day, of) => `Het voer verandert: dag ${f.number(day)} van ${f.number(of)}.`,
    taken: (low, high, offered, days) =>
      `Genomen, naar de resten van ${f.count(days, { one: 'nacht', other: 'nachten' })}: ${between(f, low, high)} van ${f.grams(offered, 1)} per nacht. Niet alle voorraadjes zijn opgezocht: een deel kan daar nog liggen.`,
    eatenUnknown: 'Wat het daarvan eet, is niet bekend: de laatste 30 dagen zijn geen resten genoteerd.',
    foods: 'Ingrediënten van het mengsel, naar gewicht',
    share: (food, percent) => `${food} ${f.percent(percent, 1)}`,
  },
  contents: {
    title: 'Wat er in het voer zit',
    per100: 'per 100 g zoals gevoerd, mengsel en brokjes samen',
    nutrient: 'Inhoud',
    offered: 'Aangeboden',
    dry: 'In droge stof',
    eaten: 'Gegeten',
    taken: 'Genomen',
    known: 'Bekend van',
    atLeast: (amount) => `minstens ${amount}`,
    range: (low, high) => `${low} tot ${high}`,
    estimated: 'gesch.',
    ratio: 'Calcium tot fosfor',
    toOne: (ratio) => `${f.number(ratio, 2)} : 1`,
    sources: (tables, own) =>
      `Cijfers van het mengsel: ${f.percent(tables, 0)} naar gewicht uit gepubliceerde voedingstabellen, ${f.percent(own, 0)} van etiketten of van de houder. Cijfers ernaast: van het etiket zoals bewaard.`,
    knownHelp:
      '“Bekend van”: procent van het voer, naar gewicht, waarvan het cijfer bekend of geschat is (gesch.). Ruwe celstof en voedingsvezel zijn twee maten.',
    failed: (why) => `Wat er in het voer zit, kon niet worden uitgerekend: ${why}`,
    none: 'Wat er in het voer zit, is niet bekend: in geen batch voor dit dier is iets afgewogen.',
  },
  weights: {
    title: 'Gewichten van de laatste 90 dagen',
    none: 'De laatste 90 dagen niet gewogen.',
    count: (n) => f.count(n, { one: 'weging', other: 'wegingen' }),
    before: (days) => `Ongeveer ${f.number(days)} dagen eerder`,
    last: 'Laatste',
    lowest: 'Laagste',
    highest: 'Hoogste',
    on: (grams, day) => `${f.grams(grams, 1)}, ${day}`,
    change: (grams, percent) =>
      `${f.bodyGrams(grams)} (sindsdien ${percent < 0 ? '−' : '+'}${f.percent(Math.abs(percent), 0)})`,
    usual: 'Gezond, volgens de houder',
    grown: 'Volwassen dieren van deze soort',
    span: (low, high, source) => `${f.number(low)} tot ${f.grams(high)} (${source})`,
    lost: (percent, since, from, to) =>
      `Sinds ${since} ${f.percent(percent, 0)} afgevallen: van ${f.bodyGrams(from)} naar ${f.bodyGrams(to)}.`,
    gained: (percent, since, from, to) =>
      `Sinds ${since} ${f.percent(percent, 0)} aangekomen: van ${f.bodyGrams(from)} naar ${f.bodyGrams(to)}.`,
    behind: (to) => `Groeit langzamer dan voor deze soort gepubliceerd is: nu ${f.bodyGrams(to)}.`,
    picture: (n, lowest, highest) =>
      `Beeld van ${f.count(n, { one: 'weging', other: 'wegingen' })}, van ${f.grams(lowest, 1)} tot ${f.grams(highest, 1)}`,
    key: 'Punten: wegingen. Lijn: verloop. Onderbroken rechte lijnen: een nieuwe batch of nieuw voer.',
  },
  changes: {
    title: 'Veranderingen in de laatste 90 dagen',
    none: 'Geen genoteerd.',
    firstBatch: (name) => `Eerste batch van ${name}.`,
    batch: (name) => `Nieuwe batch van ${name}, dezelfde ingrediënten.`,
    batchIn: (name, added) => `Nieuwe batch van ${name}, met ${f.list(added)}.`,
    batchOut: (name, out) => `Nieuwe batch van ${name}, zonder ${f.list(out)}.`,
    batchBoth: (name, added, out) => `Nieuwe batch van ${name}, met ${f.list(added)}, zonder ${f.list(out)}.`,
    otherFoods: (n) => f.count(n, { one: 'ander ingrediënt', other: 'andere ingrediënten' }),
    beside: (names) => `Naast het mengsel nu: ${f.list(names)}.`,
    besideNone: 'Naast het mengsel wordt niets meer gevoerd.',
    packOpened: (name) => `Nieuw pak geopend: ${name}.`,
    packBought: (name) => `Nieuw pak gekocht: ${name}.`,
    trial: (food, results) => `Nieuw voer geprobeerd: ${food}; ${f.list(results)}.`,
    seen: {
      first: (n) => `${times(n)} als eerste gegeten`,
      eaten: (n) => `${times(n)} gegeten`,
      hoarded: (n) => `${times(n)} verstopt`,
      left: (n) => `${times(n)} laten liggen`,
      upset: (n) => `${times(n)} niet verdragen`,
    },
    verdict: { liked: 'lust het', refused: 'weigert het', undecided: 'nog niet beslist' },
    begun: (what) => `Genoteerd: ${what}.`,
    over: (what) => `Voorbij: ${what}.`,
  },
  notes: {
    title: 'Wat er thuis opviel',
    none: 'De laatste 90 dagen niets genoteerd.',
    vet: (text) => `Van een dierenarts: ${text}`,
  },
  contacts: {
    vet: 'Eigen dierenarts',
    emergency: (phone) => `spoed ${phone}`,
    keeper: 'Houder, telefoon',
  },
});

function times(n: number): string {
  return n === 1 ? 'eenmaal' : n === 2 ? 'tweemaal' : `${n} keer`;
}
