/** What is done in a step, as a small picture. */
import type { StepKind } from '../../kitchen/calendar/step-days.ts';

const DRAWN: Readonly<Record<StepKind, string>> = {
  // A basket, a flake of snow, drops, warm air, a bowl, a small animal.
  buy: 'M2 7h12l-2 7H4zM5 7l2-5M11 7 9 2',
  freeze: 'M8 1v14M2 4.5l12 7M14 4.5l-12 7',
  thaw: 'M5 2c-3 4-3 6 0 6s3-2 0-6M11 6c-3 4-3 7 0 7s3-3 0-7',
  dry: 'M3 14c-2-4 2-6 0-11M8 14c-2-4 2-6 0-11M13 14c-2-4 2-6 0-11',
  weigh: 'M1 6h14c0 5-3 8-7 8s-7-3-7-8M5 3l1 1M9 2v2',
  'change-over': 'M2 13c-1-6 3-9 7-8M9 5c2-3 5-1 3 1 3 2 3 5-1 7H2M11.5 8.5h.1',
};

export function StepIcon({ kind }: { kind: StepKind }) {
  return (
    <svg className="cal-icon" viewBox="0 0 16 16" aria-hidden="true">
      <path d={DRAWN[kind]} />
    </svg>
  );
}
