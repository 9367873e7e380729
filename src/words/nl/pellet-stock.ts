import type { PelletStock } from '../en/pellet-stock.ts';
import type { Figures } from '../figures.ts';

export const pelletStock = (f: Figures): PelletStock => {
  const days = (n: number) => f.count(n, { one: 'dag', other: 'dagen' });
  return {
    title: 'Brokjes',
    section: 'Naast het mengsel gevoerd',
    about:
      'Brokjes, en wat je verder uit het pak voert. Ze worden niet ingevroren en gaan niet in een mengsel.',
    lasts: (n, until) => `Genoeg voor ${days(n)}, tot ${until}.`,
    lastsAbout: (n, until) => `Genoeg voor ongeveer ${days(n)}, tot ${until}.`,
    buyBy: (day) => `Koop bij vóór ${day}.`,
    buyNow: 'Koop nu bij.',
    tooMuch: (grams) => `Ongeveer ${grams} is dan over de houdbaarheidsdatum en telt niet mee.`,
    state: {
      inUse: 'in gebruik: hieruit voer je nu',
      kept: 'klaar',
      past: 'over de houdbaarheidsdatum: kijk en ruik, open liever een nieuw pak',
      shouldBeEmpty: 'zou nu leeg moeten zijn: weeg het',
    },
    left: (left, all) => `nog ${left} van ${all}`,
    leftAbout: (left, all) => `nog ongeveer ${left} van ${all}`,
    pack: {
      title: 'Wat er nog is',
      fromBought: (start, day) => `Geteld vanaf ${start} op ${day}, toen het binnenkwam.`,
      fromWeighed: (start, day) => `Geteld vanaf ${start} op ${day}, toen het gewogen is.`,
      fed: (grams) => `Sindsdien is ${grams} als gevoerd genoteerd.`,
      guessed: (grams) =>
        `Nog ${grams} voor dagen zonder notitie, naar wat de dieren nu per dag krijgen. Dat is een schatting: weeg het pak om het zeker te weten.`,
      over: (grams) =>
        `Er is ${grams} meer als gevoerd genoteerd dan erin zat. Weeg het, of verbeter het gewicht.`,
      weigh: 'Weeg wat er nog is',
      weighHint: 'Voordat het voer van vandaag eruit is.',
      notWeighed: 'niet gewogen',
      allGone: 'Alles op of weg',
      saidLeft: (grams) => `Genoteerd: nog ${grams}.`,
      saidGone: 'Genoteerd: er is niets meer van.',
      open: 'Vandaag geopend',
      opened: (day) => `Geopend op ${day}.`,
    },
    keeping: {
      text: 'Eenmaal open: goed sluiten, droog, donker en niet warmer dan kamertemperatuur bewaren en binnen ongeveer 3 maanden opmaken (gangbare praktijk, geen bron). Bewaar de voorkant van het pak: het nummer zegt of een terugroepactie over jouw pak gaat.',
      source:
        'Droog voer dat goed bewaard wordt, is bruikbaar tot ongeveer 6 maanden nadat het gemaakt is; warmte boven 21 °C, vocht, licht en lucht laten het eerder bederven (National Research Council 1996, Guide for the Care and Use of Laboratory Animals, p. 39).',
      more: 'Hoelang het goed blijft',
      openLong: (n) =>
        `Het is al ${days(n)} open: de vitamines lopen terug. Ruik eraan, en open liever een nieuw pak (gangbare praktijk, geen bron).`,
    },
    shop: {
      hint: (n) => `Voor ${days(n)}, zolang als deze batch meegaat, min wat er nog in je pakken zit.`,
      unknown: (foods) =>
        `Hoeveel ${f.list(foods)} je moet kopen is niet bekend: <animals>zeg wat elk dier per dag krijgt</animals>.`,
    },
    days: {
      title: 'Wat naast het mengsel gevoerd wordt',
      runsOut: (food) => `${food} raakt op`,
      buy: (food) => `${food} kopen`,
      buyNow: (food) => `Koop nu ${food}`,
      row: (food) => `${food}: uit het pak`,
      estimate: 'naar schatting',
      noPack: (food) =>
        `Van ${food} is geen pak in de voorraad, dus niemand weet wanneer het opraakt. <stock>Voeg een pak toe</stock>`,
      fileRunsOut: (food) => `${food} raakt op`,
      fileBuy: (food) => `${food} kopen`,
      fileText: (grams, aDay) => `Nog ${grams}, per dag wordt ${aDay} gevoerd.`,
      category: 'voer',
    },
    stop: {
      region: 'Niet voeren',
      sure: {
        recalled: 'Niet voeren: teruggeroepen',
        infested: 'Niet voeren: er zitten insecten in',
        spoiled: 'Niet voeren: bedorven of beschimmeld',
        other: 'Niet voeren',
      },
      maybe: {
        recalled: 'Misschien niet voeren: er kan een teruggeroepen pak in zitten',
        infested: 'Misschien niet voeren: er kan een pak met insecten in zitten',
        spoiled: 'Misschien niet voeren: er kan een bedorven pak in zitten',
        other: 'Misschien niet voeren: er kan een pak in zitten dat niet meer gebruikt wordt',
      },
      holds: (grams, why, day) =>
        `Er zit ${grams} van <pack></pack> in, niet meer gebruikt sinds ${day}: ${why}.`,
      holdsSome: (why, day) => `Er zit iets van <pack></pack> in, niet meer gebruikt sinds ${day}: ${why}.`,
      mayHold: (why, day) =>
        `Er kan iets van <pack></pack> in zitten, niet meer gebruikt sinds ${day}: ${why}. Niemand heeft genoteerd welk pak erin ging, of het is er weer uit gehaald.`,
      doIt: 'Haal weg wat er nog van is, ook uit bakjes en voorraadjes, en geef meteen ander voer: brokjes alleen zijn genoeg als ze een volledig voer zijn.',
      hold: 'Geef liever iets anders tot je weet welk pak erin ging.',
      vet: 'Ga naar de dierenarts als een dier dat ervan gegeten heeft minder eet, zachte ontlasting heeft, zwaar ademt of ziek lijkt. Dit is geen advies van een dierenarts.',
      noAmounts: 'Er worden geen hoeveelheden per dag voor gegeven.',
      eaten: 'Er is niets meer van. Het zat erin.',
      eatenMaybe: 'Er is niets meer van. Het zat er misschien in.',
      gone: 'Er is niets meer van',
      saidGone: 'Genoteerd: er is niets meer van.',
      givenUp: 'Hij is opgegeven en niet gevoerd.',
      undo: 'Is het pak per ongeluk gestopt, open het pak dan en gebruik het weer.',
      label: 'Niet voeren',
      labelMaybe: 'Misschien niet voeren',
      labelWhy: (pack, why, day) => `${pack}: ${why}, ${day}.`,
      tag: 'niet voeren',
      tagMaybe: 'misschien niet voeren',
      plan: (batch) =>
        `${batch} wordt niet meer gevoerd, omdat een pak erin niet meer gebruikt wordt. Hij telt niet als voer dat er is.`,
      planMaybe: (batch) =>
        `In ${batch} kan een pak zitten dat niet meer gebruikt wordt. Hij telt nog als voer dat er is; kijk in het verslag.`,
      record: 'Bekijk het verslag',
    },
    animal: {
      batch: (batch) => `<batch>${batch}</batch>: niet voeren.`,
      batchMaybe: (batch) =>
        `In <batch>${batch}</batch> kan een pak zitten dat niet meer gebruikt wordt. Geef liever iets anders tot je het weet.`,
      pack: (why, from, to) =>
        `<pack></pack> wordt niet meer gebruikt: ${why}. Het is gevoerd van ${from} tot ${to}. Haal weg wat er nog van is, ook uit voorraadjes.`,
      packMaybe: (why, from, to) =>
        `<pack></pack> wordt niet meer gebruikt: ${why}. Het kan gevoerd zijn tussen ${from} en ${to}; niemand heeft genoteerd uit welk pak. Haal weg wat er nog is, ook uit voorraadjes.`,
    },
    reach: {
      title: 'Dieren die uit het pak gevoerd zijn',
      none: 'Er is geen voer uit genoteerd, en het was niet het pak in gebruik.',
      sure: (grams, from, to, n) => `<animal></animal>: ${grams} op ${days(n)}, ${from} tot ${to}`,
      maybe: (from, to, n) => `<animal></animal>: misschien, op ${days(n)} zonder notitie, ${from} tot ${to}`,
      clear:
        'Haal weg wat ervan in bakjes, verblijven en voorraadjes ligt. Is er niets meer, druk dan boven op “Alles op of weg”: dan wordt het niet meer gemeld.',
    },
  };
};
