/**
 * Random records of every kind that the household accepts, the corners of what it accepts among them: days at both ends
 * of the calendar, numbers at both ends of their range, empty lists, names that look like markup or run from right to
 * left, and things that name others which are gone.
 */
import fc from 'fast-check';
import { ALLERGENS, CONDITIONS, SEEN } from '../../src/care/model.ts';
import { FOOD_GROUPS, type FoodGroup } from '../../src/foods/food.ts';
import type { Household, Kept, Kind } from '../../src/household/model.ts';
import { NUTRIENTS, type Tag } from '../../src/nutrition/nutrients.ts';
import { LIFE_STAGES, type LifeStage, SPECIES } from '../../src/targets/life-stage.ts';
import { PROFILES } from '../../src/targets/profiles.ts';

/** Ids that records of a household share, so that some of what is named is there and some is gone. */
const IDS = {
  food: [
    'own-1',
    'own-2',
    'millet',
    'carrot',
    'Öl-lein',
    'gone-food',
    'sr28:20038',
    'sr28:11124',
    'ifct:A010',
    'pub:x/y',
  ],
  animal: ['animal-1', 'animal-2', 'animal-3', 'gone-animal'],
  mix: ['mix-1', 'mix-2', 'gone-mix'],
  lot: ['lot-1', 'lot-2', 'lot-3', 'lot-4', 'lot-5', 'gone-lot'],
  run: ['run-1', 'run-2', 'run-3', 'gone-run'],
  batch: ['batch-1', 'batch-2', 'batch-3', 'batch-4', 'gone-batch'],
} as const;

const ODD_TEXTS = [
  'A',
  '<img src=x onerror=alert(1)>',
  '</script><b>bold</b>',
  '&amp;&nbsp;"quoted" \\ %s %2F',
  '🐹🥕 e\u0301',
  'שיבולת שועל',
  'دخن أحمر',
  '= 1 + 1',
  'N'.repeat(200),
  'word '.repeat(39).trim(),
  '\u200b-',
  '0',
];

const name = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom('Oats', 'Bramble', 'Carrot, dried') },
  fc.constantFrom(...ODD_TEXTS),
);
const words = fc.oneof(name, fc.constantFrom('', 'line\n\tline', '🐹'.repeat(400)));
const reason = fc.constantFrom('not asked', 'line\nline', '<b>', '🐹');

const DAYS = [
  '1990-01-01',
  '1999-12-31',
  '2000-02-29',
  '2024-02-29',
  '2026-03-14',
  '2026-03-29',
  '2026-10-25',
  '2026-11-28',
  '2099-12-31',
  '2100-12-31',
];
const day = fc.constantFrom(...DAYS);
const moment = fc
  .tuple(day, fc.constantFrom('T00:00:00Z', 'T09:30:00.000Z', 'T23:59:59.999Z'))
  .map(([d, t]) => d + t);

/** A number of a range, its ends drawn often. */
const between = (low: number, high: number, ...usual: number[]) =>
  fc.oneof(
    fc.constantFrom(low, high, ...usual),
    fc.double({ min: low, max: high, noNaN: true }).map((n) => n + 0),
  );
const noCrumb = (n: number) => n === 0 || Math.abs(n) >= 1e-30;
const upTo = (most: number, ...usual: number[]) => between(0, most, 1e-30, 1, ...usual).filter(noCrumb);

const weight = between(0.001, 1_000_000, 1, 250, 1000);
const grams = upTo(1_000_000, 12.5, 500);
const money = upTo(1e8, 3.5);
const percent = upTo(100, 8, 12.5);
const share = upTo(1000, 10, 50, 100);
const celsius = between(-60, 250, -18, 0, 45, 60);

const maybe = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: undefined });
const few = <T>(of: fc.Arbitrary<T>, maxLength = 4) => fc.array(of, { maxLength });
const fewIds = (ids: readonly string[]) => fc.subarray([...ids]);
const oneOf = (ids: readonly string[]) => fc.constantFrom(...ids);

/** Leaves out what is undefined, as JSON does. */
function asKept<T>(record: T): T {
  return JSON.parse(JSON.stringify(record)) as T;
}
/** A record of some fields, those that are `maybe` left out at times. */
const kept = <T extends object>(fields: { [K in keyof T]: fc.Arbitrary<T[K]> }): fc.Arbitrary<T> =>
  fc.record<T>(fields as never).map(asKept) as fc.Arbitrary<T>;

