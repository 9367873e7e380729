/** A new trial, step by step: which food, then its plan. The address names the food, so that a mix can lead here. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Trial } from '../../../care/model.ts';
import type { Animal } from '../../../household/model.ts';
import { noTrialOf } from '../../../household/reckon/care/food-standing.ts';
import { words } from '../../../words/words.ts';
import { focusWhenThere } from '../../shared/focus.ts';
import { go } from '../../shared/route.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { useReferenceTable } from '../../worker/engine.ts';
import { ChooseFood } from './ChooseFood.tsx';
import { adviceOn, nameOfFood } from './food-choices.ts';
import { PlanTrial } from './PlanTrial.tsx';

interface Props {
  animal: Animal;
  /** Id of the food that the address names. */
  asked: string | undefined;
  onBegin(trial: Trial): void;
}

export function NewTrial({ animal, asked, onBegin }: Props) {
  const t = words().trials;
  const { house } = useMixDraft();
  const [choosing, setChoosing] = useState(false);
  const { foods, lookedUp } = useReferenceTable(asked === undefined ? [] : [asked]);
  const table = asked === undefined ? undefined : foods.get(asked);
  const name = asked === undefined ? undefined : nameOfFood(house, animal, asked, table);
  const food = asked !== undefined && name !== undefined ? { id: asked, name } : undefined;
  const barred = food && noTrialOf(house, animal, food);

  function leave() {
    setChoosing(false);
    go('animals', animal.id, 'trials');
    focusWhenThere('.begin-trial');
  }
  if (asked !== undefined && !lookedUp) return null;
  if (food && barred?.why === 'upset')
    return (
      <p className="notice-line" role="status">
        {t.verdict.upset(animal.name, food.name)} {t.upset.wrong}
      </p>
    );
  if (food)
    return (
      <PlanTrial
        key={food.id}
        animal={animal}
        food={food}
        advice={adviceOn(house, animal, food, table)}
        onBegin={(trial) => {
          onBegin(trial);
          setChoosing(false);
          go('animals', animal.id, 'trials');
          focusWhenThere('.running h3');
        }}
        onOther={() => {
          setChoosing(true);
          go('animals', animal.id, 'trials');
        }}
        onLeave={leave}
      />
    );
  if (choosing)
    return (
      <ChooseFood animal={animal} onChoose={(id) => go('animals', animal.id, 'trials', id)} onLeave={leave} />
    );
  return (
    <Button className="button begin-trial" onPress={() => setChoosing(true)}>
      {t.choose.open}
    </Button>
  );
}
