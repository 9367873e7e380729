/** Weights, food, trials and notes on one time axis. */
import { useMemo, useState } from 'react';
import type { Animal } from '../../../household/model.ts';
import { lifelineOf } from '../../../household/reckon/care/lifeline.ts';
import { weightsOf } from '../../../household/reckon/care/weight-of.ts';
import { words } from '../../../words/words.ts';
import { useEachMinute } from '../../shared/hooks/each-minute.ts';
import { dayAt, today } from '../../shared/today.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { isIn, windowAround, windowUntil } from '../timeline/time-window.ts';
import { WindowNav } from '../timeline/WindowNav.tsx';
import { Around } from './Around.tsx';
import { foodNames } from './food-names.ts';
import { Happened } from './Happened.tsx';
import { LifePicture } from './LifePicture.tsx';
import type { Told } from './life-words.ts';
import { WriteNote } from './WriteNote.tsx';
import './life.css';

export function LifePart({ animal }: { animal: Animal }) {
  useEachMinute();
  const { house } = useMixDraft();
  const { weighings, keeper } = house;
  const day = today();
  const t = words().lifeline;
  const story = useMemo(
    () => weightsOf({ weighings, keeper }, animal, { today: day, dayAt }),
    [weighings, keeper, animal, day],
  );
  const life = useMemo(() => lifelineOf(house, animal, { story, dayAt }), [house, animal, story]);
  const told: Told = useMemo(() => ({ animal: animal.name, nameOf: foodNames(house) }), [animal.name, house]);
  const [window, show] = useState(() => windowUntil('month', day));
  const [chosenId, choose] = useState<string>();
  const chosen = life.events.find((e) => e.id === chosenId);
  const seen = chosen && isIn(window, chosen.on) ? chosen : undefined;

  function look(id: string) {
    const event = life.events.find((e) => e.id === id);
    choose(id);
    if (event && !isIn(window, event.on)) show(windowAround(window.span, event.on, day));
  }

  return (
    <div className="life-part">
      <WriteNote animalId={animal.id} day={day} />
      {life.start === undefined ? (
        <p className="empty">{t.empty(animal.name)}</p>
      ) : (
        <section aria-label={t.picture.title}>
          <h3>{t.picture.title}</h3>
          <WindowNav
            spans={['day', 'month', 'year']}
            window={window}
            today={day}
            start={life.start}
            day={seen?.on}
            show={show}
          />
          <LifePicture
            life={life}
            story={story}
            window={window}
            day={day}
            chosen={seen}
            choose={choose}
            show={show}
            told={told}
          />
          <Around life={life} story={story} day={day} chosen={seen} look={look} told={told} />
          <Happened
            life={life}
            story={story}
            window={window}
            day={day}
            chosen={seen?.id}
            look={look}
            told={told}
          />
        </section>
      )}
    </div>
  );
}
