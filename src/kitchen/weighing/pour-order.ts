/**
 * In which order to pour: what throws the mix out most when it is poured wrong goes first, while all the rest can
 * still put it right; what hardly matters goes last, since nothing comes after it to mend it. Pours are taken to go
 * wrong in proportion to their size, so a food's harm is its planned grams times its pull on the rules, in parts of
 * the room that each rule leaves.
 */

import type { Problem } from '../../formulation/problem/problem.ts';
import { shortfall } from '../../formulation/solve/bounds.ts';
import type { FormulationOptions } from '../../formulation/solve/build-ration.ts';
import { elementAt } from '../../formulation/solve/vectors.ts';
import { words } from '../../words/words.ts';
import { BatchRules } from './batch-rules.ts';

/** A rule with no room left counts as having this much, in parts of the planned mix's whole pull: so that none rules alone. */
const LEAST_ROOM = 0.02;

export interface PourPlace {
  readonly food: string;
  /** How far a pour that is 10 % out moves the mix through the tightest rule's room; 1 uses it up. */
  readonly harm: number;
  /** What the rule is about on which it pulls hardest. */
  readonly on?: string;
  readonly sentence: string;
}

const ERROR = 0.1;

/** @param shares planned, percent by food id @returns the foods with a share, in the order to pour them, with reasons */
export function pourOrder(
  problem: Problem,
  shares: Readonly<Record<string, number>>,
  options: FormulationOptions,
): PourPlace[] {
  const rules = new BatchRules(problem, options);
  const x = rules.vector(shares, '/shares');
  const pulls = rules.spaces.map((space, k) => ({
    ...space,
    subject: elementAt(rules.bounds, k).subject,
    room: Math.max(LEAST_ROOM, -shortfall(space, x)),
  }));
  const places = rules.ids.flatMap((food, i) => {
    const share = elementAt(x, i);
    if (share <= 0) return [];
    let harm = 0;
    let on: string | undefined;
    for (const { g, h, room, subject } of pulls) {
      // More of it at the same total: its own content in place of the mix's, which stands at about the bound.
      const pull = (Math.abs(elementAt(g, i) - h / 100) * share * ERROR) / room;
      if (pull <= harm) continue;
      harm = pull;
      on = subject;
    }
    return [{ food, harm, on, name: elementAt(rules.names, i) }];
  });
  return places
    .sort((a, b) => b.harm - a.harm)
    .map(({ food, harm, on, name }, at, all) => ({
      food,
      harm,
      ...(on === undefined ? {} : { on }),
      sentence: sentence(name, on, at, all.length),
    }));
}

function sentence(name: string, on: string | undefined, at: number, of: number): string {
  const t = words().weighing.order;
  if (on === undefined) return t.free(name);
  if (at < of / 3) return t.early(name, on);
  return at < (2 * of) / 3 ? t.between(name, on) : t.late(name, on);
}
