/** Foods of one kind of verdict, each to be opened: how sure it is, its trials day by day, and what may be done. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Trial } from '../../../care/model.ts';
import { begunOn } from '../../../care/trials/judge.ts';
import type { Animal } from '../../../household/model.ts';
import type { TriedFood } from '../../../household/reckon/care/trials-of.ts';
import { words } from '../../../words/words.ts';
import { Standing } from './Standing.tsx';

export interface TrialActs {
  /** Offers the food again in a new trial; undefined while another runs. */
  readonly again: ((food: TriedFood) => void) | undefined;
  takeBack(trial: Trial, on: string): void;
  remove(trial: Trial): void;
}

interface Props {
  heading: string;
  foods: readonly TriedFood[];
  animal: Animal;
  acts: TrialActs;
}

export function TriedList({ heading, foods, animal, acts }: Props) {
  if (foods.length === 0) return null;
  return (
    <section aria-label={heading} className="tried-list">
      <h3>{heading}</h3>
      <ul>
        {foods.map((food) => (
          <Tried key={food.judged.trials[0].id} food={food} animal={animal} acts={acts} />
        ))}
      </ul>
    </section>
  );
}

function Tried({ food, animal, acts }: { food: TriedFood; animal: Animal; acts: TrialActs }) {
  const { trials } = words();
  const t = trials.lists;
  const [open, setOpen] = useState(false);
  const { judged, name } = food;
  const looks = judged.trials.reduce((sum, x) => sum + x.offerings.length, 0);
  const { again } = acts;
  return (
    <li data-tried={name}>
      <div className="tried-head">
        <Button className="fold" aria-expanded={open} onPress={() => setOpen(!open)}>
          <span aria-hidden="true">{open ? '▾' : '▸'}</span> {name}{' '}
          <small>{trials.verdict.looks(looks)}</small>
        </Button>
        {again && judged.is !== 'upset' && (
          <Button className="quiet-button small" aria-label={t.againOf(name)} onPress={() => again(food)}>
            {t.again}
          </Button>
        )}
      </div>
      {open && (
        <div className="tried-more">
          <Standing animal={animal} food={food} />
          {[...judged.trials].reverse().map((trial) => (
            <Looks key={trial.id} trial={trial} acts={acts} />
          ))}
        </div>
      )}
    </li>
  );
}

/** One trial, day by day. */
export function Looks({ trial, acts }: { trial: Trial; acts: TrialActs }) {
  const { trials, figures: f } = words();
  const t = trials.lists;
  const begun = begunOn(trial);
  const from = begun === undefined ? t.noDays : f.day(begun);
  const heading =
    begun === undefined
      ? t.noDays
      : trial.endedOn === undefined
        ? t.trialFrom(from)
        : t.trialEnded(from, f.day(trial.endedOn));
  return (
    <section className="trial-looks" aria-label={heading}>
      <h4>{heading}</h4>
      <ul>
        {trial.offerings.map((o) => (
          <li key={o.on}>
            <span>
              {f.shortDay(o.on)}: {trials.note.seen[o.seen]}
              {o.grams !== undefined && o.left !== undefined && (
                <small> {trials.note.weighed(f.grams(o.left), f.grams(o.grams))}</small>
              )}
              {o.note && <small> {o.note}</small>}
            </span>
            <Button
              className="quiet-button small"
              aria-label={trials.note.takeBackOf(f.shortDay(o.on))}
              onPress={() => acts.takeBack(trial, o.on)}
            >
              {trials.note.takeBack}
            </Button>
          </li>
        ))}
      </ul>
      <Button
        className="quiet-button small"
        aria-label={t.removeOf(trial.name, from)}
        onPress={() => acts.remove(trial)}
      >
        {t.remove}
      </Button>
    </section>
  );
}
