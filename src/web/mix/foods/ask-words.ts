/** What stands in the way of a share, in the words that a food's own row says. */
import type { AskAnswer, AskLimit } from '../../../formulation/advice/ask.ts';
import { ruleAt } from '../../../formulation/problem/at-pointer.ts';
import { pointerSteps } from '../../../formulation/problem/json-pointer.ts';
import type { Problem, Shares } from '../../../formulation/problem/problem.ts';
import type { Statement } from '../../../formulation/problem/result.ts';
import { DROP_ONE } from '../../../formulation/solve/drop-one.ts';
import { words } from '../../../words/words.ts';
import { limitSubject, limitText } from './limit-subject.ts';

/** A food got less than asked where the difference can be seen, percentage points; more only where it is half as much again. */
const SHORT = 0.2;
const OVER = 1;

/** Whether what a food has is worth a word beside what was wanted of it. @param wanted percent of the mix, as `got` */
export function isUnmet(wanted: number, got: number): boolean {
  return wanted - got >= SHORT || got - wanted >= Math.max(OVER, wanted / 2);
}

/** Whether a mix is the best one, share by share as they are shown. @param best undefined while it is sought */
export function isBestMix(shares: Shares, best: Shares | undefined): boolean {
  return (
    best !== undefined &&
    Object.keys({ ...shares, ...best }).every((id) => Math.abs((shares[id] ?? 0) - (best[id] ?? 0)) < 0.05)
  );
}

/** "Wanted 8 %, got 5.4 %: fat would pass 7 %"; without the reason until the answer is there. */
export function askWords(
  problem: Problem,
  food: string,
  asked: { readonly wanted: number; readonly got: number },
  answer: AskAnswer | undefined,
): string {
  const t = words().rows.ask;
  if (!answer) return t.short(asked.wanted, asked.got);
  return t.why(asked.wanted, asked.got, reasonWords(problem, food, answer));
}

/** "It would not come to 60.5 %: fat would pass 7 %", of a share that no mix has; undefined where one may. */
export function notReachedWords(
  problem: Problem,
  food: string,
  wanted: number,
  answer: AskAnswer | undefined,
): string | undefined {
  if (answer?.possible !== false) return undefined;
  return words().rows.ask.notReached(wanted, reasonWords(problem, food, answer));
}

/** Short enough for a row: the limits of the target; where none of them stands in the way, the first of the others. */
function reasonWords(problem: Problem, food: string, { limits, near }: AskAnswer): string {
  const t = words().rows.ask;
  const ofRules = limits.filter(({ pointer }) => pointer.startsWith('/rules/'));
  const said = (ofRules.length > 0 ? ofRules : limits.slice(0, 1)).map((limit) =>
    limitWords(problem, food, limit, near),
  );
  return said.length > 0 ? t.either([...new Set(said)]) : t.others;
}

function limitWords(problem: Problem, food: string, limit: AskLimit, near: boolean): string {
  const t = words().rows.ask;
  const { side, bound, pointer, subject, caution } = limit;
  if (pointer === DROP_ONE) return t.dropOne;
  const [list, row] = pointerSteps(pointer);
  if (caution) {
    const one = list === 'foods' ? problem.foods[Number(row)]?.name : undefined;
    return one === undefined ? t.cautionOfMany(bound) : t.caution(one, bound);
  }
  if (list === 'foods') {
    const own = problem.foods[Number(row)];
    if (own?.id === food) return side === 'max' ? t.ownMost(bound) : t.ownLeast(bound);
    // Both ends of a held food stand at its share, so neither is the keeper's own limit of it.
    if (own?.[side] !== bound) return t.held;
  }
  const rule = ruleAt(problem, pointer);
  if (rule && 'count' in rule) return t.counted;
  const what = limitSubject(problem, pointer) ?? subject;
  const say = near ? (side === 'max' ? t.nearPass : t.nearFall) : side === 'max' ? t.pass : t.fall;
  return say(what, limitText(bound, limit.unit));
}

/**
 * With what the keeper's own least or most share of a food collides, where no mix can be.
 * @param conflict what collides, each said in words; undefined where a mix was found
 */
export function clashWords(
  conflict: readonly Statement[] | undefined,
  { foods }: Problem,
  food: string,
): string | undefined {
  const row = foods.findIndex((f) => f.id === food);
  const own = conflict?.filter((s) => new RegExp(`^/foods/${row}(/(min|max))?$`).test(s.pointer)) ?? [];
  if (!conflict || own.length === 0) return undefined;
  const others = conflict.filter((s) => !own.includes(s)).map((s) => s.sentence.replace(/\.$/, ''));
  return others.length > 0 ? words().rows.ask.clash(others.join('; ')) : undefined;
}
