/** Asks which fresh food a food of the mix is dried from, since how dry it gets follows from the water of that. */
import {
  driedAtHome,
  driedFrom,
  PLANNED_MOISTURE,
  PLANNED_MOISTURE_SOURCE,
  withDried,
} from '../../household/reckon/foods/fresh-food.ts';
import { Failed } from '../shared/Failed.tsx';
import { FreshFoodChoice } from '../shared/FreshFoodChoice.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { useKitchen } from '../store/kitchen.ts';
import { useMixDraft } from '../store/mix-draft.tsx';

/** @param food id of the dried food, as mixes name it @param name of it */
export function FreshChoice({ food, name }: { food: string; name: string }) {
  const { house } = useMixDraft();
  const { kitchen, change, error } = useKitchen();
  const ref = house.mixes.flatMap((m) => m.problem.foods).find((f) => f.id === food)?.ref;

  function take(fresh: string) {
    const how = driedFrom(driedAtHome(house, food), fresh);
    change({ driedAtHome: withDried(kitchen.driedAtHome ?? [], food, how) });
    focusWhenThere('.dry-screen .detail h2');
  }

  return (
    <section className="dry-fresh" aria-labelledby="dry-fresh-title">
      <h3 id="dry-fresh-title">Which fresh food is it?</h3>
      <p>How dry it is follows from the water that the fresh food holds.</p>
      <FreshFoodChoice food={food} name={name} dried={ref} suggest onChoose={take} />
      <Failed error={error} />
      <p className="hint">
        Planned to {PLANNED_MOISTURE} % water when dry{' '}
        <span className="source">({PLANNED_MOISTURE_SOURCE})</span>.
      </p>
    </section>
  );
}
