/**
 * An invented household after ten years of keeping, for tests and benches: five animals, what they were fed week by week,
 * and what was written down of them day by day. Made from the demonstration, by counting alone: the same arguments give the same household.
 */
import { demoHousehold } from '../../src/household/demo.ts';
import type { Animal, Household, Mix, MixVersion, OwnFood } from '../../src/household/model.ts';
import { plusDays } from '../../src/kitchen/days.ts';
import type { Batch, Day, DryingRun, FreezeStep, Lot, Offer, Pour } from '../../src/kitchen/model.ts';
import { careOf } from './ten-years-care.ts';

/** How many there are of each in the household of size 1. */
const COUNTS = {
  batches: 500,
  lots: 2000,
  foods: 300,
  mixes: 100,
  versions: 200,
  dryingRuns: 150,
  offers: 300,
  trials: 60,
  notes: 400,
} as const;
type Counts = Record<keyof typeof COUNTS, number>;

const ANIMALS = ['Bramble', 'Clover', 'Sorrel', 'Teasel', 'Yarrow'];
const SELLERS = ['the corn shop', 'the mill', 'the market', 'the seed shop', 'the farm gate', 'the pet shop'];
/** Fresh food by the dried one that it becomes. */
const DRIED: Readonly<Record<string, string>> = {
  'carrot-dried': 'sr28:11124',
  'red-sweet-pepper-freeze-dried': 'sr28:11821',
};
const DAYS = 3650;
/** g of a batch: for about a week. */
const BATCH = 220;
/** Days that a lot is there before it is weighed out: through the cold, and some more. */
const AHEAD = 24;
/** Part of the lots that is still in the cupboard. */
const STOCK = 0.08;

/**
 * @param size 1 for all of it, 0.1 for a tenth @param until last day of the ten years: batches are being fed, lots
 * freeze and something dries then
 */
export function tenYears({ size = 1, until = '2026-03-10' }: { size?: number; until?: Day } = {}): Household {
  const counts = Object.fromEntries(
    Object.entries(COUNTS).map(([kind, n]) => [kind, Math.max(2, Math.round(n * size))]),
  ) as Counts;
  const demo = demoHousehold(at(plusDays(until, -DAYS), 8));
  const [pellet, first, bramble] = [demo.foods[0], demo.mixes[0], demo.animals[0]];
  if (!pellet || !first || !bramble) throw new Error('the demonstration lacks a pellet, a mix or an animal');
  const animals = ANIMALS.map(
    (name, i): Animal => ({
      ...(i === 0 ? bramble : { ...bramble, id: `animal-${i}`, name, dailyGrams: 9 + i }),
      born: { on: plusDays(until, -500 - 30 * i), about: true },
    }),
  );
  const own = Array.from({ length: counts.foods - 1 }, (_, i) => ownFood(i, first));
  const mixes = [
    { ...first, animalIds: animals.map((a) => a.id) },
    ...Array.from({ length: counts.mixes - 1 }, (_, i) =>
      laterMix(first, i + 1, own, animals, until, counts),
    ),
  ];
  const versions = Array.from({ length: counts.versions }, (_, i) => versionOf(mixes, i, until, counts));
  const kitchen = keptKitchen(mixes, counts, until);
  return {
    ...demo,
    foods: [pellet, ...own],
    animals,
    mixes,
    versions,
    offers: Array.from({ length: counts.offers }, (_, i) => offer(first, i)),
    kitchen: [
      {
        id: 'kitchen',
        driedAtHome: Object.entries(DRIED).map(([food, fresh]) => ({ food, fresh, moisture: 10 })),
        sellers: SELLERS.slice(0, 4).map((seller, i) => ({ seller, delivery: 3 + i, minimumOrder: 10 * i })),
        freezer: { grams: 6000, celsius: -18 },
        dryer: { device: 'dehydrator', trays: 5, trayArea: 9, celsius: 55 },
      },
    ],
    ...kitchen,
    ...careOf({
      ...{ animals, batches: kitchen.batches, mix: first, pellet: pellet.id, until },
      ...{ days: Math.round(DAYS * size), trials: counts.trials, notes: counts.notes },
    }),
  };
}

/** An own food: one of the demonstration's, as another seller's pack prints it. */
function ownFood(i: number, { problem }: Mix): OwnFood {
  const like = pick(problem.foods, i);
  const kind = (i + 1) % 25 === 0 ? 'pellet' : 'mix';
  const composition = {
    PROCNT: 8 + (i % 23),
    FAT: 2 + (i % 11),
    FIBC: 3 + (i % 9),
    WATER: 8 + (i % 4),
    ASH: 2 + (i % 5),
  };
  return {
    id: `own-${i}`,
    name: `${kind === 'pellet' ? 'Invented pellet' : like.name} no. ${i + 1}`,
    kind,
    ...(kind === 'mix' && { group: (like.group ?? 'seed') as NonNullable<OwnFood['group']> }),
    composition,
    sd: { PROCNT: 0.8, FAT: 0.3 },
    evidence: {
      sources: [
        {
          id: `own-${i}-label`,
          name: 'label as invented',
          date: '2024-05-06',
          basis: 'as fed',
          composition,
          sd: { PROCNT: 0.8, FAT: 0.3 },
          proteinFactor: 6.25,
          printed: `crude protein ${composition.PROCNT} %, crude fat ${composition.FAT} %, crude fibre ${composition.FIBC} %, moisture ${composition.WATER} %`,
        },
      ],
    },
    pricePerKg: 2 + (i % 17),
    source: 'invented label: no such food is sold',
    invented: true,
  };
}

