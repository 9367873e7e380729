/** The foods that the next batch takes, and the way each of them goes. */
import type { NeededFood } from '../../../kitchen/calendar/supplies.ts';
import { driedPerBought } from '../../../kitchen/drying/yields.ts';
import { needsTreatment } from '../../../kitchen/freezing/freeze-treatment.ts';
import type { Household, Mix } from '../../model.ts';
import { sizeOfNext } from '../batch/next-batch.ts';
import { usedShares } from '../batch/used-shares.ts';
import { groupsIn } from '../cupboard/lot-foods.ts';
import { driedAtHome, freshFoodOf, isFreshIn } from '../foods/fresh-food.ts';
import type { Circumstances, FreshTable } from './circumstances.ts';

/** The foods that the next batch takes. @param mix with what its animals bring */
export function foodsNeeded(
  house: Household,
  mix: Mix,
  { table, chosenFor }: Pick<Circumstances, 'table' | 'chosenFor'>,
): NeededFood[] {
  const groupOf = groupsIn(house);
  const { grams } = sizeOfNext(house, mix, chosenFor(mix.problem));
  const { shares } = usedShares(mix);
  return mix.problem.foods.flatMap((food): NeededFood[] => {
    const share = shares[food.id];
    if (share === undefined) return [];
    const perFresh = perFreshOf(house, food.id, table);
    const fresh = isFreshIn(food, table);
    return [
      {
        id: food.id,
        name: food.name ?? food.id,
        needsTreatment: needsTreatment({ form: 'dry' }, groupOf(food.id)).needs,
        dryAtHome: fresh || driedAtHome(house, food.id) !== undefined,
        ...(fresh && { fresh }),
        ...(perFresh !== undefined && { perFresh }),
        ...(grams !== undefined && { grams: (grams * share) / 100 }),
      },
    ];
  });
}

/** g dried from 1 g of the fresh food as bought; undefined where its water, or what is trimmed off, is not known. */
function perFreshOf(house: Household, food: string, table: FreshTable): number | undefined {
  const how = driedAtHome(house, food);
  const fresh = how && freshFoodOf(how.fresh, house.foods, table);
  const water = fresh?.composition.WATER;
  if (!how || !fresh || water === undefined || water <= how.moisture) return undefined;
  return driedPerBought(fresh, how.moisture, how.trimLoss);
}
