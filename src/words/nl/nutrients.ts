import type { Nutrients } from '../en/nutrients.ts';
import type { Figures } from '../figures.ts';

export const nutrients = (f: Figures): Nutrients => ({
  lane: { pellet: 'brokjes', mix: 'mengsel', ration: 'rantsoen' },
  unknown: 'onbekend',
  state: {
    in: 'binnen bereik',
    if: 'binnen bereik, als …',
    out: 'buiten bereik',
    unknown: 'nog niet bekend',
  },
  ofMix: 'van het mengsel',
  readAs: (title, state) => `Gelezen als ${title}: ${state}`,
  as: (title, note) => `Als ${title}: ${note}`,
  chance: (percent) => `${f.percent(percent, 0)} kans om binnen bereik te zijn`,
  figuresFor: (percent) => `cijfers voor ${f.percent(percent, 0)} van het hele rantsoen`,
  between: (low, high) => `hele rantsoen tussen ${f.figure(low)} en ${f.figure(high)}`,
  estimated: 'deels geschat',
  unproven: 'niet bewezen: er ontbreken cijfers',
  lanes: {
    value: (lane, value) => `${lane} ${value}`,
    atLeast: (value) => `≥ ${value}`,
  },
  picture: {
    mix: (title, range, state, lanes) => `${title}, ${range} in het mengsel: ${state}. ${lanes}.`,
    ration: (title, range, state, lanes) => `${title}, ${range} in het hele rantsoen: ${state}. ${lanes}.`,
    other: (title, state, lanes) => ` Gelezen als ${title}: ${state}. ${lanes}.`,
  },
  micro: {
    title: (rows) => `Mineralen en vitaminen (${f.number(rows)})`,
    parts: {
      mineral: 'Mineralen',
      vitamin: 'Vitaminen',
      fat: 'Essentiële vetten',
      'amino acid': 'Aminozuren',
    },
    part: (name, rows) => `${name} (${f.number(rows)})`,
    per: {
      asFed: (unit) => `${unit} per 100 g`,
      dryMatter: (unit) => `${unit} per 100 g droge stof`,
      perEnergy: (unit) => `${unit} per 1000 kcal`,
    },
    toOne: 'op 1',
    ratio: 'Calcium tot fosfor',
    judged: {
      meets: 'dekt de behoefte',
      short: 'te weinig',
      over: 'te veel',
      untold: 'niet te zeggen',
    },
    comparedWith: 'Vergeleken met',
    fromMemory: (n) =>
      f.form(n, {
        one: 'Een van de cijfers komt uit het hoofd en heb je niet bevestigd: kijk ernaar, maar vertrouw er niet op.',
        other: `${f.number(n)} van de cijfers komen uit het hoofd en heb je niet bevestigd: kijk ernaar, maar vertrouw er niet op.`,
      }),
    onlyPellet: (names) =>
      `In het mengsel alleen zit misschien niet genoeg ${f.list(names)}: daar hangt het dier af van de brokjes.`,
    knownFor: (percent) => `bekend voor ${f.percent(percent, 0)}`,
    atLeast: (value) => `minstens ${f.figure(value)}`,
    between: (low, high) => `${f.figure(low)} tot ${f.figure(high)}`,
    picture: (target, mix, pellet) =>
      `Nodig ${f.figure(target)}. Uit het mengsel ${f.figure(mix)}, uit de brokjes ${f.figure(pellet)}.`,
  },
  table: {
    title: (rows) => `Alle voedingsstoffen (${f.number(rows)})`,
    caption: 'Per 100 g, zoals gevoerd. “≥” betekent minstens: voor een deel ontbreken cijfers.',
    nutrient: 'Voedingsstof',
    mix: 'Mengsel',
    ration: 'Hele rantsoen',
    known: 'Bekend voor, van het hele rantsoen',
  },
});
