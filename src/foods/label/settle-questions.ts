/** What print leaves open of one figure, as questions: its column, its basis, what its percentage is of. */
import type { Tag } from '../../nutrition/nutrients.ts';
import type { Questions } from './ask.ts';
import type { Attachment } from './attachment.ts';
import type { Draft } from './draft.ts';

/** Notes the question as open where it has no answer yet. */
function chosenFrom(
  questions: Questions,
  open: string[],
  id: string,
  answers: readonly (readonly [answer: string, label: string])[],
  message: string,
  line?: number,
): string | undefined {
  const chosen = questions.choose(
    id,
    answers.map(([answer]) => answer),
    () => ({
      ...(line !== undefined && { line }),
      message,
      options: answers.map(([answer, label]) => ({ answer, label })),
    }),
  );
  if (chosen === undefined) open.push(id);
  return chosen;
}

export function askPercent(
  { heard, line }: Draft,
  tag: Tag,
  questions: Questions,
  open: string[],
): string | undefined {
  const answers = [
    ['weight', "Share of the food's weight"],
    ['daily', 'Share of a daily intake or of the energy (then it is no amount)'],
  ] as const;
  const message = `Is the percentage of ${heard} a share of the food's weight, or of a daily intake or the energy?`;
  return chosenFrom(questions, open, `percent:${line}:${tag}`, answers, message, line);
}

export function askIngredient({ line }: Draft, questions: Questions, open: string[]): string | undefined {
  const answers = [
    ['content', 'An analysis: what the food contains'],
    ['ingredient', 'Ingredients and their shares (then they are no amounts)'],
  ] as const;
  const message = 'Is this line an analysis of the food, or a list of what is in it?';
  return chosenFrom(questions, open, `list:${line}`, answers, message, line);
}

/** Words as an id has them: short, on one line. */
const LONGEST_ID = 60;

/** @param words what the label says and leaves open */
export function askBasis(
  words: string,
  line: number,
  questions: Questions,
  open: string[],
): string | undefined {
  const answers = [
    ['as fed', 'Of the food as sold'],
    ['dry matter', 'Of its dry matter'],
    ['none', 'Of something else, such as the food once cooked or made up; leave them out'],
  ] as const;
  const said = words.replace(/\s+/g, ' ').slice(0, LONGEST_ID);
  const message = `The label says "${said}"; what are these amounts of?`;
  return chosenFrom(questions, open, `basis:${said}`, answers, message, line);
}

/** The column of a figure that stands once under several. */
export function columnOf(
  draft: Draft,
  tag: Tag,
  questions: Questions,
  open: string[],
): Attachment | undefined {
  const { columns, line, heard, figure } = draft;
  if (!columns) return undefined;
  const answers = columns.map((c, k) => [String(k), c.text || c.per.text] as const);
  const message = `The line gives ${heard} once, for ${columns.length} columns; which column is it?`;
  const chosen = chosenFrom(questions, open, `column:${line}:${tag}:${figure.unit}`, answers, message, line);
  return chosen === undefined ? undefined : columns[Number(chosen)];
}
