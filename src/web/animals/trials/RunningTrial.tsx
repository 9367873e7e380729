/** The trial that is running: when the next offer is, what was seen today, and how it stands. */
import { Button } from 'react-aria-components';
import type { Offering, Trial } from '../../../care/model.ts';
import { nextOffer, noted, prolonged } from '../../../care/trials/plan.ts';
import type { Animal } from '../../../household/model.ts';
import type { TriedFood } from '../../../household/reckon/care/trials-of.ts';
import { handledOf } from '../../../household/reckon/foods/handled.ts';
import { daysBetween } from '../../../kitchen/days.ts';
import { words } from '../../../words/words.ts';
import { focusWhenThere } from '../../shared/focus.ts';
import { FoodHands } from '../../shared/hands/FoodHands.tsx';
import { today } from '../../shared/today.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { NoteSeen } from './NoteSeen.tsx';
import { Standing } from './Standing.tsx';
import { Looks, type TrialActs } from './TriedList.tsx';

interface Props {
  animal: Animal;
  trial: Trial;
  food: TriedFood;
  save(next: Trial): void;
  acts: TrialActs;
}

export function RunningTrial({ animal, trial, food, save, acts }: Props) {
  const t = words().trials.running;
  const { figures: f } = words();
  const { house } = useMixDraft();
  const now = today();
  const next = nextOffer(trial);
  const { grams, beside } = trial;

  function note(offering: Offering) {
    save(noted(trial, offering));
    if (offering.seen === 'upset') focusWhenThere('.upset-card h3');
  }

  return (
    <section className="trial-card running" aria-label={t.heading(trial.name)}>
      <h3 tabIndex={-1}>{t.heading(trial.name)}</h3>
      <p>{amountWords(grams, beside?.name)}</p>
      <p>
        <strong>
          {next === undefined
            ? t.done
            : next > now
              ? t.next(f.shortDay(next))
              : next === now
                ? t.today
                : t.late(f.shortDay(next), daysBetween(next, now))}
        </strong>
      </p>
      <FoodHands food={handledOf(house, { id: trial.food, name: trial.name })} />
      <NoteSeen trial={trial} onNote={note} />
      <Standing animal={animal} food={food} />
      <details>
        <summary>{words().trials.note.sofar}</summary>
        {[...food.judged.trials].reverse().map((each) => (
          <Looks key={each.id} trial={each} acts={acts} />
        ))}
      </details>
      <div className="button-row">
        {next === undefined && (
          <Button className="button" onPress={() => save(prolonged(trial, 2, now))}>
            {t.more}
          </Button>
        )}
        <Button
          className={next === undefined ? 'button' : 'quiet-button'}
          onPress={() => {
            save({ ...trial, endedOn: now });
            focusWhenThere('.trials-part > h3');
          }}
        >
          {t.end}
        </Button>
      </div>
    </section>
  );
}

function amountWords(grams: number | undefined, beside: string | undefined): string {
  const { trials, figures: f } = words();
  const t = trials.running;
  if (grams === undefined) return beside === undefined ? t.littleAlone : t.little(beside);
  return beside === undefined ? t.alone(f.grams(grams)) : t.beside(f.grams(grams), beside);
}
