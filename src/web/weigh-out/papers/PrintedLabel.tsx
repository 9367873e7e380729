/** The large label of a batch on paper, to cut out. Hidden on the screen. */
import type { Stop } from '../../../household/reckon/cupboard/stops.ts';
import { contentWords } from '../../../kitchen/batch/content-line.ts';
import { saidOnLabel } from '../../../kitchen/batch/foods-cautions.ts';
import type { BatchLabel } from '../../../kitchen/batch/label.ts';
import { dayInWords } from '../../../kitchen/days.ts';
import { words } from '../../../words/words.ts';
import { PrintedStop } from '../../shared/recall/PrintedStop.tsx';
import { VerdictLine } from '../VerdictLine.tsx';
import './label.css';

/** @param stop why it is not fed: then it says that, and how much nobody feeds is not told */
export function PrintedLabel({ label, stop }: { label: BatchLabel; stop: Stop | undefined }) {
  const t = words().batch.label;
  const { list } = words().figures;
  return (
    <div className="print-sheet weigh-label" aria-hidden="true">
      <article>
        <header>
          <h1>{label.name}</h1>
          <p>{t.homeMix(label.grams, label.batch.slice(0, 8))}</p>
        </header>
        <div>
          <dl>
            <div>
              <dt>{t.madeOn}</dt>
              <dd>
                {dayInWords(label.madeOn)}
                {label.madeBy && <span>{t.by(label.madeBy)}</span>}
              </dd>
            </div>
            {!stop?.sure && (
              <div>
                <dt>{t.useBy}</dt>
                <dd>{dayInWords(label.useBy.day)}</dd>
              </div>
            )}
          </dl>
          {!stop?.sure && <p className="weigh-why">{label.useBy.reason}</p>}
          {stop ? <PrintedStop stop={stop} /> : <VerdictLine verdict={label.verdict} id="label-verdict" />}
          {!stop?.sure && (
            <>
              <h2>{t.feed}</h2>
              {label.feeding.map((sentence) => (
                <p key={sentence}>{sentence}</p>
              ))}
              <p>
                {label.lasts} {words().hands.feed.waterShort}
              </p>
            </>
          )}
          {!stop?.sure && (
            <>
              <h2>{t.keep}</h2>
              <p>
                {label.moisture.sentence} {label.keep.map((k) => k.sentence).join(' ')}
              </p>
            </>
          )}
          {!stop?.sure && label.cautions.length > 0 && (
            <>
              <h2>{t.mind}</h2>
              {label.cautions.map((c) => (
                <p key={`${list(c.foods)} ${c.title}`}>
                  <b>{list(c.foods)}.</b> {saidOnLabel(c)}
                </p>
              ))}
            </>
          )}
        </div>
        <div>
          <h2>{t.in100g}</h2>
          <table>
            <tbody>
              {label.contents.map((line) => (
                <tr key={line.tag}>
                  <td>{line.name}</td>
                  <td>{contentWords(line)}</td>
                </tr>
              ))}
            </tbody>
          </table>
          <h2>{t.foods}</h2>
          <p>{label.foods.map((f) => t.share(f.name, f.share)).join(', ')}.</p>
        </div>
        <footer>{t.notComplete}</footer>
      </article>
    </div>
  );
}
