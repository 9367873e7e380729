/** What was eaten of what was offered, over some nights: in words, in pictures, and what helps. */
import { useMemo, useState } from 'react';
import type { Animal } from '../../../household/model.ts';
import { type IntakeQuestion, intakeQuestion } from '../../../household/reckon/care/intake-question.ts';
import { plusDays } from '../../../kitchen/days.ts';
import type { Day } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import { AnswerState, useAnswer } from '../../shared/answer.tsx';
import { Radios } from '../../shared/Radios.tsx';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { useEngine } from '../../worker/engine.ts';
import { Advice } from './Advice.tsx';
import { FoodPicture } from './FoodPicture.tsx';
import { intakeWords } from './intake-words.ts';
import { NutrientPicture } from './NutrientPicture.tsx';
import { nightsNoted } from './view-model.ts';

type Period = 'night' | 'weeks' | 'months';

const WEEKS = 14;
const MONTHS = 91;

export function Eaten({ animal, today }: { animal: Animal; today: Day }) {
  const { house } = useMixDraft();
  const engine = useEngine();
  const t = words().leftovers.result;
  const [period, setPeriod] = useState<Period>('weeks');
  const last = useMemo(() => nightsNoted(house, animal.id).find((f) => f.left?.bowl), [house, animal.id]);
  const of = (which: Period) => ({
    from: {
      night: last?.left?.since ?? last?.on ?? today,
      weeks: plusDays(today, 1 - WEEKS),
      months: plusDays(today, 1 - MONTHS),
    }[which],
    to: which === 'night' ? (last?.on ?? today) : today,
  });
  const asked = useQuestion(animal.id, of(period));
  const shown = useAnswer('intake', asked, (q) => engine.intake(q));
  // How it eats today is told by all of the last nights, whichever are looked at.
  const lately = useAnswer('intake', useQuestion(animal.id, of('weeks')), (q) => engine.intake(q));
  if (last === undefined) return null;
  const intake = asked && shown.value;
  return (
    <section className="left-result" aria-label={t.title}>
      <h3>{t.title}</h3>
      {lately.value && <Advice animal={animal} intake={lately.value} />}
      <Radios
        className="left-period"
        label={t.period}
        value={period}
        options={[
          ['night', t.night],
          ['weeks', t.weeks],
          ['months', t.months],
        ]}
        onChange={setPeriod}
      />
      {!asked && <p className="empty">{t.none}</p>}
      {asked && <AnswerState {...shown} />}
      {intake && (
        <>
          {intakeWords(intake).map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
          <FoodPicture intake={intake} />
          <NutrientPicture intake={intake} />
        </>
      )}
    </section>
  );
}

/** What is to be worked out; undefined where nothing was noted in these days. */
function useQuestion(animalId: string, { from, to }: { from: Day; to: Day }): IntakeQuestion | undefined {
  const { house } = useMixDraft();
  return useMemo(() => {
    const asked = intakeQuestion(house, animalId, { from, to });
    return asked.spans.length > 0 ? asked : undefined;
  }, [house, animalId, from, to]);
}