const MOST_IN_100G = { g: 100, mg: 100_000, ug: 1e8, kcal: 10_000, IU: 1e10 } as const;
const composition = fc
  .subarray(NUTRIENTS.map((n) => n.tag))
  .chain((tags) =>
    fc.record(
      Object.fromEntries(
        NUTRIENTS.filter((n) => tags.includes(n.tag)).map((n) => [n.tag, upTo(MOST_IN_100G[n.unit], 8)]),
      ) as Record<Tag, fc.Arbitrary<number>>,
    ),
  )
  .map((c) => c as Partial<Record<Tag, number>>);
const someFigures = fc.oneof(
  fc.constant({}),
  fc.constant({ WATER: 10, PROCNT: 12, FAT: 5, FIBTG: 9, CA: 50, P: 300 } as Partial<Record<Tag, number>>),
  fc.constant({ WATER: 100 } as Partial<Record<Tag, number>>),
  composition,
);
const tag = fc.constantFrom<Tag>('PROCNT', 'FAT', 'FIBTG', 'WATER', 'CA', 'P', 'ENERC_KCAL', 'VITD_IU', 'SE');
const group = fc.constantFrom(...(Object.keys(FOOD_GROUPS) as FoodGroup[]));
const overruled = kept({ note: reason, on: day });

const source = (id: string) =>
  kept({
    id: fc.constant(id),
    name,
    ref: maybe(fc.constantFrom('sr28:20038', 'ifct:A010')),
    date: maybe(day),
    basis: fc.constantFrom('as fed' as const, 'dry matter' as const),
    n: maybe(fc.constantFrom(1, 7, 1_000_000)),
    composition: someFigures,
    sd: someFigures,
    low: maybe(someFigures),
    high: maybe(someFigures),
    proteinFactor: maybe(fc.constantFrom(4, 5.83, 6.25, 8)),
    printed: maybe(words),
  });

const food = (id: string): fc.Arbitrary<Kept<'foods'>> =>
  kept({
    id: fc.constant(id),
    name,
    kind: fc.constantFrom('mix' as const, 'pellet' as const),
    group: maybe(group),
    composition: someFigures,
    sd: someFigures,
    low: maybe(someFigures),
    high: maybe(someFigures),
    evidence: maybe(
      kept({
        sources: maybe(fc.tuple(source('s1'), source('s2')).map(([a, b]) => [a, b])),
        choices: maybe(fc.constantFrom({ PROCNT: 's1' }, { FAT: 'gone' })),
        borrowed: maybe(
          kept({
            CA: kept({
              from: fc.constant('sr28:20038'),
              name,
              value: upTo(100_000, 8),
              sd: upTo(1e10, 8),
              source: words,
            }),
          }),
        ),
        ingredients: maybe(words),
      }),
    ),
    pricePerKg: maybe(money),
    source: words,
    invented: fc.boolean(),
  }) as fc.Arbitrary<Kept<'foods'>>;

const ordered = <T extends { min?: number | undefined; max?: number | undefined }>(b: T): T =>
  b.min !== undefined && b.max !== undefined && b.min > b.max ? { ...b, min: b.max, max: b.min } : b;
const bounds = { min: maybe(upTo(1e10, 5, 16)), max: maybe(upTo(1e10, 20, 24)) };

const profile = (id: string): fc.Arbitrary<Kept<'profiles'>> =>
  kept({
    id: fc.constant(id),
    name,
    species: name,
    lifeStage: name,
    fibre: fc.constantFrom('FIBTG' as const, 'FIBC' as const, 'none' as const),
    about: words,
    bounds: few(
      fc
        .oneof(
          kept({
            nutrient: tag,
            ...bounds,
            basis: fc.constantFrom('as fed' as const, 'DM' as const, 'per 1000 kcal' as const),
            source: words,
            confirmed: maybe(kept({ against: reason, on: day })),
          }),
          kept({
            ratio: fc.constant(['CA', 'P'] as const),
            ...bounds,
            basis: fc.constant('as fed' as const),
            source: words,
          }),
        )
        .map(ordered),
      6,
    ),
  }) as fc.Arbitrary<Kept<'profiles'>>;

const profileId = fc.constantFrom(...PROFILES.slice(0, 3).map((p) => p.id), 'profile-1', 'gone-profile');

