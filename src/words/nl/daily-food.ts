import type { DailyFood } from '../en/daily-food.ts';
import type { Figures } from '../figures.ts';

export const dailyFood = (f: Figures): DailyFood => {
  const grams = (g: number) => f.grams(g, 1);
  const span = (low: number, high: number) =>
    grams(low) === grams(high) ? `ongeveer ${grams(low)}` : `${grams(low)} tot ${grams(high)}`;
  return {
    title: 'Hoeveel per dag',
    fed: (name, g) => `${name} krijgt ${grams(g)} per dag, mengsel en brokjes samen.`,
    nobodySaid: (name) =>
      `Nog niemand heeft gezegd wat ${name} per dag krijgt. Weeg het voordat je het strooit, of neem hieronder een getal.`,
    standing: {
      within: 'Dat ligt binnen het bereik naar energie.',
      under: (name) =>
        `Dat is minder dan het bereik naar energie. Weeg ${name} elke week; bij gewichtsverlies bied je meer aan en ga je naar de dierenarts.`,
      over: 'Dat is meer dan het bereik naar energie. Dat is geen reden om minder te voeren: voer wordt weggebracht en bewaard. Zoek het voorraadje en weeg het dier elke week.',
    },
    falling: {
      today: (name) =>
        `${name} krijgt minder dan het bereik en valt af. Bied meer aan en ga vandaag nog naar de dierenarts.`,
      days: (name) =>
        `${name} krijgt minder dan het bereik en valt af. Bied meer aan en ga binnen enkele dagen naar de dierenarts.`,
      'next visit': (name) =>
        `${name} krijgt minder dan het bereik en valt af. Bied meer aan en zeg het bij het volgende bezoek tegen de dierenarts.`,
    },
    picture: 'Gram per dag, naast elkaar',
    span,
    rows: {
      equation: 'Naar de energie die het nodig heeft',
      intake: 'Wat zulke dieren aten',
      handouts: 'Folders van dierenartsen',
      practice: 'Wat houders geven',
      memory: 'Wat houders geven',
      fed: 'Wat het nu krijgt',
    },
    notes: {
      equation: (weight, low, high) =>
        `Bij ${f.bodyGrams(weight)} lichaamsgewicht. ${span(low, high)} daarvan is droge stof.`,
      estimate:
        'Voor deze soort is er geen getal: het is overgenomen van goudhamsters, ratten en muizen naar lichaamsgewicht. Een schatting, en daarom ruim.',
      intake: (dry) => `Gemiddeld ${grams(dry)} droge stof per dag.`,
      intakeFood: 'Gemiddeld, van droge brokjes.',
      noWater: 'Hoeveel voer dat is, hangt af van het water erin, en dat is niet bekend.',
      handouts: 'Staat vaak in folders; een onderzoek erachter wordt niet genoemd.',
      practice: 'Gangbare praktijk, zonder bron.',
      memory: 'Gangbare praktijk, uit het hoofd; zonder bron.',
      upTo: (g) => `Met wat de behoefte verhoogt: tot ${grams(g)}.`,
    },
    take: (g) => `${grams(g)} nemen`,
    taken: (name, g) => `${name} krijgt nu ${grams(g)} per dag.`,
    takenLess:
      'Dat is minder dan eerst. Weeg het dier twee weken lang om de paar dagen; valt het af, ga dan terug en ga naar de dierenarts.',
    back: (g) => `Terug naar ${grams(g)}`,
    backToNone: 'Terug naar “niet bekend”',
    stage: {
      growing:
        'Het groeit nog: het bereik is groter dan bij een volwassen dier. Laat het eten zoveel het wil.',
      pregnant: 'Het is drachtig: het bereik is groter. Laat het eten zoveel het wil.',
      nursing: 'Het zoogt: het bereik is veel groter. Laat het eten zoveel het wil.',
      breeding:
        'Het is drachtig of zoogt: het bereik is groter, tijdens het zogen tot vier keer zo groot. Laat het eten zoveel het wil.',
    },
    weighAgain: (day) => `Dit berust op de weging van ${day}. Weeg opnieuw om zeker te zijn.`,
    vetFirst: 'Wat een dierenarts over het voer heeft gezegd, gaat voor elk getal hier.',
    missing: {
      title: 'Nog geen bereik naar energie',
      weight: (name) => `Het lichaamsgewicht van ${name} ontbreekt. <weigh>${name} wegen</weigh>`,
      noFood:
        'Wat er in het voer zit, is niet bekend: het krijgt geen batch, en er is geen mengsel voor dit dier klaar.',
      parts: (amounts) =>
        `Van het voer ${f.form(amounts.length, { one: 'is', other: 'zijn' })} ${f.list(amounts)} niet goed genoeg bekend. Misschien staat het op het etiket, of de maker van de brokjes zegt het.`,
      working: 'De energie van het voer wordt uitgerekend…',
    },
    raises: {
      title: 'Wat de behoefte verhoogt',
      wheel: 'Een loopwiel: goudhamsters aten ermee van nauwelijks meer tot bijna twee keer zoveel.',
      cold: (celsius) =>
        `Een koude kamer (${f.degrees(celsius)}): het heeft meer nodig om warm te blijven. Hoeveel meer is voor deze soort niet bekend.`,
      coldNursing: (celsius, percent) =>
        `Een koude kamer (${f.degrees(celsius)}): zogende streephamsters aten bij ${f.degrees(5)} ${f.percent(percent, 0)} meer dan bij ${f.degrees(30)}.`,
      coldWinterWhite: (celsius, low, high) =>
        `Een koude kamer (${f.degrees(celsius)}): Russische dwerghamsters namen bij ${f.degrees(-2)} ${f.number(low, 0)} tot ${f.number(high, 0)} kJ per dag op, en die met het minste vielen af.`,
      growing: (low, high) =>
        `Groei: ${f.number(low, 1)} tot ${f.number(high, 1)} keer wat een volwassen dier van dat gewicht nodig heeft, gevonden bij ratten en muizen.`,
      pregnant: (low, high) =>
        `Drachtig: ${f.number(low, 1)} tot ${f.number(high, 1)} keer zoveel, gevonden bij ratten en muizen.`,
      nursing: (low, high) =>
        `Zogend: ${f.number(low, 1)} tot ${f.number(high, 1)} keer zoveel, meer naarmate de jongen groeien, gevonden bij ratten en muizen.`,
      young: (n) =>
        `Meer jongen hebben meer nodig (hier ${f.number(n)}), maar een getal voor elk is er niet.`,
    },
    why: {
      title: 'Waar deze getallen vandaan komen',
      need: (low, high, kcalLow, kcalHigh) =>
        `Het heeft ongeveer ${f.number(low, 0)} tot ${f.number(high, 0)} kJ per dag nodig. Een gram van het voer geeft ${f.number(kcalLow, 2) === f.number(kcalHigh, 2) ? f.number(kcalLow, 2) : `${f.number(kcalLow, 2)} tot ${f.number(kcalHigh, 2)}`} kcal, en 1 kcal is ${f.number(4.184, 3)} kJ.`,
      perKg: (low, high) =>
        `Voor een volwassen dier wordt gerekend met ${f.number(low, 0)} tot ${f.number(high, 0)} kJ per kilogram lichaamsgewicht tot de macht ${f.number(0.75)}.`,
      atwater:
        'De energie van het voer wordt gerekend zoals voor huisdiervoer (aangepaste Atwater: 3,5 kcal per gram eiwit en koolhydraten, 8,5 per gram vet). Goudhamsters haalden meer uit een graanvoer, dus het bereik ligt misschien iets hoog.',
      start: 'Dit alles is een begin. Het gaat erom hoe het gewicht van het dier zelf verloopt.',
      sources: 'Bronnen',
    },
    portions: {
      title: 'Porties voor vandaag',
      none: 'Het krijgt nu geen batch, dus er is nog niets te verdelen.',
      times: 'Hoe vaak strooi je voer?',
      options: { '1': 'Eén keer, ’s avonds', '2': 'Twee keer', '3': 'Drie keer' },
      portion: 'Portie',
      together: 'Samen',
      of: (n) => `Portie ${f.number(n)}`,
      unknown: 'niet bekend',
      steps: (step) => `In hele stappen van ${f.grams(step)}, zoals de weegschaal ze toont.`,
      coarse:
        'De stap van de weegschaal is grof voor zo weinig. Weeg het voer van een week in één keer af en verdeel het op het oog.',
      scatter:
        'Strooi het ver uit elkaar: voer zoeken is wat het de hele nacht doet. Van kleine porties wordt minder bewaard.',
      changing: (day, of) =>
        `Het voer verandert: dag ${f.number(day)} van ${f.number(of)}. Een deel komt nog uit de batch ervoor.`,
      changingNoOld: (day, of) =>
        `Het voer verandert: dag ${f.number(day)} van ${f.number(of)}. Meng er iets van het vorige voer door, als dat er nog is.`,
      olderBatch: (name) => `${name} (vorige)`,
    },
    stop: {
      pack: (pack, why) => `Voer ${pack} niet: het mag niet meer gebruikt worden (${why}).`,
      besideUpset: (foods, name) =>
        `${f.list(foods)}: dat heeft ${name} niet verdragen. Geef het niet aan ${name}.`,
      besideRefused: (foods, name) =>
        `${f.list(foods)}: dat weigert ${name}. Wat ervan blijft liggen, is niet gegeten: kijk ernaar.`,
      recalled: (batch, pack, why) =>
        `Voer “${batch}” niet: er zit ${pack} in, en dat mag niet meer gebruikt worden (${why}).`,
      'maybe recalled': (batch, pack, why) =>
        `Voer “${batch}” niet voordat je het zeker weet: er kan ${pack} in zitten, en dat mag niet meer gebruikt worden (${why}).`,
      upset: (batch, foods, name) =>
        `In “${batch}” zit ${f.list(foods)}; dat heeft ${name} niet verdragen. Geef het niet aan ${name}.`,
      refused: (batch, foods, name) =>
        `In “${batch}” zit ${f.list(foods)}; dat weigert ${name}. Wat ervan blijft liggen, is niet gegeten: kijk ernaar.`,
    },
    lasts: {
      title: 'Hoelang het meegaat',
      batch: (name, days, day) =>
        `“${name}” gaat nog ${f.count(days, { one: 'dag', other: 'dagen' })} mee, tot ${day}.`,
      over: (name) => `“${name}” zou nu op moeten zijn. Weeg wat ervan over is.`,
      unknown: (name) =>
        `Hoelang “${name}” meegaat, is niet bekend: nog niet alles is gezegd over wie ervan eten.`,
      perDay: (g, names) => `${f.list(names)} eten er ${grams(g)} per dag van.`,
      perDayOne: (g, name) => `${name} eet er ${grams(g)} per dag van.`,
      pellet: (food, g, week) =>
        `${food}: ${grams(g)} per dag voor allen die ervan eten, ${f.weight(week)} in 30 dagen.`,
      none: 'Het krijgt nu geen batch.',
    },
    cautions: {
      title: 'Altijd',
      water: 'Elke dag vers water: droog voer maakt dorstig.',
      slowly: 'Verander voer langzaam, over tien dagen tot twee weken, en houd iets van het oude.',
      bowl: 'Een lege bak betekent niet dat het gegeten is: voer wordt weggebracht en bewaard.',
      weigh:
        'Weeg het elke week. Een klein knaagdier dat minder eet of afvalt, moet snel naar de dierenarts; laat het nooit hongeren om het iets te laten eten.',
    },
  };
};
