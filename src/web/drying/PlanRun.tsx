/** Before a run: a fresh lot, which fresh food it is, and the dryer; then the form that begins the run. */
import { cupboardFoods } from '../../household/reckon/cupboard/lot-foods.ts';
import type { LotStock } from '../../kitchen/cupboard/cupboard.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { useKitchen } from '../store/kitchen.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { DryerSettings } from './DryerSettings.tsx';
import { FreshChoice } from './FreshChoice.tsx';
import { asText } from './LabelledNumber.tsx';
import { PlanForm } from './PlanForm.tsx';
import { useFreshFood } from './useFreshFood.ts';

export function PlanRun({ left }: { left: LotStock }) {
  const { lot, grams } = left;
  const { house } = useMixDraft();
  const { kitchen } = useKitchen();
  const { said, fresh } = useFreshFood(lot.food);
  const food = cupboardFoods(house).find((f) => f.id === lot.food);
  return (
    <article className="dry-plan">
      <h2 tabIndex={-1}>Dry {lot.name}</h2>
      <p className="hint">
        {sayGrams(grams)} in the {lot.frozen ? 'freezer' : 'cupboard'}
        {lot.moisture !== undefined && `, half dried: ${asText(lot.moisture)} % water`}
        {fresh && `. Fresh food: ${fresh.name}`}
        {fresh?.composition.WATER !== undefined &&
          `, ${asText(fresh.composition.WATER)} % water (${fresh.source})`}
        .
      </p>
      {!said && <FreshChoice food={lot.food} name={food?.name ?? lot.name} />}
      {kitchen.dryer ? (
        <PlanForm key={`${lot.id} ${JSON.stringify(kitchen.dryer)}`} left={left} dryer={kitchen.dryer} />
      ) : (
        <>
          <h3>Your dryer</h3>
          <p>How many loads it takes follows from the trays.</p>
          <DryerSettings />
        </>
      )}
    </article>
  );
}
