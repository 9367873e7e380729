/** What a label leaves open, asked in plain words; nothing is guessed until it is answered. */
import type { Answers, Question } from '../../../foods/label/reading.ts';
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
  return (
    <section className="label-questions" aria-label="Questions about the label">
      <h4>
        {open.size === 0
          ? 'Questions, all answered'
          : open.size === 1
            ? 'One question is open'
            : `${open.size} questions are open`}
      </h4>
      <p className="hint">An amount that waits for an answer stays unknown until it has one.</p>
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
        {isOpen ? '? Open' : '✓ Answered'}
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
  if (other) return free === 'grams' ? 'Or another weight' : 'Or another percentage';
  return message;
}
