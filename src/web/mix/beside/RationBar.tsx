/** The ration as one bar, the mix first, with every part named and its share and grams a day in words below. */
import { words } from '../../../words/words.ts';

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
  const { beside: t, figures } = words();
  return (
    <div className="ration-parts">
      <div className="ration-bar" aria-hidden="true">
        {parts.map(({ id, share }, i) => (
          <span key={id} className={markOf(i)} style={{ width: `${share}%` }} />
        ))}
      </div>
      <ul className="ration-legend" aria-label={t.parts}>
        {parts.map(({ id, name, share, grams }, i) => (
          <li key={id}>
            <span className={`ration-mark ${markOf(i)}`} aria-hidden="true" /> {name}{' '}
            <strong>{figures.percent(share, 1)}</strong>
            {grams !== undefined && ` ${t.aDay(grams)}`}
          </li>
        ))}
      </ul>
    </div>
  );
}

function markOf(i: number): string {
  return i === 0 ? 'of-mix' : `of-beside-${((i - 1) % PATTERNS) + 1}`;
}
