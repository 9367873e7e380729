import type { Feeding } from '../en/feeding.ts';
import type { Figures } from '../figures.ts';

export const feeding = (f: Figures): Feeding => {
  const days = (n: number) => f.count(n, { one: 'Tag', other: 'Tage' });
  return {
    notKnown: (animal) => `Wie viel ${animal} am Tag bekommt, ist nicht bekannt; schreib es beim Tier auf.`,
    ofMix: (grams) => `${f.grams(grams, 1)} Mischung`,
    ofFood: (grams, food) => `${f.grams(grams, 1)} ${food}`,
    amountNotKnown: (food) => `${food} (Menge nicht bekannt)`,
    aDay: (animal, parts) => `${animal}: ${f.list(parts)} am Tag.`,
    nobodyNamed: 'Kein Tier ist genannt, also ist nicht bekannt, wie lange es reicht.',
    nobodyHasSaid: (animals) =>
      `Wie lange es reicht, ist nicht bekannt: Niemand hat gesagt, wie viel ${f.list(animals)} am Tag ${f.form(animals.length, { one: 'bekommt', other: 'bekommen' })}.`,
    nothingFed: 'Von der Mischung wird nichts gefüttert, also geht sie nicht zu Ende.',
    lasts: (n, until) => `Reicht ${days(n)}, bis ${until}.`,
    lastsAtMost: (n, until, animals) =>
      `Reicht höchstens ${days(n)}, spätestens bis ${until}; wie viel ${f.list(animals)} ${f.form(animals.length, { one: 'bekommt', other: 'bekommen' })}, ist nicht bekannt.`,
    runsOut: (name, day) => `${name} reicht bis ${day}.`,
    weighLeft: (name) => `Wieg, was von ${name} übrig ist, und trag das Gewicht ein.`,
    sayWhoEats: (name) => `Sag, welche Tiere ${name} fressen.`,
    enterDaily: (animal) => `Trag ein, wie viel ${animal} am Tag bekommt.`,
    nobodyCanSay: (name, missing) => `Noch ist nicht bekannt, wie lange ${name} reicht. ${missing}`,
  };
};
