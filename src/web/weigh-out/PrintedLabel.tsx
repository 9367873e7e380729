/** The label of a batch on paper, to cut out. Hidden on the screen. */
import { joined } from '../../formulation/explain/sentences.ts';
import { contentWords } from '../../kitchen/batch/batch.ts';
import { type BatchLabel, saidOnLabel } from '../../kitchen/batch/label.ts';
import { dayInWords } from '../../kitchen/days.ts';
import { gramWords } from '../shared/words/gram-words.ts';
import './label.css';

export function PrintedLabel({ label, out }: { label: BatchLabel; out: boolean }) {
  return (
    <div className="print-sheet weigh-label" aria-hidden="true">
      <article>
        <header>
          <h1>{label.name}</h1>
          <p>
            Home mix, {gramWords(label.grams)}. Batch {label.batch.slice(0, 8)}
          </p>
        </header>
        <div>
          <dl>
            <div>
              <dt>Made on</dt>
              <dd>
                {dayInWords(label.madeOn)}
                {label.madeBy && <span> by {label.madeBy}</span>}
              </dd>
            </div>
            <div>
              <dt>Use by</dt>
              <dd>{dayInWords(label.useBy.day)}</dd>
            </div>
          </dl>
          <p className="weigh-why">{label.useBy.reason}</p>
          {out && <p className="weigh-label-out">Out of range. {label.verdict}</p>}
          <h2>Feed</h2>
          {label.feeding.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
          <p>{label.lasts}</p>
          <h2>Keep</h2>
          <p>
            {label.moisture.sentence} {label.keep.map((k) => k.sentence).join(' ')}
          </p>
          {label.cautions.length > 0 && (
            <>
              <h2>Mind</h2>
              {label.cautions.map((c) => (
                <p key={`${joined(c.foods)} ${c.title}`}>
                  <b>{joined(c.foods)}.</b> {saidOnLabel(c)}
                </p>
              ))}
            </>
          )}
        </div>
        <div>
          <h2>In 100 g</h2>
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
          <h2>Foods, by weight</h2>
          <p>{label.foods.map((f) => `${f.name} ${f.share.toFixed(1)}\u00a0%`).join(', ')}.</p>
        </div>
        <footer>Not veterinary advice. A home mix never replaces a complete food.</footer>
      </article>
    </div>
  );
}
