/** The one sentence of the first page, and where it is done. */
import type { Household } from '../../household/model.ts';
import type { BatchCalendar } from '../../household/reckon/calendar/batch-calendar.ts';
import { hereAmong } from '../../household/reckon/care/here.ts';
import { nextSteps, nextThing } from '../../kitchen/calendar/sentences.ts';
import type { StepKind } from '../../kitchen/calendar/step-days.ts';
import type { Day } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import type { Place } from './errand.ts';

export interface NextWords {
  readonly sentence: string;
  readonly link: string;
  readonly to: Place;
}

type NextPlace = Pick<NextWords, 'link' | 'to'>;

function placeOf(kind: StepKind): NextPlace {
  const t = words().today.links;
  const freezer: NextPlace = { link: t.freezer, to: ['cupboard', 'cold'] };
  const places: Readonly<Record<StepKind, NextPlace>> = {
    buy: { link: t.shopping, to: ['shopping'] },
    freeze: freezer,
    thaw: freezer,
    dry: { link: t.drying, to: ['drying'] },
    weigh: { link: t.scale, to: ['weigh'] },
    'change-over': { link: t.changeOver, to: ['mix', 'change'] },
  };
  return places[kind];
}

/** The one sentence of the first page and where it is done. */
export function nextOf(house: Household, view: BatchCalendar, today: Day): NextWords {
  const { plan, present, weighing } = view;
  const t = words().today.links;
  const sentence = nextThing(plan, today);
  if (present?.runsOut.status === 'unknown') {
    const silent = hereAmong(house.animals, present.batch.animalIds).find((a) => a.dailyGrams === undefined);
    return silent
      ? { sentence, link: t.animal(silent.name), to: ['animals', silent.id] }
      : { sentence, link: t.forWhom, to: ['mix'] };
  }
  const step = nextSteps(plan)[0] ?? plan.steps.find((s) => s.state === 'begun');
  if (!step) return { sentence, link: t.days, to: ['calendar'] };
  if (step.kind === 'weigh' && weighing) return { sentence, link: t.weighOn, to: ['weigh', weighing.id] };
  return { sentence, ...placeOf(step.kind) };
}
