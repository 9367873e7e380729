/** A picture on a time axis in which one of its marks is chosen: by a press, a stroke, or the arrows of the keyboard. */
import type { KeyboardEvent, MouseEvent, ReactNode } from 'react';
import './timeline.css';

export function PointedPicture(props: {
  label: string;
  /** Where the marks lie, px from the left, in their order. */
  xs: readonly number[];
  chosen: number | undefined;
  choose(mark: number): void;
  /** What is said of the chosen mark. */
  said: string;
  /** Another stretch of time was asked for: -1 the one before, 1 the one after. */
  move(by: number): void;
  children: ReactNode;
}) {
  const { xs, chosen, choose } = props;
  const last = xs.length - 1;

  function key(e: KeyboardEvent) {
    const now = chosen ?? last + 1;
    const to: Record<string, number> = {
      ArrowLeft: Math.max(0, now - 1),
      ArrowDown: Math.max(0, now - 1),
      ArrowRight: Math.min(last, now + 1),
      ArrowUp: Math.min(last, now + 1),
      Home: 0,
      End: last,
    };
    const next = to[e.key];
    if (next !== undefined && last >= 0) {
      e.preventDefault();
      choose(next);
    }
    if (e.key === 'PageUp' || e.key === 'PageDown') {
      e.preventDefault();
      props.move(e.key === 'PageUp' ? -1 : 1);
    }
  }
  function point(e: MouseEvent) {
    const x = e.clientX - e.currentTarget.getBoundingClientRect().left;
    const near = nearest(xs, x);
    if (near !== undefined && near !== chosen) choose(near);
  }
  return (
    <div
      className="pointed"
      role="slider"
      tabIndex={0}
      aria-label={props.label}
      aria-valuemin={0}
      aria-valuemax={Math.max(0, last)}
      aria-valuenow={chosen ?? Math.max(0, last)}
      aria-valuetext={props.said}
      onKeyDown={key}
      onClick={point}
      onMouseMove={(e) => e.buttons === 1 && point(e)}
    >
      {props.children}
    </div>
  );
}

/** The mark that lies nearest; of several in one place the first. */
function nearest(xs: readonly number[], x: number): number | undefined {
  let best: number | undefined;
  for (const [i, at] of xs.entries())
    if (best === undefined || Math.abs(at - x) < Math.abs((xs[best] ?? 0) - x)) best = i;
  return best;
}
