/** New foods, offered one at a time: the trial that runs, what was found of every food, and what was never tried. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Trial } from '../../../care/model.ts';
import { begunOn } from '../../../care/trials/judge.ts';
import { isRunning, runningTrial, unnoted } from '../../../care/trials/plan.ts';
import type { Animal } from '../../../household/model.ts';
import { isHere } from '../../../household/reckon/care/here.ts';
import { type TriedFood, triedFoods } from '../../../household/reckon/care/trials-of.ts';
import { daysBetween } from '../../../kitchen/days.ts';
import { words } from '../../../words/words.ts';
import { Failed } from '../../shared/Failed.tsx';
import { focusWhenThere } from '../../shared/focus.ts';
import { go, useRoute } from '../../shared/route.ts';
import { today } from '../../shared/today.ts';
import { useRemove, useSave } from '../../store/household.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { NewTrial } from './NewTrial.tsx';
import { RunningTrial } from './RunningTrial.tsx';
import { type TrialActs, TriedList } from './TriedList.tsx';
import { Untried } from './Untried.tsx';
import { UpsetCard } from './UpsetCard.tsx';
import './trials.css';

/** So many days after an upset it is still told when to see a vet. */
const LATELY = 7;

export function TrialsPart({ animal }: { animal: Animal }) {
  const { trials: t, common, figures } = words();
  const { house } = useMixDraft();
  const save = useSave('trials');
  const remove = useRemove('trials');
  /** A trial as it stood before it was deleted, or a look was taken back; with what says so. */
  const [undoable, setUndoable] = useState<{ readonly was: Trial; readonly said: string }>();
  const [said, say] = useState('');
  /** The address may name the food to begin with. */
  const [, , , asked] = useRoute();
  const tried = triedFoods(house, animal);
  const running = runningTrial(house.trials, animal.id);
  const runningFood = running && tried.find((f) => f.judged.trials.some((x) => x.id === running.id));
  const here = isHere(animal);
  const now = today();
  const plan = (food: string) => {
    go('animals', animal.id, 'trials', food);
    focusWhenThere('.plan-trial h3');
  };
  const free = here && !running;
  const of = (is: TriedFood['judged']['is']) => tried.filter((f) => f.judged.is === is && f !== runningFood);

  function keep(next: Trial) {
    save.mutate(
      next,
      house.trials.find((x) => x.id === next.id),
    );
    if (!isRunning(next)) say(t.running.ended(next.name));
  }
  const acts: TrialActs = {
    again: free ? (food) => plan(food.food.id) : undefined,
    takeBack(trial, on) {
      keep(unnoted(trial, on, running !== undefined && running.id !== trial.id));
      told(trial, t.note.takenBack(figures.shortDay(on)));
    },
    remove(trial) {
      remove.mutate(trial, { onSuccess: () => told(trial, t.lists.removed(trial.name)) });
    },
  };
  function told(was: Trial, words: string) {
    setUndoable({ was, said: words });
    say(words);
    focusWhenThere('.trial-undo button');
  }
  function undo({ was }: { readonly was: Trial }) {
    setUndoable(undefined);
    save.mutate(
      was,
      house.trials.find((x) => x.id === was.id),
    );
    say(t.lists.back(was.name));
    focusWhenThere('.trials-part > h3');
  }

  return (
    <div className="trials-part">
      <h3 tabIndex={-1}>{t.title}</h3>
      <p className="hint">{here ? t.intro(animal.name) : t.gone(animal.name)}</p>
      {undoable && (
        <div className="notice-line trial-undo">
          {undoable.said}{' '}
          <Button className="quiet-button small" onPress={() => undo(undoable)}>
            {common.undo}
          </Button>
        </div>
      )}
      <p className="sr-only" aria-live="polite">
        {said}
      </p>
      <Failed error={save.error ?? remove.error} />
      {of('upset').map(({ judged: { by } }) => {
        const on = by.offerings.find((o) => o.seen === 'upset')?.on ?? begunOn(by) ?? now;
        return (
          <UpsetCard
            key={by.id}
            animal={animal}
            trial={by}
            others={house.animals.some((a) => a.id !== animal.id && isHere(a))}
            lately={here && daysBetween(on, now) <= LATELY}
            setOthers={(note) => {
              const { others: _, ...rest } = by;
              keep(note === undefined ? rest : { ...rest, others: { note, on: now } });
            }}
          />
        );
      })}
      {here && running && runningFood && (
        <RunningTrial
          key={running.id}
          animal={animal}
          trial={running}
          food={runningFood}
          save={keep}
          acts={acts}
        />
      )}
      {here && running && asked !== undefined && asked !== running.food && (
        <p className="notice-line" role="status">
          {t.running.other(running.name)}
        </p>
      )}
      {free && <NewTrial animal={animal} asked={asked} onBegin={keep} />}
      {tried.length === 0 && <p className="empty">{t.lists.nothing}</p>}
      <TriedList heading={t.lists.upset} foods={of('upset')} animal={animal} acts={acts} />
      <TriedList heading={t.lists.liked} foods={of('liked')} animal={animal} acts={acts} />
      <TriedList heading={t.lists.refused} foods={of('refused')} animal={animal} acts={acts} />
      <TriedList heading={t.lists.undecided} foods={of('undecided')} animal={animal} acts={acts} />
      <Untried animal={animal} onTry={free ? (food) => plan(food.id) : undefined} />
    </div>
  );
}
