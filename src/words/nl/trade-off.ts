import type { TradeOff } from '../en/trade-off.ts';
import type { Figures } from '../figures.ts';

export const tradeOff = (f: Figures): TradeOff => ({
  heading: 'Meer van het een, minder van het ander',
  intro:
    'Twee wensen tegelijk trekken vaak verschillende kanten op. Elk punt hieronder is een mengsel dat aan alle regels voldoet; geen ander is in beide beter. De punten ertussen laten zien wat een beetje meer van het een bij het ander kost.',
  one: 'Eén wens',
  against: 'Tegenover',
  price: 'De prijs kan worden gekozen zodra elk ingrediënt er een heeft (zie de details van elk ingrediënt).',
  missing: (axis) =>
    `${axis}: voor een deel van de ingrediënten ontbreken cijfers, dus het is minstens wat de tekening laat zien.`,
  noConflict: 'Deze twee zitten elkaar niet in de weg:',
  noConflictMore: 'één mengsel is in beide het beste.',
  noPlace: 'Waar het huidige mengsel ligt, is niet te zeggen: er ontbreekt een cijfer.',
  outside:
    'Het huidige mengsel breekt een regel en kan dus liggen waar geen mengsel kan liggen dat aan de regels voldoet.',
  look: 'Dat mengsel bekijken',
  taken: 'Overgenomen: het mengsel heeft nu deze aandelen. “Ongedaan maken” brengt de oude terug.',
  count: (n, seconds) =>
    `${f.count(n, { one: 'mengsel', other: 'mengsels' })}, berekend in ${f.number(seconds, 1)} s. In elk gelden alle regels.`,
  countHeld: (n, seconds) =>
    `${f.count(n, { one: 'mengsel', other: 'mengsels' })}, berekend in ${f.number(seconds, 1)} s. In elk gelden alle regels, en wat vastgehouden wordt blijft staan.`,
  goals: {
    near: 'dicht bij mijn wensen',
    nearAxis: 'Hoeveel van het mengsel afwijkt van de gewenste aandelen',
    nearShort: 'Wijkt van de wensen af met',
    nearer: 'dichterbij',
    varied: 'gevarieerd',
    variedAxis: 'Variatie: als bij zoveel ingrediënten in gelijke delen',
    variedShort: 'Zo gevarieerd als',
    moreVaried: 'gevarieerder',
    foods: 'ingrediënten',
    equalFoods: 'ingrediënten in gelijke delen',
    cheap: 'goedkoop',
    cheapAxis: 'Prijs',
    cheaper: 'goedkoper',
    perKg: 'per kg',
    less: (what) => `minder ${what}`,
    more: (what) => `meer ${what}`,
    ofMix: (what) => `${what} in het mengsel`,
    ofRation: (what) => `${what} in het hele rantsoen`,
    group: (group) => `${group} in het mengsel`,
    lessWord: 'minder',
    moreWord: 'meer',
    value: (what, value, unit) => `${what} ${f.figure(value)} ${unit}`,
    both: (first, second) => `${first}, ${second}`,
  },
  point: {
    label: 'Het gekozen mengsel',
    chosen: (what) => `Gekozen: ${what}.`,
    same: 'Dit is het huidige mengsel.',
    against: 'Vergeleken met het huidige mengsel:',
    change: (from, to) => `${f.fixed(from, 1)} naar ${f.fixed(to, 1)} %`,
    rest: (n) =>
      f.form(n, {
        one: 'Nog één aandeel verandert, met niet meer dan deze.',
        other: `Nog ${f.number(n)} aandelen veranderen, elk met niet meer dan deze.`,
      }),
    take: 'Dit mengsel nemen',
  },
  table: {
    same: 'Hetzelfde als tabel',
    mix: 'Mengsel',
    head: (what, unit) => `${what} (${unit})`,
    lookAt: 'Bekijken',
    look: 'Bekijken',
    shown: 'Getoond',
    lookOf: (k, what) => `Bekijken: mengsel ${f.number(k)}, ${what}`,
    shownOf: (k, what) => `Getoond: mengsel ${f.number(k)}, ${what}`,
  },
  picture: {
    axis: (what, unit) => `${what}, ${unit}`,
    all: 'De beste mengsels langs de lijn; met de pijltoetsen loop je erlangs',
    mix: (k, n, what) => `Mengsel ${f.number(k)} van ${f.number(n)}: ${what}`,
    best: 'een beste mengsel',
    present: (what) => `het huidige mengsel (${what})`,
  },
});
