/** The state of a lot as a shape, beside its words: no two states have the same one. */
import type { LotStateKind } from '../../household/reckon/cupboard/lot-state.ts';
import '../shared/lots/lots.css';

const SHAPES: Readonly<Record<LotStateKind, string>> = {
  /** a tick */
  ready: 'M4 10.5 l4 4 L16 6',
  /** a sign to look out */
  past: 'M10 3 L18 17 H2 z M10 8 v4 M10 14.2 v1',
  /** frost */
  treatment: 'M10 2 V18 M3 6 L17 14 M17 6 L3 14',
  /** a box to tick */
  due: 'M4 4 H16 V16 H4 z M10 7 v6 M7 10 h6',
  /** sand in a glass */
  waits: 'M5 3 H15 L5 17 H15 z',
  /** a leaf */
  fresh: 'M4 16 C4 7 9 4 16 4 C16 11 13 16 4 16 z M4 16 L11 9',
  /** a cross */
  barred: 'M4 4 L16 16 M16 4 L4 16',
  /** an empty dish */
  empty: 'M3 8 H17 C17 13 14 16 10 16 C6 16 3 13 3 8 z',
};

export function LotMark({ kind }: { kind: LotStateKind }) {
  return (
    <svg className={`lot-mark ${kind}`} viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
      <path d={SHAPES[kind]} fill="none" stroke="currentColor" strokeWidth="2" strokeLinejoin="round" />
    </svg>
  );
}
