/** Asks which fresh food a food of the mix is dried from, since how dry it gets follows from the water of that. */
import {
  driedAtHome,
  driedFrom,
  PLANNED_MOISTURE,
  withDried,
} from '../../household/reckon/foods/fresh-food.ts';
import { words } from '../../words/words.ts';
import { Failed } from '../shared/Failed.tsx';
import { FreshFoodChoice } from '../shared/FreshFoodChoice.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { useKitchen } from '../store/kitchen.ts';
import { useMixDraft } from '../store/mix-draft.tsx';

/** @param food id of the dried food, as mixes name it @param name of it */
export function FreshChoice({ food, name }: { food: string; name: string }) {
  const { house } = useMixDraft();
  const { kitchen, change, error } = useKitchen();
  const { drying, kitchen: practice } = words();
  const t = drying.fresh;
  const ref = house.mixes.flatMap((m) => m.problem.foods).find((f) => f.id === food)?.ref;

  function take(fresh: string) {
    const how = driedFrom(driedAtHome(house, food), fresh);
    change({ driedAtHome: withDried(kitchen.driedAtHome ?? [], food, how) });
    focusWhenThere('.dry-screen .detail h2');
  }

  return (
    <section className="dry-fresh" aria-labelledby="dry-fresh-title">
      <h3 id="dry-fresh-title">{t.title}</h3>
      <p>{t.why}</p>
      <FreshFoodChoice food={food} name={name} dried={ref} suggest onChoose={take} />
      <Failed error={error} />
      <p className="hint">
        {t.planned(PLANNED_MOISTURE)} <span className="source">({practice.practice})</span>.
      </p>
    </section>
  );
}
