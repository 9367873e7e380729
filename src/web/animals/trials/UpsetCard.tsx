/** A food on which the animal did not do well: stop, when to see a vet, and what follows for the other animals. */
import { Button } from 'react-aria-components';
import type { Trial } from '../../../care/model.ts';
import type { Animal } from '../../../household/model.ts';
import { words } from '../../../words/words.ts';
import { GoAhead } from '../../shared/go-ahead/GoAhead.tsx';

interface Props {
  animal: Animal;
  trial: Trial;
  /** Whether other animals live here. */
  others: boolean;
  /** Whether it was noted within the last days: then it is told to stop and when to see a vet. */
  lately: boolean;
  setOthers(note: string | undefined): void;
}

export function UpsetCard({ animal, trial, others, lately, setOthers }: Props) {
  const { trials, figures: f } = words();
  const t = trials.upset;
  return (
    <section className="trial-card upset-card" aria-label={t.heading(trial.name, animal.name)}>
      <h3 tabIndex={-1}>
        <span aria-hidden="true">▲</span> {t.heading(trial.name, animal.name)}
      </h3>
      <p>{t.stop(animal.name)}</p>
      {lately && (
        <p>
          <strong>{t.vet}</strong>
        </p>
      )}
      <p>{t.out(trial.name)}</p>
      {trial.others ? (
        <p>
          {t.others(f.day(trial.others.on), trial.others.note)}{' '}
          <Button className="quiet-button small" onPress={() => setOthers(undefined)}>
            {t.keepOut}
          </Button>
        </p>
      ) : (
        others && <GoAhead label={t.goAhead} why={t.why} yes={t.yes} no={t.no} act={setOthers} />
      )}
      <p className="hint">{t.wrong}</p>
    </section>
  );
}
