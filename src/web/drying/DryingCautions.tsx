import { type Device, type DryKind, dryingCautions } from '../../kitchen/drying/drying-practice.ts';

export function DryingCautions({ device, kind }: { device: Device; kind: DryKind }) {
  const dusty = kind === 'herb' || kind === 'leaf';
  const [first, ...others] = dryingCautions(device);
  return (
    <section className="dry-cautions" aria-label="Heed while it dries">
      {first && (
        <p className="notice-line">
          {first.sentence} <span className="source">({first.source})</span>
        </p>
      )}
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
              Dry leaves break to dust: leave them in pieces, and sieve the dust off before they go into a
              mix; it is bad for small airways. <span className="source">(common practice, no source)</span>
            </li>
          )}
        </ul>
      </details>
    </section>
  );
}
