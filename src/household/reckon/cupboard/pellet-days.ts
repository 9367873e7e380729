/**
 * What was fed of one food from its packs, day by day: as written down, and on days without a record as the animals are
 * fed now, which is an estimate. Whoever asks says so.
 */
import { dayNumber, dayOf } from '../../../kitchen/days.ts';
import type { Day, Lot } from '../../../kitchen/model.ts';
import { remembered } from '../../../kitchen/remembered.ts';
import { CRUMB } from '../../../kitchen/tolerances.ts';
import type { Household } from '../../model.ts';
import type { PelletEater } from './pellet-eaters.ts';

/** Days before today for which a day without a record is estimated: no dry food is kept for longer (our own choice, no source). */
const ESTIMATED_DAYS = 3660;

/** One pack, and what became of it since it came in or was last weighed. */
export interface PackStanding {
  readonly lot: Lot;
  /** The day from which is counted, and whether it was weighed on it; else it came in. */
  readonly since: Day;
  readonly weighed: boolean;
  /** g there were then. start = left + fed + estimated - over. */
  readonly start: number;
  /** g written down as fed of it since, the food named with the pack. */
  readonly fed: number;
  /** g that were fed without a word of which pack, while it was the pack in use: by estimate, or written down without it. */
  readonly estimated: number;
  /** g left; never below 0. */
  readonly left: number;
  /** g left when the day began, before its food was taken. */
  readonly atDawn: number;
  /** g more than it held that are written down as fed of it. */
  readonly over: number;
  /** By animal, the days on which it may have been fed of it without a record that says so, over all its time. */
  readonly maybe: ReadonlyMap<string, Span>;
}

/** Days between the first and the last, and how many they are. */
export interface Span {
  readonly from: Day;
  readonly to: Day;
  readonly days: number;
}

interface Pack {
  readonly lot: Lot;
  since: Day;
  weighed: boolean;
  start: number;
  fed: number;
  estimated: number;
  rest: number;
  atDawn: number;
  readonly maybe: Map<string, Span>;
}

/**
 * How every pack of a food stands on a day, its day's records counted. A pack that nobody opened or weighed counts as
 * fed from the day on which it came in, once those before it are empty.
 * @param eaters of the food, see `pelletEaters`
 */
export function packStandings(
  house: Pick<Household, 'lots' | 'feedings'>,
  food: string,
  eaters: readonly PelletEater[],
  today: Day,
): PackStanding[] {
  const packs = house.lots
    .filter((lot) => lot.food === food && lot.form !== 'fresh')
    .map(
      (lot): Pack => ({
        lot,
        since: lot.boughtOn,
        weighed: false,
        start: lot.grams,
        fed: 0,
        estimated: 0,
        rest: lot.grams,
        atDawn: lot.grams,
        maybe: new Map(),
      }),
    );
  const here = packs.filter(({ lot }) => lot.boughtOn <= today);
  const [first] = here.map(({ lot }) => lot.boughtOn).sort();
  const fedOn = fedByDay(house.feedings);
  const byId = new Map(here.map((p) => [p.lot.id, p]));
  const coming = [...here].sort((a, b) => (a.lot.boughtOn < b.lot.boughtOn ? 1 : -1));
  let there: Pack[] = [];
  if (first !== undefined)
    for (const day of daysToWalk(first, today, here, fedOn)) {
      for (let next = coming.at(-1); next && next.lot.boughtOn <= day; next = coming.at(-1)) {
        there.push(next);
        coming.pop();
      }
      // What is empty and is not weighed again is in nobody's way from then on.
      there = there.filter(({ lot, rest }) => rest > CRUMB || isWeighedFrom(lot, day));
      for (const pack of there) weighIn(pack, day);
      if (day === today) for (const pack of here) pack.atDawn = pack.rest;
      const records = fedOn.get(day);
      for (const record of records?.values() ?? [])
        for (const part of record.beside) {
          const pack = part.lot === undefined ? undefined : byId.get(part.lot);
          if (part.food === food && pack) take(pack, part.grams, 'fed');
        }
      for (const { animalId, beside } of records?.values() ?? [])
        for (const part of beside)
          if (part.food === food && (part.lot === undefined || !byId.has(part.lot)))
            draw(there, part.grams, animalId, day);
      // The day's own food is counted once it is written down.
      if (day === today) break;
      for (const { animal, grams } of eaters) {
        const gone = animal.gone !== undefined && animal.gone.on <= day;
        const unborn = animal.born !== undefined && animal.born.on > day;
        if (!gone && !unborn && !records?.has(animal.id)) draw(there, grams, animal.id, day);
      }
    }
  return packs.map(({ rest, atDawn, maybe, ...pack }) => ({
    ...pack,
    left: rest > CRUMB ? rest : 0,
    over: rest < -CRUMB ? -rest : 0,
    atDawn: Math.max(0, atDawn),
    maybe,
  }));
}

