/** What is fed beside the mix: shares and grams a day kept in step, and the room left. */
import type { ReferenceFood } from '../../../foods/reference.ts';
import { AIR_DRY, type Beside, type Problem } from '../../../formulation/problem/problem.ts';
import type { Evaluation } from '../../../formulation/problem/result.ts';
import { airDryPart, canBeAirDry } from '../../../nutrition/air-dry.ts';
import type { Mix, OwnFood } from '../../model.ts';
import { besideFromOwn, ingredientFromReference, withProblem } from './mix-edits.ts';

/**
 * From this water on, g per 100 g, a food is taken for fresh (common practice, no source). Dried fruit as it is sold
 * holds up to about 32, fresh garlic 59.
 */
const FRESH_WATER = 40;

/** The mix has to be something: its least part of the ration, percent. */
export const LEAST_MIX = 1;

/** Moisture of a food, g per 100 g; undefined where nobody knows it. */
export type WaterOf = (food: Beside) => number | undefined;

/** Whether a food is taken for fresh; one of unknown moisture is not. @param water g per 100 g */
export function isFresh(water: number | undefined): boolean {
  return canBeAirDry(water) && water >= FRESH_WATER;
}

/** Grams that count towards the ration for one gram on the scale; 1 for all but fresh food counted air dry. */
export function countedPart(food: Pick<Beside, 'counts_as'>, water: number | undefined): number {
  return food.counts_as === AIR_DRY ? airDryPart(water) : 1;
}

/** Percent of the ration. @param part of a gram that counts, see {@link countedPart} */
export function shareOfGrams(grams: number, daily: number, part: number): number {
  return (100 * grams * part) / daily;
}

/** Grams a day, as weighed. @param part of a gram that counts, see {@link countedPart} */
export function gramsOfShare(share: number, daily: number, part: number): number {
  return (share * daily) / (100 * part);
}

/** Most that one food beside the mix may take, percent of the ration: what the others and the mix leave. */
export function roomFor(problem: Problem, id: string): number {
  const others = problem.beside.reduce((sum, b) => sum + (b.id === id ? 0 : b.share_of_ration), 0);
  return Math.max(0, 100 - LEAST_MIX - others);
}

/** Least whole ration of a day, g, for which the foods given in grams leave the mix its part; 0 where none is. */
export function leastDaily(problem: Problem, waterOf: WaterOf): number {
  let grams = 0;
  let room = 100 - LEAST_MIX;
  for (const b of problem.beside) {
    if (b.grams_a_day === undefined) room -= b.share_of_ration;
    else grams += b.grams_a_day * countedPart(b, waterOf(b));
  }
  return grams === 0 ? 0 : room > 0 ? (100 * grams) / room : Number.POSITIVE_INFINITY;
}

/**
 * What a food beside begins with, percent of the ration; a pellet is half of it, and one beside another takes a little of
 * that other one's share (common practice, no source).
 */
const START = { pellet: 50, further: 10, dry: 5, fresh: 1 } as const;

/** Id of a reference food fed beside: the same food may be in the mix too, so here it has an id of its own. */
export function besideId(food: ReferenceFood): string {
  return `beside-${ingredientFromReference(food).id}`;
}

/** A food of the keeper's as it begins beside the mix, as far as there is room; a fresh one counts air dry. */
export function ownBeside(food: OwnFood, problem: Problem): Beside {
  const fresh = isFresh(food.composition.WATER);
  if (!fresh && food.kind === 'pellet' && problem.beside.length > 0)
    return besideFromOwn(food, Math.min(START.further, givenUpFor(food.id, problem).share));
  const start = fresh ? START.fresh : food.kind === 'pellet' ? START.pellet : START.dry;
  return airDry(besideFromOwn(food, Math.min(start, roomFor(problem, food.id))), fresh);
}

/**
 * What a further pellet may take, percent of the ration, and from what beside it: half at most of the largest that is fed
 * by share; where there is none, half of the mix.
 */
function givenUpFor(id: string, problem: Problem): { readonly from?: Beside; readonly share: number } {
  const room = ({ share_of_ration: share, share_min = 0 }: Beside) => Math.min(share / 2, share - share_min);
  const [from] = problem.beside
    .filter((b) => b.grams_a_day === undefined && room(b) > 0)
    .toSorted((a, b) => b.share_of_ration - a.share_of_ration);
  return from ? { from, share: room(from) } : { share: roomFor(problem, id) / 2 };
}

/** A reference food as it begins beside the mix, as far as there is room; a fresh one counts air dry. */
export function referenceBeside(food: ReferenceFood, problem: Problem): Beside {
  const fresh = isFresh(food.composition.WATER);
  const share_of_ration = Math.min(fresh ? START.fresh : START.dry, roomFor(problem, besideId(food)));
  return airDry({ id: besideId(food), name: food.name, ref: food.ref, share_of_ration }, fresh);
}

