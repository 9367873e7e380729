/** The days of a change-over as bars: what is fed of each food, and whether the day is in range. */

import { scaleBand, scaleLinear } from 'd3-scale';
import { useId } from 'react';
import type { ChangeDay } from '../../../../kitchen/feeding/change-words.ts';
import { words } from '../../../../words/words.ts';
import { type DayStanding, type PlanColumn, STANDINGS, standingOf } from './plan-columns.ts';

const WIDTH = 360;
const LEFT = 40;
const TOP = 20;
const BARS = 120;
const HEIGHT = TOP + BARS + 20;

interface Props {
  days: readonly ChangeDay[];
  columns: readonly PlanColumn[];
}

export function ChangeOverPicture({ days, columns }: Props) {
  const id = useId();
  const x = scaleBand<number>()
    .domain(days.map((d) => d.day))
    .range([LEFT, WIDTH])
    .paddingInner(0.15);
  const y = scaleLinear([0, 1], [TOP + BARS, TOP]);
  const fill = (k: number) => `url(#${id}-${k})`;
  const inRange = days.filter((d) => d.in_range_as_weighed).length;
  const t = words().changeOver;
  const { number } = words().figures;
  const said = t.picture.bars(
    days.length,
    columns.map((c) => c.name),
    inRange,
  );
  return (
    <figure className="change-picture">
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={said}>
        <defs>
          {columns.map((c, k) => (
            <Pattern key={c.id} id={`${id}-${k}`} place={k} />
          ))}
        </defs>
        {[0, 0.5, 1].map((part) => (
          <g key={part}>
            <line x1={LEFT} x2={WIDTH} y1={y(part)} y2={y(part)} className="change-line" />
            <text x={LEFT - 4} y={y(part) + 4} textAnchor="end">
              {t.picture.percent(part * 100)}
            </text>
          </g>
        ))}
        {days.map((d) => {
          const middle = x(d.day)! + x.bandwidth() / 2;
          let below = 0;
          return (
            <g key={d.day}>
              {columns.map((c, k) => {
                const from = below;
                below += c.part(d);
                return (
                  <rect
                    key={c.id}
                    x={x(d.day)}
                    width={x.bandwidth()}
                    y={y(below)}
                    height={Math.max(0, y(from) - y(below))}
                    fill={fill(k)}
                    className="change-part"
                  />
                );
              })}
              <text x={middle} y={TOP - 6} textAnchor="middle" className={standingOf(d)}>
                {STANDINGS[standingOf(d)]}
              </text>
              <text x={middle} y={HEIGHT - 5} textAnchor="middle">
                {number(d.day)}
              </text>
            </g>
          );
        })}
      </svg>
      <figcaption>
        {columns.map((c, k) => (
          <span key={c.id} className="change-key">
            <svg viewBox="0 0 20 14" width="20" height="14" aria-hidden="true">
              <rect x="0.5" y="0.5" width="19" height="13" fill={fill(k)} className="change-part" />
            </svg>
            {c.name}
          </span>
        ))}
        {(Object.keys(STANDINGS) as DayStanding[])
          .filter((s) => days.some((d) => standingOf(d) === s))
          .map((s) => (
            <span key={s} className="change-key">
              {STANDINGS[s]} {t.standing[s].words}
            </span>
          ))}
      </figcaption>
    </figure>
  );
}

/** Told apart by pattern as well as by colour: stripes, full, dots, and finer dots from there on. */
function Pattern({ id, place }: { id: string; place: number }) {
  const size = place <= 2 ? 6 : 4;
  return (
    <pattern
      id={id}
      width={size}
      height={size}
      patternUnits="userSpaceOnUse"
      patternTransform={place === 0 ? 'rotate(45)' : undefined}
    >
      <rect width={size} height={size} className={`change-ground-${Math.min(place, 2)}`} />
      {place === 0 && <rect width="2" height={size} className="change-ink" />}
      {place >= 2 && <circle cx={size / 2} cy={size / 2} r={size / 5} className="change-ink" />}
    </pattern>
  );
}
