import type { Wishes } from '../en/wishes.ts';
import type { Figures } from '../figures.ts';

export const wishes = (f: Figures): Wishes => {
  const foods = (n: number) => f.count(n, { one: 'ingrediënt', other: 'ingrediënten' });
  return {
    within: (name) => name.charAt(0).toLowerCase() + name.slice(1),
    heading: 'Wensen',
    intro:
      'Regels gelden altijd. Onder de mengsels die eraan voldoen, worden de wensen een voor een vervuld, de eerste het eerst.',
    none: 'Er is nog niets gewenst behalve de regels.',
    working: 'Bezig…',
    lastAfter: 'En onder de mengsels die dan overblijven, het mengsel dat',
    last: 'Onder de mengsels die aan de regels voldoen, het mengsel dat',
    objectives: {
      nearest: 'het dichtst bij mijn wensen komt',
      cheapest: 'het minst kost',
      varied: 'het meest gevarieerd is',
    },
    fit: 'Passend maken volgens deze wensen',
    simple: {
      liked: 'Zo veel mogelijk van wat geliefd is',
      cupboard: 'Gebruiken wat in huis is',
      few: 'Weinig ingrediënten',
      fewToBuy: 'Weinig ingrediënten kopen',
      cheap: 'Goedkoop',
    },
    lessOf: 'Minder van …',
    moreOf: 'Meer van …',
    less: {
      mix: (what) => `Minder ${what} in het mengsel`,
      ration: (what) => `Minder ${what} in het hele rantsoen`,
    },
    more: {
      mix: (what) => `Meer ${what} in het mengsel`,
      ration: (what) => `Meer ${what} in het hele rantsoen`,
    },
    smaller: (what) => `Een kleiner aandeel: ${what}`,
    greater: (what) => `Een groter aandeel: ${what}`,
    units: { foods: 'ingrediënten', perKg: 'per kg', per100: (unit) => `${unit} in 100 g` },
    value: {
      foods,
      toBuy: (n) => `${foods(n)} te kopen`,
      price: (n) => `${f.money(n)} per kg`,
      share: (n) => `${f.figure(n)} % van het mengsel`,
      mix: (n, unit) => `${f.figure(n)} ${unit} in 100 g van het mengsel`,
      ration: (n, unit) => `${f.figure(n)} ${unit} in 100 g van het hele rantsoen`,
    },
    lacks: {
      liked:
        'Nog geen ingrediënt is als geliefd gemarkeerd. Zet bij een ingrediënt een vinkje bij “Geliefd”.',
      home: 'Er staat nog nergens wat in huis is. Schrijf het bij een ingrediënt op.',
      price: (names) =>
        `“Goedkoop” heeft de prijs van elk ingrediënt nodig. Die ontbreekt bij: ${f.list(names)}. De prijs staat bij de details van een ingrediënt.`,
      priceMany: (names, more) =>
        `“Goedkoop” heeft de prijs van elk ingrediënt nodig. Die ontbreekt bij: ${names.join(', ')} en nog ${f.number(more)}. De prijs staat bij de details van een ingrediënt.`,
    },
    fault: {
      already: (wish) => `“${wish}” is al gewenst; schuif die omhoog of omlaag.`,
      opposite: (wish) => `“${wish}” is gewenst en dat is het tegendeel; haal dat eerst weg.`,
      most: (n) => `Meer dan ${f.number(n)} wensen kan niet; haal er eerst een weg.`,
    },
    gap: {
      nearest: (percent) =>
        `Het zoeken is afgebroken: dit mengsel kan nog tot ${f.figure(percent)} % afwijken van wat het dichtst bij je wensen komt.`,
      cheapest: (price) =>
        `Het zoeken is afgebroken: het goedkoopste mengsel kan nog tot ${f.money(price)} per kg minder kosten.`,
      varied: (percent) =>
        `Het zoeken is afgebroken: een mengsel kan nog tot ${f.figure(percent)} % gevarieerder zijn.`,
    },
    form: {
      kind: 'Nog een wens',
      what: 'Waarvan',
      ruled: 'Voedingsstoffen met een regel',
      other: 'Andere voedingsstoffen',
      groups: 'Groepen',
      foods: 'Ingrediënten',
      on: 'Gemeten in',
      ration: 'het hele rantsoen',
      mix: 'het mengsel',
      add: 'Wens toevoegen',
      added: (wish, rank) => `“${wish}” is wens ${f.number(rank)}.`,
    },
    list: {
      moved: (wish, rank, of) => `“${wish}” is nu wens ${f.number(rank)} van ${f.number(of)}.`,
      removed: (wish) => `“${wish}” is niet meer gewenst.`,
      hint: '“Mag toegeven” zegt hoe ver een wens van het beste af mag blijven, zodat de volgende meer krijgen.',
      came: (value) => `In het beste mengsel: ${value}`,
      noMix: 'Er is geen mengsel om het in te meten',
      rank: (rank) => `${f.number(rank)}.`,
      give: 'Mag toegeven',
      up: (wish) => `Omhoog: ${wish}`,
      down: (wish) => `Omlaag: ${wish}`,
      remove: (wish) => `Weghalen: ${wish}`,
    },
    counts: {
      heading: 'Hoeveel ingrediënten',
      hint: 'Dit zijn regels: ze gelden in elk mengsel en zijn niet alleen gewenst.',
      gone: (rule) => `De regel “${rule}” geldt niet meer.`,
      added: (rule) => `De regel “${rule}” geldt vanaf nu.`,
      leastGrams: 'Geen ingrediënt onder',
      any: 'maakt niet uit',
      scaleStep: (grams) => `De stap van de weegschaal nemen, ${f.grams(grams)}`,
      leastHint: (batch) =>
        `Een ingrediënt blijft dan weg, of weegt minstens zo veel in de batch van ${f.grams(batch)}. Minder dan één stap van de weegschaal kun je niet afwegen (gangbare praktijk, geen bron).`,
      dropOne: 'Binnen bereik blijven als er één ingrediënt blijft liggen',
      dropOneHint:
        'Elke regel over voedingsstoffen geldt dan ook voor wat er wordt gegeten als het dier een willekeurig ingrediënt helemaal laat liggen.',
      broken: 'nog niet aan voldaan',
      kept: 'aan voldaan',
      notTaken: (why) => `Niet overgenomen: ${why}`,
      noFewer: 'Ingrediënten, minstens',
      withEach: 'Elk met',
      noMore: 'Ingrediënten, hoogstens',
      another: 'Nog een regel',
      atLeast: 'Minstens zo veel ingrediënten',
      atMost: 'Hoogstens zo veel ingrediënten',
      howMany: 'Hoeveel',
      shareOfEach: 'Aandeel van elk',
      among: 'Geteld onder',
      allFoods: 'alle ingrediënten',
      add: 'Regel toevoegen',
      remove: (rule) => `Weghalen: ${rule}`,
      rule: {
        least: (n, share) => `Minstens ${foods(n)} met elk ${f.percent(share)}`,
        leastOf: (n, group, share) => `Minstens ${f.number(n)} met elk ${f.percent(share)} uit: ${group}`,
        most: (n) => `Hoogstens ${foods(n)}`,
        mostOf: (n, group) => `Hoogstens ${f.number(n)} uit: ${group}`,
        both: (least, most) => `${least}; ${most.charAt(0).toLowerCase()}${most.slice(1)}`,
        any: 'Elk aantal ingrediënten',
      },
      fault: {
        howMany: 'Schrijf hoeveel ingrediënten.',
        share: 'Schrijf vanaf welk aandeel boven 0 % een ingrediënt telt.',
        tooMuch: (n, share, all) =>
          `${foods(n)} met elk ${f.percent(share)} is samen ${f.percent(all)}, meer dan het hele mengsel; verlaag een van de twee.`,
        tooFew: (open, wanted) =>
          `In het mengsel mogen ${foods(open)} worden gebruikt, minder dan ${f.number(wanted)}; vraag minder of voeg eerst ingrediënten toe.`,
        tooFewOf: (open, group, wanted) =>
          `${group}: het mengsel heeft er ${foods(open)} van, minder dan ${f.number(wanted)}; vraag minder of voeg eerst ingrediënten toe.`,
        crossed: (min, max) =>
          `Minstens ${f.number(min)} en hoogstens ${f.number(max)} kan niet samen; wijzig een van de twee.`,
        none: 'Een mengsel heeft minstens één ingrediënt; sta 1 of meer toe.',
      },
    },
  };
};
