/** What the page beside the scale says, and what a reading of the scale means. */
import type { Standing } from '../../household/reckon/batch/batch-standing.ts';
import type { Allocation } from '../../kitchen/cupboard/cupboard.ts';
import { dayInWords } from '../../kitchen/days.ts';
import type { Batch } from '../../kitchen/model.ts';
import { decimalsOf, withoutFloatNoise } from '../../kitchen/rounding.ts';
import type { NextPour, Tolerance, WeighState } from '../../kitchen/weighing/weigh-state.ts';
import { words } from '../../words/words.ts';
import { dayAt } from '../shared/today.ts';

/** What the scale shows: the food alone, set to zero before each; or all that lies in the bowl. */
export type ScaleReads = 'food' | 'bowl';

/** A time as people read it, where they are. @param at ISO 8601 */
export function moment(at: string): string {
  const date = new Date(at);
  const f = words().figures;
  return words().weighing.at(f.day(dayAt(at)), f.clock(date.getHours(), date.getMinutes()));
}

/** The number that the scale is to show for this food, g. */
export function shownTarget(next: NextPour, reads: ScaleReads): number {
  return reads === 'food' ? next.target : next.reading;
}

/** Decimals of ounces on the screen. */
const OUNCE_PLACES = 2;

/** One step of the scale in the unit that the keeper reads, and the decimals it is written with. @param step g */
export function scaleStepShown(step: number): [size: number, places: number] {
  const f = words().figures;
  if (f.massUnit === 'g') return [step, decimalsOf(step)];
  return [Math.max(10 ** -OUNCE_PLACES, Number(f.mass(step).toFixed(OUNCE_PLACES))), OUNCE_PLACES];
}

/**
 * Grams that a typed number stands for; undefined where nothing is typed, NaN where it is no number. In ounces, what reads
 * like the target is the target: finer than that nobody can read.
 * @param typed in the keeper's unit @param target g
 */
export function typedGrams(typed: number | undefined, target: number): number | undefined {
  const f = words().figures;
  if (typed === undefined || !Number.isFinite(typed) || f.massUnit === 'g') return typed;
  const same = Math.abs(typed - Number(f.mass(target).toFixed(OUNCE_PLACES))) < 1e-9;
  return same ? target : Number(f.gramsOf(typed).toFixed(2));
}

/** Grams of one food that a reading stands for, or what is wrong with the reading. @param reading g @param inBowl g before the pour */
export function gramsOf(
  reading: number | undefined,
  inBowl: number,
  reads: ScaleReads,
): { readonly grams: number } | { readonly fault: string } {
  const t = words().weighing.reading;
  if (reading === undefined) return { fault: t.missing };
  if (!Number.isFinite(reading)) return { fault: t.noNumber };
  const grams = withoutFloatNoise(reads === 'food' ? reading : reading - inBowl);
  if (grams < 0) return { fault: reads === 'food' ? t.belowZero(reading) : t.lessThanBowl(reading, inBowl) };
  return grams === 0 ? { fault: t.nothing } : { grams };
}

/** "Anything from 14 to 17 g keeps the ration in range." */
export function toleranceWords(next: NextPour, reads: ScaleReads, planned: number): string {
  const t = words().weighing.tolerance;
  const { asPlanned, grown } = next;
  const onScale = reads === 'bowl';
  const ends = ({ low, high }: Tolerance) =>
    onScale ? ([next.poured + low, next.poured + high] as const) : ([low, high] as const);
  const said = (span: Tolerance) => {
    const [low, high] = ends(span);
    if (low === high) return t.only(low, onScale);
    return span.low === 0 ? t.upTo(high, onScale) : t.between(low, high, onScale);
  };
  if (asPlanned && grown) {
    const [low, high] = ends(grown);
    return `${said(asPlanned)} ${t.orWider(grown.low === 0 ? 0 : low, high, grown.total)}`;
  }
  if (asPlanned) return said(asPlanned);
  if (!grown) return t.none;
  return `${said(grown)} ${grown.total > planned ? t.grows(grown.total) : t.comesTo(grown.total)}`;
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
  const t = words().weighing.status;
  const other = Object.entries(state.targets).some(([food, g]) => Math.abs(g - (planned[food] ?? 0)) > 1e-9);
  const status = state.status === 'as planned' && other ? 'corrected' : state.status;
  switch (status) {
    case 'as planned':
      return { status, shape: '=', words: t['as planned'] };
    case 'corrected':
      return { status, shape: '↻', words: t.corrected };
    case 'grown':
      return {
        status,
        shape: '▲',
        words: state.total > grams ? t.grown(state.total) : t.changedSize(state.total),
      };
    case 'asked':
      return { status, shape: '?', words: t.asked };
    case 'out':
      return { status, shape: '!', words: words().weighing.lost.region };
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
  const t = words().batch.record;
  if (batch.givenUp) return t.givenUpWhy(batch.givenUp.note);
  return batch.accepted ? t.acceptedWhy(batch.accepted.note) : '';
}

/** Steps in which kitchen scales read, g: of gram scales, and where the keeper reads ounces of ounce scales too. */
export function scaleSteps(): readonly number[] {
  const grams = [0.01, 0.1, 0.5, 1, 2, 5];
  const f = words().figures;
  if (f.massUnit === 'g') return grams;
  return [0.01, 0.05, 0.1, 0.25].map((ounces) => Number(f.gramsOf(ounces).toFixed(4)));
}

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
  };
}

/** Foods that may be poured beside the one asked for: those still to come, then those poured, then those not planned. */
export function otherFoods(
  batch: Batch,
  standing: Standing,
): readonly (readonly [id: string, words: string])[] {
  const t = words().weighing.list;
  const { state, inBowl, planned, names, next } = standing;
  const place = (food: string): 0 | 1 | 2 =>
    batch.pours.some((p) => p.food === food) ? 1 : (state.targets[food] ?? 0) > 0 ? 0 : 2;
  const all = [...new Set([...batch.order, ...Object.keys(state.targets)])];
  return all
    .filter((food) => food !== next?.food)
    .sort((a, b) => place(a) - place(b))
    .map((food) => {
      const name = names[food] ?? food;
      const said = [
        t.otherToCome(name, state.targets[food] ?? 0),
        t.otherMore(name, inBowl[food] ?? 0),
        (planned[food] ?? 0) > 0 ? t.otherLeftOut(name) : t.otherNotPlanned(name),
      ] as const;
      return [food, said[place(food)]] as const;
    });
}

/** Packs that a food comes from, by name and day, with how much of each where it is more than one or not enough. */
export function packWords({ takes, short }: Allocation): string[] {
  const t = words().weighing.lots;
  return takes.map(({ lot, grams }) => {
    const day = dayInWords(lot.boughtOn);
    const name = lot.name.includes(day) ? lot.name : t.bought(lot.name, day);
    return takes.length > 1 || short > 0 ? t.grams(name, grams) : name;
  });
}

/** A time later than that of every pour until now: no two pours of a batch have the same, and they stay in their order. */
export function afterThose(pours: Batch['pours'], now: string): string {
  const last = Math.max(...pours.map((p) => Date.parse(p.at)));
  return last >= Date.parse(now) ? new Date(last + 1).toISOString() : now;
}
