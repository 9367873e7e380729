/** What is eaten when a food of the mix is left, how to be safe against it, and what may take a food's place. */

import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Animal } from '../../../../household/model.ts';
import { hereAmong } from '../../../../household/reckon/care/here.ts';
import { withHolds } from '../../../../household/reckon/mix/mix-edits.ts';
import { mixesOf } from '../../../../household/reckon/mix/refusals.ts';
import { notRefusing, refusing } from '../../../../household/reckon/mix/swaps.ts';
import { words } from '../../../../words/words.ts';
import { AnswerState, useAnswer } from '../../../shared/answer.tsx';
import { Failed } from '../../../shared/Failed.tsx';
import { focusWhenThere } from '../../../shared/focus.ts';
import { useSave } from '../../../store/household.ts';
import { useMixDraft } from '../../../store/mix-draft.tsx';
import { engine } from '../../../worker/engine.ts';
import { BalanceFirst } from '../../BalanceFirst.tsx';
import { isFit } from '../../useFormulation.ts';
import type { AdviceProps } from '../advice-props.ts';
import { RefusalFood } from './RefusalFood.tsx';
import { RefusalSafety } from './RefusalSafety.tsx';
import './refusals.css';

export function RefusalPanel({ mix, view, nameOf }: AdviceProps) {
  const t = words().refusals;
  const { house } = useMixDraft();
  const save = useSave('animals');
  const [open, setOpen] = useState<string>();
  const [said, say] = useState('');
  const [refused, setRefused] = useState<{ animal: Animal; food: string; name: string }>();
  const { problem, shares } = mix;
  const ready = isFit(view.state);
  const asked = useAnswer('leaving', ready ? { problem, shares } : undefined, (q) =>
    engine.dropOne(q.problem, q.shares),
  );
  const animals = hereAmong(house.animals, mix.animalIds);
  const foods = asked.value?.foods ?? [];
  const rows = [...foods].sort((a, b) => b.breaches.length - a.breaches.length || b.share - a.share);
  const error = save.error;

  function refuse(animal: Animal, food: string) {
    const name = nameOf(food);
    const out = mixesOf(house.mixes, animal.id).filter((m) => m.problem.foods.some((f) => f.id === food));
    save.mutate(refusing(animal, food), animal);
    setRefused({ animal, food, name });
    setOpen(undefined);
    say(
      t.refuses(
        animal.name,
        name,
        out.map((m) => m.name),
      ),
    );
    focusWhenThere('.leaving h2');
  }
  function takeBack() {
    if (!refused) return;
    const now = house.animals.find((a) => a.id === refused.animal.id);
    if (now) save.mutate(notRefusing(now, refused.food), now);
    say(t.mayBeFed(refused.animal.name, refused.name));
    setRefused(undefined);
    focusWhenThere('.leaving h2');
  }

  return (
    <section className="leaving" aria-label={t.heading}>
      <div className="asked-head">
        <h2 tabIndex={-1}>{t.heading}</h2>
        <AnswerState {...asked} />
      </div>
      <div className="leaving-notice" aria-live="polite">
        {said && <p>{said}</p>}
      </div>
      {refused && (
        <Button className="quiet-button small" onPress={takeBack}>
          {t.takeBack}
        </Button>
      )}
      <Failed error={error} />
      <RefusalSafety mix={mix} view={view} leftOut={ready ? asked.value : undefined} say={say} />
      {ready ? (
        <ul className="leaving-foods" aria-label={t.foods} aria-busy={asked.working}>
          {rows.map((leaving) => (
            <RefusalFood
              key={leaving.food}
              leaving={leaving}
              name={nameOf(leaving.food)}
              open={open === leaving.food}
              toggle={() => setOpen(open === leaving.food ? undefined : leaving.food)}
              question={{ problem: withHolds(mix), shares }}
              held={mix.held}
              stale={asked.working}
              animals={animals}
              refuse={(animal) => refuse(animal, leaving.food)}
              view={view}
              nameOf={nameOf}
              swapped={(said) => {
                setOpen(undefined);
                setRefused(undefined);
                say(said);
                focusWhenThere('.leaving h2');
              }}
            />
          ))}
        </ul>
      ) : (
        <BalanceFirst view={view} words={t.first} />
      )}
    </section>
  );
}
