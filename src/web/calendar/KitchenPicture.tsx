/**
 * The plan as a picture of the kitchen: a line for goods that go the same way, down into the freezer, up to thaw, over
 * the dryer, till all lines run into the bowl. The list below it says the same; the picture is for the eye and the mouse.
 */
import { scaleLinear } from 'd3-scale';
import type { FedBeside } from '../../kitchen/calendar/fed-beside.ts';
import type { KitchenPlan, PlannedStep } from '../../kitchen/calendar/kitchen-plan.ts';
import { dayNumber, dayOf } from '../../kitchen/days.ts';
import type { Day } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { BesideLine } from './BesideLine.tsx';
import { BowlLine } from './BowlLine.tsx';
import { PictureKey } from './PictureKey.tsx';
import { StrandLine } from './StrandLine.tsx';
import { spanOf, strandsOf } from './view-model.ts';
import './picture.css';

/** Days between two names of days: weeks, so many that their names have room. */
const MOST_NAMES = 6;

interface Props {
  plan: KitchenPlan;
  /** What is fed from packs beside the mix. */
  beside: readonly FedBeside[];
  day: Day;
  chosen: string | undefined;
  choose(step: string): void;
}

export function KitchenPicture({ plan, beside, day, chosen, choose }: Props) {
  const f = words().figures;
  const [first, last] = spanOf(plan, day);
  const x = scaleLinear([first, last], [0, 100]).clamp(true);
  const weeks = Math.ceil((last - first) / 7 / MOST_NAMES);
  const names = Array.from(
    { length: Math.ceil((last - first) / (7 * weeks)) },
    (_, i) => first + i * 7 * weeks,
  );
  const { strands, bowl } = strandsOf(plan);
  const weigh = bowl.steps.find((s) => s.kind === 'weigh');
  const together = weigh && weigh.state !== 'done' ? x(dayNumber(weigh.start)) : undefined;
  const shown = (d: number) => d >= first && d <= last;
  const due = plan.deadline === undefined ? undefined : dayNumber(plan.deadline);
  const common = {
    plan,
    x: (d: Day) => x(dayNumber(d)),
    isShown: (s: PlannedStep) =>
      dayNumber(s.end) > first || (s.state !== 'done' && dayNumber(s.end) >= first),
    chosen,
    choose,
  };
  return (
    <div className="cal-picture" aria-hidden="true">
      <div className="cal-head">
        <div className="cal-days">
          {names.map((d) => (
            <span key={d} style={{ left: `${x(d)}%` }}>
              {f.shortDay(dayOf(d))}
            </span>
          ))}
        </div>
      </div>
      <div className="cal-lines">
        <div className="cal-over">
          {shown(dayNumber(day)) && <i className="cal-today" style={{ left: `${x(dayNumber(day))}%` }} />}
          {due !== undefined && shown(due) && <i className="cal-due" style={{ left: `${x(due)}%` }} />}
        </div>
        {strands.map((strand, i) => (
          <StrandLine key={strand.id} {...common} strand={strand} together={together} first={i === 0} />
        ))}
        <BowlLine {...common} strand={bowl} together={strands.length > 0 ? together : undefined} />
        {beside.map((fed) => (
          <BesideLine key={fed.food} fed={fed} day={day} x={common.x} />
        ))}
      </div>
      <PictureKey plan={plan} day={day} />
    </div>
  );
}
