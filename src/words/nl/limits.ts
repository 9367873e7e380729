import type { Limits } from '../en/limits.ts';
import type { Figures } from '../figures.ts';

export const limits = (f: Figures): Limits => ({
  heading: (many, whose) => (many ? `Grenzen: ${whose}` : `Een grens: ${whose}`),
  youAsked: 'Dit heb je zelf gevraagd.',
  source: (source) => `Bron van de grens: ${source}`,
  noSource: 'geen bron gegeven',
  needsHave: (source, range) => `${source}; in de behoefte staat ${range}`,
  about: (many, animals) => {
    const who = animals.length > 0 ? f.list(animals) : 'het dier';
    return many
      ? `Deze grenzen zijn er voor ${who}. Ga je door, dan worden het jouw eigen grenzen voor dit mengsel: bewaard met de datum van vandaag, getoond boven de ingrediënten en met één druk terug te zetten.`
      : `Deze grens is er voor ${who}. Ga je door, dan wordt het jouw eigen grens voor dit mengsel: bewaard met de datum van vandaag, getoond boven de ingrediënten en met één druk terug te zetten.`;
  },
  keep: (many) => (many ? 'Grenzen houden' : 'Grens houden'),
  makeOwn: (many) => (many ? 'Er mijn eigen grenzen van maken' : 'Er mijn eigen grens van maken'),
  changed: 'Grenzen die je veranderd hebt',
  setBack: 'Terugzetten',
  setBackOf: (limit) => `Terugzetten: ${limit}`,
  isBack: 'De grens staat weer zoals in de behoefte.',
  otherNeeds: (animal, needs) => `De eigen behoefte van ${animal} is ${needs}; dit mengsel volgt een andere.`,
  follow: (animal) => `De behoefte van ${animal} volgen`,
  fromMemory: 'Dit mengsel is gemaakt met een behoefte uit het hoofd en volgt de regels daarvan.',
  needs: 'de behoefte',
  needsCalled: (needs) => `de behoefte “${needs}”`,
  needsOf: (animals) => `de behoefte van ${f.list(animals)}`,
  needsOfCalled: (animals, needs) => `de behoefte “${needs}” van ${f.list(animals)}`,
  rule: 'regel',
  range: (subject, range) => `${subject}, ${range}`,
  leftOut: (limit) => `${limit}: weggelaten.`,
  ownLeftOut: (limit, day) => `${limit}: weggelaten door jou op ${day}`,
  raised: (from, to) => `verhoogd van ${f.number(from, 4)} naar ${to}`,
  lowered: (from, to) => `verlaagd van ${f.number(from, 4)} naar ${to}`,
  changedTo: (range) => `veranderd in ${range}`,
  own: (subject, ends, day) => `Grens voor ${subject} ${f.list(ends)} door jou op ${day}`,
  amount: (value, unit) => (unit ? `${f.number(value, 4)} ${unit}` : f.number(value, 4)),
});
