/** The marks of the picture of a life, told apart by their shape. */
import type { Note, Seen } from '../../../care/model.ts';

interface At {
  x: number;
  y: number;
}

/** Other food than before. */
export function ChangeMark({ x, y }: At) {
  return <path className="change-mark" d={`M${x} ${y - 6}l6 6-6 6-6-6z`} />;
}

/** How a new food went: full where it was eaten, half where it was carried off, hollow where it was left, a cross for harm. */
export function SeenMark({ seen, x, y }: At & { seen: Seen }) {
  if (seen === 'upset') {
    return <path className="seen-harm" d={`M${x - 5} ${y - 5}l10 10M${x + 5} ${y - 5}l-10 10`} />;
  }
  return (
    <g>
      <circle
        className={seen === 'left' || seen === 'hoarded' ? 'seen-open' : 'seen-full'}
        cx={x}
        cy={y}
        r={5}
      />
      {seen === 'hoarded' && <path className="seen-full" d={`M${x} ${y - 5}a5 5 0 0 0 0 10z`} />}
      {seen === 'first' && <circle className="seen-ring" cx={x} cy={y} r={8} />}
    </g>
  );
}

/** A leaf of paper for what was seen, a cross for what a vet said. */
export function NoteMark({ kind, x, y }: At & { kind: Note['kind'] }) {
  return kind === 'vet' ? (
    <path className="vet-mark" d={`M${x - 2.5} ${y - 7}h5v4.5h4.5v5h-4.5v4.5h-5v-4.5h-4.5v-5h4.5z`} />
  ) : (
    <path
      className="note-mark"
      d={`M${x - 6} ${y - 7}h8l4 4v10h-12zM${x - 3} ${y - 1}h6M${x - 3} ${y + 3}h6`}
    />
  );
}