const animal = (id: string): fc.Arbitrary<Kept<'animals'>> =>
  kept({
    id: fc.constant(id),
    name,
    species: fc.oneof(name, fc.constantFrom(...SPECIES)),
    lifeStage: fc.constantFrom(...(Object.keys(LIFE_STAGES) as LifeStage[])),
    profileId,
    refuses: fewIds(IDS.food),
    dailyGrams: maybe(between(0.001, 100_000, 6, 12)),
    born: maybe(kept({ on: day, about: maybe(fc.constant(true as const)) })),
    sex: maybe(fc.constantFrom('female' as const, 'male' as const)),
    conditions: maybe(
      fc.uniqueArray(
        kept({
          what: fc.constantFrom(...CONDITIONS),
          since: day,
          until: maybe(day),
          young: maybe(fc.constantFrom(0, 7, 50)),
          vet: maybe(fc.constant(true as const)),
          note: maybe(words),
        }),
        { selector: (c) => `${c.what} ${c.since}`, maxLength: 4 },
      ),
    ),
    wheel: maybe(fc.boolean()),
    room: maybe(between(-30, 60, 12, 21)),
    daylight: maybe(fc.boolean()),
    tub: maybe(weight),
    usualGrams: maybe(between(0.1, 20_000, 35, 150)),
    knows: maybe(fewIds(IDS.food)),
    notes: maybe(words),
    gone: maybe(kept({ how: fc.constantFrom('died' as const, 'given away' as const), on: day })),
    invented: fc.boolean(),
  }) as fc.Arbitrary<Kept<'animals'>>;

const figures = {
  name: maybe(name),
  ref: maybe(fc.constantFrom('sr28:20038', 'sr28:11124', 'ifct:A010')),
  composition: maybe(someFigures),
  sd: maybe(someFigures),
  protein_factor: maybe(fc.constantFrom(5.3, 6.25)),
};
const ingredient = (id: string) =>
  kept({
    id: fc.constant(id),
    ...figures,
    group: maybe(fc.oneof(group, name)),
    min: maybe(percent),
    max: maybe(percent),
    want: maybe(percent),
    price_per_kg: maybe(money),
    refused: maybe(fc.boolean()),
    override: maybe(kept({ caution: fc.constant('avocado'), note: reason, on: day })),
    if_used: maybe(percent),
    liked: maybe(fc.boolean()),
    on_hand_grams: maybe(grams),
  });
const besideFood = (id: string) =>
  kept({
    id: fc.constant(id),
    ...figures,
    share_of_ration: percent,
    grams_a_day: maybe(grams),
    share_min: maybe(percent),
    share_max: maybe(percent),
    counts_as: maybe(fc.constant('air dry' as const)),
  });
const on = maybe(fc.constantFrom('mix' as const, 'ration' as const));
const rule = fc.oneof(
  kept({
    nutrient: tag,
    ...bounds,
    source: maybe(words),
    on,
    basis: maybe(fc.constantFrom('as fed' as const, 'DM' as const)),
  }),
  kept({ ratio: fc.constant(['CA', 'P'] as const), ...bounds, on }),
  kept({ group: fc.oneof(group, name), ...bounds, on }),
  kept({ food: oneOf(IDS.food), ...bounds, on }),
  kept({
    count: kept({ group: maybe(name), at_least: maybe(percent) }),
    min: maybe(upTo(500, 2)),
    max: maybe(upTo(500, 9)),
  }),
);
const nutrientRule = kept({ nutrient: tag, ...bounds, source: maybe(words), on });
const aim = fc.oneof(
  kept({
    aim: fc.constantFrom(
      'liked' as const,
      'cupboard' as const,
      'few' as const,
      'few to buy' as const,
      'cheap' as const,
    ),
    give: maybe(upTo(1e10, 1)),
  }),
  kept({ aim: fc.constantFrom('less' as const, 'more' as const), nutrient: tag, on }),
  kept({ aim: fc.constantFrom('less' as const, 'more' as const), food: oneOf(IDS.food) }),
);

