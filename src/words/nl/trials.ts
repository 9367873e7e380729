import type { Trials } from '../en/trials.ts';
import type { Figures } from '../figures.ts';

export const trials = (f: Figures): Trials => ({
  title: 'Nieuw voer',
  intro: (animal) =>
    `Geef ${animal} maar één nieuw ingrediënt tegelijk, een beetje ervan naast bekend voer, en noteer wat je zag.`,
  gone: (animal) => `${animal} woont hier niet meer. Wat geprobeerd is, blijft bewaard.`,
  choose: {
    open: 'Nieuw ingrediënt proberen',
    heading: 'Welk ingrediënt is nieuw?',
    search: 'Ingrediënten zoeken',
    placeholder: 'lijnzaad, meelwormen, paardenbloem…',
    searching: 'Zoekt…',
    own: 'eigen ingrediënt',
    pellet: 'eigen brokjes',
    inMix: 'in een mengsel',
    never: 'Wat niet gevoerd mag worden, staat niet in deze lijst.',
    neverFound: (food) => `Mag niet gevoerd worden: ${food}.`,
    pick: (food) => `${food} kiezen`,
    take: 'Kiezen',
    cancel: 'Nu niet',
  },
  plan: {
    heading: (food) => `Proef: ${food}`,
    other: 'Ander ingrediënt',
    cautions: 'Vooraf te weten',
    amount: 'Elke keer',
    amountHint: (per, body) =>
      `Ongeveer ${f.grams(per)} per ${f.grams(100)} lichaamsgewicht, gerekend met ${f.grams(body)}; dat is zo’n tiende van het voer van een dag (gangbare praktijk, geen bron).`,
    amountUnknown: 'Een heel klein stukje. Met een genoteerd lichaamsgewicht staat hier een hoeveelheid.',
    offers: 'Hoe vaak',
    times: (n) => f.count(n, { one: 'keer', other: 'keer' }),
    from: 'Vanaf',
    beside: 'Naast',
    noBeside: 'het gewone voer',
    days: (days) => `Dagen: ${f.list(days)}`,
    apart:
      'Tussen twee keren ligt een dag, zodat je ziet hoe elke keer ging (gangbare praktijk, geen bron). Voor een oordeel moeten drie keren overeenstemmen.',
    begin: 'Beginnen',
    noDay: 'Kies de eerste dag.',
  },
  running: {
    heading: (food) => `Loopt nu: ${food}`,
    beside: (grams, food) => `Elke keer ${grams}, ernaast: ${food}.`,
    alone: (grams) => `Elke keer ${grams} naast het gewone voer.`,
    little: (food) => `Elke keer een heel klein stukje, ernaast: ${food}.`,
    littleAlone: 'Elke keer een heel klein stukje naast het gewone voer.',
    today: 'Vandaag is het weer tijd om aan te bieden.',
    late: (day, days) =>
      `Gepland was ${day}, dat is ${f.count(days, { one: 'dag', other: 'dagen' })} geleden. Het kan ook vandaag.`,
    next: (day) => `Volgende keer: ${day}.`,
    done: 'Alle geplande keren zijn genoteerd.',
    other: (food) =>
      `Nu wordt geprobeerd: ${food}. Een ander nieuw ingrediënt kan pas als deze proef is beëindigd: zijn er twee tegelijk nieuw, dan weet niemand welk niet verdragen werd.`,
    end: 'Deze proef beëindigen',
    ended: (food) => `De proef is beëindigd: ${food}.`,
    more: 'Nog twee keer',
  },
  note: {
    heading: 'Wat heb je gezien?',
    offered: 'Aangeboden op',
    today: 'vandaag',
    yesterday: 'gisteren',
    seen: {
      first: 'Als eerste gegeten',
      eaten: 'Gegeten',
      hoarded: 'Weggesleept',
      left: 'Laten liggen',
      upset: 'Niet verdragen',
    },
    help: {
      first: 'vóór het gewone voer',
      eaten: 'vroeg of laat',
      hoarded: 'in de wangzakken of het voorraadje',
      left: 'het lag er nog',
      upset: 'dunne keutels, opgezette buik, niet lekker',
    },
    noted: (seen, day) => `Genoteerd voor ${day}: ${seen}. Klopt dat niet, druk dan op iets anders.`,
    hoarding: 'Weggesleept is niet gegeten en niet geweigerd: dat kan niemand zien.',
    weigh: 'Ik heb de rest gewogen',
    offeredGrams: 'Aangeboden',
    leftGrams: 'Nog over',
    saveWeights: 'Gewichten noteren',
    weighed: (left, grams) => `${left} van ${grams} bleef over`,
    takeBack: 'Terugnemen',
    takenBack: (day) => `Teruggenomen: ${day}.`,
    sofar: 'Wat genoteerd is',
    takeBackOf: (day) => `Terugnemen wat voor ${day} genoteerd is`,
  },
  upset: {
    heading: (food, animal) => `${food}: ${animal} verdraagt dit niet`,
    stop: (animal) =>
      `Niet meer voeren. Haal weg wat er nog van ligt, ook uit het voorraadje; ${animal} houdt het gewone voer en vers water.`,
    vet: 'Ga dezelfde dag nog naar de dierenarts bij waterige keutels, een natte of vieze staart, een opgezette buik, als het dier niets eet of suf is: een klein dier kan er binnen een dag heel slecht aan toe zijn. Houden lichtere tekenen tot morgen aan, ga dan ook.',
    out: (food) => `Nu uit elk mengsel, onder elke naam en in elke vorm: ${food}.`,
    others: (day, note) => `De andere dieren geef je het sinds ${day} toch: “${note}”.`,
    goAhead: 'Aan de anderen geven, met reden …',
    why: 'Waarom de anderen het toch krijgen (ze eten het al lang, bijvoorbeeld)',
    yes: 'Aan de anderen geven',
    no: 'Weglaten',
    keepOut: 'Voor alle dieren weglaten',
    wrong: 'Lag het aan iets anders, neem dan hieronder die notitie terug; het ingrediënt doet dan weer mee.',
  },
  verdict: {
    liked: (animal, food) => `${animal} lust dit: ${food}.`,
    refused: (animal, food) => `${animal} wil dit niet: ${food}.`,
    upset: (animal, food) => `${animal} verdroeg dit niet: ${food}.`,
    undecided: 'Nog niet beslist.',
    stillRefused: (animal, food) =>
      `${animal} weigerde dit eerder: ${food}. Het blijft uit de mengsels tot nieuwe keren iets anders zeggen.`,
    stillLiked: (animal, food) =>
      `${animal} lustte dit eerder: ${food}. De nieuwe keren hebben het nog niet beslist.`,
    chance: (percent) => `De kans dat het dit minstens om de andere keer eet, is ${f.percent(percent, 0)}.`,
    chanceBetween: (low, high) =>
      `De kans dat het dit minstens om de andere keer eet, ligt tussen ${f.percent(low, 0)} en ${f.percent(high, 0)}: van wat is weggesleept weet niemand of het gegeten is.`,
    span: (low, high) =>
      `Het eet dit ${f.number(low, 0)} tot ${f.percent(high, 0)} van alle keren (95 % zeker).`,
    more: (eaten, left) =>
      `Op zijn vroegst beslist als het nog ${f.count(eaten, { one: 'keer', other: 'keer' })} wordt gegeten of nog ${f.count(left, { one: 'keer', other: 'keer' })} blijft liggen.`,
    looks: (n) => f.count(n, { one: 'keer genoteerd', other: 'keer genoteerd' }),
    noLooks: 'Er is nog geen keer genoteerd.',
    how: 'Hoe dit is berekend',
    why: 'Elke keer telt als één blik. Vóór de eerste geldt elk antwoord als even waarschijnlijk (uniforme verdeling). Na e blikken waarbij het werd gegeten en l waarbij het bleef liggen, volgt de frequentie een verdeling Beta(1 + e, 1 + l). Een oordeel valt zodra het naar één kant 90 % zeker is; daarvoor moeten drie blikken overeenstemmen (gangbare praktijk, geen bron). Wat gewogen is, telt naar gewicht. Wat is weggesleept, wordt één keer als gegeten en één keer als blijven liggen gerekend, en het oordeel moet beide keren gelden.',
    older:
      'Smaak verandert: in een nieuwe proef telt elke blik van de vorige half, van die daarvoor een kwart (gangbare praktijk, geen bron).',
    picture: (low, high, from, to) =>
      `Hoe vaak het dit eet: het meest waarschijnlijk ${from === to ? f.percent(from, 0) : `${f.number(from, 0)} tot ${f.percent(to, 0)}`}, 95 % zeker ${f.number(low, 0)} tot ${f.percent(high, 0)}.`,
    never: 'nooit',
    half: 'om de andere keer',
    always: 'altijd',
  },
  follows: {
    liked: 'Het mag in de mengsels.',
    refused: (mixes) =>
      mixes.length === 0
        ? 'Het blijft uit elk mengsel voor dit dier, ook onder een andere naam.'
        : `Het is uit ${f.list(mixes)} en uit elk mengsel voor dit dier, ook onder een andere naam.`,
    listed:
      'Het staat ook op de lijst van wat het weigert, die je zelf schreef: het blijft eruit tot je het daar weghaalt.',
    undecided: 'De mengsels blijven zoals ze zijn.',
  },
  lists: {
    upset: 'Niet verdragen',
    refused: 'Geweigerd',
    liked: 'Lust het',
    undecided: 'Geprobeerd, niet beslist',
    untried: 'In de mengsels, nog nooit geprobeerd',
    untriedHint: (animal) =>
      `Vink aan wat ${animal} van elders kent. Wat in een voltooide batch zat, geldt als bekend.`,
    noneUntried: 'Alle ingrediënten van de mengsels zijn bekend.',
    noMix: 'Voor dit dier is nog geen mengsel gemaakt.',
    knows: 'Dit is bekend',
    knowsOf: (food) => `Bekend: ${food}`,
    said: 'Bekend, zeg je',
    known: 'bekend',
    tryIt: 'Proberen',
    tryItOf: (food) => `${food} proberen`,
    again: 'Weer aanbieden',
    againOf: (food) => `Weer aanbieden: ${food}`,
    nothing: 'Er is nog niets geprobeerd.',
    trialFrom: (day) => `Proef vanaf ${day}`,
    trialEnded: (day, end) => `Proef vanaf ${day}, beëindigd op ${end}`,
    noDays: 'Proef',
    remove: 'Proef wissen',
    removeOf: (food, day) => `Proef wissen: ${food}, ${day}`,
    removed: (food) => `De proef is gewist: ${food}.`,
    back: (food) => `De proef is terug: ${food}.`,
  },
  mix: {
    isOut: (food, animal) => `Doet niet mee: ${food}. ${animal} liet het in <trial>een proef</trial> liggen.`,
    upset: (food, animal) =>
      `Uit elk mengsel: ${food}. ${animal} verdroeg het in <trial>een proef</trial> niet.`,
    upsetOwn: (food, animal) =>
      `Doet niet mee: ${food}. ${animal} verdroeg het in <trial>een proef</trial> niet. Het blijft uit dit mengsel zolang dat geldt.`,
    upsetBeside: (food, animal) =>
      `Naast het mengsel gevoerd, nu niet meer: ${food}. ${animal} verdroeg het in <trial>een proef</trial> niet. Het rantsoen wordt zonder dit berekend; kies ander volledig voer.`,
    refusedBeside: (food, animal) =>
      `Naast het mengsel gevoerd, nu niet meer: ${food}. ${animal} weigert het. Het rantsoen wordt zonder dit berekend; kies ander volledig voer.`,
    lifted: (food, animal, day, note) =>
      `Doet mee omdat je dat op ${day} zo koos (“${note}”): ${food}. ${animal} verdroeg het in <trial>een proef</trial> niet.`,
    goAheadWith: (food) => `Aan de anderen geven, met reden … (${food})`,
    all: 'Eruit na een proef',
    outShort: (animal) => `geweigerd door ${animal}`,
    upsetShort: (animal) => `niet verdragen: ${animal}`,
    newTo: (animal, n) =>
      `${animal} heeft ${f.count(n, { one: 'ingrediënt', other: 'ingrediënten' })} van dit mengsel nog nooit geprobeerd.`,
    newHint:
      'Probeer nieuwe ingrediënten één voor één voordat ze in een batch gaan; of vink aan wat bekend is.',
    trying: 'wordt nu geprobeerd',
    knowsAll: (animal) => `${animal} kent dit allemaal`,
  },
  about: {
    refused: (food) => `Doet ook niet mee: ${food}, in <trial>een proef</trial> laten liggen.`,
    upset: (food) => `Uit elk mengsel: ${food}, in <trial>een proef</trial> niet verdragen.`,
  },
  today: {
    look: (animal, food) =>
      `${animal} verdroeg dit niet: ${food}. Kijk hoe het gaat. Houdt het aan, ga naar de dierenarts, dezelfde dag nog als het dier suf is of niets eet.`,
    trial: 'Naar de proef',
  },
  batch: {
    heading: 'Niet voeren',
    notFor: (food, animal) => `Niet voor ${animal}: bevat ${food}, dat ${animal} niet verdroeg.`,
    own: (food, animal) =>
      `Bevat ${food}. ${animal} verdroeg dat in <trial>een proef</trial> niet: voer dit niet aan ${animal}. Houdt het aan, ga naar de dierenarts.`,
    other: (food, animal) =>
      `Bevat ${food}. ${animal} verdroeg dat in <trial>een proef</trial> niet. Niet voeren, of kies daar anders voor de andere dieren.`,
  },
});
