/** The last line of the picture: all comes together in the bowl, and the animals get more of it from day to day. */

import { PictureStep } from './PictureStep.tsx';
import type { LineProps } from './StrandLine.tsx';
import { STRAND_HEIGHT } from './strand-path.ts';
import { isCritical } from './view-model.ts';

/** Where the bowl stands, and how much of the line's height the food takes, px from the top. */
const RIM = 20;
const FULL = 26;
const GROUND = 56;

export function BowlLine(props: LineProps) {
  const { plan, strand, x, isShown, together } = props;
  return (
    <div className="cal-line-row">
      <span className="cal-name">{strand.title}</span>
      <div className="cal-track">
        <svg viewBox={`0 0 100 ${STRAND_HEIGHT}`} preserveAspectRatio="none" aria-hidden="true">
          {together !== undefined && (
            <line className="cal-pour" x1={together} x2={together} y1={0} y2={RIM} />
          )}
          {strand.steps.filter(isShown).map((step) => {
            const [from, to] = [x(step.start), x(step.end)];
            const critical = isCritical(plan, step) ? ' critical' : '';
            if (step.kind === 'weigh')
              return (
                <path
                  key={step.id}
                  className={`cal-bowl${critical}`}
                  d={`M ${from} ${RIM} C ${from} ${GROUND} ${to} ${GROUND} ${to} ${RIM} Z`}
                />
              );
            return (
              <g key={step.id}>
                <rect className="cal-old" x={from} y={FULL} width={to - from} height={GROUND - FULL} />
                <path className="cal-new" d={`M ${from} ${GROUND} L ${to} ${FULL} V ${GROUND} Z`} />
                <path className={`cal-ground${critical}`} d={`M ${from} ${GROUND} H ${to}`} />
              </g>
            );
          })}
        </svg>
        {strand.steps.filter(isShown).map((step) => (
          <PictureStep
            key={step.id}
            step={step}
            from={x(step.start)}
            to={x(step.end)}
            alone={false}
            chosen={props.chosen === step.id}
            choose={props.choose}
          />
        ))}
      </div>
    </div>
  );
}
