import type { Beside } from '../en/beside.ts';
import type { Figures } from '../figures.ts';

export const beside = (f: Figures): Beside => ({
  title: 'Het hele rantsoen',
  parts: 'Delen van het hele rantsoen',
  thisMix: 'Dit mengsel',
  aDay: (grams) => `${f.grams(grams, 1)} per dag`,
  mixOnly: 'alleen mengsel',
  share: (percent, food) => `${f.percent(percent, 1).replace(' ', '\u00a0')} ${food}`,
  mixShare: (percent) => `${f.percent(percent, 1).replace(' ', '\u00a0')} mengsel`,
  two: (food, mix) => `${food} en ${mix}`,
  many: (foods, mix) => `${foods}; en ${mix}`,
  gone: (food) => `${food} wordt niet meer naast het mengsel gevoerd.`,
  come: (food) => `${food} wordt nu naast het mengsel gevoerd.`,
  day: {
    label: 'Hele rantsoen van een dag',
    notSaid: 'niet gezegd',
    needs: (grams) => `Minstens ${f.grams(grams)}, voor wat hieronder in gram staat.`,
    without:
      'Zonder het hele rantsoen van een dag blijft wat in gram stond als aandeel van het hele rantsoen.',
    fed: (names, grams) =>
      f.form(names.length, {
        one: `${f.list(names)} krijgt ${f.grams(grams, 1)} per dag.`,
        other: `${f.list(names)} krijgen ${f.grams(grams, 1)} per dag.`,
      }),
    use: (grams) => `${f.grams(grams, 1)} nemen`,
    useAll: (grams) => `${f.grams(grams, 1)} voor alle samen nemen`,
    useEach: (grams) => `Gemiddeld ${f.grams(grams, 1)} voor elk nemen`,
  },
  picker: {
    label: 'Iets ernaast voeren',
    title: 'Naast het mengsel gevoerd',
    fed: 'Gevoerd',
    inMix: 'In het mengsel',
    own: 'eigen ingrediënt',
    pellet: 'brokjes',
    invented: (kind) => `${kind}, verzonnen`,
    fresh: 'vers',
    placeholder: 'komkommer, paardenbloem, brokjes…',
  },
  row: {
    invented: 'verzonnen',
    givenAs: 'Opgegeven als',
    asShare: 'aandeel',
    asGrams: 'gram per dag',
    share: 'Aandeel van het hele rantsoen',
    grams: 'Gram per dag',
    isShare: (percent) => `Dat is ${f.percent(percent)} van het hele rantsoen.`,
    isShareDry: (percent) => `Droog geteld is dat ${f.percent(percent)} van het hele rantsoen.`,
    from: 'Mag van',
    to: 'tot',
    fixed: 'vast',
    needsDay:
      'Gram per dag heeft het hele rantsoen van een dag nodig. Vul dat eerst in, hierboven; kies dan opnieuw gram.',
    fresh: 'Vers: tellen zonder het water',
    whyDry: (water) =>
      `De bereiken zijn bedoeld voor droog voer, dus een plakje komkommer verlaagt niet het eiwit dat het dier krijgt: het water telt maar tot ${f.percent(water)}, het vocht waarbij voertabellen hun cijfers geven (NRC 1995).`,
    remove: (food) => `${food} uit het rantsoen halen`,
    working: 'Wordt berekend…',
    noShare: (percent) =>
      `Met geen enkel aandeel binnen deze grenzen voldoet een mengsel aan elke regel; ${f.percent(percent)} telt.`,
    chosen: (percent, from, to) =>
      `Gekozen: ${f.percent(percent)}. Een mengsel voldoet aan elke regel van ${f.number(from)} tot ${f.percent(to)}.`,
    onlyShare: (percent) =>
      `Gekozen: ${f.percent(percent)}. Met geen ander aandeel voldoet een mengsel aan elke regel.`,
    atLeast: (percent) => `Minstens ${f.percent(percent)}: de eigen grens.`,
    atMost: (percent) => `Hoogstens ${f.percent(percent)}: de eigen grens.`,
    room: (percent) => `Hoogstens ${f.percent(percent)}: wat er verder gevoerd wordt laat niet meer over.`,
  },
});
