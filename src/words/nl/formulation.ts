import type { Formulation } from '../en/formulation.ts';
import type { Figures } from '../figures.ts';

export const formulation = (f: Figures): Formulation => ({
  subject: {
    mix: (content) => `${content} van het mengsel`,
    ration: (content) => `${content} van het hele rantsoen`,
    group: {
      mix: (group) => `aandeel “${group}” van het mengsel`,
      ration: (group) => `aandeel “${group}” van het hele rantsoen`,
    },
    food: (food) => `aandeel van ${food}`,
    foodIn: {
      mix: (food) => `aandeel van ${food} in het mengsel`,
      ration: (food) => `aandeel van ${food} in het hele rantsoen`,
    },
    together: (foods) => `aandeel van ${f.list(foods)} samen`,
    theMix: 'het mengsel',
    groupShare: (group) => `aandeel “${group}”`,
    without: (subject, food) => `${subject} zonder ${food}`,
    some: (percent) => `aantal ingrediënten met ${f.percent(percent)} of meer`,
    someOf: (group, percent) => `aantal ingrediënten uit “${group}” met ${f.percent(percent)} of meer`,
    few: 'aantal ingrediënten',
    fewOf: (group) => `aantal ingrediënten uit “${group}”`,
    whereUsed: (food) => `aandeel van ${food}, als het erin zit,`,
    smallest: 'de kleinste hoeveelheid van een ingrediënt',
  },
  noAnswer: 'Dit was niet uit te rekenen: de berekening kwam niet tot een eind.',
  percent: '%',
  percentDry: '% van de droge stof',
  per100: (unit) => `${unit} per 100 g`,
  per100Dry: (unit) => `${unit} per 100 g droge stof`,
  mustAtLeast: (subject, amount) => `${subject} moet minstens ${amount} zijn`,
  mustAtMost: (subject, amount) => `${subject} mag hoogstens ${amount} zijn`,
  because: (limit, reason) => `${limit} (${reason})`,
  above: (subject, is, most) => `${subject} is ${is}, meer dan mag: ${most}`,
  below: (subject, is, least) => `${subject} is ${is}, minder dan nodig: ${least}`,
  noMost: (subject, most) =>
    `${subject} is niet te zeggen, omdat er niets is om door te delen; hoogstens mag ${most}`,
  noLeast: (subject, least) =>
    `${subject} is niet te zeggen, omdat er niets is om door te delen; minstens nodig is ${least}`,
  atLeast: (subject, least) => `${subject} staat op de ondergrens, ${least}`,
  atMost: (subject, most) => `${subject} staat op de bovengrens, ${most}`,
  sentence: (text) => `${text}.`,
  toTheLastDigit:
    'Geen mengsel van deze ingrediënten voldoet tot op het laatste cijfer aan elke regel; maak er één iets ruimer.',
  collide: (limits) => `Geen mengsel van deze ingrediënten kan aan de regels voldoen: ${f.list(limits)}.`,
  held: (foods) =>
    f.form(foods.length, {
      one: `Geen mengsel voldoet aan de regels zolang ${f.list(foods)} vaststaat. Laat het los.`,
      other: `Geen mengsel voldoet aan de regels zolang ${f.list(foods)} vaststaan. Laat er één los.`,
    }),
  nothingFits: 'Geen mengsel voldoet aan de regels. Druk op “Passend maken” om te zien waarom.',
  heldAt: (food, percent) => `${food} staat vast op ${f.percent(percent)}.`,
  leave: {
    asks: 'wat gegeten wordt moet ook aan de regels voldoen als een willekeurig ingrediënt blijft liggen',
    because: 'elk ingrediënt mag blijven liggen',
    any: 'Elk ingrediënt mag blijven liggen: wat gegeten wordt blijft binnen bereik.',
    without: (food, breach) => `Zonder ${food}: ${breach}.`,
    out: (foods) => `Buiten bereik als een van deze blijft liggen: ${f.list(foods)}.`,
    more: (n) => `nog ${f.number(n)}`,
  },
  foods: {
    more: (n) => f.count(n, { one: 'ander ingrediënt', other: 'andere ingrediënten' }),
    estimate: (nutrient, foods) => `${nutrient} van ${foods} is geschat.`,
    crudeAsLeast: (foods) =>
      `Voedingsvezel van ${foods} is niet bekend; de ruwe celstof telt als het minste wat het kan zijn.`,
    water: (foods) =>
      `Vocht van ${foods} is niet bekend; voor een minimum in de droge stof telt het minste water dat kan, voor een maximum het meeste.`,
    onlyLeast: (nutrient, foods) =>
      `${nutrient} van ${foods} is alleen als minimum gegarandeerd; dat telt, en het kan meer zijn.`,
    unknown: (nutrient, foods) =>
      `${nutrient} van ${foods} is niet bekend en telt als het minste wat het kan zijn.`,
  },
  grams: {
    doubt: (squares, least) =>
      `Deze grammen voldoen aan elke regel, maar het is niet bewezen dat ze het dichtst bij de aandelen liggen: hun afstanden in het kwadraat zijn samen ${f.figure(squares)} g², die van alle andere ${f.figure(least)} g² of meer.`,
    crossed:
      'geen grammen voldoen aan elke regel: van een ingrediënt zou meer gevoerd moeten worden dan de waarschuwing toestaat',
    noMultiple: (batch, step) =>
      `een batch van ${f.grams(batch)} is geen geheel aantal stappen van ${f.grams(step)}; kies een veelvoud van de stap`,
    none: (batch, step) =>
      `geen hele stappen van ${f.grams(step)} voldoen in ${f.grams(batch)} aan elke regel; weeg een grotere batch af of neem een fijnere weegschaal`,
    notFound: (batch, step, tries) =>
      `er zijn geen hele stappen van ${f.grams(step)} gevonden die in ${f.grams(batch)} aan elke regel voldoen, al kunnen ze er zijn: het zoeken stopte na ${f.number(tries)} pogingen; weeg een grotere batch af of neem een fijnere weegschaal`,
  },
  why: {
    varied: (subject) => `${subject}, met de marge voor wisselende ingrediënten,`,
    free: (limit) => `${limit}, en dat kost niets: zonder die grens was het mengsel even goed.`,
    nothing: (limit) => `${limit}; een beetje schuiven verandert niets.`,
    raise: (limit, to, better, shares) => `${limit}. De grens verhogen naar ${to} zou ${better}${shares}.`,
    lower: (limit, to, better, shares) => `${limit}. De grens verlagen naar ${to} zou ${better}${shares}.`,
    shares: (changes) => `: ${f.list(changes)}`,
    rest: (value) => ` Zonder die grens zou het uitkomen op ${value}.`,
    up: (food, from, to) => `${food} omhoog van ${f.fixed(from, 1)} naar ${f.fixed(to, 1)} %`,
    down: (food, from, to) => `${food} omlaag van ${f.fixed(from, 1)} naar ${f.fixed(to, 1)} %`,
    save: (price) => `${f.figure(price)} per kg besparen`,
    varies: 'het mengsel gevarieerder maken',
    nearer: (percent) => `het mengsel ${f.figure(percent)} % dichter bij je wens brengen`,
    bring: (aim, from, to) => `${aim} van ${f.figure(from)} naar ${f.figure(to)} brengen`,
  },
  aim: {
    liked: 'het aandeel geliefde ingrediënten',
    cupboard: 'wat uit de voorraad komt, in procent van het mengsel,',
    few: 'het aantal ingrediënten',
    fewToBuy: 'het aantal te kopen ingrediënten',
    cheap: 'de prijs per kg',
    of: (subject) => `de waarde “${subject}”`,
  },
});
