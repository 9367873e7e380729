/**
 * One nutrient: the allowed window as a band, with pellet, mix and ration in their lanes. Fibre has a second set of
 * lanes under the first: the same window held against the other measure.
 */
import { scaleLinear } from 'd3-scale';
import {
  boundsText,
  type Contents,
  figure,
  type WindowState,
  type WindowView,
} from '../../shared/windows.ts';
import { LANES_HEIGHT, Lanes, LEFT, RIGHT, WIDTH } from './Lanes.tsx';
import '../../shared/styles/mark.css';
import './chip.css';
import './NutrientWindow.css';

/** Room for the figures of the bounds below the lanes, and for the name of the other reading above its own. */
const FOOT = 16;
const SECOND = LANES_HEIGHT + 24;

const WORDS: Record<WindowState, string> = { in: 'in range', out: 'out of range', unknown: 'not known yet' };

export function NutrientWindow({ view, pelletName }: { view: WindowView; pelletName: string | undefined }) {
  const { min, max, otherFibre: other } = view;
  const points = [...pointsOf(view), ...(other ? pointsOf(other) : []), min, max].filter(
    (v) => v !== undefined,
  );
  const width = (max ?? Math.max(...points, 0)) - (min ?? Math.min(...points, 0)) || 1;
  const least = Math.max(0, Math.min(...points) - width * 0.5);
  const most = Math.max(...points) + width * 0.5;
  const x = scaleLinear([least, most], [LEFT, RIGHT]).clamp(true);
  const word = view.unsure && view.state === 'in' ? 'in range as far as known' : WORDS[view.state];
  const bottom = other ? SECOND + LANES_HEIGHT : LANES_HEIGHT;
  const shared = { x, ruled: view.on, pellet: pelletName !== undefined };

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
        <svg viewBox={`0 0 ${WIDTH} ${bottom + FOOT}`} role="img" aria-label={spoken(view, word, pelletName)}>
          <rect
            className="band"
            x={min === undefined ? LEFT : x(min)}
            y={0}
            width={Math.max(1, (max === undefined ? RIGHT : x(max)) - (min === undefined ? LEFT : x(min)))}
            height={bottom}
          />
          {[min, max].map(
            (bound, i) =>
              bound !== undefined && (
                <g key={i === 0 ? 'min' : 'max'}>
                  <line className="bound" x1={x(bound)} x2={x(bound)} y1={0} y2={bottom} />
                  <text className="bound-text" x={x(bound)} y={bottom + FOOT - 3} textAnchor="middle">
                    {Number(bound.toFixed(3))}
                  </text>
                </g>
              ),
          )}
          <Lanes contents={view} {...shared} />
          {other && (
            <g className={`other ${other.state}`}>
              <text className="other-name" x={0} y={SECOND - 8}>
                Read as {other.title.toLowerCase()}: {WORDS[other.state]}
              </text>
              <g transform={`translate(0 ${SECOND})`}>
                <Lanes contents={other} {...shared} />
              </g>
            </g>
          )}
        </svg>
      )}
      <p className="window-note">{noted(view)}</p>
      {other && (
        <p className="window-note">
          {noted({ ...other, estimated: false, unsure: false }, `As ${other.title.toLowerCase()}: `)}
        </p>
      )}
    </figure>
  );
}

function pointsOf({ mix, ration, pellet }: Contents): (number | undefined)[] {
  return [mix, ration, pellet];
}

type Noted = Pick<WindowView, 'chance' | 'coverage' | 'low' | 'high' | 'estimated' | 'unsure'>;

function noted({ chance, coverage, low, high, estimated, unsure }: Noted, before = ''): string {
  const parts: string[] = [];
  if (chance !== undefined && !unsure) parts.push(`${Math.round(chance * 100)} % chance to be in range`);
  if (coverage !== undefined) parts.push(`figures for ${Math.round(coverage)} % of the ration`);
  if (low !== undefined && high !== undefined && high - low > 0.005 * Math.max(1, high)) {
    parts.push(`ration between ${figure(low)} and ${figure(high)}`);
  }
  if (estimated) parts.push('partly estimated');
  if (unsure) parts.push('rests on missing figures');
  return parts.length > 0 ? `${before}${parts.join(' · ')}` : '';
}

function spoken(view: WindowView, word: string, pelletName: string | undefined): string {
  const said = (name: string, v?: number) => `${name} ${v === undefined ? 'unknown' : figure(v)}`;
  const lanes = (c: Contents) =>
    [
      said('ration', c.ration),
      said('mix', c.mix),
      ...(pelletName === undefined ? [] : [said('pellet', c.pellet)]),
    ].join(', ');
  const { otherFibre: other } = view;
  const second = other
    ? ` Read as ${other.title.toLowerCase()}: ${WORDS[other.state]}. ${lanes(other)}.`
    : '';
  return `${view.title}, ${boundsText(view.min, view.max)} ${view.unit} in the ${view.on}: ${word}. ${lanes(view)}.${second}`;
}
