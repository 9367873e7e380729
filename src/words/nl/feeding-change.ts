import type { FeedingChange } from '../en/feeding-change.ts';
import type { Figures } from '../figures.ts';

export const feedingChange = (f: Figures): FeedingChange => ({
  ofDay: (subject) => `${subject} in het voer van de dag`,
  unchecked: (subject, amounts) =>
    `${subject} wordt tijdens het overstappen niet gecontroleerd: niemand weet hoeveel ervan in het oude voer zit (${f.list(amounts)}).`,
  day: (n) => `Dag ${f.number(n)}`,
  daysFromTo: (first, last) => `Dag ${f.number(first)} tot en met ${f.number(last)}`,
  oldHolds: (amount) => `het oude voer ${amount} bevat`,
  newHolds: (amount) => `het nieuwe rantsoen ${amount} bevat`,
  oldHas: (ratio) => `het oude voer ${ratio} heeft`,
  newHas: (ratio) => `het nieuwe rantsoen ${ratio} heeft`,
  below: (when, subject, limit, since) => `${when}: ${subject} ligt onder ${limit}, omdat ${f.list(since)}.`,
  above: (when, subject, limit, since) => `${when}: ${subject} ligt boven ${limit}, omdat ${f.list(since)}.`,
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
});
