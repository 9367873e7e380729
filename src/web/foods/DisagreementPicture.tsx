/** How far the sources of one amount agree: a line for each, and what they come to together. */
import { scaleLinear } from 'd3-scale';
import type { Picture, PictureRow } from '../../foods/sources/picture.ts';
import { unitWord } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import { figure } from '../shared/windows.ts';
import '../shared/styles/mark.css';

const WIDTH = 340;
const LEFT = 8;
const RIGHT = WIDTH - 8;
const ROW = 40;
const AXIS = 26;

export function DisagreementPicture({ picture }: { picture: Picture }) {
  const rows = [...picture.rows, ...(picture.combined ? [picture.combined] : [])];
  const height = rows.length * ROW + AXIS;
  const x = scaleLinear(picture.domain, [LEFT, RIGHT]).clamp(true);
  const unit = unitWord(picture.unit);
  return (
    <svg
      className="disagreement"
      viewBox={`0 0 ${WIDTH} ${height}`}
      role="img"
      aria-label={rows.map((row) => spoken(row, unit)).join('. ')}
    >
      {picture.ticks.map((tick) => (
        <g key={tick}>
          <line className="tick" x1={x(tick)} x2={x(tick)} y1={0} y2={height - AXIS + 4} />
          <text className="tick-text" x={x(tick)} y={height - 8} textAnchor="middle">
            {words().figures.figure(tick)}
          </text>
        </g>
      ))}
      {rows.map((row, i) => (
        <Line key={row.id ?? 'together'} row={row} y={i * ROW} x={x} unit={unit} />
      ))}
    </svg>
  );
}

function Line({ row, y, x, unit }: { row: PictureRow; y: number; x(value: number): number; unit: string }) {
  const at = y + 28;
  const together = row.id === undefined;
  return (
    <g className={together ? 'together' : ''}>
      <text x={LEFT} y={y + 13}>
        {shortened(row.name)}
      </text>
      <text x={RIGHT} y={y + 13} textAnchor="end">
        {row.value === undefined ? bounded(row, unit) : `${figure(row.value)} ${unit}`}
      </text>
      {row.low !== undefined && (
        <path className="guarantee" d={`M${x(row.low)} ${at - 7} v14 M${x(row.low)} ${at} h8`} />
      )}
      {row.high !== undefined && (
        <path className="guarantee" d={`M${x(row.high)} ${at - 7} v14 M${x(row.high)} ${at} h-8`} />
      )}
      {row.low95 !== undefined && row.high95 !== undefined && (
        <path
          className="whisker"
          d={`M${x(row.low95)} ${at} H${x(row.high95)} M${x(row.low95)} ${at - 4} v8 M${x(row.high95)} ${at - 4} v8`}
        />
      )}
      {row.value !== undefined &&
        (together ? (
          <path className="mark" d={`M${x(row.value)} ${at - 8} l8 8 -8 8 -8 -8 z`} />
        ) : (
          <circle className="mark" cx={x(row.value)} cy={at} r={5} />
        ))}
    </g>
  );
}

function bounded({ low, high }: PictureRow, unit: string): string {
  const t = words().foods;
  if (low !== undefined && high !== undefined) return t.sources.leastMost(figure(low), figure(high), unit);
  return low !== undefined ? t.amounts.least(figure(low), unit) : t.amounts.most(figure(high ?? 0), unit);
}

function spoken(row: PictureRow, unit: string): string {
  const t = words().foods.sources;
  if (row.value === undefined) return t.spoken(row.name, bounded(row, unit));
  const amount = `${figure(row.value)} ${unit}`;
  if (row.low95 === undefined || row.high95 === undefined) return t.spoken(row.name, amount);
  return t.spokenRange(row.name, amount, figure(row.low95), figure(row.high95));
}

const shortened = (name: string) => (name.length > 34 ? `${name.slice(0, 33)}…` : name);