/** A problem, and a part of its foods for what names them. */
const problem = fc
  .tuple(fewIds(IDS.food.slice(0, 8)), fewIds(['beside-1', 'own-2']))
  .chain(([foods, beside]) =>
    kept({
      foods: fc.tuple(...foods.map(ingredient)).map((all) => [...all]),
      rules: few(rule, 5),
      own_limits: maybe(few(kept({ was: nutrientRule, now: maybe(nutrientRule), on: day }), 2)),
      beside: fc.tuple(...beside.filter((id) => !foods.includes(id)).map(besideFood)).map((all) => [...all]),
      objective: fc.constantFrom('nearest' as const, 'cheapest' as const, 'varied' as const),
      aims: maybe(few(aim, 2)),
      least_grams: maybe(weight),
      drop_one: maybe(fc.boolean()),
      daily_grams: maybe(between(0.001, 100_000, 12)),
      confidence: fc.constantFrom(0, 0.9, 1 - 2 ** -53, 1e-30),
      confidence_for: maybe(fc.constantFrom('each' as const, 'all' as const)),
      margin: maybe(fc.constantFrom(0, 0.9, 1 - 2 ** -53)),
      variation: maybe(fc.constantFrom('given' as const, 'published' as const)),
      cautions: maybe(fc.constantFrom('apply' as const, 'report' as const)),
      species: maybe(name),
      batch_grams: weight,
      scale_step_grams: between(0.001, 1_000_000, 0.1, 1),
    }),
  );

const sharesOf = (ids: readonly string[]) =>
  fc
    .tuple(fc.subarray([...ids]), fc.array(share, { minLength: ids.length, maxLength: ids.length }))
    .map(([some, all]) => Object.fromEntries(some.map((id, i) => [id, all[i] ?? 0])));

const mix = (id: string) =>
  problem.chain((p) =>
    kept({
      id: fc.constant(id),
      name,
      animalIds: fewIds(IDS.animal),
      profileId,
      problem: fc.constant(p),
      shares: sharesOf([...p.foods.map((f) => f.id), 'gone-food']),
      held: fewIds(IDS.food),
      updatedAt: moment,
    }),
  ) as unknown as fc.Arbitrary<Kept<'mixes'>>;

const version = (id: string) =>
  problem.chain((p) =>
    kept({
      id: fc.constant(id),
      mixId: oneOf(IDS.mix),
      name,
      problem: fc.constant(p),
      shares: sharesOf(p.foods.map((f) => f.id)),
      keptAt: moment,
    }),
  ) as unknown as fc.Arbitrary<Kept<'versions'>>;

const lot = (id: string): fc.Arbitrary<Kept<'lots'>> =>
  kept({
    id: fc.constant(id),
    food: oneOf(IDS.food),
    name,
    grams: weight,
    form: fc.constantFrom('dry' as const, 'fresh' as const, 'dried' as const),
    boughtOn: day,
    openedOn: maybe(day),
    bestBefore: maybe(day),
    frozen: fc.boolean(),
    seller: maybe(name),
    price: maybe(money),
    cold: few(
      kept({
        kind: fc.constantFrom('freeze' as const, 'thaw' as const),
        from: day,
        to: day,
        doneOn: maybe(day),
      }),
    ),
    overruled: maybe(overruled),
    barred: maybe(kept({ why: reason, on: day })),
    driedIn: maybe(oneOf(IDS.run)),
    moisture: maybe(percent),
    left: maybe(kept({ grams, on: day })),
  }) as fc.Arbitrary<Kept<'lots'>>;

const offer = (id: string): fc.Arbitrary<Kept<'offers'>> =>
  kept({
    id: fc.constant(id),
    food: oneOf(IDS.food),
    seller: name,
    packGrams: weight,
    price: money,
    form: fc.constantFrom('dry' as const, 'fresh' as const),
  });

const run = (id: string): fc.Arbitrary<Kept<'dryingRuns'>> =>
  kept({
    id: fc.constant(id),
    lot: oneOf(IDS.lot),
    device: fc.constantFrom('oven' as const, 'dehydrator' as const),
    celsius,
    startedAt: moment,
    trays: fc.constantFrom(1, 4, 100),
    gramsTaken: maybe(weight),
    gramsBefore: weight,
    checks: few(kept({ at: moment, grams: maybe(grams), note: maybe(words) })),
    kind: maybe(fc.constantFrom('vegetable' as const, 'leaf' as const, 'herb' as const, 'fruit' as const)),
    hours: maybe(between(0.01, 1000, 8)),
    load: maybe(fc.constantFrom({ n: 1, of: 1 }, { n: 2, of: 3 }, { n: 1000, of: 1000 })),
    sample: maybe(kept({ before: weight, dry: weight, of: maybe(weight), step: maybe(weight) })),
    gramsAfter: maybe(weight),
    endedAt: maybe(moment),
    accepted: maybe(overruled),
  }) as fc.Arbitrary<Kept<'dryingRuns'>>;

