/** Foods of two mixes: a line for each from its share in the first to its share in the second. */

import { scaleLinear } from 'd3-scale';
import { words } from '../../../../words/words.ts';
import { CompareMark, CompareSign } from './CompareMark.tsx';
import type { FoodRow } from './compare.ts';

/** Shares are shown in tenths of a percent; what differs by less is the same. */
const SAME = 0.05;
const LANE = 22;
/** Percent of the width; room for a mark at either end. */
const LEFT = 3;
const RIGHT = 97;

interface Props {
  foods: readonly FoodRow[];
  nameOf(food: FoodRow['food']): string;
  /** Name of the second mix. */
  second: string;
}

export function CompareShares({ foods, nameOf, second }: Props) {
  const t = words().versions.comparison;
  const { number, percent } = words().figures;
  const top = Math.max(1, ...foods.flatMap((f) => [f.share.a, f.share.b]));
  const x = scaleLinear([0, top], [LEFT, RIGHT]).nice(4);
  const more = foods.filter((f) => f.difference >= SAME);
  const less = foods.filter((f) => f.difference <= -SAME).reverse();
  const same = foods.filter((f) => Math.abs(f.difference) < SAME);
  const lanes = (title: string, rows: readonly FoodRow[]) =>
    rows.length > 0 && (
      <>
        <h5>
          {title} <CompareSign of="b" /> {second}
        </h5>
        <ul>
          {rows.map((row) => (
            <Lane key={row.key} row={row} name={nameOf(row.food)} x={x} />
          ))}
        </ul>
      </>
    );

  return (
    <section className="compare-shares" aria-label={t.shares}>
      <h4>{t.shares}</h4>
      {lanes(t.moreIn, more)}
      {lanes(t.lessIn, less)}
      {more.length + less.length > 0 && (
        <svg className="compare-axis" width="100%" height="20" aria-hidden="true">
          {x.ticks(4).map((tick) => (
            <text key={tick} x={`${x(tick)}%`} y={14} textAnchor="middle">
              {tick === 0 ? number(tick) : percent(tick)}
            </text>
          ))}
        </svg>
      )}
      {same.length > 0 && (
        <p className="compare-same">
          <strong>{t.sameInBoth}</strong> {same.map((f) => t.shareOf(nameOf(f.food), f.share.b)).join(' · ')}
        </p>
      )}
      {foods.length === 0 && <p className="hint">{t.noShares}</p>}
    </section>
  );
}

interface Scale {
  (value: number): number;
  ticks(count: number): number[];
}

function Lane({ row, name, x }: { row: FoodRow; name: string; x: Scale }) {
  const t = words().versions.comparison;
  const { fixed } = words().figures;
  const { a, b } = row.share;
  const y = LANE / 2;
  return (
    <li className="compare-food" data-food={row.key}>
      <span>{name}</span>
      <span className="compare-figures">
        {a === 0 ? t.none : fixed(a, 1)} <span aria-hidden="true">→</span>
        <span className="sr-only">{t.to}</span> {b === 0 ? t.none : `${fixed(b, 1)} %`}{' '}
        <strong>{signed(row.difference)}</strong>
      </span>
      <svg width="100%" height={LANE} aria-hidden="true">
        {x.ticks(4).map((tick) => (
          <line key={tick} className="compare-tick" x1={`${x(tick)}%`} x2={`${x(tick)}%`} y1={0} y2={LANE} />
        ))}
        <line
          className={`compare-link ${row.within === 'both' ? '' : 'one'}`}
          x1={`${x(a)}%`}
          x2={`${x(b)}%`}
          y1={y}
          y2={y}
        />
        <CompareMark of="a" x={x(a)} y={y} none={a === 0} />
        <CompareMark of="b" x={x(b)} y={y} none={b === 0} />
      </svg>
    </li>
  );
}

/** "+2.2", "−0.4": with a true minus sign. */
export function signed(value: number): string {
  const { fixed } = words().figures;
  const size = fixed(Math.abs(value), 1);
  return Math.abs(value) < 0.05 ? size : `${value < 0 ? '−' : '+'}${size}`;
}
