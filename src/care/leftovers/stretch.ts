/** One night, or some nights together: what was offered, what was found, and so what was taken and what was eaten. */
import type { Remains } from '../model.ts';
import type { IntakeSet } from './intake-set.ts';
import { boundsOf, isExact, type Pile, pileWithin, sumOf, together } from './pile.ts';
import { type Doubt, isNothing, type OfferedFood, pileOf } from './pile-of.ts';

/** What lay in bowl and on the floor after what was offered. */
interface Look {
  /** Each food once. */
  readonly offered: readonly OfferedFood[];
  /** Undefined where nobody looked. */
  readonly bowl?: Remains;
}

export interface Stretch {
  readonly looks: readonly Look[];
  /** Found in hoards at the end of it, and taken out; absent where nobody looked. */
  readonly hoard?: Remains;
  /** Nights that are not in this stretch may have brought food to that hoard too. */
  readonly others?: true;
}

/** What is known of the hoard: all of it was counted, it may be of other nights too, or nobody looked. */
export type HoardKnown = 'counted' | 'in-part' | 'unknown';

export interface Observed {
  /** What was taken: offered and no longer there. */
  readonly taken: IntakeSet;
  /** What was eaten of it: what lies in a hoard is not eaten. Where nobody looked it may be nothing at all. */
  readonly eaten: IntakeSet;
  readonly hoard: HoardKnown;
  readonly doubts: readonly Doubt[];
}

/** All bounds on what was taken and eaten of what was offered in the stretch. */
export function observe({ looks, hoard, others }: Stretch): Observed {
  const offered = allOffered(looks);
  const most = offered.map((f) => f.grams);
  const found = looks.map((look) => pileOf(look.bowl, look.offered));
  const piles = mergedPiles(
    found.map(({ pile }, i) => spread(pile, looks[i]?.offered ?? [], offered)),
    most,
  );
  const left = together(piles, most);
  const doubts = found.flatMap((f) => f.doubts);
  const taken: IntakeSet = { offered, piles };
  if (hoard === undefined) {
    const eaten: IntakeSet = {
      offered,
      piles: [
        {
          foods: left.foods.map(({ low }, i) => ({ low, high: most[i] ?? 0 })),
          total: { low: left.total.low, high: sumOf(most) },
        },
      ],
    };
    return { taken, eaten, hoard: 'unknown', doubts };
  }
  // No more can be hoarded of a food than was taken of it.
  const bounds = boundsOf(left);
  const room = offered.map((f, i) => ({ ...f, grams: Math.max(0, f.grams - (bounds[i]?.low ?? 0)) }));
  const hoarded = pileOf(hoard, room, Math.max(0, sumOf(most) - left.total.low));
  // Where nothing lay there, no night had filled it.
  const shared = others === true && !isNothing(hoard);
  const pile = shared ? upTo(hoarded.pile) : hoarded.pile;
  const split = piles.filter((p) => !isExact(p)).length > 1;
  return {
    taken,
    eaten: { offered, piles: split ? [...piles, pile] : [together([...piles, pile], most)] },
    hoard: shared ? 'in-part' : 'counted',
    doubts: [...doubts, ...hoardDoubts(hoarded.doubts, shared)],
  };
}

/**
 * A hoard that holds more than was taken holds something older. One that other nights may have filled is expected to, and
 * what a scale is off by is no matter then.
 */
function hoardDoubts(doubts: readonly Doubt[], shared: boolean): Doubt[] {
  return doubts.flatMap((d): Doubt[] => {
    if (d.kind === 'more') return shared ? [] : [{ ...d, kind: 'older' }];
    return shared && d.kind !== 'dried' && d.kind !== 'sum' ? [] : [d];
  });
}

/** Every food that was offered, once, with all its grams. */
function allOffered(looks: readonly Look[]): OfferedFood[] {
  const all = new Map<string, OfferedFood>();
  for (const f of looks.flatMap((look) => look.offered)) {
    const before = all.get(f.food);
    all.set(f.food, before ? { ...f, grams: before.grams + f.grams, fresh: before.fresh || f.fresh } : f);
  }
  return [...all.values()];
}

/** A pile in the order of more foods than it can hold. */
function spread(pile: Pile, own: readonly OfferedFood[], all: readonly OfferedFood[]): Pile {
  const at = new Map(own.map((f, i) => [f.food, pile.foods[i]]));
  return { ...pile, foods: all.map((f) => at.get(f.food) ?? { low: 0, high: 0 }) };
}

/** Piles that are known exactly as one, and with the one that is not, where there is one: that loses nothing. */
function mergedPiles(piles: readonly Pile[], most: readonly number[]): Pile[] {
  const open = piles.filter((p) => !isExact(p));
  const exact = piles.filter(isExact);
  if (open.length <= 1) return [together(piles, most)];
  return exact.length === 0 ? open : [...open, together(exact, most)];
}

/** Anything from nothing of it to all of it. */
function upTo(pile: Pile): Pile {
  return {
    ...pileWithin(pile.foods.map(({ high }) => ({ low: 0, high }))),
    total: { low: 0, high: pile.total.high },
  };
}
