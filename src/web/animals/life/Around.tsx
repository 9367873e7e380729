/** The event that is looked at, and what else happened within some days of it. */
import { Button } from 'react-aria-components';
import type { WeightStory } from '../../../care/weight/model.ts';
import { aroundDay } from '../../../household/reckon/care/around-day.ts';
import type { LifeEvent, Lifeline } from '../../../household/reckon/care/lifeline.ts';
import type { Day } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import { aroundWords, eventWords, type Told } from './life-words.ts';

/** Days before and after. */
const NEAR = 7;

export function Around(props: {
  life: Lifeline;
  story: WeightStory;
  day: Day;
  chosen: LifeEvent | undefined;
  look(id: string): void;
  told: Told;
}) {
  const { life, story, day, chosen, look, told } = props;
  const { lifeline: t, figures: f } = words();
  if (life.events.length === 0) return null;
  const at = chosen ? life.events.indexOf(chosen) : life.events.length;
  const before = life.events[at - 1];
  const after = chosen && life.events[at + 1];
  return (
    <div className="around">
      <div className="button-row">
        <Button className="button small" isDisabled={!before} onPress={() => before && look(before.id)}>
          ‹ {t.picture.before}
        </Button>
        <Button className="button small" isDisabled={!after} onPress={() => after && look(after.id)}>
          {t.picture.after} ›
        </Button>
      </div>
      <div aria-live="polite">
        {chosen ? (
          <>
            <p>
              <strong>{f.day(chosen.on, day)}</strong> {eventWords(chosen, told)}
            </p>
            <h4>{t.around.title(NEAR)}</h4>
            <ul className="around-list">
              {aroundWords(
                aroundDay(life, story.trend, { day: chosen.on, days: NEAR, event: chosen.id }),
                chosen.on,
                told,
              ).map((sentence, i) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: two events may read the same
                <li key={i}>{sentence}</li>
              ))}
            </ul>
            <p className="hint">{t.around.noCause}</p>
          </>
        ) : (
          <p className="hint">{t.picture.press}</p>
        )}
      </div>
    </div>
  );
}
