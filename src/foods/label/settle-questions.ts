/** What print leaves open of one figure, as questions: its column, its basis, what its percentage is of. */

import type { Tag } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
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
    ['weight', words().label.reading.ask.ofWeight],
    ['daily', words().label.reading.ask.ofDaily],
  ] as const;
  const message = words().label.reading.ask.percent(heard);
  return chosenFrom(questions, open, `percent:${line}:${tag}`, answers, message, line);
}

export function askIngredient({ line }: Draft, questions: Questions, open: string[]): string | undefined {
  const answers = [
    ['content', words().label.reading.ask.content],
    ['ingredient', words().label.reading.ask.ingredient],
  ] as const;
  const message = words().label.reading.ask.list;
  return chosenFrom(questions, open, `list:${line}`, answers, message, line);
}

/** Words as an id has them: short, on one line. */
const LONGEST_ID = 60;

/** @param left what the label says and leaves open */
export function askBasis(
  left: string,
  line: number,
  questions: Questions,
  open: string[],
): string | undefined {
  const answers = [
    ['as fed', words().label.reading.ask.sold],
    ['dry matter', words().label.reading.ask.dry],
    ['none', words().label.reading.ask.none],
  ] as const;
  const said = left.replace(/\s+/g, ' ').slice(0, LONGEST_ID);
  const message = words().label.reading.ask.basis(said);
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
  const message = words().label.reading.ask.column(heard, columns.length);
  const chosen = chosenFrom(questions, open, `column:${line}:${tag}:${figure.unit}`, answers, message, line);
  return chosen === undefined ? undefined : columns[Number(chosen)];
}
