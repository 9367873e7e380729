import type { Targets } from '../en/targets.ts';
import type { Figures } from '../figures.ts';

const PRACTICE = 'Protein 17-19 %, Fett 4-7 %, Faser 6-15 % der ganzen Ration, wie gefüttert.';
const NO_FIGURES = 'Wie viel Calcium und Zucker es höchstens sein darf: dafür gibt es keine Zahlen.';

export const targets = (f: Figures): Targets => ({
  title: 'Bedarf',
  list: 'Bedarf zur Auswahl',
  one: 'Bedarf eines Tieres',
  inThisMix: 'in dieser Mischung',
  own: 'eigener',
  fromMemory: 'aus dem Gedächtnis',
  kind: (parts) => parts.join(', '),
  use: 'In der Mischung verwenden',
  used: 'In der Mischung verwendet',
  copy: 'Kopieren und ändern',
  copyName: (name) => `${name} (eigener)`,
  usedIn: (names) => `Wird noch gebraucht von ${f.list(names)} und lässt sich darum nicht löschen.`,
  askDelete: (name) => `„${name}“ endgültig löschen?`,
  keep: 'Behalten',
  lose: 'Löschen',
  whatGoes: 'Die Zahlen und ihre Quellen sind dann weg. Veröffentlichter Bedarf bleibt.',
  profiles: {
    'hamster-adult-crude': {
      name: 'Erwachsener Hamster',
      about: `${PRACTICE} Mit Faser ist Rohfaser gemeint, der Wert auf Etiketten und in der Tiermedizin; Lebensmitteltabellen nennen ihn selten, darum wird viel davon aus den Ballaststoffen geschätzt.`,
    },
    'hamster-adult': {
      name: 'Erwachsener Hamster, Ballaststoffe',
      about: `${PRACTICE} Mit Faser sind alle Ballaststoffe gemeint, wie Lebensmitteltabellen sie nennen; auf dem Etikett steht Rohfaser, die nie mehr und oft weniger als die Hälfte davon ist.`,
    },
    'hamster-adult-limits': {
      name: 'Erwachsener Hamster, mit Grenzen',
      about: `${PRACTICE} Mit Faser ist Rohfaser gemeint. Calcium ist an Phosphor gebunden, und Retinol, Vitamin D und Selen haben eine Obergrenze. ${NO_FIGURES}`,
    },
    'hamster-nrc': {
      name: 'Hamster, Bedarf nach NRC',
      about: `Mindestmengen des National Research Council für Laborhamster, aus dem Gedächtnis nach der Ausgabe von 1978; zu Linolsäure und Energie ist hier nichts bekannt. ${NO_FIGURES}`,
    },
    'mouse-nrc': {
      name: 'Maus, Bedarf nach NRC',
      about: `Mindestmengen des National Research Council für wachsende Labormäuse (1995, Tabelle 3-3), für Futter mit ${f.number(3.8)} bis ${f.number(4.1)} kcal je g. Chlorid und Molybdän stehen in keiner Lebensmitteltabelle. ${NO_FIGURES}`,
    },
    'mouse-nrc-breeding': {
      name: 'Maus, Bedarf nach NRC, trächtig oder säugend',
      about: `Mindestmengen des National Research Council für Labormäuse (1995, Tabelle 3-3), mit dem, was die Fußnoten für trächtige und säugende Mäuse an Magnesium, Kupfer, Zink und Pantothensäure verlangen. ${NO_FIGURES}`,
    },
    gerbil: {
      name: 'Rennmaus',
      about: `${PRACTICE} Das sind Bereiche für Hamster, genommen, weil es für Rennmäuse keine Werte gibt. Der Wert für Magnesium ist für Rennmäuse: Sie brauchen mehr als Hamster, für das Fell und gegen Anfälle (National Research Council 1995). ${NO_FIGURES}`,
    },
    rat: {
      name: 'Ratte',
      about: `Mindestmengen an Protein, Fett, Linolsäure und Thiamin, für Ratten nachgeschlagen; für alles andere gibt es hier keine Werte. Die ganze Liste steht unter „Ratte, Bedarf nach NRC“, aus dem Gedächtnis. ${NO_FIGURES}`,
    },
    'rat-nrc': {
      name: 'Ratte, Bedarf nach NRC',
      about: `Mindestmengen des National Research Council für wachsende Laborratten, aus dem Gedächtnis nach der Ausgabe von 1995 aufgeschrieben. ${NO_FIGURES}`,
    },
  },
  stages: {
    adult: 'erwachsen',
    growth: 'Wachstum',
    'growth and adult': 'Wachstum und erwachsen',
    'pregnant or nursing': 'trächtig oder säugend',
  },
  startNotes: {
    dwarf:
      'Für Zwerghamster gibt es im Programm keine Zahlen: Der veröffentlichte Bedarf stammt von Goldhamstern. Frag in der Tierarztpraxis, was für dieses Tier anders sein soll.',
    mouse:
      'Der veröffentlichte Bedarf von Mäusen nennt Mindestmengen für wachsende Labormäuse; eine Obergrenze für Protein oder Fett nennt er nicht.',
    mouseBreeding:
      'Der veröffentlichte Bedarf von Mäusen, mit dem Mehr an Magnesium, Kupfer, Zink und Pantothensäure, das die Fußnoten für trächtige und säugende Mäuse verlangen. Frag in der Tierarztpraxis, bevor du das Futter umstellst.',
    gerbil:
      'Nur Magnesium ist ein Wert für Rennmäuse: mehr, als ein Hamster braucht. Für alles andere gibt es keine Werte für Rennmäuse, und die Bereiche für Hamster stehen dafür. Gib neben trockenem Futter immer frisches Wasser oder saftiges Futter. Frag in der Tierarztpraxis, was zu ändern ist.',
    rat: 'Für Ratten wurde nur wenig nachgeschlagen: Protein, Fett, Linolsäure und Thiamin. Werte für Mineralstoffe und die meisten Vitamine fehlen hier; „Ratte, Bedarf nach NRC“ hat sie aus dem Gedächtnis, und eine Mischung kann ihnen folgen, sobald du sie bestätigt hast. Frag in der Tierarztpraxis, was sie sonst braucht.',
    growingOther: 'Für das Wachstum dieses Tiers hat das Programm keine Werte; frag in der Tierarztpraxis.',
    growing:
      'Für das Wachstum ist eine Zahl bekannt: Goldhamster brauchten zwischen 15 und 20 % Protein aus üblichem Futter (Banta und andere 1975, J. Nutr. 105:38-45), und der Bereich für Erwachsene liegt darin. Für alles andere im Wachstum gibt es keine Zahlen; frag in der Tierarztpraxis.',
    breeding:
      'Für trächtige oder säugende Tiere gibt es im Programm keine Zahlen; frag in der Tierarztpraxis, bevor du das Futter umstellst.',
    old: 'Für alte Tiere gibt es im Programm keine Zahlen; frag in der Tierarztpraxis, ob die Bereiche für Erwachsene zu diesem Tier passen.',
    otherSpecies: (species) =>
      `Für diese Tierart (${species}) ist im Programm kein Bedarf hinterlegt. Dieser Hamsterbedarf ist nur ein Anfang; kopiere ihn unter „Bedarf“ und ändere ihn nach tierärztlichem Rat.`,
    noSpecies:
      'Für dieses Tier ist im Programm kein Bedarf hinterlegt. Dieser Hamsterbedarf ist nur ein Anfang; kopiere ihn unter „Bedarf“ und ändere ihn nach tierärztlichem Rat.',
  },
  fibre: {
    FIBTG:
      'Der Faserbereich meint alle Ballaststoffe; die Rohfaser eines Etiketts zählt als das, was es mindestens ist.',
    FIBC: 'Der Faserbereich meint Rohfaser, wie sie auf Futteretiketten steht.',
    none: 'Für Faser ist keine Grenze gesetzt.',
  },
  basis: {
    'as fed': 'je 100 g wie gefüttert',
    DM: 'je 100 g Trockenmasse',
    'per 1000 kcal': 'je 1000 kcal',
  },
  table: {
    nutrient: 'Nährstoff',
    range: 'Bereich',
    source: 'Quelle',
    nothing: 'Nichts',
    each: 'je 1',
    checked: (against, day) => `am ${day} von dir verglichen mit ${against}`,
  },
  editor: {
    least: (what) => `${what}, mindestens`,
    most: (what) => `${what}, höchstens`,
    counted: (what) => `${what}, gezählt`,
    sourceOf: (what) => `Quelle für ${what}`,
    remove: (what) => `${what} entfernen`,
    none: 'keine',
    add: 'Nährstoff hinzufügen',
    choose: 'Auswählen…',
    nameless: 'Der Name fehlt; gib diesem Bedarf einen Namen.',
    save: 'Bedarf speichern',
    saved: 'Gespeichert',
    notYet: 'Noch nicht gespeichert',
    ownChoice: 'eigene Wahl',
  },
  confirm: {
    title: 'Aus dem Gedächtnis',
    compare:
      'Vergleiche jede Zahl, die aus dem Gedächtnis stammt, mit der Veröffentlichung, die als Quelle genannt ist.',
    against: 'Ich habe diese Zahlen verglichen mit',
    example: 'Titel, Ausgabe, Seite',
    on: 'am',
    day: 'Sag, an welchem Tag.',
    empty:
      'Sag, womit du sie verglichen hast; Zahlen, die niemand geprüft hat, bleiben aus jeder Mischung heraus.',
    confirm: 'Zahlen bestätigen',
    saveFirst: 'Speichere zuerst den Bedarf.',
  },
  unconfirmed: {
    option: (name) => `${name} (aus dem Gedächtnis, nicht bestätigt)`,
    look: 'Ansehen',
    here: (n, name) =>
      f.form(n, {
        one: `Eine Zahl von „${name}“ ist aus dem Gedächtnis. Eine Mischung kann sich danach richten, sobald du sie unten bestätigt hast.`,
        other: `${f.number(n)} Zahlen von „${name}“ sind aus dem Gedächtnis. Eine Mischung kann sich danach richten, sobald du sie unten bestätigt hast.`,
      }),
    there: (n, name) =>
      f.form(n, {
        one: `Eine Zahl von „${name}“ ist aus dem Gedächtnis. Eine Mischung kann sich danach richten, sobald du sie unter „Bedarf“ bestätigt hast.`,
        other: `${f.number(n)} Zahlen von „${name}“ sind aus dem Gedächtnis. Eine Mischung kann sich danach richten, sobald du sie unter „Bedarf“ bestätigt hast.`,
      }),
  },
});
