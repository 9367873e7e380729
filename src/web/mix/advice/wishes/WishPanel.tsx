/** What is wished of the mix beyond its rules, in order, and the rules that count foods. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { withProblem } from '../../../../household/reckon/mix/mix-edits.ts';
import { Choice } from '../../../shared/Choice.tsx';
import type { AdviceProps } from '../advice-props.ts';
import { WishCounts } from './WishCounts.tsx';
import { WishForm } from './WishForm.tsx';
import { WishList } from './WishList.tsx';
import { gapWords, OBJECTIVES } from './wish-words.ts';
import './wishes.css';

export function WishPanel(props: AdviceProps) {
  const { mix, view } = props;
  const { problem } = mix;
  const [notice, say] = useState('');
  const some = (problem.aims ?? []).length > 0;
  const unproven = view.best && gapWords(problem.objective, view.best.objective, view.best.gap);

  async function balance() {
    // With foods to count this can take seconds.
    say('Working…');
    await view.balance();
    say('');
  }

  return (
    <>
      <section className="wishes" aria-labelledby="wishes-heading">
        <h2 id="wishes-heading">Wishes</h2>
        <p className="hint">
          Rules are always kept. Among the mixes that keep them, wishes are met one after the other, first
          things first.
        </p>
        <WishList {...props} say={say} />
        <p className="wish-notice" aria-live="polite">
          {notice}
        </p>
        <WishForm {...props} say={say} />
        <div className="wish-last">
          <Choice
            label={
              some
                ? 'And among the mixes that are left, the one'
                : 'Among the mixes that keep the rules, the one'
            }
            value={problem.objective}
            options={OBJECTIVES.map(([value, words]) => [value, words.toLowerCase().replace(' i ', ' I ')])}
            onChange={(objective) => void view.edit((m) => withProblem(m, { objective }))}
          />
          <Button className="button" onPress={() => void balance()} isDisabled={view.state === 'fault'}>
            Balance by these wishes
          </Button>
        </div>
        {unproven && <p className="hint">{unproven}</p>}
      </section>
      <WishCounts mix={mix} view={view} say={say} />
    </>
  );
}
