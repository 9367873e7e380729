/**
 * One nutrient: the allowed window as a band, with pellet, mix and ration in their lanes. Fibre has a second set of
 * lanes under the first: the same window held against the other measure.
 */
import { scaleLinear } from 'd3-scale';
import type { Ref } from 'react';
import { countedWord } from '../../../nutrition/nutrients.ts';
import { words } from '../../../words/words.ts';
import { boundsText, type Contents, figure, type WindowView } from '../../shared/windows.ts';
import { LANES_HEIGHT, Lanes, LEFT, RIGHT, WIDTH } from './Lanes.tsx';
import '../../shared/styles/mark.css';
import './chip.css';
import './NutrientWindow.css';

/** Room for the figures of the bounds below the lanes, and for the name of the other reading above its own. */
const FOOT = 16;
const SECOND = LANES_HEIGHT + 24;

interface Props {
  view: WindowView;
  pelletName: string | undefined;
  /** Watches whether it can be seen. */
  watch: Ref<HTMLElement>;
}

export function NutrientWindow({ view, pelletName, watch }: Props) {
  const { min, max, otherFibre: other } = view;
  const points = [...pointsOf(view), ...(other ? pointsOf(other) : []), min, max].filter(
    (v) => v !== undefined,
  );
  const width = (max ?? Math.max(...points, 0)) - (min ?? Math.min(...points, 0)) || 1;
  const least = Math.max(0, Math.min(...points) - width * 0.5);
  const most = Math.max(...points) + width * 0.5;
  const x = scaleLinear([least, most], [LEFT, RIGHT]).clamp(true);
  const { figures: f, nutrients: t } = words();
  const state = view.unsure && view.state === 'in' ? 'if' : view.state;
  const word = t.state[state];
  const bottom = other ? SECOND + LANES_HEIGHT : LANES_HEIGHT;
  const shared = { x, ruled: view.on, pellet: pelletName !== undefined };

  return (
    <figure ref={watch} className={`window ${state}`} data-window={view.title}>
      <figcaption>
        <strong>{view.title}</strong>
        <span className="window-bounds">
          {boundsText(min, max)} {view.unit}
          {view.on === 'mix' && ` ${t.ofMix}`}
        </span>
        <span className={`chip ${state}`}>{word}</span>
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
                    {f.number(bound, 3)}
                  </text>
                </g>
              ),
          )}
          <Lanes contents={view} {...shared} />
          {other && (
            <g className={`other ${other.state}`}>
              <text className="other-name" x={0} y={SECOND - 8}>
                {t.readAs(countedWord(other.tag), t.state[other.state])}
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
          {t.as(countedWord(other.tag), noted({ ...other, estimated: false, unsure: false }))}
        </p>
      )}
    </figure>
  );
}

function pointsOf({ mix, ration, pellet }: Contents): (number | undefined)[] {
  return [mix, ration, pellet];
}

type Noted = Pick<WindowView, 'chance' | 'coverage' | 'low' | 'high' | 'estimated' | 'unsure'>;

function noted({ chance, coverage, low, high, estimated, unsure }: Noted): string {
  const t = words().nutrients;
  const parts: string[] = [];
  if (chance !== undefined && !unsure) parts.push(t.chance(100 * chance));
  if (coverage !== undefined) parts.push(t.figuresFor(coverage));
  if (low !== undefined && high !== undefined && high - low > 0.005 * Math.max(1, high)) {
    parts.push(t.between(low, high));
  }
  if (estimated) parts.push(t.estimated);
  if (unsure) parts.push(t.unproven);
  return parts.join(' · ');
}

function spoken(view: WindowView, word: string, pelletName: string | undefined): string {
  const t = words().nutrients;
  const said = (lane: 'ration' | 'mix' | 'pellet', v?: number) =>
    t.lanes.value(t.lane[lane], v === undefined ? t.unknown : figure(v));
  const lanes = (c: Contents) =>
    [
      said('ration', c.ration),
      said('mix', c.mix),
      ...(pelletName === undefined ? [] : [said('pellet', c.pellet)]),
    ].join(', ');
  const { otherFibre: other } = view;
  const second = other ? t.picture.other(countedWord(other.tag), t.state[other.state], lanes(other)) : '';
  const range = `${boundsText(view.min, view.max)} ${view.unit}`;
  return `${t.picture[view.on](view.title, range, word, lanes(view))}${second}`;
}