const batch = (id: string) =>
  problem.chain((p) => {
    const foods = p.foods.map((f) => f.id);
    const pour =
      foods.length === 0
        ? undefined
        : kept({
            food: oneOf(foods),
            lots: few(kept({ lot: oneOf(IDS.lot), grams: between(-100_000, 100_000, 0, 5) }), 2),
            target: grams,
            grams: between(0, 100_000, 0.1, 25),
            at: moment,
          });
    return kept({
      id: fc.constant(id),
      mixId: maybe(oneOf(IDS.mix)),
      name,
      problem: fc.constant(p),
      shares: sharesOf(foods),
      order: fc.shuffledSubarray(foods),
      grams: weight,
      pours: pour ? few(pour, 6) : fc.constant([]),
      animalIds: fewIds(IDS.animal),
      madeBy: maybe(name),
      stock: maybe(fc.constant(Object.fromEntries(foods.map((f, i) => [f, i * 1000])))),
      accepted: maybe(overruled),
      givenUp: maybe(overruled),
      left: maybe(kept({ grams, on: day })),
      startedAt: moment,
      finishedAt: maybe(moment),
    });
  }) as unknown as fc.Arbitrary<Kept<'batches'>>;

const wholeDays = maybe(fc.constantFrom(0, 1, 14, 366));
const kitchen = (): fc.Arbitrary<Kept<'kitchen'>> =>
  kept({
    id: fc.constant('kitchen' as const),
    driedAtHome: maybe(
      fewIds(IDS.food).chain((foods) =>
        fc
          .tuple(
            ...foods.map((f) =>
              kept({
                food: fc.constant(f),
                fresh: oneOf(IDS.food),
                moisture: percent,
                trimLoss: maybe(percent),
              }),
            ),
          )
          .map((all) => [...all]),
      ),
    ),
    sellers: maybe(
      fewIds(ODD_TEXTS).chain((sellers) =>
        fc
          .tuple(
            ...sellers.map((s) =>
              kept({ seller: fc.constant(s), delivery: maybe(money), minimumOrder: maybe(money) }),
            ),
          )
          .map((all) => [...all]),
      ),
    ),
    stepDays: maybe(
      kept({
        buy: wholeDays,
        freeze: wholeDays,
        thaw: wholeDays,
        dry: wholeDays,
        weigh: wholeDays,
        'change-over': wholeDays,
      }),
    ),
    next: maybe(
      kept({
        mixId: oneOf(IDS.mix),
        grams: maybe(weight),
        days: maybe(fc.constantFrom(1, 30, 3660)),
        from: maybe(day),
        until: maybe(day),
        untilRunsOut: maybe(fc.constant(true as const)),
        pins: few(kept({ step: fc.constantFrom('weigh', 'buy:millet', 'dry:carrot', 'gone'), day })),
      }),
    ),
    freezer: maybe(kept({ grams: weight, celsius })),
    dryer: maybe(
      kept({
        device: fc.constantFrom('oven' as const, 'dehydrator' as const),
        trays: fc.constantFrom(1, 100),
        trayArea: between(0.01, 10_000, 9),
        celsius,
      }),
    ),
  }) as fc.Arbitrary<Kept<'kitchen'>>;

const bodyWeight = between(0.1, 20_000, 35, 150);
const weighing = (id: string): fc.Arbitrary<Kept<'weighings'>> =>
  kept({
    id: fc.constant(id),
    animalId: oneOf(IDS.animal),
    at: moment,
    grams: bodyWeight,
    tub: maybe(weight),
    sure: maybe(fc.constant(true as const)),
    note: maybe(words),
  }) as fc.Arbitrary<Kept<'weighings'>>;

const remains = kept({
  grams: maybe(grams),
  parts: maybe(fc.constant({ millet: 0, oats: 1.5 })),
  sorted: maybe(fc.constant(true as const)),
  mostly: maybe(fewIds(IDS.food)),
});
const feeding = (id: string): fc.Arbitrary<Kept<'feedings'>> =>
  kept({
    id: fc.constant(id),
    animalId: oneOf(IDS.animal),
    on: day,
    at: maybe(moment),
    mix: maybe(kept({ batchId: maybe(oneOf(IDS.batch)), grams })),
    beside: few(kept({ food: oneOf(IDS.food), lot: maybe(oneOf(IDS.lot)), grams }), 3),
    left: maybe(
      kept({
        on: day,
        since: maybe(day),
        bowl: maybe(remains),
        hoard: maybe(remains),
        note: maybe(words),
      }),
    ),
  }) as fc.Arbitrary<Kept<'feedings'>>;

