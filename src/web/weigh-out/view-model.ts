/** What the page beside the scale says, and what a reading of the scale means. */
import { capital } from '../../formulation/explain/sentences.ts';
import type { Standing } from '../../household/reckon/batch/batch-standing.ts';
import type { Batch } from '../../kitchen/model.ts';
import { withoutFloatNoise } from '../../kitchen/rounding.ts';
import type { NextPour, Tolerance, WeighState } from '../../kitchen/weighing/weigh-state.ts';
import { gramWords } from '../shared/words/gram-words.ts';

/** What the scale shows: the food alone, set to zero before each; or all that lies in the bowl. */
export type ScaleReads = 'food' | 'bowl';

/** A time as people read it, where they are. @param at ISO 8601 */
export function moment(at: string): string {
  return new Date(at).toLocaleString('en-GB', { dateStyle: 'long', timeStyle: 'short' });
}

/** The number that the scale is to show for this food, g. */
export function shownTarget(next: NextPour, reads: ScaleReads): number {
  return reads === 'food' ? next.target : next.reading;
}

/** Grams of one food that a reading stands for, or what is wrong with the reading. @param inBowl g before the pour */
export function gramsOf(
  reading: number | undefined,
  inBowl: number,
  reads: ScaleReads,
): { readonly grams: number } | { readonly fault: string } {
  if (reading === undefined) return { fault: 'Write what the scale shows, in g.' };
  if (!Number.isFinite(reading))
    return { fault: 'That is not a number; write for example 15 or 15.5, in g.' };
  const grams = withoutFloatNoise(reads === 'food' ? reading : reading - inBowl);
  if (grams < 0)
    return {
      fault:
        reads === 'food'
          ? `${gramWords(reading)} is below 0. Set the empty scale to zero and weigh again.`
          : `${gramWords(reading)} is less than the ${gramWords(inBowl)} that lay in the bowl. If the scale was set to zero, choose “this food alone”.`,
    };
  if (grams === 0) return { fault: 'Nothing was poured. To do without this food, press “Leave it out”.' };
  return { grams };
}

/** "Anything from 14 to 17 g keeps the ration in range." */
export function toleranceWords(next: NextPour, reads: ScaleReads, planned: number): string {
  const { asPlanned, grown } = next;
  const on = reads === 'bowl' ? ' on the scale' : '';
  const words = (t: Tolerance) => {
    const [low, high] = reads === 'food' ? [t.low, t.high] : [next.poured + t.low, next.poured + t.high];
    if (low === high) return `only ${gramWords(low)}${on}`;
    if (t.low === 0) return `anything up to ${gramWords(high)}${on}`;
    return `anything from ${Number(low.toFixed(2))} to ${gramWords(high)}${on}`;
  };
  const size = (total: number) =>
    `the batch ${total > planned ? 'may grow to' : 'comes to'} ${gramWords(total)}`;
  if (!asPlanned && !grown) return 'No amount of it brings the ration into range; this is the nearest.';
  if (!asPlanned) return `${capital(words(grown!))} keeps the ration in range if ${size(grown!.total)}.`;
  const first = `${capital(words(asPlanned))} keeps the ration in range`;
  return grown ? `${first}; ${words(grown)} if ${size(grown.total)}.` : `${first}.`;
}

interface StatusWords {
  readonly status: WeighState['status'];
  readonly shape: string;
  readonly words: string;
}

/**
 * How the batch stands against its plan, as a shape and in words. A batch that was corrected before stays so, though
 * the last pour changed nothing more.
 * @param grams of the batch as planned
 */
export function statusWords(
  { state, planned }: Pick<Standing, 'state' | 'planned'>,
  grams: number,
): StatusWords {
  const other = Object.entries(state.targets).some(([food, g]) => Math.abs(g - (planned[food] ?? 0)) > 1e-9);
  const status = state.status === 'as planned' && other ? 'corrected' : state.status;
  switch (status) {
    case 'as planned':
      return { status, shape: '✓', words: 'As planned' };
    case 'corrected':
      return { status, shape: '↻', words: 'Corrected: other targets, in range' };
    case 'grown': {
      const size = `${state.total > grams ? 'Grown' : 'Changed'} to ${gramWords(state.total)}`;
      return { status, shape: '▲', words: `${size}: other targets, in range` };
    }
    case 'out':
      return { status, shape: '!', words: 'Out of range' };
  }
}

