/** One change that would mend a mix, with its press, or with a step before it where the target would give way. */
import type { ReactNode } from 'react';
import { Button } from 'react-aria-components';
import type { Remedy } from '../../formulation/problem/result.ts';
import type { Mix } from '../../household/model.ts';
import { groupName, OTHER } from '../../household/reckon/mix/mix-edits.ts';
import { changesOf } from '../../household/reckon/mix/mix-remedies.ts';
import { isLimitOfTarget } from '../../household/reckon/mix/own-limits.ts';
import type { Day } from '../../kitchen/model.ts';
import { words as texts } from '../../words/words.ts';
import { today } from '../shared/today.ts';
import { LimitStep } from './limits/LimitStep.tsx';
import type { LimitChange } from './limits/limit-words.ts';
import { changeWords, tableOf } from './remedy-words.ts';

export function RemedyItem(props: {
  remedy: Remedy;
  mix: Mix;
  nameOf(id: string): string;
  act(on: Day): void;
}) {
  const t = texts().mix.mend;
  const { remedy, mix, nameOf, act } = props;
  const changes = changesOf(remedy);
  const limits = changes.some((c) => isLimitOfTarget(mix.problem, c.pointer))
    ? { mix, change: { changes }, nameOf }
    : undefined;
  if (remedy.kind === 'add') {
    const { food, share } = remedy;
    return (
      <Item
        words={t.add(food.name, share)}
        act={act}
        more={
          <small>
            {food.price_per_kg === undefined
              ? t.inTables(tableOf(food.ref), groupName(food.group ?? OTHER))
              : t.inTablesPriced(tableOf(food.ref), groupName(food.group ?? OTHER), food.price_per_kg)}
          </small>
        }
      />
    );
  }
  if (remedy.kind === 'loosen') return <Item words={remedy.sentence} limits={limits} act={act} />;
  return (
    <Item
      words={t.together}
      spoken={remedy.sentence}
      limits={limits}
      act={act}
      more={
        <ul className="remedy-changes">
          {changes.map((c) => (
            <li key={c.pointer}>{changeWords(mix.problem, c, nameOf)}</li>
          ))}
        </ul>
      }
    />
  );
}

interface ItemProps {
  words: string;
  spoken?: string;
  more?: ReactNode;
  /** What it changes of the target, where it does: then a step comes first. */
  limits?: { mix: Mix; change: LimitChange; nameOf(id: string): string } | undefined;
  /** @param on today */
  act(on: Day): void;
}

export function Item({ words, spoken, more, limits, act }: ItemProps) {
  const t = texts().mix.mend;
  const button = { label: t.doThis, spoken: t.doThisAbout(spoken ?? words) };
  return (
    <li>
      <div>
        {words} {more}
      </div>
      {limits ? (
        <LimitStep {...button} {...limits} act={act} />
      ) : (
        <Button className="button" aria-label={button.spoken} onPress={() => act(today())}>
          {button.label}
        </Button>
      )}
    </li>
  );
}
