/** The label of a batch for its jar, no larger than 70 x 50 mm, to cut out. Hidden on the screen. */
import type { BatchLabel } from '../../../kitchen/batch/label.ts';
import { dayInWords } from '../../../kitchen/days.ts';
import { words } from '../../../words/words.ts';
import { VerdictShape } from '../../shared/verdict/VerdictShape.tsx';
import './jar-label.css';

/** So many animals have room for what they are fed. */
const ANIMALS = 3;

export function JarLabel({ label }: { label: BatchLabel }) {
  const t = words().batch.label;
  const { verdict, feeding, beside } = label;
  const told = feeding.slice(0, feeding.length > ANIMALS ? ANIMALS - 1 : ANIMALS);
  return (
    <div className="print-sheet weigh-jar" aria-hidden="true">
      <article>
        <h1>{label.name}</h1>
        <p className="weigh-jar-days">
          <span>
            {t.madeOn} <b>{dayInWords(label.madeOn)}</b>
          </span>
          <span>
            {t.useBy} <b>{dayInWords(label.useBy.day)}</b>
          </span>
        </p>
        <p className="weigh-jar-verdict" data-state={verdict.state}>
          <VerdictShape state={verdict.state} size={24} className="weigh-verdict-shape" />
          <b>{verdict.head}</b>
        </p>
        {told.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        {told.length < feeding.length && <p>{t.andMore(feeding.length - told.length)}</p>}
        <p className="weigh-jar-not">
          {beside.length > 0 ? t.notCompleteBeside(beside) : t.notCompleteAlone}
        </p>
      </article>
    </div>
  );
}
