/** Answers as they are given out: the mix that was found with all that is to be known of it, or that there is none. */
import { words } from '../../words/words.ts';
import type { Problem } from '../problem/problem.ts';
import type {
  Best,
  CautionNote,
  Collision,
  Evaluation,
  Following,
  Mixed,
  Remedy,
  Statement,
} from '../problem/result.ts';
import type { Bound, Ration } from '../solve/bounds.ts';
import { allBounds, byFood, type MixModel } from '../solve/mix-model.ts';
import type { Found, Pins, Span } from '../solve/mix-solver.ts';
import { leavesShareOpen } from '../solve/ration-share.ts';
import { elementAt } from '../solve/vectors.ts';
import { doubts, evaluate } from './evaluate.ts';
import { capital, conflictSentence, demand } from './sentences.ts';

/** What every answer about a problem carries along. */
export interface Notes {
  readonly cautions: readonly CautionNote[];
  /** What is odd in the problem. */
  readonly questions: readonly Statement[];
  /** Pointers of fields that the format does not know. */
  readonly ignored: readonly string[];
}

/** The best mix alone. */
export function bestOf(model: MixModel, { x, objective, gap }: Found): Best {
  const { aims } = model.question;
  return {
    objective,
    ...(gap > 0 ? { gap } : {}),
    ...(aims.length > 0 ? { aims: aims.map((line) => ({ ...line.aim, value: line.value(x) })) } : {}),
    shares: byFood(model, x, 0),
  };
}

/** A mix that keeps every rule, and how it stands. */
export function mixed(model: MixModel, found: Found, notes: Notes): Mixed {
  const {
    total: _,
    breaches: __,
    ...standing
  } = evaluate(model.problem, model.ration, allBounds(model), found.x, notes.cautions);
  return {
    status: 'optimal',
    ...standing,
    ...bestOf(model, found),
    ...chosenBeside(model),
    questions: notes.questions,
    ignored: notes.ignored,
  };
}

/** A mix that keeps every rule, with room to move. @param ends how far each share may move, by column */
export function following(model: MixModel, found: Found, ends: readonly Span[], notes: Notes): Following {
  const spans = ends.map(([low, high], i) => {
    const share = elementAt(found.x, i);
    return [Math.min(low, share), Math.max(high, share)] as const;
  });
  return { ...mixed(model, found, notes), spans: byFood(model, spans, [0, 0] as const) };
}

/** What is fed beside the mix, where its share was chosen. */
export function chosenBeside({ problem, ration, besideShares }: MixModel): Pick<Evaluation, 'beside'> {
  if (!leavesShareOpen(problem)) return {};
  return {
    beside: Object.fromEntries(ration.beside.map(({ food }, i) => [food.id, elementAt(besideShares, i)])),
  };
}

/** That no mix can keep the rules: what collides, and what would mend it. */
export function colliding(
  problem: Problem,
  ration: Ration,
  { bounds, remedies }: { readonly bounds: readonly Bound[]; readonly remedies: readonly Remedy[] },
  { cautions, questions, ignored }: Notes,
): Collision {
  return {
    status: 'infeasible',
    verdict: conflictSentence(bounds),
    conflict: bounds.map((b) => ({
      pointer: b.pointer,
      sentence: capital(words().formulation.sentence(demand(b))),
    })),
    remedies,
    ...doubts(problem, ration),
    cautions,
    questions,
    ignored,
  };
}

/** That no mix is left while some shares are held. @param pins the shares held, by column */
export function heldTooTight(
  { problem, ration, open }: MixModel,
  pins: Pins,
  { cautions, questions, ignored }: Notes,
): Collision {
  const holds = [...pins].map(([i, share]) => ({
    pointer: `/foods/${open[i]}`,
    name: elementAt(ration.foods, i).name,
    share,
  }));
  const t = words().formulation;
  const names = holds.map((h) => h.name);
  return {
    status: 'infeasible',
    verdict: names.length > 0 ? t.held(names) : t.nothingFits,
    conflict: holds.map(({ pointer, name, share }) => ({
      pointer,
      sentence: t.heldAt(name, share),
    })),
    remedies: [],
    ...doubts(problem, ration),
    cautions,
    questions,
    ignored,
  };
}
