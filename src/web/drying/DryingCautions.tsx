/** What to heed while it dries: the oven, the pieces, dust. */
import { LEAF_DUST } from '../../kitchen/advice.ts';
import { type Device, type DryKind, dryingCautions } from '../../kitchen/drying/drying-practice.ts';

export function DryingCautions({ device, kind }: { device: Device; kind: DryKind }) {
  const dusty = kind === 'herb' || kind === 'leaf';
  const cautions = dryingCautions(device);
  const others = cautions.filter((c) => c.heed === 'more');
  return (
    <section className="dry-cautions" aria-label="Heed while it dries">
      <ul className="notice-line">
        {cautions
          .filter((c) => c.heed === 'first')
          .map((c) => (
            <li key={c.sentence}>
              {c.sentence} <span className="source">({c.source})</span>
            </li>
          ))}
      </ul>
      <details>
        <summary>More to heed while it dries</summary>
        <ul>
          {others.map((c) => (
            <li key={c.sentence}>
              {c.sentence} <span className="source">({c.source})</span>
            </li>
          ))}
          {dusty && (
            <li>
              {LEAF_DUST.sentence} <span className="source">({LEAF_DUST.source})</span>
            </li>
          )}
        </ul>
      </details>
    </section>
  );
}
