/** HiGHS as its manual begins: the question written as LP text, a fresh solver for each. */
import type { Highs } from '../../src/formulation/solve/highs.ts';
import { type Answer, distance, type Goal, type Rules } from './rules.ts';

/** @returns undefined where there is no mix */
export function byText(highs: Highs, rules: Rules, goal: Goal): Answer | undefined {
  const { Status, Columns } = highs.solve(textOf(rules, goal), { output_flag: false });
  if (Status !== 'Optimal') return undefined;
  const columns = Columns as Record<string, { Primal: number }>;
  const x = rules.lower.map((_, i) => columns[`x${i}`]?.Primal ?? Number.NaN);
  return {
    x,
    objective:
      'target' in goal ? distance(x, goal.target) : goal.cost.reduce((s, c, i) => s + c * (x[i] ?? 0), 0),
  };
}

function textOf({ rows, lower, upper, whole }: Rules, goal: Goal): string {
  const terms = (a: readonly number[]) =>
    a.flatMap((v, i) => (v === 0 ? [] : [`${v < 0 ? '-' : '+'} ${Math.abs(v)} x${i}`])).join('\n ');
  const objective =
    'cost' in goal
      ? terms(goal.cost) || '0 x0'
      : `${terms(goal.target.map((t) => -2 * t)) || '0 x0'}\n + [ ${lower.map((_, i) => `2 x${i} ^2`).join('\n + ')} ] / 2`;
  const rules = rows.flatMap(({ a, min, max }) =>
    min === max
      ? [`${terms(a)} = ${min}`]
      : [
          ...(min > Number.NEGATIVE_INFINITY ? [`${terms(a)} >= ${min}`] : []),
          ...(max < Number.POSITIVE_INFINITY ? [`${terms(a)} <= ${max}`] : []),
        ],
  );
  const bounds = lower.map((low, i) =>
    low === upper[i] ? `x${i} = ${low}` : `${low} <= x${i} <= ${upper[i]}`,
  );
  const switches = whole?.flatMap((w, i) => (w ? [`x${i}`] : [])) ?? [];
  return [
    `Minimize\n ${objective}`,
    `Subject To\n${rules.join('\n')}`,
    `Bounds\n${bounds.join('\n')}`,
    ...(switches.length > 0 ? [`General\n${switches.join('\n')}`] : []),
    'End\n',
  ].join('\n');
}