/** The first mix with a few of its foods in exchange for own ones. */
function laterMix(
  first: Mix,
  n: number,
  own: readonly OwnFood[],
  animals: readonly Animal[],
  until: Day,
  counts: Counts,
): Mix {
  const mine = own.filter((f) => f.kind === 'mix');
  const taken = new Map(
    [0, 1, 2].map((k) => [(n * 7 + k * 5) % first.problem.foods.length, pick(mine, n * 3 + k)] as const),
  );
  const foods = first.problem.foods.map((food, i) => {
    const other = taken.get(i);
    if (!other) return food;
    const { id, name, composition, sd, group = food.group } = other;
    return { id, name, group, composition, sd, max: 15, want: 5, protein_factor: 6.25 };
  });
  return {
    ...first,
    id: `mix-${n}`,
    name: `Mix of ${monthOf(spread(n, counts.mixes, until))} (${n})`,
    animalIds: animals.filter((_, i) => (n + i) % 3 === 0).map((a) => a.id),
    problem: { ...first.problem, foods },
    shares: Object.fromEntries(foods.map((f) => [f.id, 5])),
    updatedAt: at(spread(n, counts.mixes, until), 9),
  };
}

function versionOf(mixes: readonly Mix[], i: number, until: Day, counts: Counts): MixVersion {
  // Every other one of the first mix, which is the one at hand.
  const mix = i % 2 === 0 ? pick(mixes, 0) : pick(mixes, i);
  const on = spread(i, counts.versions, until);
  return {
    id: `version-${i}`,
    mixId: mix.id,
    name: `As it was in ${monthOf(on)} (${i + 1})`,
    problem: mix.problem,
    shares: mix.shares,
    keptAt: at(on, 10),
  };
}

function offer({ problem }: Mix, i: number): Offer {
  const food = pick(problem.foods, i);
  return {
    id: `offer-${i}`,
    food: food.id,
    seller: pick(SELLERS, i >> 2),
    packGrams: pick([100, 250, 500, 1000], i),
    price: Number((0.8 + pick([100, 250, 500, 1000], i) * (0.004 + (i % 13) / 2000)).toFixed(2)),
    form: 'dry',
  };
}