/** Every day from when the first pack came in; before that and long ago only those of which something is written down. */
function daysToWalk(first: Day, today: Day, packs: readonly Pack[], fedOn: ReadonlyMap<Day, unknown>): Day[] {
  const last = dayNumber(today);
  const from = Math.max(dayNumber(first), last - ESTIMATED_DAYS);
  const start = dayOf(from);
  const written = new Set([...fedOn.keys(), ...packs.flatMap(({ lot }) => lot.left?.on ?? [])]);
  const early = [...written].filter((day) => day < start).sort();
  return [...early, ...Array.from({ length: last - from + 1 }, (_, i) => dayOf(from + i))];
}

/** Whether a lot is weighed on a day or later. */
const isWeighedFrom = ({ left, boughtOn }: Lot, day: Day) =>
  left !== undefined && (left.on >= day || boughtOn >= day);

/** On the day on which it was weighed, what was weighed is what there is. */
function weighIn(pack: Pack, day: Day): void {
  const { left, boughtOn } = pack.lot;
  // What is said to be weighed before it came in counts from when it came in.
  const on = left && left.on >= boughtOn ? left.on : boughtOn;
  if (left === undefined || day !== on) return;
  pack.since = day;
  pack.weighed = true;
  pack.start = left.grams;
  pack.rest = left.grams;
  pack.fed = 0;
  pack.estimated = 0;
}

function take(pack: Pack, grams: number, as: 'fed' | 'estimated'): void {
  pack[as] += grams;
  pack.rest -= grams;
}

/** Takes from the packs in use. @param grams absent where nobody knows: the pack in use may be it all the same */
function draw(packs: readonly Pack[], grams: number | undefined, animal: string, day: Day): void {
  const usable = inOrder(
    packs.filter(({ lot, rest }) => isThere(lot, day) && rest > CRUMB),
    day,
  );
  let open = grams ?? CRUMB;
  for (const pack of usable) {
    if (open <= 0) break;
    mark(pack, animal, day);
    const taken = Math.min(open, pack.rest);
    open -= taken;
    if (grams !== undefined) take(pack, taken, 'estimated');
  }
}

const isThere = (lot: Lot, day: Day) =>
  lot.boughtOn <= day && (lot.barred === undefined || lot.barred.on > day);

function mark({ maybe }: Pack, animal: string, day: Day): void {
  const span = maybe.get(animal);
  if (span?.to === day) return;
  maybe.set(animal, { from: span?.from ?? day, to: day, days: (span?.days ?? 0) + 1 });
}

/**
 * Packs in the order in which they are fed: opened ones first, what is past its best before last, then the earliest best
 * before, then the first that came in.
 */
export function inOrder<P extends { readonly lot: Lot }>(packs: readonly P[], day: Day): P[] {
  const key = ({ lot }: P) => {
    const opened = lot.openedOn !== undefined && lot.openedOn <= day;
    const past = lot.bestBefore !== undefined && lot.bestBefore < day;
    return [past ? 1 : 0, opened ? 0 : 1, lot.bestBefore ?? '9999-12-31', lot.boughtOn, lot.id].join(' ');
  };
  if (packs.length < 2) return [...packs];
  return packs
    .map((pack) => ({ pack, key: key(pack) }))
    .sort((a, b) => (a.key < b.key ? -1 : 1))
    .map(({ pack }) => pack);
}

/** What was fed on each day, by animal; notes of left-overs alone are none of what was fed. */
const fedByDay = remembered((feedings: Household['feedings']) => {
  const days = new Map<Day, Map<string, Household['feedings'][number]>>();
  for (const feeding of feedings) {
    if (feeding.at === undefined && feeding.mix === undefined && feeding.beside.length === 0) continue;
    const day = days.get(feeding.on) ?? new Map();
    days.set(feeding.on, day.set(feeding.animalId, feeding));
  }
  return days;
});
