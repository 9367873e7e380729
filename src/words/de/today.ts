import type { Today } from '../en/today.ts';
import type { Figures } from '../figures.ts';

export const today = (f: Figures): Today => ({
  title: 'Jetzt',
  next: 'Als Nächstes',
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
  left: {
    title: 'Was übrig ist',
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
