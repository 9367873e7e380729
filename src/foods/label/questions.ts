/** The questions a label leaves, answered ones too, so that an answer can still be changed. */
import { readLabel } from './read.ts';
import type { Answers, Question } from './reading.ts';

/**
 * Every question of the label that is open or answered, each as first asked. An answer may raise a further question,
 * and may settle another, which then is asked no more.
 */
export function questionsOf(text: string, answers: Answers): Question[] {
  const asked = new Map<string, Question>();
  let given: Answers = {};
  for (;;) {
    const fresh = readLabel(text, given).questions.filter((q) => !asked.has(q.id));
    for (const question of fresh) asked.set(question.id, question);
    const answered = Object.entries(answers).filter(([id]) => fresh.some((q) => q.id === id));
    if (answered.length === 0) break;
    given = { ...given, ...Object.fromEntries(answered) };
  }
  const open = new Set(readLabel(text, answers).questions.map((q) => q.id));
  return [...asked.values()].filter((q) => open.has(q.id) || Object.hasOwn(answers, q.id));
}
