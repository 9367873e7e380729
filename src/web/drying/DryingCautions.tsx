/** What to heed while it dries: the oven, the pieces, dust. */
import { type Device, type DryKind, dryingCautions } from '../../kitchen/drying/drying-practice.ts';
import { words } from '../../words/words.ts';

export function DryingCautions({ device, kind }: { device: Device; kind: DryKind }) {
  const dusty = kind === 'herb' || kind === 'leaf';
  const { drying, kitchen } = words();
  const { leafDust } = kitchen;
  const cautions = dryingCautions(device);
  const others = cautions.filter((c) => c.heed === 'more');
  return (
    <section className="dry-cautions" aria-label={drying.heed.section}>
      <ul className="notice-line">
        {cautions
          .filter((c) => c.heed === 'first')
          .map((c) => (
            <li key={c.id}>
              {c.sentence} <span className="source">({c.source})</span>
            </li>
          ))}
      </ul>
      <details>
        <summary>{drying.heed.more}</summary>
        <ul>
          {others.map((c) => (
            <li key={c.id}>
              {c.sentence} <span className="source">({c.source})</span>
            </li>
          ))}
          {dusty && (
            <li>
              {leafDust.sentence} <span className="source">({leafDust.source})</span>
            </li>
          )}
        </ul>
      </details>
    </section>
  );
}
