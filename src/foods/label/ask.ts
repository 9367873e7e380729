/** Questions to the keeper, and the answers already given. A question is asked once, however many figures wait for it. */
import { words } from '../../words/words.ts';
import type { Answers, Option, Question } from './reading.ts';

interface Asked {
  readonly line?: number;
  readonly message: string;
  readonly options: readonly Option[];
}

export class Questions {
  private readonly answers: Answers;
  private readonly asked = new Map<string, Question>();

  constructor(answers: Answers) {
    this.answers = answers;
  }

  /** The answer among `allowed`, or undefined; the question is then open. */
  choose(id: string, allowed: readonly string[], ask: () => Asked): string | undefined {
    const answer = this.answerTo(id);
    if (answer !== undefined && allowed.includes(answer)) return answer;
    this.open(id, ask, answer, words().label.reading.ask.oneOf(allowed));
    return undefined;
  }

  /** A weight above 0 g or a percentage from 0 to below 100 as answered, or undefined; the question is then open. */
  measure(id: string, free: 'grams' | 'percent', ask: () => Asked): number | undefined {
    const answer = this.answerTo(id);
    if (answer !== undefined && /^\s{0,9}\d{1,9}(?:[.,]\d{1,9})?\s{0,9}$/.test(answer)) {
      const number = Number(answer.replace(',', '.'));
      if (free === 'grams' ? number > 0 : number < 100) return number;
    }
    const t = words().label.reading.ask;
    const wanted = free === 'grams' ? t.aboveNought : t.belowHundred;
    this.open(id, ask, answer, wanted, free);
    return undefined;
  }

  list(): readonly Question[] {
    return [...this.asked.values()];
  }

  private answerTo(id: string): string | undefined {
    return Object.hasOwn(this.answers, id) ? String(this.answers[id]) : undefined;
  }

  private open(
    id: string,
    ask: () => Asked,
    answer: string | undefined,
    wanted: string,
    free?: 'grams' | 'percent',
  ): void {
    if (this.asked.has(id)) return;
    const asked = ask();
    const message =
      answer === undefined ? asked.message : words().label.reading.ask.notOne(asked.message, answer, wanted);
    this.asked.set(id, { id, ...asked, message, ...(free && { free }) });
  }
}
