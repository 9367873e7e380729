/** Before a run: a fresh lot, which fresh food it is, and the dryer; then the form that begins the run. */
import { cupboardFoods } from '../../household/reckon/cupboard/lot-foods.ts';
import type { LotStock } from '../../kitchen/cupboard/cupboard.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { words } from '../../words/words.ts';
import { useKitchen } from '../store/kitchen.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { DryerSettings } from './DryerSettings.tsx';
import { FreshChoice } from './FreshChoice.tsx';
import { PlanForm } from './PlanForm.tsx';
import { useFreshFood } from './useFreshFood.ts';

export function PlanRun({ left }: { left: LotStock }) {
  const { lot, grams } = left;
  const { house } = useMixDraft();
  const { kitchen } = useKitchen();
  const { said, fresh } = useFreshFood(lot.food);
  const { plan: t, screen } = words().drying;
  const water = fresh?.composition.WATER;
  const food = cupboardFoods(house).find((f) => f.id === lot.food);
  return (
    <article className="dry-plan">
      <h2 tabIndex={-1}>{t.title(lot.name)}</h2>
      <p className="hint">
        {[
          (lot.frozen ? t.inFreezer : t.inStock)(sayGrams(grams)),
          ...(lot.moisture === undefined ? [] : [t.halfDried(lot.moisture)]),
          ...(!fresh
            ? []
            : [
                water === undefined
                  ? t.freshFood(fresh.name)
                  : t.freshFoodWith(fresh.name, water, fresh.source),
              ]),
        ].join(' ')}
      </p>
      {!said && <FreshChoice food={lot.food} name={food?.name ?? lot.name} />}
      {kitchen.dryer ? (
        <PlanForm key={`${lot.id} ${JSON.stringify(kitchen.dryer)}`} left={left} dryer={kitchen.dryer} />
      ) : (
        <>
          <h3>{screen.yourDryer}</h3>
          <p>{t.loadsFollow}</p>
          <DryerSettings />
        </>
      )}
    </article>
  );
}