/** One food of the list beside the scale. */
export interface FoodLine {
  readonly food: string;
  readonly name: string;
  readonly state: 'poured' | 'left out' | 'now' | 'to come';
  /** g in the bowl. */
  readonly poured: number;
  /** g in the end, and as planned. */
  readonly target: number;
  readonly planned: number;
}

/** What is done and what comes, in the order of pouring; foods that are neither planned nor poured nor wanted are left out. */
export function foodLines(batch: Batch, standing: Standing): FoodLine[] {
  const { state, planned, inBowl, names, next } = standing;
  const touched = new Set(batch.pours.map((p) => p.food));
  const all = [...new Set([...batch.order, ...Object.keys(state.targets)])];
  return all.flatMap((food): FoodLine[] => {
    const line = {
      food,
      name: names[food] ?? food,
      poured: inBowl[food] ?? 0,
      target: state.targets[food] ?? 0,
      planned: planned[food] ?? 0,
    };
    if (line.planned === 0 && line.target === 0 && !touched.has(food)) return [];
    const is =
      next?.food === food
        ? 'now'
        : touched.has(food)
          ? line.target > line.poured + 1e-9
            ? 'to come'
            : line.poured > 0
              ? 'poured'
              : 'left out'
          : line.target > 0
            ? 'to come'
            : 'left out';
    return [{ ...line, state: is }];
  });
}

/** How a batch ended, in a few words; empty where it is in range or still being weighed. */
export function endWords(batch: Batch): string {
  if (batch.givenUp) return `Given up; not to be fed: ${batch.givenUp.note}`;
  return batch.accepted ? `Accepted out of range: ${batch.accepted.note}` : '';
}

/** Steps in which kitchen scales read, g. */
export const SCALE_STEPS: readonly number[] = [0.01, 0.1, 0.5, 1, 2, 5];

/**
 * Another food of the batch than the one asked for, as the page shows it: poured in its place, or by mistake. Without
 * amounts that keep the batch in range: the targets follow once it is poured.
 */
export function insteadOf(standing: Standing, batch: Batch, food: string): NextPour {
  const { state, inBowl, total, names } = standing;
  const target = Math.max(0, withoutFloatNoise((state.targets[food] ?? 0) - (inBowl[food] ?? 0)));
  return {
    food,
    name: names[food] ?? food,
    target,
    reading: withoutFloatNoise(total + target),
    again: batch.pours.some((p) => p.food === food),
    poured: total,
    remaining: withoutFloatNoise(state.total - total),
    sentence: '',
  };
}

/** Foods that may be poured beside the one asked for: those still to come, then those poured, then those not planned. */
export function otherFoods(
  batch: Batch,
  standing: Standing,
): readonly (readonly [id: string, words: string])[] {
  const { state, inBowl, planned, names, next } = standing;
  const place = (food: string): 0 | 1 | 2 =>
    batch.pours.some((p) => p.food === food) ? 1 : (state.targets[food] ?? 0) > 0 ? 0 : 2;
  const all = [...new Set([...batch.order, ...Object.keys(state.targets)])];
  return all
    .filter((food) => food !== next?.food)
    .sort((a, b) => place(a) - place(b))
    .map((food) => {
      const name = names[food] ?? food;
      const words = [
        `${name}, ${gramWords(state.targets[food] ?? 0)} to come`,
        `more of ${name}, ${gramWords(inBowl[food] ?? 0)} in the bowl`,
        `${name}, ${(planned[food] ?? 0) > 0 ? 'left out now' : 'not planned'}`,
      ] as const;
      return [food, words[place(food)]] as const;
    });
}
