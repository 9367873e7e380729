/** The label of a batch on paper. Hidden on the screen. */
import { contentWords } from '../../kitchen/batch.ts';
import type { BatchLabel } from '../../kitchen/batch-label.ts';
import { gramWords } from '../mix/weigh-out-view.ts';

export function WeighLabel({ label }: { label: BatchLabel }) {
  return (
    <div className="print-sheet weigh-label" aria-hidden="true">
      <h1>{label.name}</h1>
      <p>
        {gramWords(label.grams)}, made {label.madeOn}
        {label.madeBy && ` by ${label.madeBy}`}. Use by {label.useBy.day}. Batch {label.batch.slice(0, 8)}.
      </p>
      <p>{label.verdict}</p>
      <p>Foods: {label.foods.map((f) => `${f.name} ${f.share.toFixed(1)} %`).join(', ')}.</p>
      <p>Per 100 g: {label.contents.map((line) => `${line.name} ${contentWords(line)}`).join('; ')}.</p>
      <p>
        {label.feeding.join(' ')} {label.lasts}
      </p>
      <p>
        {label.moisture.sentence} {label.keep.map((k) => k.sentence).join(' ')}
      </p>
      {label.cautions.map((c) => (
        <p key={c}>{c}</p>
      ))}
      <p>Not veterinary advice. A home mix never replaces a complete food.</p>
    </div>
  );
}
