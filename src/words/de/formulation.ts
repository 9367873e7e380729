import type { Formulation } from '../en/formulation.ts';
import type { Figures } from '../figures.ts';

export const formulation = (f: Figures): Formulation => ({
  subject: {
    mix: (content) => `${content} der Mischung`,
    ration: (content) => `${content} der ganzen Ration`,
    group: {
      mix: (group) => `Anteil „${group}“ an der Mischung`,
      ration: (group) => `Anteil „${group}“ an der ganzen Ration`,
    },
    food: (food) => `Anteil von ${food}`,
    foodIn: {
      mix: (food) => `Anteil von ${food} an der Mischung`,
      ration: (food) => `Anteil von ${food} an der ganzen Ration`,
    },
    together: (foods) => `Anteil von ${f.list(foods)} zusammen`,
    theMix: 'die Mischung',
    groupShare: (group) => `Anteil „${group}“`,
    without: (subject, food) => `${subject} ohne ${food}`,
    some: (percent) => `Zahl der Zutaten mit ${f.percent(percent)} oder mehr`,
    someOf: (group, percent) => `Zahl der Zutaten aus „${group}“ mit ${f.percent(percent)} oder mehr`,
    few: 'Zahl der Zutaten',
    fewOf: (group) => `Zahl der Zutaten aus „${group}“`,
    whereUsed: (food) => `Anteil von ${food}, wenn es drin ist`,
    smallest: 'kleinste Menge einer Zutat',
  },
  noAnswer: 'Das ließ sich nicht ausrechnen: Die Rechnung kam zu keinem Ende.',
  percent: '%',
  percentDry: '% der Trockenmasse',
  per100: (unit) => `${unit} je 100 g`,
  per100Dry: (unit) => `${unit} je 100 g Trockenmasse`,
  mustAtLeast: (subject, amount) => `${subject} mindestens ${amount}`,
  mustAtMost: (subject, amount) => `${subject} höchstens ${amount}`,
  because: (limit, reason) => `${limit} (${reason})`,
  above: (subject, is, most) => `${subject}: ${is}, erlaubt sind höchstens ${most}`,
  below: (subject, is, least) => `${subject}: ${is}, nötig sind mindestens ${least}`,
  noMost: (subject, most) =>
    `${subject}: lässt sich nicht ausrechnen, weil durch null geteilt würde; erlaubt sind höchstens ${most}`,
  noLeast: (subject, least) =>
    `${subject}: lässt sich nicht ausrechnen, weil durch null geteilt würde; nötig sind mindestens ${least}`,
  atLeast: (subject, least) => `${subject} liegt an der unteren Grenze, ${least}`,
  atMost: (subject, most) => `${subject} liegt an der oberen Grenze, ${most}`,
  sentence: (text) => `${text}.`,
  toTheLastDigit:
    'Keine Mischung dieser Zutaten hält jede Regel bis auf die letzte Stelle ein; lockere irgendeine davon ein wenig.',
  collide: (limits) => `Keine Mischung dieser Zutaten kann die Regeln einhalten: ${f.list(limits)}.`,
  held: (foods) =>
    f.form(foods.length, {
      one: `Keine Mischung hält die Regeln ein, solange ${f.list(foods)} festgehalten wird. Lass die Zutat los.`,
      other: `Keine Mischung hält die Regeln ein, solange ${f.list(foods)} festgehalten werden. Lass eine davon los.`,
    }),
  nothingFits: 'Keine Mischung hält die Regeln ein. Drück „Passend machen“, um zu sehen, warum.',
  heldAt: (food, percent) => `${food} ist bei ${f.percent(percent)} festgehalten.`,
  leave: {
    asks: 'was gefressen wird, muss die Regeln auch dann einhalten, wenn eine beliebige Zutat liegen bleibt',
    because: 'jede Zutat darf liegen bleiben',
    any: 'Jede einzelne Zutat darf liegen bleiben: Was gefressen wird, bleibt im Bereich.',
    without: (food, breach) => `Ohne ${food}: ${breach}.`,
    out: (foods) => `Außerhalb des Bereichs, wenn eine davon liegen bleibt: ${f.list(foods)}.`,
    more: (n) => `${f.number(n)} weitere`,
  },
  foods: {
    more: (n) => f.count(n, { one: 'weitere Zutat', other: 'weitere Zutaten' }),
    estimate: (nutrient, foods) => `${nutrient} von ${foods} ist geschätzt.`,
    crudeAsLeast: (foods) =>
      `Die Ballaststoffe von ${foods} sind nicht bekannt; die Rohfaser zählt als das Wenigste, was es sein kann.`,
    water: (foods) =>
      `Die Feuchte von ${foods} ist nicht bekannt; für ein Mindestmaß in der Trockenmasse zählt das wenigste mögliche Wasser, für ein Höchstmaß das meiste.`,
    onlyLeast: (nutrient, foods) =>
      `${nutrient} von ${foods} ist nur als Mindestwert zugesagt; der zählt, und es kann mehr sein.`,
    unknown: (nutrient, foods) =>
      `${nutrient} von ${foods} ist nicht bekannt und zählt als das Wenigste, was es sein kann.`,
  },
  grams: {
    doubt: (squares, least) =>
      `Diese Gramm halten jede Regel ein, aber ob sie den Anteilen am nächsten kommen, ist nicht bewiesen: Ihre Abstände zum Quadrat ergeben ${f.figure(squares)} g², die jeder anderen ${f.figure(least)} g² oder mehr.`,
    crossed:
      'keine Gramm halten jede Regel ein: Von einer Zutat müsste mehr gefüttert werden, als der Warnhinweis erlaubt',
    noMultiple: (batch, step) =>
      `eine Charge von ${f.grams(batch)} geht nicht in Schritten von ${f.grams(step)} auf; wähle ein Vielfaches des Schritts`,
    none: (batch, step) =>
      `keine ganzen Schritte von ${f.grams(step)} halten in ${f.grams(batch)} jede Regel ein; wieg eine größere Charge ab oder nimm eine feinere Waage`,
    notFound: (batch, step, tries) =>
      `es wurden keine ganzen Schritte von ${f.grams(step)} gefunden, die in ${f.grams(batch)} jede Regel einhalten, auch wenn es welche geben mag: Die Suche endete nach ${f.number(tries)} Versuchen; wieg eine größere Charge ab oder nimm eine feinere Waage`,
  },
  why: {
    varied: (subject) => `${subject}, mit dem Spielraum für schwankende Zutaten,`,
    free: (limit) => `${limit}, und das kostet nichts: Ohne diese Grenze wäre die Mischung genauso gut.`,
    nothing: (limit) => `${limit}; ein wenig mehr oder weniger ändert nichts.`,
    raise: (limit, to, better, shares) =>
      `${limit}. Würde die Grenze auf ${to} angehoben, ${better}${shares}.`,
    lower: (limit, to, better, shares) => `${limit}. Würde die Grenze auf ${to} gesenkt, ${better}${shares}.`,
    shares: (changes) => `: ${f.list(changes)}`,
    rest: (value) => ` Ohne diese Grenze läge der Wert bei ${value}.`,
    up: (food, from, to) => `${food} von ${f.fixed(from, 1)} auf ${f.fixed(to, 1)} % hinauf`,
    down: (food, from, to) => `${food} von ${f.fixed(from, 1)} auf ${f.fixed(to, 1)} % herunter`,
    save: (price) => `würde das ${f.figure(price)} je kg sparen`,
    varies: 'würde die Mischung vielfältiger',
    nearer: (percent) => `käme die Mischung dem Gewünschten um ${f.figure(percent)} % näher`,
    bring: (aim, from, to) => `änderte sich ${aim} von ${f.figure(from)} auf ${f.figure(to)}`,
  },
  aim: {
    liked: 'der Anteil beliebter Zutaten',
    cupboard: 'was aus dem Vorrat kommt, in Prozent der Mischung,',
    few: 'die Zahl der Zutaten',
    fewToBuy: 'die Zahl der Zutaten, die zu kaufen sind,',
    cheap: 'der Preis je kg',
    of: (subject) => `der Wert „${subject}“`,
  },
});
