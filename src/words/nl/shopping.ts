import type { Shopping } from '../en/shopping.ts';
import type { Figures } from '../figures.ts';

export const shopping = (f: Figures): Shopping => {
  const packs = { one: 'pak', other: 'pakken' };
  return {
    title: 'Inkoop',
    mix: 'Mengsel',
    forMix: (mix) => `voor ${mix}`,
    sizeOf: (batch, lasts) =>
      lasts === undefined ? `Voor ${batch} van het mengsel.` : `Voor ${batch} van het mengsel: ${lasts}.`,
    changeSize: 'Hoeveelheid veranderen',
    sharesNotWhole: (total) =>
      `De aandelen van dit mengsel zijn samen ${f.percent(total)}, geen 100 %. Zo kan niemand zeggen hoeveel je moet kopen. <fit>Maak het mengsel eerst passend</fit>.`,
    notInRange: '<verdict></verdict> <fit>Maak het mengsel passend</fit> voor je ervoor koopt.',
    list: {
      label: 'Boodschappenlijst',
      count: (n) => `${f.count(n, { one: 'ingrediënt', other: 'ingrediënten' })} te halen`,
      nothing: 'Niets te kopen: alles ligt in je voorraad.',
      hint: 'Zoveel gram neemt de batch, naar boven afgerond. Vinkjes blijven staan en komen ook op je andere apparaten.',
      groups: {
        seed: 'Zaden, granen en noten',
        legume: 'Bonen, erwten en linzen',
        vegetable: 'Kruiden en groenten',
        fruit: 'Fruit',
        animal: 'Dierlijk eiwit',
        other: 'Andere ingrediënten',
        beside: 'Naast het mengsel gevoerd',
      },
      got: (food, amount) => `${food}, ${amount}`,
      fresh: (amount) => `${amount} vers`,
      freshAtLeast: (amount) => `meer dan ${amount} vers`,
      dried: (grams) => `${grams} gedroogd`,
      how: (food) => `Hoe je eraan komt: ${food}`,
      bought: 'Gekocht',
      home: 'In huis',
      dry: 'Zelf drogen',
      more: (food) => `Meer over ${food}`,
      gives: (grams) => `geeft ${grams} gedroogd`,
      partly: (grams) => `nog ${grams} in je voorraad`,
      freshUnknown: 'vers gewicht niet bekend',
      trimUnknown: 'wat eraf gaat is niet bekend',
      notCounted: (n) => `${f.count(n, packs)} niet meegeteld`,
      weight: 'Gewicht dat je hebt, als het een ander is',
      weightHint: 'Zo komt het in je voorraad.',
    },
    stocked: { summary: (n) => `Al in je voorraad (${f.number(n)})` },
    bar: {
      label: 'In je voorraad leggen',
      ticked: (n, all) => `${f.number(n)} van ${f.number(all)} afgevinkt`,
      all: 'Alles vandaag gekocht',
      only: (n) => `Alleen wat is afgevinkt (${f.number(n)})`,
      ask: (n) =>
        f.form(n, {
          one: 'Eén ingrediënt gaat je voorraad in. Is het al ingevroren tegen insecten?',
          other: `${f.number(n)} ingrediënten gaan je voorraad in. Is het droge al ingevroren tegen insecten?`,
        }),
      askHint:
        'Droge waar kan insecten meebrengen. Eén antwoord voor het hele mandje; bij elk pak kun je het later veranderen.',
      no: 'Nee, of niet zeker: ik vries het eerst in',
      seller: 'Ja, door de verkoper',
      self: 'Ja, door mij thuis',
      frozenBySeller: 'al ingevroren door de verkoper',
      frozenByMe: 'al thuis ingevroren',
      put: 'In mijn voorraad leggen',
      notYet: 'Nog niet',
    },
    told: {
      label: 'Net gekocht',
      kept: (n) => `In je voorraad: ${f.count(n, packs)}.`,
      keptNamed: (names) => `In je voorraad: ${names}.`,
      back: (names) => `Teruggenomen: ${names}.`,
      which: 'Welke',
      pack: (name, grams) => `${name}, ${grams}`,
      notKept: (names, why) => `Niet bewaard: ${names}. ${why}`,
      stillThere: (names, why) => `Nog in je voorraad: ${names}. ${why}`,
      noWeight: (names) =>
        `Niet in je voorraad gelegd, omdat niemand weet hoeveel het is: ${names}. Zet het gewicht onder “Meer”.`,
      home: 'Wat al in huis was, staat er met de datum van vandaag; verander die bij het pak als het ouder is.',
      rest: 'De rest nog eens proberen',
      plan: 'Invriezen plannen',
    },
    apart: (seller) =>
      `Wat er verder van ${seller} zou komen, wordt opnieuw gepland: als eigen bestelling met bezorging en minimumbestelling.`,
    waiting: (n) =>
      f.form(n, {
        one: 'Eén pak in je voorraad moet nog ingevroren worden tegen insecten.',
        other: `${f.number(n)} pakken in je voorraad moeten nog ingevroren worden tegen insecten.`,
      }),
    freezer: 'Invriezen',
    papers: {
      print: 'De lijst afdrukken',
      copy: 'Als tekst kopiëren',
      copied: 'Gekopieerd.',
      noCopy: 'Deze browser laat de pagina niet kopiëren; druk de lijst af.',
    },
    size: {
      label: 'Grootte van de batch',
      next: 'Grootte van de volgende batch',
      inGrams: 'Op gewicht',
      inDays: 'In dagen',
      days: 'Dagen die het meegaat',
      notWhole: (days) => `Dagen die het meegaat: ${f.number(days)} is geen heel getal.`,
      weight: 'Gewicht van de batch',
      lasts: (days, over, names, daily) => {
        const whole = f.count(days, { one: 'dag', other: 'dagen' });
        const time = days < 1 ? 'minder dan een dag' : over ? `iets meer dan ${whole}` : whole;
        const eats = f.form(names.length, { one: 'eet', other: 'eten' });
        return `${time} voor ${f.list(names)} (${eats} er ${daily} per dag van)`;
      },
      noPart:
        'Wat naast het mengsel gevoerd wordt is al het hele rantsoen; een dag neemt dus niets van het mengsel. <mix>Verander het rantsoen</mix>.',
      noAnimal:
        'Dit mengsel is nog voor geen dier, dus dagen zeggen niets over grammen. <mix>Kies de dieren</mix>, of geef het gewicht van de batch.',
      notKnown:
        'Hoeveel <who></who> per dag eet is niet bekend. <page></page>: dan zijn de dagen en de prijs van een dag bekend.',
      notKnownNeeded:
        'Hoeveel <who></who> per dag eet is niet bekend. <page></page>, of geef het gewicht van de batch.',
      page: (animal) => `Zet het op de pagina van ${animal}`,
    },
    stock: {
      label: (food) => `${food} in je voorraad`,
      from: (grams) => `${grams} uit <lot></lot>`,
      fromFresh: (grams, dried) => `${grams} uit <lot></lot>, gedroogd ${dried}`,
      bought: (day) => `gekocht op ${day}`,
      freshFirst: 'vers: eerst drogen',
      fromTrays: (grams) => `Ongeveer ${grams} van <run></run>`,
      onTrays: (lot) => `${lot} op de platen`,
      passed: (grams) => `Niet meegeteld: ${grams} van <lot></lot>; <why></why>.`,
      passedTrays: (grams) => `Niet meegeteld: ${grams} van <lot></lot> op de platen; <why></why>.`,
    },
    prices: {
      summary: 'Prijzen en verkopers',
      hint: 'Voor wie vergelijkt. Zet bij een ingrediënt onder “Meer” wie het verkoopt en voor hoeveel; dan worden hele pakken gekozen en heeft de batch een prijs.',
      label: 'Prijzen',
      aim: 'Pakken kiezen voor',
      cost: 'Weinig geld',
      waste: 'Weinig resten',
      toPay: 'Nu te betalen',
      batch: 'Prijs van deze batch',
      perKg: f.massUnit === 'g' ? 'Prijs van een kilo' : 'Prijs van een pond (lb)',
      dayOf: (animal) => `Prijs van een dag voor ${animal}`,
      dayOfAll: 'Prijs van een dag voor allemaal',
      note: 'De batch kost wat erin gaat; de rest van een pak blijft van jou. Wat naast het mengsel gevoerd wordt telt niet mee.',
      noteDelivery:
        'De batch kost wat erin gaat, zonder bezorging; de rest van een pak blijft van jou. Wat naast het mengsel gevoerd wordt telt niet mee.',
      unknown: (n) => `Prijs niet helemaal bekend (${f.number(n)})`,
      unknownFoods: (foods) =>
        `${foods}. De prijs van een verkoper, of van het pak in je voorraad, maakt hem bekend.`,
      notProven: 'Het zoeken stopte voor zeker was dat er geen betere keuze van pakken is.',
      atLeast: (price) => `minstens ${price}`,
      notKnown: 'niet bekend',
      noOffers: 'niet bekend: nog geen verkopers',
      nothing: 'niets',
      without: (price, foods) => `${price}, zonder ${foods}`,
      foods: (n) => f.count(n, { one: 'ingrediënt', other: 'ingrediënten' }),
      bySeller: 'Per verkoper',
      noneYet: 'Nog niets te bestellen: zeg wie een ingrediënt verkoopt.',
      noOrder: 'Niets te bestellen.',
      delivery: 'Bezorging',
      inAll: 'Samen',
      least: (goods, seller, least) => `Waar voor ${goods}; ${seller} bezorgt niets onder ${least}.`,
      bought: 'Gekocht',
      boughtAll: (n) => `Alle ${f.number(n)} gekocht`,
      wholeOrder: (say, seller) => `${say}: de hele bestelling bij ${seller}`,
      pack: (n, each) => `${f.number(n)} × ${each}`,
      packFresh: (n, each) => `${f.number(n)} × ${each} vers`,
      packFrom: (pack, seller, price) => `${pack} van ${seller}: ${price}`,
      inBatch: (price) => `In deze batch: ${price}`,
      noneLeft: 'Er blijft niets over.',
      left: (grams) => `Er blijft ${grams} over.`,
      leftDried: (grams) => `Gedroogd blijft er ${grams} over.`,
    },
    sellers: {
      label: 'Verkopers',
      summary: (n) =>
        `Bezorging en minimumbestelling (${f.count(n, { one: 'verkoper', other: 'verkopers' })})`,
      hint: 'Leeg betekent: de verkoper vraagt geen van beide.',
      delivery: 'Bezorging',
      minimum: 'Minimumbestelling',
      none: 'geen',
    },
    offers: {
      title: 'Wie het verkoopt',
      line: (seller, pack, price) => `${seller}, ${pack} voor ${price}`,
      lineFresh: (seller, pack, price) => `${seller}, ${pack} vers voor ${price}`,
      per: (price) =>
        f.massUnit === 'g' ? `${price} per kg zoals verkocht` : `${price} per lb zoals verkocht`,
      change: (offer) => `De prijs veranderen: ${offer}`,
      erase: (offer) => `De prijs verwijderen: ${offer}`,
      deleted: (offer) => `Verwijderd: ${offer}.`,
      putBack: 'Terugzetten',
      add: 'Een verkoper toevoegen',
      addOf: (food) => `Een verkoper toevoegen van ${food}`,
      form: (food) => `Prijs van ${food}`,
      formNew: (food) => `Nieuwe verkoper van ${food}`,
      seller: 'Verkoper',
      sellerEmpty: 'Verkoper is leeg: zeg wie het verkoopt.',
      weight: 'Gewicht van een pak',
      weightEmpty: 'Gewicht van een pak is leeg: schrijf het als 500 g, 1,5 kg of 2 lb.',
      weightWrong: (why) => `Gewicht van een pak ${why}.`,
      weightExample: '500 g, 1,5 kg, 12 x 40 g',
      price: 'Prijs van een pak',
      priceEmpty: 'Prijs van een pak is leeg: die is nodig om verkopers te vergelijken.',
      sold: 'Verkocht',
      dry: 'Droog',
      fresh: 'Vers',
      countsOnceDried: (food) =>
        `Het telt zodra je bij ${food} “Zelf drogen” kiest: daaruit volgt hoeveel er gedroogd overblijft.`,
      save: 'De prijs bewaren',
    },
    dryAtHome: {
      title: 'Je droogt het zelf',
      from: (water) => `Gedroogd van <fresh></fresh>, ${water} <source></source>.`,
      water: (percent) => `met ${f.percent(percent)} water`,
      waterUnknown: 'waarvan het water niet bekend is',
      lost: 'Het gekozen verse ingrediënt is niet te vinden; kies een ander.',
      cannot:
        'Hoeveel er gedroogd overblijft is niet uit te rekenen. Kies een ingrediënt waarvan het water bekend is, of <food>vul het in</food>.',
      moisture: 'Water na het drogen',
      moistureHint: (percent) => `${f.percent(percent)} is gangbare praktijk, geen bron.`,
      trim: 'Wat eraf gaat, zoals je het woog',
      trimTable: (percent) => `${f.number(percent)} (tabel)`,
      notKnown: 'niet bekend',
      trimmed: (percent, parts) =>
        parts === undefined ? `${f.percent(percent)} gaat eraf` : `${f.percent(percent)} gaat eraf: ${parts}`,
      lostFresh:
        'Hoeveel vers het kost is niet bekend: het verse ingrediënt is niet te vinden; kies het opnieuw.',
      noWater: (fresh) =>
        `Hoeveel vers het kost is niet bekend, omdat het water van ${fresh} niet bekend is.`,
      tooDry: (fresh, water, moisture) =>
        `Hoeveel vers het kost is niet bekend: ${fresh} heeft ${f.percent(water)} water, niet meer dan de ${f.percent(moisture)} na het drogen.`,
      needs: (dried, prepared, purchased) =>
        `${dried} gedroogd kost ${prepared} schoongemaakt, ${purchased} zoals gekocht.`,
      needsMore: (dried, prepared) =>
        `${dried} gedroogd kost ${prepared} schoongemaakt, en meer dan dat zoals gekocht.`,
    },
    paper: {
      title: (mix) => `Boodschappenlijst: ${mix}`,
      home: 'Al in huis',
      inAll: (seller, price) => `${seller}: samen ${price}`,
      inAllDelivery: (seller, price, delivery) =>
        `${seller}: samen ${price}, waarvan ${delivery} voor de bezorging`,
      from: (packs, seller) => `${packs}, ${seller}`,
    },
    why: {
      pastBest: (day) => `het was houdbaar tot ${day}; kijk en ruik eraan voor je het houdt`,
      fresh: (why) => `het is vers, en ${why}`,
      barred: (why) => `niet meer gebruiken (${why})`,
      trimUnknown: (food) => `wat er van ${food} af gaat is niet bekend; weeg wat voor en na het schoonmaken`,
      yieldUnknown: (food) =>
        `hoeveel er van ${food} na het drogen overblijft is niet bekend; zeg van welk vers ingrediënt het gedroogd wordt`,
      waterUnknown: (fresh) => `het water van ${fresh} is niet bekend; vul het eerst in`,
      tooDry: (fresh, water, moisture) =>
        `${fresh} heeft ${f.percent(water)} water, niet meer dan de ${f.percent(moisture)} na het drogen; kies het verse ingrediënt`,
      freshYield: 'het wordt vers verkocht, en hoeveel er na het drogen overblijft is niet bekend',
      minimum: (seller, least) =>
        `${seller} bezorgt niets onder ${least}, en niets wat je daar nodig hebt kost iets`,
      noSeller: (food) => `Er is geen verkoper bekend van ${food}.`,
      notCounted: (food, reasons) => `${food} wordt verkocht, maar telt niet mee: ${reasons.join('; ')}.`,
      noChoice: (food) => `Voor ${food} is geen keuze van pakken gevonden; laat enkele verkopers weg.`,
      noDaily: (animal) =>
        `hoeveel ${animal} per dag eet is niet bekend; zet het op de pagina van het dier, of geef het gewicht van de batch`,
    },
    weight: {
      wrong: (text, why) => `“${text}”: ${why}`,
      examples: 'schrijf het als “500 g”, “1,5 kg”, “12 x 40 g” of “2 lb 4 oz”',
      empty: (examples) => `er staat geen gewicht; ${examples}`,
      noPacks: '0 pakken wegen niets; schrijf hoeveel het er zijn',
      noUnit: (examples) => `de eenheid ontbreekt; ${examples}`,
      notOne: (rest, examples) => `“${rest}” is geen gewicht; ${examples}`,
      unknownUnit: (word) => `“${word}” is geen eenheid van gewicht; neem mg, g, kg, oz of lb`,
      volume: (word) =>
        `“${word}” is geen eenheid van gewicht; neem mg, g, kg, oz of lb (een inhoud zegt niets over het gewicht: weeg het)`,
      unitAfter: (last, unit) =>
        `na ${last} komt geen ${unit}; alleen pond en ounce staan samen (“2 lb 4 oz”)`,
      twoWays: (text, more, less) =>
        `“${text}” kan ${more} of ${less} zijn; schrijf het zonder het teken, of in een andere eenheid`,
      nothing: 'een pak moet meer dan 0 wegen',
      tooLarge: 'het gewicht is te groot',
    },
  };
};
