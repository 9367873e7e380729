import type { Nutrients } from '../en/nutrients.ts';
import type { Figures } from '../figures.ts';

export const nutrients = (f: Figures): Nutrients => ({
  lane: { pellet: 'Pellets', mix: 'Mischung', ration: 'Ration' },
  unknown: 'unbekannt',
  state: {
    in: 'im Bereich',
    if: 'im Bereich, wenn …',
    out: 'außerhalb',
    unknown: 'noch nicht bekannt',
  },
  ofMix: 'der Mischung',
  readAs: (title, state) => `Als ${title} gelesen: ${state}`,
  as: (title, note) => `Als ${title}: ${note}`,
  chance: (percent) => `zu ${f.percent(percent, 0)} im Bereich`,
  figuresFor: (percent) => `Werte für ${f.percent(percent, 0)} der ganzen Ration`,
  between: (low, high) => `ganze Ration zwischen ${f.figure(low)} und ${f.figure(high)}`,
  estimated: 'teils geschätzt',
  unproven: 'nicht belegt: Es fehlen Werte',
  lanes: {
    value: (lane, value) => `${lane} ${value}`,
    atLeast: (value) => `≥ ${value}`,
  },
  picture: {
    mix: (title, range, state, lanes) => `${title}, ${range} in der Mischung: ${state}. ${lanes}.`,
    ration: (title, range, state, lanes) => `${title}, ${range} in der ganzen Ration: ${state}. ${lanes}.`,
    other: (title, state, lanes) => ` Als ${title} gelesen: ${state}. ${lanes}.`,
  },
  micro: {
    title: (rows) => `Mineralstoffe und Vitamine (${f.number(rows)})`,
    parts: {
      mineral: 'Mineralstoffe',
      vitamin: 'Vitamine',
      fat: 'Essenzielle Fette',
      'amino acid': 'Aminosäuren',
    },
    part: (name, rows) => `${name} (${f.number(rows)})`,
    per: {
      asFed: (unit) => `${unit} je 100 g`,
      dryMatter: (unit) => `${unit} je 100 g Trockenmasse`,
      perEnergy: (unit) => `${unit} je 1000 kcal`,
    },
    toOne: 'zu 1',
    ratio: 'Calcium zu Phosphor',
    judged: {
      meets: 'deckt den Bedarf',
      short: 'zu wenig',
      over: 'zu viel',
      untold: 'nicht zu sagen',
    },
    comparedWith: 'Verglichen mit',
    fromMemory: (n) =>
      f.form(n, {
        one: 'Einer der Werte ist aus dem Gedächtnis und von dir nicht bestätigt: ansehen, aber nicht darauf verlassen.',
        other: `${f.number(n)} der Werte sind aus dem Gedächtnis und von dir nicht bestätigt: ansehen, aber nicht darauf verlassen.`,
      }),
    onlyPellet: (names) =>
      `In der Mischung allein steckt vielleicht nicht genug ${f.list(names)}: Da ist das Tier auf die Pellets angewiesen.`,
    knownFor: (percent) => `bekannt für ${f.percent(percent, 0)}`,
    atLeast: (value) => `mindestens ${f.figure(value)}`,
    between: (low, high) => `${f.figure(low)} bis ${f.figure(high)}`,
    picture: (target, mix, pellet) =>
      `Bedarf ${f.figure(target)}. Aus der Mischung ${f.figure(mix)}, aus den Pellets ${f.figure(pellet)}.`,
  },
  table: {
    title: (rows) => `Alle Nährstoffe (${f.number(rows)})`,
    caption: 'Je 100 g, wie gefüttert. „≥“ heißt mindestens: Für einen Teil fehlen Werte.',
    nutrient: 'Nährstoff',
    mix: 'Mischung',
    ration: 'Ganze Ration',
    known: 'Bekannt für, von der ganzen Ration',
  },
});
