/** The days between which the next batch is planned. */
import type { Frame } from '../../../kitchen/calendar/kitchen-plan.ts';
import type { RunsOut } from '../../../kitchen/feeding/runs-out.ts';
import type { Day, NextBatch } from '../../../kitchen/model.ts';

/** Forwards from today or a day; backwards from the day on which the present batch runs out, or from a day. */
export type FrameMode = 'today' | 'from' | 'runs-out' | 'until';

/** Nothing is planned for a day that has passed. */
export function frameOf(
  next: NextBatch,
  runs: RunsOut | undefined,
  today: Day,
): { frame: Frame; mode: FrameMode; fromPassed: boolean } {
  const { from, until, untilRunsOut } = next;
  const passed = from !== undefined && from < today;
  if (untilRunsOut && runs?.status === 'known')
    return { frame: { from: today, until: runs.day }, mode: 'runs-out', fromPassed: false };
  if (until !== undefined) return { frame: { from: today, until }, mode: 'until', fromPassed: false };
  if (from === undefined) return { frame: { from: today }, mode: 'today', fromPassed: false };
  return { frame: { from: passed ? today : from }, mode: 'from', fromPassed: passed };
}

/** What the kitchen keeps for another frame; the steps put on their days stay. */
export function withFrame(next: NextBatch, mode: FrameMode, day: Day): NextBatch {
  const { from: _from, until: _until, untilRunsOut: _runsOut, ...rest } = next;
  if (mode === 'from') return { ...rest, from: day };
  if (mode === 'until') return { ...rest, until: day };
  return mode === 'runs-out' ? { ...rest, untilRunsOut: true } : rest;
}
