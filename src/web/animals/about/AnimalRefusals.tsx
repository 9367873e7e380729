/** What an animal will not eat: each food with the mixes that lose it. Kept at once. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Animal } from '../../../household/model.ts';
import { refusableFoods, refusedFoods } from '../../../household/reckon/mix/refusals.ts';
import { words } from '../../../words/words.ts';
import { Choice } from '../../shared/Choice.tsx';
import { Failed } from '../../shared/Failed.tsx';
import { focusWhenThere } from '../../shared/focus.ts';
import { useParts } from '../../shared/parts.tsx';
import { useSave } from '../../store/household.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { TrialRefusals } from '../trials/TrialRefusals.tsx';

export function AnimalRefusals({ animal }: { animal: Animal }) {
  const { house } = useMixDraft();
  const save = useSave('animals');
  const t = words().animals.refusals;
  const [picked, setPicked] = useState('');
  const [said, setSaid] = useState('');
  const refused = refusedFoods(house, animal);
  const offered = refusableFoods(house, animal).filter((f) => !animal.refuses.includes(f.id));
  const parts = useParts(refused, { part: 50 });
  const food = offered.find((f) => f.id === picked);

  function add() {
    if (!food) return;
    save.mutate({ ...animal, refuses: [...animal.refuses, food.id] }, animal);
    setSaid(t.added(food.name, outOf(food.mixes)));
    setPicked('');
    focusWhenThere('.refuse-add select');
  }

  function takeBack(id: string, name: string) {
    save.mutate({ ...animal, refuses: animal.refuses.filter((r) => r !== id) }, animal);
    setSaid(t.again(animal.name, name));
    focusWhenThere('.refusals h3');
  }

  return (
    <section className="refusals" aria-label={t.title}>
      <h3 tabIndex={-1}>{t.title}</h3>
      {refused.length === 0 && <p className="empty">{t.none}</p>}
      <ul className="refusal-list">
        {parts.shown.map((f) => (
          <li key={f.id}>
            <span>
              {f.name} <small>{outOf(f.mixes)}</small>
            </span>
            <Button
              className="quiet-button"
              aria-label={t.takeBackOf(f.name)}
              onPress={() => takeBack(f.id, f.name)}
            >
              {t.takeBack}
            </Button>
          </li>
        ))}
      </ul>
      {parts.more}
      <TrialRefusals animal={animal} />
      {offered.length > 0 ? (
        <div className="refuse-add">
          <Choice
            label={t.which}
            value={picked}
            options={[['', t.choose], ...offered.map((f) => [f.id, f.name] as const)]}
            onChange={setPicked}
          />
          <Button className="button" isDisabled={!food} onPress={add}>
            {t.add}
          </Button>
        </div>
      ) : (
        <p className="hint">{refused.length > 0 ? t.all : t.noneToChoose}</p>
      )}
      <p className="sr-only" aria-live="polite">
        {said}
      </p>
      <Failed error={save.error} />
    </section>
  );
}

/** "out of First mix, Winter mix"; the mixes that a refusal changes. */
function outOf(mixes: readonly { name: string }[]): string {
  const t = words().animals.refusals;
  return mixes.length > 0 ? t.outOf(mixes.map((m) => m.name)) : t.inNone;
}