/** Batches week by week, and the lots that they were poured from: bought, frozen or dried, and used up one by one. */
function keptKitchen(
  mixes: readonly Mix[],
  counts: Counts,
  until: Day,
): Pick<Household, 'lots' | 'batches' | 'dryingRuns'> {
  const lots: Lot[] = [];
  const dryingRuns: DryingRun[] = [];
  const stock = Math.max(8, Math.round(counts.lots * STOCK));
  // As many packs as there are to be, each holding as much as then goes into the batches.
  const packs = Math.max(1, counts.lots - stock - counts.dryingRuns);
  const pack = Math.ceil((counts.batches * BATCH) / Math.max(1, packs - 90)) + 1;
  const open = new Map<string, { id: string; left: number }>();

  function bought(food: string, name: string, on: Day, grams: number): string {
    const n = lots.length + 1;
    const seller = pick(SELLERS, n);
    const pack = { boughtOn: on, bestBefore: plusDays(on, 400), seller, price: 1 + (n % 7) };
    if (DRIED[food] !== undefined && dryingRuns.length < counts.dryingRuns - 1) {
      const run = dryingRuns.length + 1;
      lots.push({ ...fresh(food, n, on, 10 * grams), ...pack });
      dryingRuns.push(endedRun(run, `lot-${n}`, on, grams));
      lots.push({
        ...{ id: `run-${run}-dried`, food, name: `${name}, ${on}`, grams, form: 'dried', boughtOn: on },
        ...{ frozen: false, cold: [], driedIn: `run-${run}`, moisture: 9 },
      });
      return `run-${run}-dried`;
    }
    const lot = { id: `lot-${n}`, food, name: `${name}, ${on}`, grams, form: 'dry', frozen: false } as const;
    lots.push({ ...lot, ...pack, openedOn: plusDays(on, AHEAD - 4), cold: frozen(on, 4) });
    return lot.id;
  }

  function takenFrom(food: string, name: string, grams: number, on: Day): Pour['lots'] {
    const taken: { lot: string; grams: number }[] = [];
    let needed = grams;
    while (needed > 0) {
      let lot = open.get(food);
      if (!lot) {
        lot = { id: bought(food, name, plusDays(on, -AHEAD), pack), left: pack };
        open.set(food, lot);
      }
      const part = Math.min(needed, lot.left);
      taken.push({ lot: lot.id, grams: part });
      needed -= part;
      lot.left -= part;
      if (lot.left === 0) open.delete(food);
    }
    return taken;
  }

  const batches = Array.from({ length: counts.batches }, (_, i): Batch => {
    const last = i === counts.batches - 1;
    // Mostly the first mix; every fifth time one of the others.
    const mix = i % 5 === 0 || last ? pick(mixes, last ? 0 : i) : pick(mixes, 0);
    const on = last ? plusDays(until, -2) : spread(i, counts.batches, plusDays(until, -8));
    const pours = mix.problem.foods.map(({ id, name = id }, k): Pour => {
      const grams = ((mix.shares[id] ?? 0) * BATCH) / 100;
      return { food: id, lots: takenFrom(id, name, grams, on), target: grams, grams, at: at(on, 9, k) };
    });
    return {
      id: `batch-${i}`,
      mixId: mix.id,
      name: mix.name,
      problem: { ...mix.problem, batch_grams: BATCH },
      shares: mix.shares,
      order: mix.problem.foods.map((f) => f.id),
      grams: BATCH,
      pours,
      animalIds: mix.animalIds,
      madeBy: i % 3 === 0 ? 'Robin' : 'Kim',
      left: last ? { grams: BATCH - 40, on: plusDays(until, -1) } : { grams: 0, on: plusDays(on, 7) },
      startedAt: at(on, 8),
      finishedAt: at(on, 10),
    };
  });

  // What stands in the cupboard on the last day: fresh, drying, in the cold, waiting for it, barred, ready.
  const foods = pick(mixes, 0).problem.foods;
  lots.push(fresh('carrot-dried', lots.length + 1, plusDays(until, -1), 900));
  dryingRuns.push(goingRun(dryingRuns.length + 1, `lot-${lots.length}`, until));
  for (let k = 0; lots.length < counts.lots; k++) {
    const { id, name = id } = pick(foods, k);
    const on = plusDays(until, -(k % 60));
    lots.push({
      ...{
        id: `lot-${lots.length + 1}`,
        food: id,
        name: `${name}, ${on} (${k + 1})`,
        grams: 250 + 50 * (k % 6),
      },
      ...{ form: 'dry', boughtOn: on, bestBefore: plusDays(on, 300 - (k % 7) * 60), frozen: k % 11 === 0 },
      ...{
        seller: pick(SELLERS, k),
        price: 2 + (k % 5),
        cold: k % 20 === 19 ? [] : frozen(on, (k % 60) / 4),
      },
      ...(k % 37 === 36 && { barred: { why: 'infested: moths in the bag', on: until } }),
    });
  }
  return { lots, batches, dryingRuns };
}

function fresh(food: string, n: number, on: Day, grams: number): Lot {
  const name = `Fresh for ${food}, ${on} (${n})`;
  return { id: `lot-${n}`, food, name, grams, form: 'fresh', boughtOn: on, frozen: false, cold: [] };
}

/** A run of all of a fresh lot, ended the next day. */
function endedRun(n: number, lot: string, on: Day, grams: number): DryingRun {
  const end = plusDays(on, 1);
  return {
    ...{ id: `run-${n}`, lot, device: 'dehydrator', celsius: 55, startedAt: at(on, 18), trays: 5 },
    ...{ gramsTaken: 10 * grams, gramsBefore: 8 * grams, kind: 'vegetable', hours: 10 },
    checks: [2, 4, 6].map((hours) => ({ at: at(on, 18 + hours / 2, hours), grams: (8 - hours) * grams })),
    gramsAfter: grams,
    endedAt: at(end, 8),
  };
}

function goingRun(n: number, lot: string, on: Day): DryingRun {
  return {
    ...{ id: `run-${n}`, lot, device: 'dehydrator', celsius: 55, startedAt: at(on, 0, 30), trays: 5 },
    ...{ gramsTaken: 600, gramsBefore: 500, checks: [], kind: 'vegetable', hours: 10 },
  };
}

/** Four steps of four days each, the first `done` of them ticked off. */
function frozen(on: Day, done: number): FreezeStep[] {
  return (['freeze', 'thaw', 'freeze', 'thaw'] as const).map((kind, i) => {
    const [from, to] = [plusDays(on, 4 * i), plusDays(on, 4 * i + 4)];
    return { kind, from, to, ...(i + 1 <= done && { doneOn: to }) };
  });
}

/** The day of the nth of several things that are spread over the ten years. */
const spread = (n: number, of: number, until: Day) =>
  plusDays(until, -Math.round((DAYS * (of - 1 - n)) / Math.max(1, of - 1)));

const monthOf = (day: Day) => day.slice(0, 7);

const at = (day: Day, hour: number, minute = 0) =>
  `${day}T${String(hour).padStart(2, '0')}:${String(minute).padStart(2, '0')}:00.000Z`;

function pick<T>(list: readonly T[], i: number): T {
  const found = list[i % list.length];
  if (found === undefined) throw new Error('nothing to pick from');
  return found;
}