const trial = (id: string): fc.Arbitrary<Kept<'trials'>> =>
  kept({
    id: fc.constant(id),
    animalId: oneOf(IDS.animal),
    food: oneOf(IDS.food),
    name,
    beside: maybe(kept({ food: oneOf(IDS.food), name })),
    grams: maybe(weight),
    days: few(day),
    offerings: fc.uniqueArray(
      kept({
        on: day,
        seen: fc.constantFrom(...SEEN),
        grams: maybe(weight),
        left: maybe(grams),
        note: maybe(words),
      }),
      { selector: (o) => o.on, maxLength: 5 },
    ),
    endedOn: maybe(day),
    others: maybe(overruled),
  }) as fc.Arbitrary<Kept<'trials'>>;

const note = (id: string): fc.Arbitrary<Kept<'notes'>> =>
  kept({
    id: fc.constant(id),
    animalId: oneOf(IDS.animal),
    on: day,
    kind: fc.constantFrom('seen' as const, 'vet' as const),
    text: reason,
  }) as fc.Arbitrary<Kept<'notes'>>;

const photo = (id: string): fc.Arbitrary<Kept<'photos'>> =>
  kept({ id: fc.constant(id), jpeg: fc.constantFrom('/9j/4AAQSkZJRg==', `/9j/${'A'.repeat(100_000)}`) });

const phone = fc.constantFrom('', '+49 (30) 123-456', '000');
const keeper = (): fc.Arbitrary<Kept<'keeper'>> =>
  kept({
    id: fc.constant('keeper' as const),
    vet: maybe(kept({ name: maybe(name), phone: maybe(phone), emergency: maybe(phone) })),
    allergies: maybe(fc.shuffledSubarray([...ALLERGENS])),
    south: maybe(fc.constant(true as const)),
    forSitter: maybe(words),
  }) as fc.Arbitrary<Kept<'keeper'>>;

/** A record of each kind by its id, as the household accepts it. */
export const RECORDS: { readonly [K in Kind]: (id: string) => fc.Arbitrary<Kept<K>> } = {
  foods: food,
  profiles: profile,
  animals: animal,
  mixes: mix,
  versions: version,
  lots: lot,
  offers: offer,
  dryingRuns: run,
  batches: batch,
  kitchen,
  weighings: weighing,
  feedings: feeding,
  trials: trial,
  notes: note,
  photos: photo,
  keeper,
};

/** Ids that a drawn record may name, by kind; those of foods are names of foods. */
export const NAMED: Partial<Record<Kind, readonly string[]>> = {
  foods: IDS.food.filter((id) => !id.includes(':')),
  profiles: ['profile-1', 'profile-2', 'gone-profile'],
  animals: IDS.animal,
  mixes: IDS.mix,
  lots: IDS.lot,
  dryingRuns: IDS.run,
  batches: IDS.batch,
};

const some = <T>(of: (id: string) => fc.Arbitrary<T>, ids: readonly string[]) =>
  fewIds(ids).chain((there) => fc.tuple(...there.map(of)).map((all) => [...all]));
const there = (ids: readonly string[]) => ids.filter((id) => !id.startsWith('gone'));

/** A household of such records; what it names is there at times, and gone at others. */
export const household: fc.Arbitrary<Household> = fc.record({
  foods: some(food, ['own-1', 'own-2', 'Öl-lein']),
  profiles: some(profile, ['profile-1', 'profile-2']),
  animals: some(animal, there(IDS.animal)),
  mixes: some(mix, there(IDS.mix)),
  versions: some(version, ['version-1', 'version-2']),
  lots: some(lot, there(IDS.lot)),
  offers: some(offer, ['offer-1', 'offer-2', 'offer-3']),
  dryingRuns: some(run, there(IDS.run)),
  batches: some(batch, there(IDS.batch)),
  kitchen: some(kitchen, ['kitchen']),
  weighings: some(weighing, ['weighing-1', 'weighing-2', 'weighing-3', 'weighing-4']),
  feedings: some(feeding, ['feeding-1', 'feeding-2', 'feeding-3']),
  trials: some(trial, ['trial-1', 'trial-2']),
  notes: some(note, ['note-1', 'note-2']),
  photos: some(photo, ['animal-1', 'animal-2']),
  keeper: some(keeper, ['keeper']),
});
