/** A line of the picture for what is fed from its packs: how long it lasts, and the day by which more is bought. */
import type { FedBeside } from '../../kitchen/calendar/fed-beside.ts';
import type { Day } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { StepIcon } from './StepIcon.tsx';
import { STRAND_HEIGHT } from './strand-path.ts';

/** Where the pack stands on its line, px from the top. */
const TOP = 30;
const FOOT = 50;

export function BesideLine({ fed, day, x }: { fed: FedBeside; day: Day; x(day: Day): number }) {
  const { calendar } = words();
  const [from, to] = [x(day), x(fed.runsOut)];
  const bought = x(fed.buyBy);
  return (
    <div className="cal-line-row">
      <span className="cal-name">{words().pelletStock.days.row(fed.name)}</span>
      <div className="cal-track">
        <svg viewBox={`0 0 100 ${STRAND_HEIGHT}`} preserveAspectRatio="none" aria-hidden="true">
          {to > from && <path className="cal-pack" d={`M ${from} ${TOP} L ${to} ${FOOT} H ${from} Z`} />}
          <line className="cal-counter" x1={0} x2={100} y1={FOOT} y2={FOOT} />
        </svg>
        {bought < 100 && (
          <span className="cal-step buy point" style={{ left: `${bought}%` }}>
            <StepIcon kind="buy" />
            <span>{calendar.picture.buy}</span>
          </span>
        )}
      </div>
    </div>
  );
}
