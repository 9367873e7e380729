/** The ration as one bar, the mix first, with every part named and its share and grams a day in words below. */

/** Marks told apart by pattern as well as by colour, in turn. */
const PATTERNS = 4;

export function RationBar({
  parts,
}: {
  /** Share in percent of the ration; grams a day as weighed, where the whole ration of a day is said. */
  parts: readonly {
    readonly id: string;
    readonly name: string;
    readonly share: number;
    readonly grams?: number;
  }[];
}) {
  return (
    <div className="ration-parts">
      <div className="ration-bar" aria-hidden="true">
        {parts.map(({ id, share }, i) => (
          <span key={id} className={markOf(i)} style={{ width: `${share}%` }} />
        ))}
      </div>
      <ul className="ration-legend" aria-label="Parts of the ration">
        {parts.map(({ id, name, share, grams }, i) => (
          <li key={id}>
            <span className={`ration-mark ${markOf(i)}`} aria-hidden="true" /> {name}{' '}
            <strong>{Number(share.toFixed(1))} %</strong>
            {grams !== undefined && ` ${Number(grams.toFixed(1))} g a day`}
          </li>
        ))}
      </ul>
    </div>
  );
}

function markOf(i: number): string {
  return i === 0 ? 'of-mix' : `of-beside-${((i - 1) % PATTERNS) + 1}`;
}
