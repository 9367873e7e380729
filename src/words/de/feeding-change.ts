import type { FeedingChange } from '../en/feeding-change.ts';
import type { Figures } from '../figures.ts';

export const feedingChange = (f: Figures): FeedingChange => ({
  ofDay: (subject) => `${subject} im Tagesfutter`,
  unchecked: (subject, amounts) =>
    `${subject} wird während der Umstellung nicht geprüft: Niemand weiß, wie viel davon im alten Futter ist (${f.list(amounts)}).`,
  day: (n) => `Tag ${f.number(n)}`,
  daysFromTo: (first, last) => `Tag ${f.number(first)} bis ${f.number(last)}`,
  oldHolds: (amount) => `das alte Futter ${amount} enthält`,
  newHolds: (amount) => `die neue Ration ${amount} enthält`,
  oldHas: (ratio) => `das alte Futter ${ratio} hat`,
  newHas: (ratio) => `die neue Ration ${ratio} hat`,
  below: (when, subject, limit, since) => `${when}: ${subject} liegt unter ${limit}, weil ${f.list(since)}.`,
  above: (when, subject, limit, since) => `${when}: ${subject} liegt über ${limit}, weil ${f.list(since)}.`,
  cannotCheck: (n) =>
    n === 1
      ? 'Eine Regel lässt sich währenddessen nicht prüfen.'
      : `${f.number(n)} Regeln lassen sich währenddessen nicht prüfen.`,
  noRule: 'Für diese Tage lässt sich keine Regel prüfen.',
  justOutside: (stepGrams, list) =>
    `Gewogen in Schritten von ${f.grams(stepGrams)} ${f.form(list.length, { one: 'liegt Tag', other: 'liegen die Tage' })} ${f.list(list.map((d) => f.number(d)))} knapp außerhalb.`,
  never: 'An jedem Tag außerhalb des Bereichs.',
  always: 'An jedem Tag im Bereich.',
  lastDay: (day) => `Im Bereich am letzten Tag, Tag ${f.number(day)}.`,
  from: (day) => `Im Bereich ab Tag ${f.number(day)}.`,
  only: (day) => `Nur an Tag ${f.number(day)} im Bereich.`,
  fromTo: (first, last) => `Nur von Tag ${f.number(first)} bis Tag ${f.number(last)} im Bereich.`,
  caution: {
    slowly: 'Stell langsam um; heb etwas vom alten Futter auf, bis die Umstellung fertig ist.',
    droppings: 'Schau dir jeden Tag die Köttel an: Sie sollen trocken, dunkel und geformt bleiben.',
    weigh:
      'Wieg das Tier alle zwei bis drei Tage und schau in sein Versteck: Was weggetragen ist, ist noch nicht gefressen.',
    'slow-down':
      'Werden die Köttel weich oder bleibt das neue Futter liegen, bleib bei diesem Schritt oder geh zum letzten zurück, der gut ging.',
    vet: 'Bei Durchfall, wenn nichts gefressen wird oder das Tier abnimmt: zurück zum alten Futter und noch am selben Tag zum Tierarzt.',
  },
});
