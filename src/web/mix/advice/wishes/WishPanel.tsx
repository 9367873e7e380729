/** What is wished of the mix beyond its rules, in order, and the rules that count foods. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { withProblem } from '../../../../household/reckon/mix/mix-edits.ts';
import { words } from '../../../../words/words.ts';
import { Choice } from '../../../shared/Choice.tsx';
import type { AdviceProps } from '../advice-props.ts';
import { WishCounts } from './WishCounts.tsx';
import { WishForm } from './WishForm.tsx';
import { WishList } from './WishList.tsx';
import { gapWords, objectiveChoices } from './wish-words.ts';
import './wishes.css';

export function WishPanel(props: AdviceProps) {
  const t = words().wishes;
  const { mix, view } = props;
  const { problem } = mix;
  const [notice, say] = useState('');
  const some = (problem.aims ?? []).length > 0;
  const unproven = view.best && gapWords(problem.objective, view.best.objective, view.best.gap);

  async function balance() {
    // With foods to count this can take seconds.
    say(t.working);
    await view.balance();
    say('');
  }

  return (
    <>
      <section className="wishes" aria-labelledby="wishes-heading">
        <h2 id="wishes-heading">{t.heading}</h2>
        <p className="hint">{t.intro}</p>
        <WishList {...props} say={say} />
        <p className="wish-notice" aria-live="polite">
          {notice}
        </p>
        <WishForm {...props} say={say} />
        <div className="wish-last">
          <Choice
            label={some ? t.lastAfter : t.last}
            value={problem.objective}
            options={objectiveChoices()}
            onChange={(objective) => void view.edit((m) => withProblem(m, { objective }))}
          />
          <Button className="button" onPress={() => void balance()} isDisabled={view.state === 'fault'}>
            {t.fit}
          </Button>
        </div>
        {unproven && <p className="hint">{unproven}</p>}
      </section>
      <WishCounts mix={mix} view={view} say={say} />
    </>
  );
}
