/** Where the verdict stands later: a mix whose shares were never worked out is neither in range nor out of it. */
import { Button } from 'react-aria-components';
import type { Mix } from '../../household/model.ts';
import { isMade } from '../../household/reckon/first-steps.ts';
import { withWantedShares } from '../../household/reckon/mix/wanted-mix.ts';
import { words } from '../../words/words.ts';
import type { FormulationView, MixActs } from './useFormulation.ts';

export function NotMade({ mix, view }: { mix: Mix; view: FormulationView }) {
  const { mix: t, verdict } = words();
  const foods = mix.problem.foods.length;
  return (
    <section className="verdict working" aria-label={verdict.title}>
      <p data-testid="verdict" data-state="new">
        {foods === 0 ? t.empty : t.notMade(foods)}
      </p>
      {foods > 0 && (
        <Button className="big-button" onPress={() => void makeFit(view, mix)}>
          {t.makeFit}
        </Button>
      )}
    </section>
  );
}

/**
 * Makes the mix fit. One whose shares were never worked out, and that no mix can make fit, gets the shares that are
 * wanted, so that what is wrong with them can be shown.
 */
export async function makeFit(acts: MixActs, mix: Mix): Promise<void> {
  await acts.balance();
  if (!isMade(mix)) await acts.edit((m) => (isMade(m) ? m : withWantedShares(m)));
}
