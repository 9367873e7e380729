import type { Today } from '../en/today.ts';
import type { Figures } from '../figures.ts';

export const today = (f: Figures): Today => ({
  /** The example household. */
  example: {
    title: 'Der Beispielhaushalt',
    is: 'Was du siehst, ist ein Beispiel: Tier, Pellets und Mischung sind erfunden, damit du dich umsehen kannst. Die Zutaten und ihre Werte sind echt.',
    startOwn: 'Selbst anfangen',
    startOwnHint: 'Das Beispiel verschwindet. Du kannst es jederzeit zurückholen.',
    lookingAt: 'Du siehst gerade das Beispiel. Deine eigenen Sachen bleiben, wie sie sind.',
    backToOwn: (mix) => `Zurück zu: ${mix}`,
    beside: 'Das Beispiel ist noch zum Ansehen da.',
    look: 'Das Beispiel ansehen',
    takeAway: 'Das Beispiel wegnehmen',
    gone: 'Das Beispiel ist weg.',
    canLook: 'Willst du sehen, wie es aussehen kann?',
  },
  title: 'Jetzt',
  next: 'Als Nächstes',
  gathering: 'Liest, was aufgeschrieben wurde …',
  looking: (mix) => `Wird angesehen: ${mix}…`,
  noFoods: (mix) => `Noch ohne Zutaten: ${mix}.`,
  chooseFoods: 'Die erste Zutat hinzufügen',
  notMade: (mix) => `Die Zutaten stehen fest, die Anteile noch nicht: ${mix}.`,
  outFirst: (mix) => `Noch nicht im Bereich: ${mix}. Erst passend machen.`,
  toFit: 'Zu den Mischungen, dort „Passend machen“ drücken',
  toMix: 'Zu den Mischungen',
  outBefore: (mix) =>
    `So wie sie ist, liegt die Mischung außerhalb des Bereichs: ${mix}. Mach sie passend, bevor du die nächste Charge abwiegst.`,
  later:
    'Danach kommen der <shopping>Einkauf</shopping>, das <freezer>Einfrieren gegen Insekten</freezer> und die <scale>Waage</scale>. Wann, steht bei <days>Tage</days>.',
  allDays: 'Alle Tage ansehen',
  errands: 'Für heute',
  things: 'Dinge',
  due: 'Was heute ansteht',
  links: {
    shopping: 'Zur Einkaufsliste',
    freezer: 'Zum Gefrierfach',
    drying: 'Zum Trocknen',
    scale: 'Zur Waage',
    changeOver: 'Die Umstellung planen',
    days: 'Die Tage ansehen',
    weighOn: 'Weiter abwiegen',
    animal: (name) => `Zu ${name}`,
    forWhom: 'Sagen, für welche Tiere die Mischung ist',
    eachDay: 'Wie viel an jedem Tag',
    reached: 'Sehen, wo sie überall hinkam',
    run: 'Zu diesem Trocknen',
    pack: 'Die Packung ansehen',
    record: 'Die Aufzeichnung ansehen',
  },
  weighing: (batch, grams, of) =>
    `Wird gerade abgewogen: ${batch}. ${f.grams(grams)} von ${f.grams(of)} liegen in der Schüssel.`,
  openBatch: 'Auf der Waage',
  changing: (batch, day, of) =>
    `Stell langsam um, jeden Tag etwas mehr von ${batch}: Tag ${f.number(day)} von ${f.number(of)}. Geh zum Tierarzt, wenn ein Tier weniger frisst oder weichen Kot hat.`,
  notToUse: (pack, why, batches) =>
    `Nicht mehr verwenden (${why}): ${pack}. Etwas davon kam in ${f.list(batches)}. Verfüttere das nicht, bevor du nachgesehen hast.`,
  batchOf: (batch, day) => `${batch} vom ${day}`,
  checkDue: (food, time) => `Wende und prüfe, was trocknet: ${food}. Fällig war es um ${time}.`,
  checkAt: (food, time) => `Wende und prüfe um ${time}, was trocknet: ${food}.`,
  freezing: {
    due: (packs) => `Lange genug eingefroren oder aufgetaut: ${packs}. Hak den Schritt ab.`,
    goIn: (packs) => `Kommt heute ins Gefrierfach: ${packs}.`,
    comeOut: (packs) => `Kommt heute aus dem Gefrierfach: ${packs}.`,
    noDays: (packs) => `Wartet aufs Einfrieren und hat noch keine Tage: ${packs}.`,
  },
  pastBest: (pack, day) =>
    `Über das Mindesthaltbarkeitsdatum (${day}): ${pack}. Sieh und riech daran, bevor du es verwendest.`,
  pastUseBy: (batch, day) =>
    `Zu verbrauchen bis ${day}: ${batch}. Das ist geschätzt, aber verfüttere nichts, ohne hinzusehen, und mach besser eine neue Charge.`,
  byDay: (batch, day) => `Zu verbrauchen bis ${day} (geschätzt): ${batch}.`,
  first: 'Sieh dir das zuerst an',
  ofOne: (label, name) => `${label}: ${name}`,
  care: {
    title: 'Deine Tiere heute',
    nothing: 'Für deine Tiere steht heute nichts an.',
    animals: 'Tiere',
    feed: (parts) => `Gefüttert: ${parts.join(', ')}`,
    ofMix: (grams) => `${f.grams(grams, 1)} Mischung`,
    ofPellet: (grams) => `${f.grams(grams, 1)} Pellets`,
    ofNew: (grams) => `${f.grams(grams, 1)} neue Mischung`,
    ofOld: (grams) => `${f.grams(grams, 1)} alte Mischung`,
    ofFood: (grams, food) => `${f.grams(grams, 1)} ${food}`,
    feedAll: (n) => `Alle ${f.number(n)} wie geplant gefüttert`,
    sayAmount: 'Sagen, was es bekommt',
    doNotFeed: 'Nicht füttern: warum?',
    weigh: 'Wiegen',
    inDoubt: (grams) => `${f.grams(grams, 1)}: Stimmt das?`,
    weighed: (grams) => `Gewogen: ${f.grams(grams, 1)}`,
    left: 'Reste',
    leftDone: 'Reste: notiert',
    notToday: 'Heute nicht',
    noThanks: 'Nein, danke',
    weighAgain: (day) => `Zeit, wieder zu wiegen: zuletzt am ${day}.`,
    weighFirst: 'Es wäre gut, dieses Tier zu wiegen.',
    weighWhy: {
      alert: 'Jeden Tag, bis klar ist, was mit dem Gewicht ist.',
      ill: (days) => `Alle ${f.number(days)} Tage, wegen der Angaben aus der Tierarztpraxis.`,
      young: (days) => `Alle ${f.number(days)} Tage, solange es wächst.`,
      trial: (days) => `Alle ${f.number(days)} Tage, solange ein neues Futter probiert wird.`,
      change: (days) => `Alle ${f.number(days)} Tage, solange das Futter umgestellt wird.`,
      old: (days) => `Alle ${f.number(days)} Tage, weil es alt ist.`,
    },
    lookLeft: (names: readonly string[]) => `Sieh nach, was von letzter Nacht übrig ist: ${f.list(names)}.`,
    offer: (food) => `Biete heute an: ${food}.`,
    offerGrams: (grams, food) => `Biete heute an: ${f.grams(grams, 1)} ${food}.`,
    offerBeside: (food, known) => `Biete heute an: ${food}, daneben ${known}.`,
    offerGramsBeside: (grams, food, known) =>
      `Biete heute an: ${f.grams(grams, 1)} ${food}, daneben ${known}.`,
    planned: (day) => `Geplant war es für den ${day}.`,
    toTrial: 'Zum neuen Futter',
    ticked: (name) => `Abgehakt: ${name}.`,
    tickedAll: (n) => `${f.count(n, { one: 'Tier', other: 'Tiere' })} abgehakt.`,
  },
  weight: {
    lost: (name, percent, since, from, to) =>
      `${name} hat seit dem ${since} ${f.percent(percent, 0)} abgenommen: von ${f.bodyGrams(from)} auf ${f.bodyGrams(to)}.`,
    gained: (name, percent, since, from, to) =>
      `${name} hat seit dem ${since} ${f.percent(percent, 0)} zugenommen: von ${f.bodyGrams(from)} auf ${f.bodyGrams(to)}.`,
    behind: (name, grams) => `${name} wächst langsamer, als zu erwarten ist: jetzt ${f.bodyGrams(grams)}.`,
    vet: {
      today: 'Geh heute noch zum Tierarzt.',
      days: 'Geh in den nächsten Tagen zum Tierarzt.',
      'next visit': 'Sprich es beim nächsten Termin in der Tierarztpraxis an.',
    },
    link: 'Die Gewichte ansehen',
  },
  upset: {
    own: (food, animal, batch) =>
      `Von ${animal} nicht vertragen und enthalten in ${batch}: ${food}. Gib ${animal} nichts davon. Geh zum Tierarzt, wenn es krank wirkt.`,
    other: (food, animal, batch) =>
      `Von ${animal} nicht vertragen und enthalten in ${batch}, das andere bekommen: ${food}. Sieh danach.`,
    link: 'Zum neuen Futter',
  },
  maybeBarred: (batch) =>
    `Vielleicht ist eine Packung darin, die nicht mehr verwendet wird: ${batch}. Niemand hat notiert, welche hineinkam. Füttere besser etwas anderes, bis du es weißt.`,
  barredPack: (pack, why, animals) =>
    `Nicht mehr verwenden (${why}): ${pack}. Davon gefüttert, vielleicht oder sicher: ${f.list(animals)}. Nimm weg, was übrig ist, auch aus den Verstecken.`,
  buyPack: 'Zur Einkaufsliste',
  runsOut: (batch, day) => `Reicht bis zum ${day}: ${batch}.`,
  runsOutToday: (batch) => `Reicht heute nicht mehr für den ganzen Tag: ${batch}.`,
  ranOut: (batch, day) =>
    `Müsste seit dem ${day} aufgebraucht sein: ${batch}. Wiege, was übrig ist, oder sag, dass alles gefressen ist.`,
  planNext: 'Die nächste Charge planen',
  left: {
    title: 'Was übrig ist',
    others: 'Was von anderen Chargen übrig ist',
    of: (batch) => `Was übrig ist von: ${batch}`,
    weigh: (batch) => `Wiege, was übrig ist von: ${batch}`,
    notWeighed: 'heute nicht gewogen',
    before: 'Bevor das Futter für heute herausgenommen wird.',
    allEaten: 'Alles gefressen',
    saidEaten: (batch) => `${batch}: alles gefressen.`,
    said: (grams, batch) => `${batch}: ${f.grams(grams)} übrig.`,
    weighed: (grams, batch, day) => `${batch}: Am ${day} waren ${f.grams(grams)} übrig.`,
    made: (grams, batch, day) => `${batch}: Am ${day} wurden ${f.grams(grams)} gemacht.`,
    weighedAbout: (grams, batch, day, left) =>
      `${batch}: Am ${day} waren ${f.grams(grams)} übrig; nach dem, was gefressen wird, müssten es heute etwa ${f.grams(left)} sein.`,
    madeAbout: (grams, batch, day, left) =>
      `${batch}: Am ${day} wurden ${f.grams(grams)} gemacht; nach dem, was gefressen wird, müssten heute etwa ${f.grams(left)} übrig sein.`,
  },
});
