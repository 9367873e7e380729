/** The label of a batch for its jar, no larger than 70 x 50 mm, to cut out. Hidden on the screen. */
import type { Stop } from '../../../household/reckon/cupboard/stops.ts';
import type { BatchLabel } from '../../../kitchen/batch/label.ts';
import { dayInWords } from '../../../kitchen/days.ts';
import { words } from '../../../words/words.ts';
import { PrintedStop } from '../../shared/recall/PrintedStop.tsx';
import { VerdictShape } from '../../shared/verdict/VerdictShape.tsx';
import './jar-label.css';

/** So many animals have room for what they are fed. */
const ANIMALS = 3;

/** @param stop why it is not fed: then it says that, and how much nobody feeds is not told */
export function JarLabel({ label, stop }: { label: BatchLabel; stop: Stop | undefined }) {
  const t = words().batch.label;
  const { verdict, feeding, beside } = label;
  const told = feeding.slice(0, feeding.length > ANIMALS ? ANIMALS - 1 : ANIMALS);
  return (
    <div className="print-sheet weigh-jar" aria-hidden="true">
      <article>
        <h1>{label.name}</h1>
        {stop && <PrintedStop stop={stop} />}
        <p className="weigh-jar-days">
          <span>
            {t.madeOn} <b>{dayInWords(label.madeOn)}</b>
          </span>
          {!stop?.sure && (
            <span>
              {t.useBy} <b>{dayInWords(label.useBy.day)}</b>
            </span>
          )}
        </p>
        {!stop && (
          <p className="weigh-jar-verdict" data-state={verdict.state}>
            <VerdictShape state={verdict.state} size={24} className="weigh-verdict-shape" />
            <b>{verdict.head}</b>
          </p>
        )}
        {!stop?.sure && told.map((sentence) => <p key={sentence}>{sentence}</p>)}
        {!stop?.sure && told.length < feeding.length && <p>{t.andMore(feeding.length - told.length)}</p>}
        {!stop?.sure && (
          <p className="weigh-jar-not">
            {beside.length > 0 ? t.notCompleteBeside(beside) : t.notCompleteAlone}
          </p>
        )}
      </article>
    </div>
  );
}
