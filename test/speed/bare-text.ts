/** The model of a mix as LP text, for a solver that is asked once and nothing else: what any answer costs at the least. */
import type { MixQuestion } from '../../src/formulation/solve/mix-solver.ts';

/** The nearest mix. */
export function nearestText(question: MixQuestion): string {
  const { wants } = question;
  const squares = Array.from(wants, (_, i) => `2 x${i} ^2`).join('\n + ');
  return text(question, `Minimize\n obj: ${signed(wants.map((w) => -2 * w))}\n + [ ${squares} ] / 2`);
}

/** The lowest and the highest share of each food, a question each. */
export function spanTexts(question: MixQuestion): string[] {
  return Array.from(question.lower, (_, i) =>
    ['Minimize', 'Maximize'].map((goal) => text(question, `${goal}\n obj: x${i}`)),
  ).flat();
}

function text({ lower, upper, bounds }: MixQuestion, objective: string): string {
  const rows = bounds.map((bound, k) => {
    const { g, h } = bound.halfSpace(bound.bound);
    return `r${k}: ${signed(g)} >= ${h}`;
  });
  const box = Array.from(lower, (least, i) => `${least} <= x${i} <= ${upper[i]}`);
  return [
    objective,
    'Subject To',
    `sum: ${signed(lower.map(() => 1))} = 100`,
    ...rows,
    'Bounds',
    ...box,
    'End',
    '',
  ].join('\n');
}

/** One term a line: the solver's reader fails on long ones. */
function signed(row: Float64Array): string {
  return Array.from(row, (v, i) => `${v < 0 ? '-' : '+'} ${Math.abs(v)} x${i}`).join('\n ');
}
