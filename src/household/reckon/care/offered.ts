/** What one feeding offered: the mix food by food, as it was weighed out, and what was fed beside it. */
import type { Feeding } from '../../../care/model.ts';
import type { Beside, Ingredient } from '../../../formulation/problem/problem.ts';
import { pouredFoods, type WeighedFood } from '../../../kitchen/batch/weighed-problem.ts';
import type { Batch } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import type { Household } from '../../model.ts';
import { usedShares } from '../batch/used-shares.ts';
import { foodKeys } from '../foods/same-food.ts';
import { ingredientFromOwn } from '../mix/mix-edits.ts';
import { mixesOf } from '../mix/refusals.ts';

type Kept = Pick<Household, 'foods' | 'mixes' | 'batches' | 'lots'>;

/** One food of a feeding. */
export interface OfferedPart {
  /** The same for all ids of one food; left-overs are told apart by it. */
  readonly food: string;
  /** As its mix or the keeper's foods call it; its id where nothing does. */
  readonly name: string;
  /** g as weighed. */
  readonly grams: number;
  readonly from: 'mix' | 'beside';
  /** What it is made of, as far as that is known; nothing of a food that nobody knows. */
  readonly made: Ingredient | Beside;
  /** The packs it came from, where they are named: their measured moisture counts. */
  readonly lots: WeighedFood['lots'];
}

/**
 * Where the foods of the mix come from: what was poured into the batch; the planned shares, where nobody knows the batch or
 * nothing was poured; nobody knows, and it counts as one food of which nothing is known; or no mix was offered.
 */
export type MixKnown = 'poured' | 'planned' | 'unknown' | 'none';

export interface Offered {
  /** Foods of the mix, the largest share first, then what was fed beside it. */
  readonly foods: readonly OfferedPart[];
  readonly mix: MixKnown;
}

/** Id of a mix of which nobody knows what is in it. */
export const UNKNOWN_MIX = 'mix';

/** What a feeding offered, g of each food: its grams of mix by the shares that the batch was poured with, and what was beside it. */
export function offeredOf(house: Kept, feeding: Pick<Feeding, 'animalId' | 'mix' | 'beside'>): Offered {
  const keyOf = foodKeys(house);
  const { mix } = feeding;
  const ofMix = mix && mix.grams > 0 ? mixParts(house, feeding.animalId, mix) : undefined;
  const batch = house.batches.find((b) => b.id === mix?.batchId);
  const parts = ofMix?.parts.map(
    ({ made, grams, lots }): OfferedPart => ({
      food: made.id === UNKNOWN_MIX ? UNKNOWN_MIX : keyOf(made.id),
      name: made.name ?? made.id,
      grams,
      from: 'mix',
      made,
      lots,
    }),
  );
  const beside = feeding.beside
    .filter((b) => b.grams > 0)
    .map(({ food, lot, grams }): OfferedPart => {
      const made = besideMade(house, food, batch);
      const pack = house.lots.find((l) => l.id === lot);
      return {
        food: keyOf(food),
        name: made.name ?? food,
        grams,
        from: 'beside',
        made,
        lots: pack ? [{ lot: pack, grams }] : [],
      };
    });
  return { foods: [...(parts ?? []), ...beside], mix: ofMix?.known ?? 'none' };
}

interface MixPart {
  readonly made: Ingredient;
  readonly grams: number;
  readonly lots: WeighedFood['lots'];
}

function mixParts(
  house: Kept,
  animalId: string,
  { batchId, grams }: NonNullable<Feeding['mix']>,
): { readonly parts: readonly MixPart[]; readonly known: MixKnown } {
  const batch = house.batches.find((b) => b.id === batchId);
  const poured = batch ? pouredShares(house, batch) : [];
  if (batch && poured.length > 0)
    return { parts: byShare(batch.problem.foods, poured, grams), known: 'poured' };
  const plan = batch ?? plannedFor(house, animalId);
  const shares = Object.entries(plan?.shares ?? {}).flatMap(([food, share]) =>
    share > 0 ? [{ food, grams: share, lots: [] }] : [],
  );
  if (plan && shares.length > 0)
    return { parts: byShare(plan.problem.foods, shares, grams), known: 'planned' };
  const made = { id: UNKNOWN_MIX, name: words().leftovers.unknownMix, composition: {} };
  return { parts: [{ made, grams, lots: [] }], known: 'unknown' };
}

/** What lies in a batch, food by food; packs that are no longer kept are passed over. */
function pouredShares(house: Kept, batch: Batch): WeighedFood[] {
  const kept = new Set(house.lots.map((l) => l.id));
  const pours = batch.pours.map((p) => ({ ...p, lots: p.lots.filter((l) => kept.has(l.lot)) }));
  return pouredFoods({ ...batch, pours }, house).filter((f) => f.grams > 0);
}

function byShare(
  foods: readonly Ingredient[],
  weighed: readonly WeighedFood[],
  grams: number,
): readonly MixPart[] {
  const all = weighed.reduce((sum, f) => sum + f.grams, 0);
  const made = new Map(foods.map((f) => [f.id, f]));
  return weighed
    .map((f) => ({
      made: made.get(f.food) ?? { id: f.food, composition: {} },
      grams: (grams * f.grams) / all,
      lots: f.lots,
    }))
    .sort((a, b) => b.grams - a.grams);
}

/** The only mix that is made for the animal, by its shares; undefined where there are several, or none is whole. */
function plannedFor(house: Kept, animalId: string): Pick<Batch, 'problem' | 'shares'> | undefined {
  const whole = mixesOf(house.mixes, animalId).filter((m) => usedShares(m).whole);
  const [only, ...others] = whole;
  return only && others.length === 0 ? { problem: only.problem, shares: usedShares(only).shares } : undefined;
}

/** What a food fed beside is made of: as the batch's problem has it, as the keeper's food, as another mix has it. */
function besideMade(house: Kept, food: string, batch: Batch | undefined): Ingredient | Beside {
  const own = house.foods.find((f) => f.id === food);
  const problems = [...(batch ? [batch] : []), ...house.mixes, ...house.batches].map((m) => m.problem);
  const named =
    batch?.problem.beside.find((b) => b.id === food) ??
    (own && ingredientFromOwn(own)) ??
    problems.flatMap((p) => [...p.beside, ...p.foods]).find((f) => f.id === food);
  if (named) return named;
  return /^\w+:/.test(food) ? { id: food, ref: food } : { id: food, composition: {} };
}
