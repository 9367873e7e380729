/** Which lanes the picture of a life has, how high each is, and where it lies. */
import type { WeightStory } from '../../../care/weight/model.ts';
import type { Lifeline } from '../../../household/reckon/care/lifeline.ts';
import type { Day } from '../../../kitchen/model.ts';
import type { TimeWindow } from '../timeline/time-window.ts';
import { rowsOf, type ShownSpan, spansIn } from './life-view.ts';

/** In the order in which they lie below one another. */
const LANES = ['weight', 'batch', 'pellet', 'trial', 'left', 'note', 'condition'] as const;

export type LaneKind = (typeof LANES)[number];

export interface Lane {
  readonly is: LaneKind;
  /** px from the top of the first lane, and of the lane with its name. */
  readonly top: number;
  readonly height: number;
  readonly spans: readonly ShownSpan[];
}

/** px: of a lane's name, the room below a lane, and what lies in it. */
export const NAME = 17;
const ROOM = 9;
const WEIGHT = 130;
const LEFT = 52;
const NOTE = 20;
export const ROW = 24;
export const TRIAL_ROW = 36;

/** Of what is known of the animal at any time: a lane does not come and go with the stretch that is shown. */
export function lanesOf(
  life: Lifeline,
  story: WeightStory,
  window: TimeWindow,
  today: Day,
): { readonly all: readonly Lane[]; readonly height: number } {
  let top = 0;
  const all = LANES.filter((is) => isKnown(is, life, story)).map((is) => {
    const spans = is === 'weight' || is === 'left' || is === 'note' ? [] : spansIn(life, is, window, today);
    const height = NAME + contents(is, spans) + ROOM;
    const lane = { is, top, height, spans };
    top += height;
    return lane;
  });
  return { all, height: top };
}

function isKnown(is: LaneKind, life: Lifeline, story: WeightStory): boolean {
  switch (is) {
    case 'weight':
      return story.points.length > 0;
    case 'left':
      return life.left.some((n) => n.part !== undefined);
    case 'note':
      return life.events.some((e) => e.what.is === 'note');
    default:
      return life.spans.some((s) => s.lane === is);
  }
}

function contents(is: LaneKind, spans: readonly ShownSpan[]): number {
  switch (is) {
    case 'weight':
      return WEIGHT;
    case 'left':
      return LEFT;
    case 'note':
      return NOTE;
    default:
      return Math.max(1, rowsOf(spans)) * (is === 'trial' ? TRIAL_ROW : ROW);
  }
}
