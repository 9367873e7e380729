import type { Today } from '../en/today.ts';
import type { Figures } from '../figures.ts';

export const today = (f: Figures): Today => ({
  /** The example household. */
  example: {
    title: 'Het voorbeeldhuishouden',
    is: 'Wat je ziet is een voorbeeld: het dier, de brokjes en het mengsel zijn verzonnen, zodat je kunt rondkijken. De ingrediënten en hun cijfers zijn echt.',
    startOwn: 'Zelf beginnen',
    startOwnHint: 'Het voorbeeld verdwijnt. Je kunt het altijd terughalen.',
    lookingAt: 'Je kijkt nu naar het voorbeeld. Je eigen spullen blijven zoals ze zijn.',
    backToOwn: (mix) => `Terug naar: ${mix}`,
    beside: 'Het voorbeeld is er nog om te bekijken.',
    look: 'Het voorbeeld bekijken',
    takeAway: 'Het voorbeeld weghalen',
    gone: 'Het voorbeeld is weg.',
    canLook: 'Wil je zien hoe het eruit kan zien?',
  },
  title: 'Nu',
  next: 'Wat nu komt',
  gathering: 'Leest wat er is opgeschreven…',
  looking: (mix) => `Er wordt gekeken naar ${mix}…`,
  noFoods: (mix) => `${mix} heeft nog geen ingrediënten.`,
  chooseFoods: 'Het eerste ingrediënt toevoegen',
  notMade: (mix) => `${mix} heeft zijn ingrediënten; de aandelen moeten nog berekend worden.`,
  outFirst: (mix) => `${mix} is nog niet binnen bereik. Maak het eerst passend.`,
  toFit: 'Naar Mengsels, druk daar op “Passend maken”',
  toMix: 'Naar Mengsels',
  outBefore: (mix) =>
    `${mix} is zoals het nu is buiten bereik: maak het passend voordat je de volgende batch afweegt.`,
  later:
    'Daarna komen de <shopping>inkoop</shopping>, het <freezer>invriezen tegen insecten</freezer> en de <scale>weegschaal</scale>. Wanneer, dat zegt <days>Dagen</days>.',
  allDays: 'Alle dagen bekijken',
  errands: 'Voor vandaag',
  things: 'dingen',
  due: 'Wat vandaag aan de beurt is',
  links: {
    shopping: 'Naar de boodschappenlijst',
    freezer: 'Naar de vriezer',
    drying: 'Naar het drogen',
    scale: 'Naar de weegschaal',
    changeOver: 'De overstap plannen',
    days: 'De dagen bekijken',
    weighOn: 'Verder wegen',
    animal: (name) => `Naar ${name}`,
    forWhom: 'Zeggen voor welke dieren het mengsel is',
    eachDay: 'Hoeveel op elke dag',
    reached: 'Zien waar het terechtkwam',
    run: 'Naar dit drogen',
    pack: 'Het pak bekijken',
    record: 'Het verslag bekijken',
  },
  weighing: (batch, grams, of) =>
    `${batch} wordt afgewogen: ${f.grams(grams)} van ${f.grams(of)} ligt in de kom.`,
  openBatch: 'Op de weegschaal',
  changing: (batch, day, of) =>
    `Ga langzaam over op ${batch}, elke dag wat meer: dag ${f.number(day)} van ${f.number(of)}. Ga naar een dierenarts als een dier minder eet of dunne ontlasting heeft.`,
  notToUse: (pack, why, batches) =>
    `${pack} mag niet meer gebruikt worden (${why}) en zit in ${f.list(batches)}. Voer dat niet voordat je het hebt nagekeken.`,
  batchOf: (batch, day) => `${batch} van ${day}`,
  checkDue: (food, time) => `Keer en controleer wat droogt: ${food}. Dat had om ${time} gemoeten.`,
  checkAt: (food, time) => `Keer en controleer om ${time} wat droogt: ${food}.`,
  freezing: {
    due: (packs, n) =>
      `${packs} ${f.form(n, { one: 'is', other: 'zijn' })} lang genoeg ingevroren of ontdooid: vink de stap af.`,
    goIn: (packs, n) => `${packs} ${f.form(n, { one: 'gaat', other: 'gaan' })} vandaag de vriezer in.`,
    comeOut: (packs, n) => `${packs} ${f.form(n, { one: 'komt', other: 'komen' })} vandaag uit de vriezer.`,
    noDays: (packs, n) =>
      `${packs} ${f.form(n, { one: 'wacht', other: 'wachten' })} op het invriezen en ${f.form(n, { one: 'heeft', other: 'hebben' })} nog geen dagen.`,
  },
  pastBest: (pack, day) =>
    `${pack} is over de houdbaarheidsdatum, ${day}: kijk en ruik eraan voordat je het gebruikt.`,
  pastUseBy: (batch, day) =>
    `${batch} moest op zijn voor ${day}: dat is een schatting, maar voer het niet zonder te kijken, en maak liever een nieuwe.`,
  byDay: (batch, day) => `${batch} moet op zijn voor ${day} (een schatting).`,
  first: 'Kijk hier eerst naar',
  ofOne: (label, name) => `${label}: ${name}`,
  care: {
    title: 'Je dieren vandaag',
    nothing: 'Er hoeft vandaag niets voor je dieren.',
    animals: 'dieren',
    feed: (parts) => `Gevoerd: ${parts.join(', ')}`,
    ofMix: (grams) => `${f.grams(grams, 1)} mengsel`,
    ofPellet: (grams) => `${f.grams(grams, 1)} brokjes`,
    ofNew: (grams) => `${f.grams(grams, 1)} nieuw mengsel`,
    ofOld: (grams) => `${f.grams(grams, 1)} oud mengsel`,
    ofFood: (grams, food) => `${f.grams(grams, 1)} ${food}`,
    feedAll: (n) => `Alle ${f.number(n)} gevoerd zoals gepland`,
    sayAmount: 'Zeggen wat het krijgt',
    doNotFeed: 'Niet voeren: zie waarom',
    weigh: 'Wegen',
    inDoubt: (grams) => `${f.grams(grams, 1)}: klopt dat?`,
    weighed: (grams) => `Gewogen: ${f.grams(grams, 1)}`,
    left: 'Resten',
    leftDone: 'Resten: genoteerd',
    notToday: 'Vandaag niet',
    noThanks: 'Nee, dank je',
    weighAgain: (day) => `Tijd om weer te wegen: de laatste keer was op ${day}.`,
    weighFirst: 'Het zou goed zijn dit dier te wegen.',
    weighWhy: {
      alert: 'Elke dag, tot duidelijk is wat er met het gewicht is.',
      ill: (days) => `Om de ${f.number(days)} dagen, om wat een dierenarts gezegd heeft.`,
      young: (days) => `Om de ${f.number(days)} dagen zolang het groeit.`,
      trial: (days) => `Om de ${f.number(days)} dagen zolang het nieuw voer probeert.`,
      change: (days) => `Om de ${f.number(days)} dagen zolang het voer verandert.`,
      old: (days) => `Om de ${f.number(days)} dagen, omdat het oud is.`,
    },
    lookLeft: (names: readonly string[]) => `Kijk wat er van vannacht over is: ${f.list(names)}.`,
    offer: (food) => `Geef vandaag ${food}.`,
    offerGrams: (grams, food) => `Geef vandaag ${f.grams(grams, 1)} ${food}.`,
    offerBeside: (food, known) => `Geef vandaag ${food}, naast ${known}.`,
    offerGramsBeside: (grams, food, known) => `Geef vandaag ${f.grams(grams, 1)} ${food}, naast ${known}.`,
    planned: (day) => `Het was gepland voor ${day}.`,
    toTrial: 'Naar het nieuwe voer',
    ticked: (name) => `${name} is afgevinkt.`,
    tickedAll: (n) => `${f.count(n, { one: 'dier', other: 'dieren' })} afgevinkt.`,
  },
  weight: {
    lost: (name, percent, since, from, to) =>
      `${name} is sinds ${since} ${f.percent(percent, 0)} afgevallen: van ${f.bodyGrams(from)} naar ${f.bodyGrams(to)}.`,
    gained: (name, percent, since, from, to) =>
      `${name} is sinds ${since} ${f.percent(percent, 0)} aangekomen: van ${f.bodyGrams(from)} naar ${f.bodyGrams(to)}.`,
    behind: (name, grams) => `${name} groeit langzamer dan te verwachten is: nu ${f.bodyGrams(grams)}.`,
    vet: {
      today: 'Ga vandaag nog naar een dierenarts.',
      days: 'Ga binnen een paar dagen naar een dierenarts.',
      'next visit': 'Zeg het bij het volgende bezoek aan de dierenarts.',
    },
    link: 'De gewichten bekijken',
  },
  upset: {
    own: (food, animal, batch) =>
      `${food} werd door ${animal} niet verdragen en zit in ${batch}: voer dat niet aan ${animal}. Ga naar een dierenarts als het ziek lijkt.`,
    other: (food, animal, batch) =>
      `${food} werd door ${animal} niet verdragen en zit in ${batch}, dat anderen krijgen: kijk het na.`,
    link: 'Naar het nieuwe voer',
  },
  maybeBarred: (batch) =>
    `In ${batch} zit misschien een pak dat niet meer gebruikt wordt: niemand heeft genoteerd welk erin ging. Voer liever iets anders tot je het weet.`,
  barredPack: (pack, why, animals) =>
    `${pack} mag niet meer gebruikt worden (${why}). Daaruit kregen, zeker of misschien: ${f.list(animals)}. Haal weg wat er over is, ook uit voorraadjes.`,
  buyPack: 'Naar de boodschappenlijst',
  runsOut: (batch, day) => `${batch} is op ${day} op.`,
  runsOutToday: (batch) => `${batch} is vandaag op.`,
  ranOut: (batch, day) =>
    `${batch} had op ${day} op moeten zijn. Weeg wat er over is, of zeg dat alles op is.`,
  planNext: 'De volgende batch plannen',
  left: {
    title: 'Wat er over is',
    others: 'Wat er over is van andere batches',
    of: (batch) => `Wat er over is van ${batch}`,
    weigh: (batch) => `Weeg wat er over is van ${batch}`,
    notWeighed: 'vandaag niet gewogen',
    before: 'Voordat het voer van vandaag eruit gaat.',
    allEaten: 'Alles op',
    saidEaten: (batch) => `${batch}: alles op.`,
    said: (grams, batch) => `${batch}: ${f.grams(grams)} over.`,
    weighed: (grams, batch, day) => `Van ${batch} was op ${day} ${f.grams(grams)} over.`,
    made: (grams, batch, day) => `Van ${batch} is op ${day} ${f.grams(grams)} gemaakt.`,
    weighedAbout: (grams, batch, day, left) =>
      `Van ${batch} was op ${day} ${f.grams(grams)} over; naar wat er gegeten wordt, zou er vandaag ongeveer ${f.grams(left)} over moeten zijn.`,
    madeAbout: (grams, batch, day, left) =>
      `Van ${batch} is op ${day} ${f.grams(grams)} gemaakt; naar wat er gegeten wordt, zou er vandaag ongeveer ${f.grams(left)} over moeten zijn.`,
  },
});
