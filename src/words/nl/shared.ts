import type { Shared } from '../en/shared.ts';
import type { Figures } from '../figures.ts';

export const shared = (f: Figures): Shared => ({
  number: {
    needed: (label) => `${label}: hier ontbreekt een getal.`,
    none: (label, typed) => `${label}: “${typed}” is geen getal. Schrijf bijvoorbeeld 6,25 of 6.25.`,
    tooLow: (label, typed, least) => `${label}: ${typed} is te weinig. Het mag ${least} of meer zijn.`,
    tooHigh: (label, typed, most) => `${label}: ${typed} is te veel. Het mag hoogstens ${most} zijn.`,
  },
  meanwhile: {
    changed: (label, now, typed) =>
      `${label} is elders veranderd in ${now} terwijl je typte. Met Enter komt daar toch ${typed || 'niets'} te staan, Escape laat het zo.`,
    emptied: (label, typed) =>
      `${label} is elders leeggemaakt terwijl je typte. Met Enter komt daar toch ${typed || 'niets'} te staan, Escape laat het zo.`,
  },
  caution: {
    never: (title) => `Nooit voeren: ${title}.`,
    limit: (title) => `Maar een beetje: ${title}.`,
    prepare: (title) => `Eerst voorbereiden: ${title}.`,
    neverUpTo: (title, most) => `Nooit meer dan ${f.percent(most)} van het mengsel voeren: ${title}.`,
    limitUpTo: (title, most) => `Maar een beetje, hoogstens ${f.percent(most)} van het mengsel: ${title}.`,
    prepareUpTo: (title, most) =>
      `Eerst voorbereiden, hoogstens ${f.percent(most)} van het mengsel: ${title}.`,
    source: (source) => `Bron: ${source}`,
  },
  choice: {
    narrow: (label) => `${label}: alleen tonen met`,
    part: 'een deel van de naam',
    many: (listed, all) => `${f.number(listed)} van de ${f.number(all)} staan hier: typ een deel van de naam`,
    listed: (n) => f.form(n, { one: `${f.number(n)} staat hier`, other: `${f.number(n)} staan hier` }),
  },
  fresh: {
    which: 'Van welk vers ingrediënt wordt dit gedroogd? Deze lijken erop:',
    dryFrom: (dried, fresh) => `${dried} drogen van ${fresh}`,
    another: 'Een ander vers ingrediënt zoeken',
    change: 'Het verse ingrediënt wijzigen',
    title: (name) => `Vers ingrediënt voor ${name}`,
    own: (water) => `eigen ingrediënt · ${water}`,
    search: 'Ingrediënten zoeken',
    example: 'wortel rauw, paardenbloem rauw…',
    searching: 'Aan het zoeken…',
    choose: 'Kiezen',
    chooseOne: (name) => `${name} kiezen`,
    water: (grams) => `${f.number(grams)} g water in 100 g`,
    noWater: 'water niet bekend',
  },
  whatIs: (word) => `Wat betekent “${word}”?`,
  done: 'Klaar',
  working: 'Aan het rekenen…',
  parts: {
    first: (end, all) => `${f.number(end)} van ${f.number(all)}`,
    later: (start, end, all) => `${f.number(start)} tot ${f.number(end)} van ${f.number(all)}`,
    all: (all) => `Alle ${f.number(all)} staan hier`,
    more: (n) => `Nog ${f.number(n)} tonen`,
    back: (n) => `Terug naar de eerste ${f.number(n)}`,
  },
  limits: {
    between: (min, max) => `${f.number(min, 3)} tot ${f.number(max, 3)}`,
    least: (min) => `minstens ${f.number(min, 3)}`,
    most: (max) => `hoogstens ${f.number(max, 3)}`,
    none: 'geen grenzen',
    per100: (unit) => `${unit} per 100 g`,
    per100Dry: (unit) => `${unit} per 100 g droge stof`,
    toOne: 'op 1',
    ratio: (over, under) => `${over} tot ${under.toLowerCase()}`,
  },
  clock: {
    on: (time, day) => `${time} op ${day}`,
    minutes: (minutes) => `${f.number(minutes)} min`,
    hours: (hours) => `${f.number(hours)} uur`,
    both: (hours, minutes) => `${f.number(hours)} uur ${f.number(minutes)} min`,
  },
  firstMix: {
    title: 'Nog geen mengsel',
    text: 'Een mengsel begint met een dier en een paar ingrediënten. Aandelen en grammen worden daaruit berekend.',
    start: 'Een mengsel beginnen',
    name: 'Mijn mengsel',
    choice: 'Mengsel',
  },
  contained: (what, why) =>
    `${what}: kan niet worden getoond (${why}). Wat er het laatst aan veranderde, staat in de <changes>geschiedenis</changes>.`,
});
