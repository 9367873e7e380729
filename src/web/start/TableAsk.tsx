/** What a pasted table leaves open: nothing of it comes in before it is answered. */
import type { TableAnswers, TableQuestion } from '../../household/exchange/table/asked.ts';
import { words } from '../../words/words.ts';
import { NumberInput } from '../shared/NumberInput.tsx';
import { Radios } from '../shared/Radios.tsx';

interface Props {
  questions: readonly TableQuestion[];
  answers: TableAnswers;
  onAnswer(id: string, answer: string): void;
}

export function TableAsk({ questions, answers, onAnswer }: Props) {
  const t = words().start.table;
  return (
    <section className="start-table" aria-label={t.title}>
      <h3>{t.title}</h3>
      <p className="hint">{t.hint(questions.length)}</p>
      {questions.map(({ id, message, options, free }) => (
        <div key={id}>
          {options.length > 0 ? (
            <Radios
              label={message}
              value={options.some((o) => o.answer === answers[id]) ? answers[id] : undefined}
              options={options.map((o) => [o.answer, o.label] as const)}
              onChange={(answer) => onAnswer(id, answer)}
            />
          ) : (
            <p>{message}</p>
          )}
          {free && (
            <NumberInput
              label={options.length > 0 ? t.other : message}
              quiet={options.length === 0}
              unit={free === 'grams' ? 'g' : free === 'percent' ? '%' : undefined}
              min={0}
              value={undefined}
              onCommit={(n) => n !== undefined && onAnswer(id, String(n))}
            />
          )}
        </div>
      ))}
    </section>
  );
}
