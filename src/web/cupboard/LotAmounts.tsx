/** Takes what the lots hold over into the mix at hand, as what is "in the cupboard" of its foods. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { cupboardChanges, withCupboard } from '../../household/reckon/cupboard/on-hand.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { words } from '../../words/words.ts';
import { focusWhenThere } from '../shared/focus.ts';
import { today } from '../shared/today.ts';
import { useMixDraft } from '../store/mix-draft.tsx';

export function LotAmounts() {
  const { house, mix, change } = useMixDraft();
  const t = words().cupboard.amounts;
  const [done, setDone] = useState('');
  if (!mix || house.lots.length === 0) return null;
  const changes = cupboardChanges(house, mix, today());
  // No pack of its foods is kept, nor is anything said of them.
  if (changes.length === 0 && mix.problem.foods.every((f) => f.on_hand_grams === undefined)) return null;
  return (
    <section className="lot-amounts">
      <h2 tabIndex={-1}>{t.title(mix.name)}</h2>
      {changes.length > 0 ? (
        <>
          <details>
            <summary>{t.differ(changes.length)}</summary>
            <ul className="reach-list">
              {changes.map((c) => (
                <li key={c.food}>
                  {t.change(c.name, c.from === undefined ? t.notSaid : sayGrams(c.from), sayGrams(c.to))}
                </li>
              ))}
            </ul>
            <p className="hint">{t.hint}</p>
          </details>
          <Button
            className="button"
            onPress={() => {
              change((m) => withCupboard(m, changes));
              focusWhenThere('.lot-amounts h2');
              setDone(t.taken);
            }}
          >
            {t.take}
          </Button>
        </>
      ) : (
        <p className="hint">{t.same}</p>
      )}
      <p className="hint" aria-live="polite">
        {changes.length === 0 && done}
      </p>
    </section>
  );
}
