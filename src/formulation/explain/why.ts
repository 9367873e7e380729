/**
 * Why the best mix is as it is: which bounds it stands at, what each costs, and what would come of loosening it a
 * little. Prices are the solver's duals; what is said in words was worked out by solving again with the bound moved.
 */

import { words } from '../../words/words.ts';
import type { Objective } from '../problem/problem.ts';
import type { Reason } from '../problem/result.ts';
import { aimWords } from '../solve/aims.ts';
import type { Bound } from '../solve/bounds.ts';
import { allBounds, countsFoods, type MixModel } from '../solve/mix-model.ts';
import type { Found } from '../solve/mix-solver.ts';
import { AT_BOUND } from '../solve/tolerances.ts';
import { dot, elementAt } from '../solve/vectors.ts';
import { outwards } from './outwards.ts';
import { capital, figure, standing, withUnit } from './sentences.ts';

/** How far a bound is loosened to see what comes of it, part of the bound. */
const STEP = 0.05;
/** A gain smaller than this, relatively, is none. */
const NO_GAIN = 1e-6;
/** A share that moves less than this, percent, is not spoken of. */
const MOVED = 0.1;
const MOST_NAMED = 3;
/** Where foods are counted every answer takes a while: so many bounds are tried. */
const MOST_COUNTED = 6;

interface WhyQuestion {
  readonly model: MixModel;
  /** The best mix. */
  readonly found: Found;
  /** The best mix with the bound at a pointer moved, or gone where `to` is undefined. */
  resolve(pointer: string, to: number | undefined): Pick<Found, 'x' | 'objective'> | undefined;
}

/** One reason for each bound at which the best mix stands, what costs most first. */
export function reasons(question: WhyQuestion): Reason[] {
  const { model, found } = question;
  const binding = allBounds(model).filter((b) => !b.because && standsAt(b, found.x));
  return binding
    .slice(0, countsFoods(model.question) ? MOST_COUNTED : binding.length)
    .map((bound) => reasonOf(bound, question))
    .sort((a, b) => b.gain - a.gain);
}

function standsAt({ value, bound, side }: Bound, x: Float64Array): boolean {
  const actual = value(x);
  const room = side === 'min' ? actual - bound : bound - actual;
  return room <= AT_BOUND * Math.max(1, Math.abs(bound));
}

function reasonOf(bound: Bound, question: WhyQuestion): Reason {
  const { model, found, resolve } = question;
  const names = model.ration.foods.map((f) => f.name);
  const price = priceOf(bound, question);
  const gone = resolve(bound.pointer, undefined);
  const free = gone && bound.value(gone.x);
  const base = { pointer: bound.pointer, from: bound.bound, ...(price === undefined ? {} : { price }) };
  // Under a confidence it is not the average that stands there.
  const t = words().formulation.why;
  const limit = capital(standing(bound, bound.varies ? t.varied(bound.subject) : bound.subject));
  if (!gone || !betterment(gone, question)) {
    return {
      ...base,
      gain: 0,
      sentence: t.free(limit),
    };
  }
  const to = nextBound(bound, free);
  const moved = resolve(bound.pointer, to);
  const better = moved && betterment(moved, question);
  if (!moved || !better) {
    return { ...base, gain: 0, sentence: t.nothing(limit) };
  }
  const changes = changed(found.x, moved.x, names);
  const shares = changes.length > 0 ? t.shares(changes) : '';
  const beyond =
    free !== undefined && Number.isFinite(free) && figure(free) !== figure(to)
      ? t.rest(withUnit(figure(free), bound.unit))
      : '';
  const move = bound.side === 'max' ? t.raise : t.lower;
  const sentence = `${move(limit, withUnit(to, bound.unit), better.words, shares)}${beyond}`;
  return {
    ...base,
    to,
    gain: better.gain,
    objective: moved.objective,
    ...(free === undefined ? {} : { free }),
    sentence,
  };
}

/** What one unit of the bound is worth: the solver's price of the row, turned into the bound's own unit. */
function priceOf(bound: Bound, { found, model }: WhyQuestion): number | undefined {
  const priced = model.question.bounds;
  const k = priced.findIndex((s) => s.pointer === bound.pointer);
  const dual = found.prices?.bounds[k];
  const row = priced[k];
  if (dual === undefined || row === undefined) return undefined;
  const missing = (b: number) => {
    const { g, h, scale } = row.halfSpace(b);
    return scale * (h - dot(g, found.x));
  };
  // A row is a straight line in its bound, so a difference is exact.
  const turn = missing(bound.bound + 0.5) - missing(bound.bound - 0.5);
  return Math.abs((dual / row.halfSpace(bound.bound).scale) * turn);
}

/** The bound loosened by a round step, or just as far as it matters. */
function nextBound({ bound, side, counts }: Bound & { counts?: string }, free: number | undefined): number {
  if (counts === 'some' || counts === 'few') return bound + (side === 'max' ? 1 : -1);
  const rough = Math.max(Math.abs(bound) * STEP, 1e-6);
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((s) => s * power).find((s) => s >= rough * 0.999)!;
  const to = Number((side === 'max' ? bound + step : Math.max(0, bound - step)).toPrecision(9));
  if (free === undefined || !Number.isFinite(free)) return to;
  const further = side === 'max' ? to > free : to < free;
  return further ? outwards(free, side, 3) : to;
}

function changed(before: Float64Array, after: Float64Array, names: readonly string[]): string[] {
  return names
    .map((name, i) => ({ name, from: elementAt(before, i), to: elementAt(after, i) }))
    .filter((c) => Math.abs(c.to - c.from) >= MOVED)
    .sort((a, b) => Math.abs(b.to - b.from) - Math.abs(a.to - a.from))
    .slice(0, MOST_NAMED)
    .map(({ name, from, to }) => {
      const t = words().formulation.why;
      return (to > from ? t.up : t.down)(name, from, to);
    });
}

/** What another mix has before the best one: first things first, so an aim before the objective. */
function betterment(
  other: Pick<Found, 'x' | 'objective'>,
  { found, model }: WhyQuestion,
): { gain: number; words: string } | undefined {
  for (const { sign, value, give, aim } of model.question.aims) {
    const [from, to] = [value(found.x), value(other.x)];
    const gain = sign * (from - to);
    if (gain > give + 3 * NO_GAIN * Math.max(1, Math.abs(from))) {
      return { gain, words: words().formulation.why.bring(aimWords(aim), from, to) };
    }
  }
  const gain = found.objective - other.objective;
  if (gain <= NO_GAIN * Math.max(1, Math.abs(found.objective))) return undefined;
  return { gain, words: betterWords(model.problem.objective, found.objective, other.objective) };
}

function betterWords(objective: Objective, from: number, to: number): string {
  const t = words().formulation.why;
  if (objective === 'cheapest') return t.save((from - to) / 100);
  if (objective === 'varied') return t.varies;
  return t.nearer((1 - Math.sqrt(to / from)) * 100);
}
