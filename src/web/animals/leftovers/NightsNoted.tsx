/** The nights that were noted, to look back, correct and delete. */
import { Button } from 'react-aria-components';
import type { Feeding } from '../../../care/model.ts';
import type { Animal } from '../../../household/model.ts';
import { isHere } from '../../../household/reckon/care/here.ts';
import type { Day } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import { useParts } from '../../shared/parts.tsx';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { nightWords } from './night-words.ts';
import { foodsOf, nightsNoted } from './view-model.ts';

const PART = 14;

export function NightsNoted(props: {
  animal: Animal;
  onCorrect(night: Day): void;
  onRemove(feeding: Feeding): void;
}) {
  const { animal } = props;
  const { house } = useMixDraft();
  const { leftovers, figures: f } = words();
  const t = leftovers.nights;
  const nights = nightsNoted(house, animal.id);
  const parts = useParts(nights, { part: PART });
  return (
    <section aria-label={t.title}>
      <h3>{t.title}</h3>
      {nights.length === 0 && <p className="empty">{t.none}</p>}
      <ul className="left-nights">
        {parts.shown.map((feeding) => (
          <li key={feeding.id}>
            <span>
              <b>{f.shortDay(feeding.on)}</b>{' '}
              <small>
                {nightWords(feeding, foodsOf(house, animal.id, { ...feeding, from: 'ticked' }).foods)}
              </small>
            </span>
            {isHere(animal) && (
              <span className="left-row-buttons">
                <Button
                  className="quiet-button"
                  aria-label={t.correctOf(feeding.on)}
                  onPress={() => props.onCorrect(feeding.on)}
                >
                  {t.correct}
                </Button>
                <Button
                  className="quiet-button"
                  aria-label={t.removeOf(feeding.on)}
                  onPress={() => props.onRemove(feeding)}
                >
                  {t.remove}
                </Button>
              </span>
            )}
          </li>
        ))}
      </ul>
      {parts.more}
    </section>
  );
}
