/** One line of the picture: what goes the same way, from the basket to the bowl. */
import type { KitchenPlan, PlannedStep } from '../../kitchen/calendar/kitchen-plan.ts';
import type { Day } from '../../kitchen/model.ts';
import { PictureStep } from './PictureStep.tsx';
import { COUNTER, pathOf, STRAND_HEIGHT, waitsOf } from './strand-path.ts';
import { isCritical, type Strand } from './view-model.ts';

export interface LineProps {
  plan: KitchenPlan;
  strand: Strand;
  /** Where a day lies across the picture, percent. */
  x(day: Day): number;
  isShown(step: PlannedStep): boolean;
  /** Where all lines come together, percent; undefined where they have. */
  together: number | undefined;
  chosen: string | undefined;
  choose(step: string): void;
}

export function StrandLine(props: LineProps & { first: boolean }) {
  const { plan, strand, x, isShown, together, first } = props;
  const steps = strand.steps.filter(isShown);
  const stretches = steps.map((step) => ({ kind: step.kind, from: x(step.start), to: x(step.end), step }));
  return (
    <div className="cal-line-row">
      <span className="cal-name">{strand.title}</span>
      <div className="cal-track">
        <svg viewBox={`0 0 100 ${STRAND_HEIGHT}`} preserveAspectRatio="none" aria-hidden="true">
          <line className="cal-counter" x1={0} x2={100} y1={COUNTER} y2={COUNTER} />
          {stretches.map(({ step, ...s }) => (
            <path
              key={step.id}
              className={`cal-way ${s.kind} ${step.state}${isCritical(plan, step) ? ' critical' : ''}`}
              d={pathOf(s)}
            />
          ))}
          {waitsOf(stretches, together).map(([from, to]) => (
            <line key={from} className="cal-wait" x1={from} x2={to} y1={COUNTER} y2={COUNTER} />
          ))}
          {together !== undefined && (
            <line
              className="cal-pour"
              x1={together}
              x2={together}
              y1={first ? COUNTER : 0}
              y2={STRAND_HEIGHT}
            />
          )}
        </svg>
        {stretches.map(({ step, from, to }) => (
          <PictureStep
            key={step.id}
            step={step}
            from={from}
            to={to}
            alone={steps.length === 1}
            chosen={props.chosen === step.id}
            choose={props.choose}
          />
        ))}
      </div>
    </div>
  );
}
