/** One animal's line: what it is fed today, the ways to the scale and to its left-overs, and what is due of it. */
import type { ReactNode } from 'react';
import type { AnimalDue } from '../../household/reckon/care/due.ts';
import { unticked } from '../../household/reckon/care/tick-feeding.ts';
import type { Day } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { focusWhenThere } from '../shared/focus.ts';
import { Button } from '../shared/plain/Button.tsx';
import { linkTo } from '../shared/route.ts';
import { dayAt } from '../shared/today.ts';
import { useRemove, useSave } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { mealParts, trialWords, weighWords } from './care-words.ts';
import { TURNED_DOWN, type useNotToday } from './not-today.ts';

interface Props {
  due: AnimalDue;
  day: Day;
  notToday: ReturnType<typeof useNotToday>;
  onFeed(): void;
}

export function AnimalLine({ due, day, notToday, onFeed }: Props) {
  const { animal, weighed, inDoubt, weigh, left, trials } = due;
  const t = words().today;
  const done = weighed && dayAt(weighed.at) === day ? weighed : undefined;
  const key = `weigh ${animal.id}`;
  const asks = weigh.is !== 'no' && !notToday.isOff(key);
  const way = (label: string, part: string, isDue: boolean, isDone: boolean) => (
    <a
      className="button small today-way"
      data-state={isDone ? 'done' : isDue ? 'due' : undefined}
      href={linkTo('animals', animal.id, part)}
      aria-label={t.ofOne(label, animal.name)}
    >
      {isDone && <span aria-hidden="true">{'✓\u00a0'}</span>}
      {label}
    </a>
  );
  return (
    <li>
      <div className="today-ways">
        <a className="today-name" href={linkTo('animals', animal.id)}>
          {animal.name}
        </a>
        <Feed due={due} onFeed={onFeed} />
        {way(
          weighed && inDoubt
            ? t.care.inDoubt(weighed.grams)
            : done
              ? t.care.weighed(done.grams)
              : t.care.weigh,
          'weight',
          inDoubt === true || (asks && weigh.is === 'due'),
          done !== undefined && !inDoubt,
        )}
        {way(left === 'done' ? t.care.leftDone : t.care.left, 'left', left === 'due', left === 'done')}
      </div>
      {trials.map((one) => (
        <p key={one.trial.id}>
          {trialWords(one, day)} <a href={linkTo('animals', animal.id, 'trials')}>{t.care.toTrial}</a>
        </p>
      ))}
      {asks && (
        <p className="today-asks">
          <span>{weighWords(due, day)}</span>
          <Button
            className="quiet-button small"
            aria-label={t.ofOne(weigh.is === 'due' ? t.care.notToday : t.care.noThanks, animal.name)}
            onPress={() => {
              notToday.putOff(key, weigh.is === 'due' ? 1 : TURNED_DOWN);
              focusWhenThere('.today-animals h2');
            }}
          >
            {weigh.is === 'due' ? t.care.notToday : t.care.noThanks}
          </Button>
        </p>
      )}
    </li>
  );
}

/** One press ticks off; what is ticked off can be taken back. */
function Feed({ due, onFeed }: { due: AnimalDue; onFeed(): void }): ReactNode {
  const { animal, meal, feeding, feed } = due;
  const save = useSave('feedings');
  const remove = useRemove('feedings');
  const t = words().today;
  const { house } = useMixDraft();
  const pellets = new Set(house.foods.flatMap((food) => (food.kind === 'pellet' ? [food.id] : [])));
  const label = t.care.feed(mealParts(due, pellets));
  if (feed === 'no' || feed === 'stop') {
    const say = feed === 'stop' ? t.care.doNotFeed : t.care.sayAmount;
    return (
      meal && (
        <a
          className="button small today-way today-feed"
          data-state={feed === 'stop' ? 'stop' : undefined}
          href={linkTo('animals', animal.id, 'food')}
          aria-label={t.ofOne(say, animal.name)}
        >
          {feed === 'stop' && <span aria-hidden="true">{'!\u00a0'}</span>}
          {say}
        </a>
      )
    );
  }
  if (feed === 'done' && feeding)
    return (
      <span className="today-fed">
        <span>
          <span aria-hidden="true">✓ </span>
          {label}
        </span>
        <Button
          className="quiet-button small"
          aria-label={t.ofOne(words().common.undo, animal.name)}
          onPress={() => {
            const before = unticked(feeding);
            if (before) save.mutate(before, feeding);
            else remove.mutate(feeding);
          }}
        >
          {words().common.undo}
        </Button>
        {(save.error ?? remove.error) && (
          <span role="alert" className="field-error">
            {(save.error ?? remove.error)?.message}
          </span>
        )}
      </span>
    );
  return (
    <Button
      className="button small today-way today-feed"
      data-state={feed === 'due' ? 'due' : undefined}
      aria-label={t.ofOne(label, animal.name)}
      onPress={onFeed}
    >
      <span className="today-box" aria-hidden="true" />
      {label}
    </Button>
  );
}
