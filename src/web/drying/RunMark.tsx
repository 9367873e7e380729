/** The state of a run as a shape, beside its words: no two states have the same one. */
import type { RunState } from '../../household/reckon/drying/drying-runs.ts';
import '../shared/lots/lots.css';

const SHAPES: Readonly<Record<RunState | 'due', string>> = {
  /** a clock */
  drying: 'M10 2 a8 8 0 1 0 0.01 0 z M10 5 v5 l4 2',
  /** a bell */
  due: 'M10 2 v2 M4 15 C6 13 5 5 10 4 C15 5 14 13 16 15 z M8 17 h4',
  /** a pair of scales */
  weighed: 'M10 3 v14 M5 17 h10 M3 6 h14 M3 6 l-2 6 h4 z M17 6 l-2 6 h4 z',
  /** a tick */
  done: 'M4 10.5 l4 4 L16 6',
  /** a cross */
  lost: 'M4 4 L16 16 M16 4 L4 16',
};

export function RunMark({ kind }: { kind: RunState | 'due' }) {
  return (
    <svg
      className={`lot-mark dry-mark ${kind}`}
      viewBox="-1 0 22 20"
      width="20"
      height="20"
      aria-hidden="true"
    >
      <path d={SHAPES[kind]} fill="none" stroke="currentColor" strokeWidth="2" strokeLinejoin="round" />
    </svg>
  );
}
