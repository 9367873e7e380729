/** One nutrient: the allowed window as a band through three lanes, with pellet, mix and ration in theirs. */
import { scaleLinear } from 'd3-scale';
import { boundsText, figure, type WindowView } from '../../shared/windows.ts';
import '../../shared/styles/mark.css';
import './chip.css';
import './NutrientWindow.css';

const WIDTH = 340;
const LEFT = 52;
const RIGHT = 280;
const LANES = { pellet: 12, mix: 32, ration: 52 } as const;
const BOTTOM = 64;
const HEIGHT = 80;

export function NutrientWindow({ view, pelletName }: { view: WindowView; pelletName: string | undefined }) {
  const { min, max, low, high } = view;
  const points = [view.mix, view.ration, view.pellet, min, max].filter((v) => v !== undefined);
  const width = (max ?? Math.max(...points, 0)) - (min ?? Math.min(...points, 0)) || 1;
  const least = Math.max(0, Math.min(...points) - width * 0.5);
  const most = Math.max(...points) + width * 0.5;
  const x = scaleLinear([least, most], [LEFT, RIGHT]).clamp(true);
  const lanes = Object.entries(LANES).filter(([lane]) => lane !== 'pellet' || pelletName !== undefined);
  const inWord = view.unsure ? 'in range as far as known' : 'in range';
  const word = { in: inWord, out: 'out of range', unknown: 'not known yet' }[view.state];

  return (
    <figure className={`window ${view.state}`} data-window={view.title}>
      <figcaption>
        <strong>{view.title}</strong>
        <span className="window-bounds">
          {boundsText(min, max)} {view.unit}
          {view.on === 'mix' && ' of the mix'}
        </span>
        <span className={`chip ${view.state}`}>{word}</span>
      </figcaption>
      {points.length > 0 && (
        <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={spoken(view, word, pelletName)}>
          <rect
            className="band"
            x={min === undefined ? LEFT : x(min)}
            y={0}
            width={Math.max(1, (max === undefined ? RIGHT : x(max)) - (min === undefined ? LEFT : x(min)))}
            height={BOTTOM}
          />
          {[min, max].map(
            (bound, i) =>
              bound !== undefined && (
                <g key={i === 0 ? 'min' : 'max'}>
                  <line className="bound" x1={x(bound)} x2={x(bound)} y1={0} y2={BOTTOM} />
                  <text className="bound-text" x={x(bound)} y={HEIGHT - 3} textAnchor="middle">
                    {Number(bound.toFixed(3))}
                  </text>
                </g>
              ),
          )}
          {low !== undefined && high !== undefined && high - low > (most - least) / 200 && (
            <path
              className="whisker"
              d={`M${x(low)} ${LANES.ration} H${x(high)} M${x(low)} ${LANES.ration - 5} v10 ${high <= most ? `M${x(high)} ${LANES.ration - 5} v10` : `M${RIGHT - 4} ${LANES.ration - 4} l4 4 -4 4`}`}
            />
          )}
          {lanes.map(([lane, y]) => {
            const value = view[lane as keyof typeof LANES];
            const ruled = view.on === lane;
            return (
              <g key={lane} className={`lane ${lane} ${ruled ? 'ruled' : ''}`}>
                <text x={0} y={y + 4}>
                  {lane}
                </text>
                <line className="lane-line" x1={LEFT} x2={RIGHT} y1={y} y2={y} />
                {value !== undefined && <Mark shape={lane as keyof typeof LANES} x={x(value)} y={y} />}
                <text className="value" x={WIDTH} y={y + 4} textAnchor="end">
                  {value === undefined
                    ? 'unknown'
                    : `${lane === 'pellet' && view.pelletAtLeast ? '≥ ' : ''}${figure(value)}`}
                </text>
              </g>
            );
          })}
        </svg>
      )}
      <p className="window-note">{noted(view)}</p>
    </figure>
  );
}

/** Pellet a square, mix a circle, ration a diamond. */
function Mark({ shape, x, y }: { shape: keyof typeof LANES; x: number; y: number }) {
  if (shape === 'pellet') return <rect className="mark" x={x - 5} y={y - 5} width={10} height={10} />;
  if (shape === 'mix') return <circle className="mark" cx={x} cy={y} r={5.5} />;
  return <path className="mark" d={`M${x} ${y - 8} l8 8 -8 8 -8 -8 z`} />;
}

function noted(view: WindowView): string {
  const parts: string[] = [];
  if (view.chance !== undefined && !view.unsure)
    parts.push(`${Math.round(view.chance * 100)} % chance to be in range`);
  if (view.coverage !== undefined) parts.push(`figures for ${Math.round(view.coverage)} % of the ration`);
  if (
    view.low !== undefined &&
    view.high !== undefined &&
    view.high - view.low > 0.005 * Math.max(1, view.high)
  ) {
    parts.push(`ration between ${figure(view.low)} and ${figure(view.high)}`);
  }
  if (view.estimated) parts.push('partly estimated');
  if (view.unsure) parts.push('rests on missing figures');
  return parts.join(' · ');
}

function spoken(view: WindowView, word: string, pelletName: string | undefined): string {
  const said = (name: string, v?: number) => `${name} ${v === undefined ? 'unknown' : figure(v)}`;
  const lanes = [said('ration', view.ration), said('mix', view.mix)];
  if (pelletName !== undefined) lanes.push(said('pellet', view.pellet));
  return `${view.title}, ${boundsText(view.min, view.max)} ${view.unit} in the ${view.on}: ${word}. ${lanes.join(', ')}.`;
}