function airDry(food: Beside, fresh: boolean): Beside {
  return fresh ? { ...food, counts_as: AIR_DRY } : food;
}

/**
 * Adds a food beside the mix; one that is fed already, in the mix or beside it, is left as it stands. What is more than a trifle
 * takes its share from the pellet that is fed already, so that the mix keeps its own.
 */
export function addBeside(mix: Mix, food: Beside): Mix {
  const { foods, beside } = mix.problem;
  if ([...foods, ...beside].some((f) => f.id === food.id)) return mix;
  const wanted = food.share_of_ration;
  const { from, share } = givenUpFor(food.id, mix.problem);
  const taken = wanted < START.dry ? 0 : Math.min(wanted, share);
  const others = beside.map((b) => (b === from ? { ...b, share_of_ration: b.share_of_ration - taken } : b));
  return withBeside(mix, [...others, food]);
}

export function removeBeside(mix: Mix, id: string): Mix {
  return withBeside(
    mix,
    mix.problem.beside.filter((b) => b.id !== id),
  );
}

/** Fed as a share of the ration. */
export function byShare(mix: Mix, id: string, share: number): Mix {
  return changed(mix, id, ({ grams_a_day: _, ...b }) => ({ ...b, share_of_ration: share }));
}

/** Fed by grams a day; without a whole ration of a day nothing changes, for the grams would say no share. */
export function byGrams(mix: Mix, id: string, grams: number, waterOf: WaterOf): Mix {
  const daily = mix.problem.daily_grams;
  return daily === undefined
    ? mix
    : changed(mix, id, (b) => inStep({ ...b, grams_a_day: grams }, daily, waterOf));
}

/** Bounds within which the share may be chosen, percent; with neither it stays as written. */
export function withChoice(mix: Mix, id: string, least: number | undefined, most: number | undefined): Mix {
  return changed(mix, id, ({ share_min: _, share_max: __, ...b }) => ({
    ...b,
    ...(least !== undefined && { share_min: least }),
    ...(most !== undefined && { share_max: most }),
  }));
}

/** Counts a fresh food without its water, or as weighed; grams a day stay, their share follows. */
export function countAirDry(mix: Mix, id: string, airDry: boolean, waterOf: WaterOf): Mix {
  return changed(mix, id, ({ counts_as: _, ...b }) => {
    const next: Beside = airDry ? { ...b, counts_as: AIR_DRY } : b;
    return inStep(next, mix.problem.daily_grams, waterOf);
  });
}

/** The whole ration of a day: grams a day stay and their shares follow; without one, shares stay and grams go. */
export function withDaily(mix: Mix, daily: number | undefined, waterOf: WaterOf): Mix {
  const beside = mix.problem.beside.map((b) => {
    if (daily !== undefined) return inStep(b, daily, waterOf);
    const { grams_a_day: _, ...shared } = b;
    return shared;
  });
  return withProblem(mix, { daily_grams: daily, beside });
}

function inStep(b: Beside, daily: number | undefined, waterOf: WaterOf): Beside {
  if (b.grams_a_day === undefined || daily === undefined) return b;
  return { ...b, share_of_ration: shareOfGrams(b.grams_a_day, daily, countedPart(b, waterOf(b))) };
}

function changed(mix: Mix, id: string, next: (b: Beside) => Beside): Mix {
  return withBeside(
    mix,
    mix.problem.beside.map((b) => (b.id === id ? next(b) : b)),
  );
}

function withBeside(mix: Mix, beside: readonly Beside[]): Mix {
  return withProblem(mix, { beside });
}

/** Whether the share of a food beside the mix is left open. */
export function isChosen(b: Beside): boolean {
  return b.share_min !== undefined || b.share_max !== undefined;
}

/** Percent of the ration that a food beside the mix gets: as written, or as chosen once that is worked out. */
export function shareNow(b: Beside, at: Pick<Evaluation, 'beside'> | undefined): number {
  return (isChosen(b) ? at?.beside?.[b.id]?.share : undefined) ?? b.share_of_ration;
}

/** All that is fed beside the mix, percent of the ration. */
export function besideTotal(
  problem: Pick<Problem, 'beside'>,
  at: Pick<Evaluation, 'beside'> | undefined,
): number {
  return problem.beside.reduce((sum, b) => sum + shareNow(b, at), 0);
}

/** What the animals of a mix are fed a day, g, as a suggestion for the whole ration; undefined where nobody has said. */
export function dailyOf(
  animals: readonly { readonly id: string; readonly name: string; readonly dailyGrams?: number }[],
  ids: readonly string[],
): { names: string[]; sum: number; mean: number } | undefined {
  const said = animals.flatMap(({ id, name, dailyGrams: grams }) =>
    ids.includes(id) && grams !== undefined ? [{ name, grams }] : [],
  );
  if (said.length === 0) return undefined;
  const sum = said.reduce((total, a) => total + a.grams, 0);
  return { names: said.map((a) => a.name), sum, mean: sum / said.length };
}
