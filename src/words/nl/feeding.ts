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

    change: {
      ofDay: (subject) => `${subject} in het voer van de dag`,
      unchecked: (subject, amounts) =>
        `${subject} wordt tijdens het overstappen niet gecontroleerd: niemand weet hoeveel ervan in het oude voer zit (${f.list(amounts)}).`,
      day: (n) => `Dag ${f.number(n)}`,
      daysFromTo: (first, last) => `Dag ${f.number(first)} tot en met ${f.number(last)}`,
      oldHolds: (amount) => `het oude voer ${amount} bevat`,
      newHolds: (amount) => `het nieuwe rantsoen ${amount} bevat`,
      oldHas: (ratio) => `het oude voer ${ratio} heeft`,
      newHas: (ratio) => `het nieuwe rantsoen ${ratio} heeft`,
      below: (when, subject, limit, since) =>
        `${when}: ${subject} ligt onder ${limit}, omdat ${f.list(since)}.`,
      above: (when, subject, limit, since) =>
        `${when}: ${subject} ligt boven ${limit}, omdat ${f.list(since)}.`,
      cannotCheck: (n) =>
        n === 1
          ? 'Eén regel kan intussen niet gecontroleerd worden.'
          : `${f.number(n)} regels kunnen intussen niet gecontroleerd worden.`,
      noRule: 'Voor deze dagen kan geen regel gecontroleerd worden.',
      justOutside: (stepGrams, list) =>
        `Gewogen in stappen van ${f.grams(stepGrams)} ${f.form(list.length, { one: 'valt dag', other: 'vallen de dagen' })} ${f.list(list.map((d) => f.number(d)))} er net buiten.`,
      never: 'Op elke dag buiten bereik.',
      always: 'Op elke dag binnen bereik.',
      lastDay: (day) => `Binnen bereik op de laatste dag, dag ${f.number(day)}.`,
      from: (day) => `Binnen bereik vanaf dag ${f.number(day)}.`,
      only: (day) => `Alleen op dag ${f.number(day)} binnen bereik.`,
      fromTo: (first, last) =>
        `Alleen van dag ${f.number(first)} tot en met dag ${f.number(last)} binnen bereik.`,
      caution: {
        slowly: 'Stap langzaam over; houd wat van het oude voer tot het overstappen klaar is.',
        droppings: 'Bekijk elke dag de keutels: ze moeten droog, donker en gevormd blijven.',
        weigh:
          'Weeg het dier om de twee of drie dagen en kijk in zijn voorraad: wat is weggedragen, is nog niet gegeten.',
        'slow-down':
          'Worden de keutels zacht of blijft het nieuwe voer liggen, blijf dan bij deze stap of ga terug naar de laatste die goed ging.',
        vet: 'Bij diarree, als er niets gegeten wordt of het dier afvalt: terug naar het oude voer en dezelfde dag naar de dierenarts.',
      },
    },
  };
};
