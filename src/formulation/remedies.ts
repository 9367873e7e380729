/** What would mend a problem that no mix can solve: the least loosening of one bound, or one further food. */
import type { Reference, ReferenceFood } from '../foods/reference.ts';
import { type Elastic, KEPT } from './elastic.ts';
import { type Stocked, stock } from './larder.ts';
import type { Problem } from './problem.ts';
import type { Addition, Loosening } from './result.ts';
import type { Side } from './sides.ts';

const MOST_ADDITIONS = 5;
/** Foods whose price says they might help are verified in order of it, this many at most. */
const MOST_VERIFIED = 60;

/** A dry mix takes no food damper than this, g of water per 100 g (common practice, no source). */
const DAMPEST = 20;

/** Every single bound of the conflict whose loosening suffices, least relative change first. */
export function loosenings(elastic: Elastic, conflict: readonly number[]): Loosening[] {
  return conflict.flatMap((k) => loosen(elastic, k) ?? []).sort((a, b) => change(a) - change(b));
}

const change = (l: Loosening) => Math.abs(l.to - l.from) / Math.max(1, Math.abs(l.from));

/**
 * Smallest loosening of one side with all others kept. A ratio's row turns with its bound, so the bound found is
 * put in and the question asked again until it stands still.
 */
function loosen(elastic: Elastic, k: number): Loosening | undefined {
  const side = elastic.sides[k]!;
  const others = new Set([...elastic.sides.keys()].filter((other) => other !== k));
  const all = new Set(elastic.sides.keys());
  let bound = side.bound;
  try {
    for (let round = 0; round < 50; round++) {
      const answer = elastic.solve(others, (j) => (j === k ? 1 : 0));
      if (!answer) return undefined;
      if (answer.missed[k]! <= KEPT && round > 0) break;
      const next = side.value(answer.x);
      if (!Number.isFinite(next)) return undefined;
      bound = next;
      elastic.rebound(k, bound);
    }
    // Rounded outwards to figures a person can type; a little wider where rounding met the edge.
    for (let digits = 4; digits <= 9; digits++) {
      const to = outwards(bound, side.side, digits);
      if (!allowed(side, to)) continue;
      elastic.rebound(k, to);
      if (elastic.possible(all))
        return {
          kind: 'loosen',
          pointer: side.pointer,
          from: side.bound,
          to,
          sentence: loosenSentence(side, to),
        };
    }
    return undefined;
  } finally {
    elastic.rebound(k, side.bound);
  }
}

function outwards(bound: number, side: 'min' | 'max', digits: number): number {
  const magnitude = 10 ** (digits - 1 - Math.floor(Math.log10(Math.max(Math.abs(bound), 1e-9))));
  const widened = side === 'max' ? bound * (1 + 1e-9) + 1e-9 : bound * (1 - 1e-9) - 1e-9;
  const rounded = side === 'max' ? Math.ceil(widened * magnitude) : Math.floor(widened * magnitude);
  return Math.max(0, Number((rounded / magnitude).toPrecision(12)));
}

/** Whether the loosened bound may be written in the problem: shares and grams end at 100. */
function allowed(side: Side, to: number): boolean {
  return side.unit.startsWith('%') ? to <= 100 : true;
}

function loosenSentence(side: Side, to: number): string {
  const limit = side.side === 'max' ? 'at most' : 'at least';
  const unit = side.unit ? ` ${side.unit}` : '';
  return `Allow ${side.subject} of ${limit} ${to}${unit} instead of ${side.bound}${unit}.`;
}

/** Foods that keepers use, one of which would make the problem solvable, least share needed first; each verified. */
export function additions(
  elastic: Elastic,
  problem: Problem,
  foods: readonly Stocked[],
  reference: Reference,
): Addition[] {
  const answer = elastic.solve(new Set());
  if (!answer) return [];
  const taken = new Set(problem.foods.map((f) => f.ref));
  const ruled = problem.rules.flatMap((r) =>
    'nutrient' in r ? [r.nutrient] : 'ratio' in r ? [...r.ratio] : [],
  );
  const ids = new Set([...problem.foods, ...problem.beside].map((f) => f.id));
  const priced = reference
    .plainFoods()
    .filter((food) => !taken.has(food.ref) && (food.composition.WATER ?? 100) <= DAMPEST)
    .map((food) => ({
      food,
      candidate: stock({ id: food.ref, ref: food.ref, group: food.group }, reference),
    }))
    // Advice must not rest on a missing figure.
    .filter(({ candidate }) => ruled.every((tag) => candidate.amount(tag).status !== 'unknown'))
    .map(({ food, candidate }) => {
      const column = elastic.column(foods, candidate);
      // Reduced cost: how fast the total miss would fall for each percent of this food. None below 0, no help.
      const gain = column.reduce((sum, v, row) => sum + v * (answer.prices[row] ?? 0), 0);
      return { food, column, gain };
    })
    .filter((c) => c.gain > 1e-9)
    .sort((a, b) => b.gain - a.gain)
    .slice(0, MOST_VERIFIED);
  const price = dearest(problem);
  return priced
    .flatMap(({ food, column }) => {
      const share = elastic.leastShare(column);
      return share === undefined ? [] : [addition(food, share, ids, price)];
    })
    .sort((a, b) => a.share - b.share)
    .slice(0, MOST_ADDITIONS);
}

/** Where the cheapest mix is asked every food needs a price; a food not bought yet counts like the dearest one. */
function dearest(problem: Problem): number | undefined {
  if (problem.objective !== 'cheapest') return undefined;
  return Math.max(...problem.foods.map((f) => f.price_per_kg ?? 0));
}

function addition(
  food: ReferenceFood,
  least: number,
  ids: ReadonlySet<string>,
  price: number | undefined,
): Addition {
  const share = Number((Math.ceil(least * 100 + 1e-6) / 100).toFixed(2));
  const id = ids.has(food.ref) ? `${food.ref}+` : food.ref;
  return {
    kind: 'add',
    sentence: `Add ${food.name} (${food.ref}): ${share} % of the mix is enough.${price === undefined ? '' : ` Its price is taken as ${price} per kg, like the dearest food; put in the real one.`}`,
    food: {
      id,
      ref: food.ref,
      name: food.name,
      group: food.group,
      ...(price === undefined ? {} : { price_per_kg: price }),
    },
    share,
  };
}
