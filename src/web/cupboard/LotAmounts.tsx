/** Takes what the lots hold over into the mix at hand, as what is "in the cupboard" of its foods. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { cupboardChanges, withCupboard } from '../../household/reckon/cupboard/on-hand.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { focusWhenThere } from '../shared/focus.ts';
import { today } from '../shared/today.ts';
import { useMixDraft } from '../store/mix-draft.tsx';

export function LotAmounts() {
  const { house, mix, change } = useMixDraft();
  const [done, setDone] = useState('');
  if (!mix || house.lots.length === 0) return null;
  const changes = cupboardChanges(house, mix, today());
  return (
    <section className="lot-amounts">
      <h2 tabIndex={-1}>In the mix “{mix.name}”</h2>
      {changes.length > 0 ? (
        <>
          <details>
            <summary>
              {changes.length === 1 ? 'One amount differs' : `${changes.length} amounts differ`} from the lots
            </summary>
            <ul className="reach-list">
              {changes.map((c) => (
                <li key={c.food}>
                  {c.name}: {c.from === undefined ? 'not said' : sayGrams(c.from)} → {sayGrams(c.to)}
                </li>
              ))}
            </ul>
            <p className="hint">
              What may be weighed out today counts. Foods without a lot stay as they are.
            </p>
          </details>
          <Button
            className="button"
            onPress={() => {
              change((m) => withCupboard(m, changes));
              focusWhenThere('.lot-amounts h2');
              setDone('Taken over. Undo it on the mix’s own screen.');
            }}
          >
            Use the cupboard’s amounts in this mix
          </Button>
        </>
      ) : (
        <p className="hint">Its amounts “in the cupboard” are those of the lots.</p>
      )}
      <p className="hint" aria-live="polite">
        {changes.length === 0 && done}
      </p>
    </section>
  );
}
