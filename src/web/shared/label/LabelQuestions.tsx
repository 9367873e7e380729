/** What a label leaves open, asked in plain words; nothing is guessed until it is answered. */
import type { Answers, Question } from '../../../foods/label/reading.ts';
import { words } from '../../../words/words.ts';
import { NumberInput } from '../NumberInput.tsx';
import { Radios } from '../Radios.tsx';

interface Props {
  questions: readonly Question[];
  answers: Answers;
  /** Lines of the label, to say which one is meant. */
  lines: readonly { readonly text: string }[];
  /** Ids of the questions that still wait. */
  open: ReadonlySet<string>;
  /** Undefined takes an answer back. */
  onAnswer(id: string, answer: string | undefined): void;
}

export function LabelQuestions({ questions, answers, lines, open, onAnswer }: Props) {
  const t = words().label.questions;
  return (
    <section className="label-questions" aria-label={t.section}>
      <h4>{t.title(open.size)}</h4>
      <p className="hint">{t.unknown}</p>
      {questions.map((question) => (
        <Asked
          key={question.id}
          question={question}
          line={question.line === undefined ? undefined : lines[question.line]?.text.trim()}
          answer={answers[question.id]}
          isOpen={open.has(question.id)}
          onAnswer={(answer) => onAnswer(question.id, answer)}
        />
      ))}
    </section>
  );
}

interface AskedProps {
  question: Question;
  line: string | undefined;
  answer: string | undefined;
  isOpen: boolean;
  onAnswer(answer: string | undefined): void;
}

function Asked({ question, line, answer, isOpen, onAnswer }: AskedProps) {
  const { message, options, free } = question;
  const listed = options.some((o) => o.answer === answer);
  const asked = (
    <>
      <span className={`question-state ${isOpen ? 'open' : 'answered'}`}>
        {isOpen ? words().label.questions.open : words().label.questions.answered}
      </span>{' '}
      {message}
      {line && <q className="label-quote">{line}</q>}
    </>
  );
  return (
    <div className="question">
      {options.length > 0 ? (
        <Radios
          label={asked}
          value={listed ? answer : undefined}
          options={options.map((o) => [o.answer, o.label] as const)}
          onChange={onAnswer}
        />
      ) : (
        <p className="question-words">{asked}</p>
      )}
      {free && (
        <NumberInput
          label={freeLabel(free, options.length > 0, message)}
          unit={free === 'grams' ? 'g' : '%'}
          min={free === 'grams' ? 0.01 : 0}
          max={free === 'grams' ? 100_000 : 99.99}
          decimals={3}
          value={answer === undefined || listed ? undefined : Number(answer)}
          onCommit={(n) => onAnswer(n === undefined ? undefined : String(n))}
        />
      )}
    </div>
  );
}

function freeLabel(free: 'grams' | 'percent', other: boolean, message: string): string {
  const t = words().label.questions;
  if (other) return free === 'grams' ? t.otherWeight : t.otherPercent;
  return message;
}
