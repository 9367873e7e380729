/** What the last pour did to the rest, one sentence each. */

import type { Standing } from '../../household/reckon/batch/batch-standing.ts';
import { words } from '../../words/words.ts';
import { Button } from '../shared/plain/Button.tsx';

/** So many changes are told at once; more are folded away, so that the next food stays in sight. */
const FEW = 3;

export function Told(props: {
  told: NonNullable<Standing['told']>;
  /** What cannot be saved is told elsewhere. */
  changedOnly: boolean;
  busy: boolean;
  takeOut(food: string, grams: number): void;
}) {
  const { told, changedOnly, busy, takeOut } = props;
  const t = words().weighing;
  const { changed, spoonBack } = told;
  const few = changed.length <= FEW;
  return (
    <section className="weigh-told" aria-label={t.after.region}>
      <p role="status">
        {!changedOnly && told.sentence}
        {few && ` ${changed.map((c) => c.sentence).join(' ')}`}
      </p>
      {!few && changed.length > 0 && (
        <details>
          <summary>{t.after.changes(changed.length)}</summary>
          <ul className="weigh-changes">
            {changed.map((c) => (
              <li key={c.food}>{c.sentence}</li>
            ))}
          </ul>
        </details>
      )}
      {spoonBack && (
        <div className="weigh-spoon">
          <p>{spoonBack.sentence}</p>
          <Button
            className="button"
            isDisabled={busy}
            onPress={() => takeOut(spoonBack.food, spoonBack.grams)}
          >
            {t.takenOut(spoonBack.grams)}
          </Button>
        </div>
      )}
    </section>
  );
}
