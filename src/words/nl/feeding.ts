import type { Feeding } from '../en/feeding.ts';
import type { Figures } from '../figures.ts';

export const feeding = (f: Figures): Feeding => {
  const days = (n: number) => f.count(n, { one: 'dag', other: 'dagen' });
  return {
    notKnown: (animal) => `Hoeveel ${animal} per dag krijgt is niet bekend; schrijf het bij het dier.`,
    ofMix: (grams) => `${f.grams(grams, 1)} van het mengsel`,
    ofFood: (grams, food) => `${f.grams(grams, 1)} ${food}`,
    amountNotKnown: (food) => `${food} (hoeveelheid niet bekend)`,
    aDay: (animal, parts) => `${animal}: ${f.list(parts)} per dag.`,
    nobodyNamed: 'Er is geen dier genoemd, dus hoe lang het meegaat is niet bekend.',
    nobodyHasSaid: (animals) =>
      `Hoe lang het meegaat is niet bekend: niemand heeft gezegd hoeveel ${f.list(animals)} per dag ${f.form(animals.length, { one: 'krijgt', other: 'krijgen' })}.`,
    nothingFed: 'Van het mengsel wordt niets gevoerd, dus het raakt niet op.',
    lasts: (n, until) => `Gaat ${days(n)} mee, tot ${until}.`,
    lastsAtMost: (n, until, animals) =>
      `Gaat hoogstens ${days(n)} mee, uiterlijk tot ${until}; hoeveel ${f.list(animals)} ${f.form(animals.length, { one: 'krijgt', other: 'krijgen' })}, is niet bekend.`,
    runsOut: (name, day) => `${name} is op ${day} op.`,
    weighLeft: (name) => `Weeg wat er van ${name} over is en vul het gewicht in.`,
    sayWhoEats: (name) => `Zeg welke dieren ${name} eten.`,
    enterDaily: (animal) => `Vul in hoeveel ${animal} per dag krijgt.`,
    nobodyCanSay: (name, missing) => `Het is nog niet bekend wanneer ${name} op is. ${missing}`,
  };
};
