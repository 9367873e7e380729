/** A step on its line of the picture, to be pressed: what it is, and whether it is done. */

import type { PlannedStep } from '../../kitchen/calendar/kitchen-plan.ts';
import { shortTitle } from '../../kitchen/calendar/step-words.ts';
import { words } from '../../words/words.ts';
import { StepIcon } from './StepIcon.tsx';

/** Percent of the width for a word; in a shorter step there is the icon alone. */
const WORD_ROOM = 9;

export function PictureStep(props: {
  step: PlannedStep;
  from: number;
  to: number;
  /** The only one on its line. */
  alone: boolean;
  chosen: boolean;
  choose(step: string): void;
}) {
  const { step, from, to, chosen, choose } = props;
  const t = words().calendar.picture;
  const { kind, state, days } = step;
  const said = kind === 'change-over' ? t.change : t[kind];
  const word = to - from >= WORD_ROOM || (days === 0 && props.alone);
  return (
    <button
      type="button"
      tabIndex={-1}
      className={`cal-step ${kind} ${state}${chosen ? ' chosen' : ''}${days === 0 ? ' point' : ''}`}
      style={days === 0 ? { left: `${from}%` } : { left: `${from}%`, width: `${to - from}%` }}
      title={shortTitle(step)}
      disabled={state !== 'open'}
      onClick={() => choose(step.id)}
    >
      {state === 'done' ? '✓' : <StepIcon kind={kind} />}
      {word && <span>{said}</span>}
    </button>
  );
}
