/** Questions about a table, and the keeper's answers to them. */
export interface TableOption {
  /** What to give back as the answer. */
  readonly answer: string;
  readonly label: string;
}

export interface TableQuestion {
  /** Stays the same when the same table is read again; the key of its answer. */
  readonly id: string;
  readonly message: string;
  readonly options: readonly TableOption[];
  /** What a free answer is besides the options. */
  readonly free?: 'grams' | 'percent' | 'figure';
  /** Column of the table, or row of the grid, that it is about. */
  readonly column?: number;
  readonly row?: number;
  /** The answer as given; open without one. */
  readonly answer?: string;
}

/** Answers by question id. */
export type TableAnswers = Readonly<Record<string, string>>;

/** Collects questions while a table is read; an answer that is none of the options counts as not given. */
export class Asked {
  readonly questions: TableQuestion[] = [];
  readonly #answers: TableAnswers;

  constructor(answers: TableAnswers) {
    this.#answers = answers;
  }

  /** Asks, and gives the answer back where there is a usable one. */
  ask(question: Omit<TableQuestion, 'answer'>): string | undefined {
    const answer = Object.hasOwn(this.#answers, question.id) ? this.#answers[question.id] : undefined;
    const usable =
      answer !== undefined &&
      (question.options.some((o) => o.answer === answer) || isFree(question.free, answer));
    this.questions.push({ ...question, ...(usable && { answer }) });
    return usable ? answer : undefined;
  }

  /** An answer that nobody asked for: a choice the keeper made of their own. */
  chosen(id: string): string | undefined {
    return Object.hasOwn(this.#answers, id) ? this.#answers[id] : undefined;
  }
}

function isFree(free: TableQuestion['free'], answer: string): boolean {
  if (!free || answer.trim() === '') return false;
  const value = Number(answer);
  if (!Number.isFinite(value) || value < 0) return false;
  if (free === 'percent') return value < 100;
  return free === 'figure' || value > 0;
}
