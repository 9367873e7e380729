import type { Sharing } from '../en/sharing.ts';
import type { Figures } from '../figures.ts';

export const sharing = (f: Figures): Sharing => ({
  heading: 'Mehrere Tiere',
  each: 'Mach für jedes eine Mischung: Kopier diese und wähl für jede Kopie ein Tier.',
  none: 'Ab zwei Tieren lässt sich eine gemeinsame Grundmischung finden und das Wenige, das jedes dazu bekommt. Noch ist kein Tier eingetragen: <add>eins eintragen</add>.',
  one: 'Ab zwei Tieren lässt sich eine gemeinsame Grundmischung finden und das Wenige, das jedes dazu bekommt. Bisher ist ein Tier eingetragen: <add>noch eins eintragen</add>.',
  chosenNone:
    'Diese Mischung ist noch für kein Tier. Wähl weiter oben auf dieser Seite, für wen sie ist, zwei oder mehr. Dann wird eine gemeinsame Grundmischung gesucht und das Wenige, das jedes dazu bekommt.',
  chosenOne:
    'Diese Mischung ist für ein Tier. Wähl weiter oben auf dieser Seite, für wen sie ist, zwei oder mehr. Dann wird eine gemeinsame Grundmischung gesucht und das Wenige, das jedes dazu bekommt.',
  base: {
    weighings: (n) => f.count(n, { one: 'Zugabe, einzeln gewogen.', other: 'Zugaben, einzeln gewogen.' }),
    suits: (animals) => `Eine Mischung passt ohne Zugaben für ${f.list(animals)}.`,
    unverified: 'Was nicht gilt oder nicht geprüft wurde',
    notProved: 'Vielleicht ginge es mit weniger.',
    base: 'Die Grundmischung',
    mix: 'Die Mischung',
    caption: (batch, step) => `${f.grams(batch)} in Schritten von ${f.grams(step)}`,
    food: 'Zutat',
    share: 'Anteil',
    grams: 'Gramm',
    shareOf: (share) => `${f.fixed(share, 1)} %`,
    takeBase: 'Grundmischung nehmen',
    take: 'Diese Mischung nehmen',
    takeHint:
      'Danach ist die Mischung auf dieser Seite nur die Grundmischung. Sie kann außerhalb des Bereichs sein, bis die Zugaben darin sind.',
    tookBase: 'Die Mischung hat jetzt die Anteile der Grundmischung.',
    took: 'Die Mischung hat jetzt diese Anteile.',
    tookNotice: 'Die Mischung ist die gemeinsame Grundmischung. „Rückgängig“ nimmt es zurück.',
    adds: 'Was jedes dazu bekommt',
    costs: 'Was es jedes kostet',
    asItIs: 'Bekommt die Grundmischung, wie sie ist.',
    addedFor: (animal) => `Dazu für ${animal}`,
    to100: (grams) => `Zu ${f.grams(grams)} Grundmischung`,
    toBatch: (grams) => `Zu ${f.grams(grams)}`,
    rounded: (step) =>
      `Auf ganze Schritte von ${f.grams(step)} gerundet, auf die nächsten, mit denen die Regeln gelten, wo es solche gibt.`,
    weighedIn: '✓ Wie gewogen im Bereich.',
    weighedOut: (sentences) =>
      `! Wie gewogen knapp außerhalb: ${sentences.join(' ')} Ein feinerer Schritt der Waage oder eine größere Charge kann helfen.`,
  },
  cost: {
    same: 'Die Mischung ist so, wie es die beste eigene wäre.',
    sameDearer: (money) =>
      `Die Mischung ist so, wie es die beste eigene wäre, und kostet ${f.money(money)} mehr je kg.`,
    sameCheaper: (money) =>
      `Die Mischung ist so, wie es die beste eigene wäre, und kostet ${f.money(money)} weniger je kg.`,
    other: (percent) => `${f.figure(percent)} % der Mischung sind andere Zutaten als in der besten eigenen.`,
    otherDearer: (percent, money) =>
      `${f.figure(percent)} % der Mischung sind andere Zutaten als in der besten eigenen, und sie kostet ${f.money(money)} mehr je kg.`,
    otherCheaper: (percent, money) =>
      `${f.figure(percent)} % der Mischung sind andere Zutaten als in der besten eigenen, und sie kostet ${f.money(money)} weniger je kg.`,
  },
  found: {
    notProved: 'Vielleicht reichen weniger oder leichtere Zugaben: Die Suche endete, bevor das geklärt war.',
    aimsLeft: 'Wünsche gelten nur, wo eine Mischung für alle passt; hier galten sie nicht.',
    notDropped:
      'Ob die Regeln gelten, wenn eine Zutat liegen bleibt, wurde nur bei der besten Mischung jedes Tieres angesehen.',
    forOne: (animal, sentence) => `Für ${animal}: ${sentence}`,
    nothing: 'kein Tier etwas',
    money: (animal, money) => `${animal} ${f.figure(money)} mehr je kg`,
    fromWanted: (animal, percent) => `${animal} ${f.figure(percent)} % der gewünschten Anteile`,
    fromOwn: (animal, percent) => `${animal} ${f.figure(percent)} % der besten eigenen Mischung`,
    costs: (parts) => f.list(parts),
    addition: (grams, food) => `${f.figure(grams)} g ${food}`,
    gets: (animal, additions) => `${animal} bekommt ${f.list(additions)}`,
    oneMix: (cost) => `Eine gemeinsame Mischung kostet ${cost}; nichts muss einzeln gewogen werden.`,
    oneBase: (cost, extras) =>
      `Eine gemeinsame Grundmischung kostet ${cost}; auf 100 g davon: ${extras.join('; ')}.`,
    alone: (animal, verdict) => `Für ${animal} gibt es auch allein keine Mischung. ${verdict}`,
    noFood: (animals) =>
      `Es gibt nichts, was ${f.list(animals)} alle fressen dürfen; jedes hat eine eigene Mischung.`,
    noBase: (animals, most) =>
      `Keine Grundmischung passt für ${f.list(animals)}, auch nicht mit ${f.number(most)} g von irgendeiner Zutat auf 100 g davon; jedes hat eine eigene Mischung.`,
  },
});
