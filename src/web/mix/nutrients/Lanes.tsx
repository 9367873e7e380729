/** Pellet, mix and ration, each on a lane of its own: what they hold of a nutrient, on one scale. */
import type { ScaleLinear } from 'd3-scale';
import { words } from '../../../words/words.ts';
import { type Contents, figure } from '../../shared/windows.ts';

/** Width of the picture, and where the scale begins and ends; the words stand left and right of it. */
export const WIDTH = 340;
export const LEFT = 62;
export const RIGHT = 280;

type Lane = 'pellet' | 'mix' | 'ration';

const LANES: readonly (readonly [lane: Lane, y: number])[] = [
  ['pellet', 12],
  ['mix', 32],
  ['ration', 52],
];
/** Height of the three lanes. */
export const LANES_HEIGHT = 64;

/**
 * @param ruled the lane that the rule is on @param pellet whether anything is fed beside the mix
 * @param bare without the figures, where they stand beside the picture
 */
export function Lanes({
  contents,
  x,
  ruled,
  pellet,
  bare = false,
}: {
  contents: Contents;
  x: ScaleLinear<number, number>;
  ruled: 'mix' | 'ration';
  pellet: boolean;
  bare?: boolean;
}) {
  const t = words().nutrients;
  const { low, high } = contents;
  const [least = 0, most = 0] = x.domain();
  const wide = low !== undefined && high !== undefined && high - low > (most - least) / 200;
  return (
    <>
      {wide && <path className="whisker" d={whisker(x, low, high, high <= most)} />}
      {LANES.filter(([lane]) => lane !== 'pellet' || pellet).map(([lane, y]) => {
        const value = contents[lane];
        return (
          <g key={lane} className={`lane ${lane} ${ruled === lane ? 'ruled' : ''}`}>
            <text x={0} y={y + 4}>
              {t.lane[lane]}
            </text>
            <line className="lane-line" x1={LEFT} x2={RIGHT} y1={y} y2={y} />
            {value !== undefined && <Mark shape={lane} x={x(value)} y={y} />}
            {!bare && (
              <text className="value" x={WIDTH} y={y + 4} textAnchor="end">
                {value === undefined
                  ? t.unknown
                  : lane === 'pellet' && contents.pelletAtLeast
                    ? t.lanes.atLeast(figure(value))
                    : figure(value)}
              </text>
            )}
          </g>
        );
      })}
    </>
  );
}

/** From the least to the most the ration may hold; an arrow where the most lies beyond the picture. */
function whisker(x: ScaleLinear<number, number>, low: number, high: number, ends: boolean): string {
  const y = 52;
  const end = ends ? `M${x(high)} ${y - 5} v10` : `M${RIGHT - 4} ${y - 4} l4 4 -4 4`;
  return `M${x(low)} ${y} H${x(high)} M${x(low)} ${y - 5} v10 ${end}`;
}

/** Pellet a square, mix a circle, ration a diamond. */
function Mark({ shape, x, y }: { shape: Lane; x: number; y: number }) {
  if (shape === 'pellet') return <rect className="mark" x={x - 5} y={y - 5} width={10} height={10} />;
  if (shape === 'mix') return <circle className="mark" cx={x} cy={y} r={5.5} />;
  return <path className="mark" d={`M${x} ${y - 8} l8 8 -8 8 -8 -8 z`} />;
}
