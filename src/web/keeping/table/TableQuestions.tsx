/** What a table leaves open, asked in plain words; nothing comes of it until all is answered. */

import type { TableQuestion } from '../../../household/exchange/table/asked.ts';
import type { ReadTable } from '../../../household/exchange/table/read-table.ts';
import { words } from '../../../words/words.ts';
import { NumberInput } from '../../shared/NumberInput.tsx';
import { useParts } from '../../shared/parts.tsx';
import { Radios } from '../../shared/Radios.tsx';
import type { TableInHand } from './useTable.ts';

export function TableQuestions({ table, inHand }: { table: ReadTable; inHand: TableInHand }) {
  const t = words().ownTable.questions;
  // What a column holds is chosen in its own place; the columns as a whole are confirmed last.
  const asked = table.questions.filter((q) => !q.id.startsWith('column ') && q.id !== 'columns');
  const confirm = table.questions.find((q) => q.id === 'columns');
  const open = table.questions.filter((q) => q.answer === undefined && q !== confirm);
  const { shown, more } = useParts(asked, { part: 20 });
  const [yes] = confirm?.options ?? [];
  return (
    <section className="panel" aria-label={t.region}>
      <h2>{t.title}</h2>
      {shown.map((question) => (
        <Asked
          key={question.id}
          question={question}
          onAnswer={(answer) => inHand.answer(question.id, answer)}
        />
      ))}
      {more}
      {confirm && yes && (
        <div className="question">
          {open.length > 0 ? (
            <p role="status">{t.open(open.length)}</p>
          ) : (
            <label className="tick">
              <input
                type="checkbox"
                checked={confirm.answer !== undefined}
                onChange={(e) => inHand.answer(confirm.id, e.target.checked ? yes.answer : undefined)}
              />
              <span>{t.looked}</span>
            </label>
          )}
        </div>
      )}
    </section>
  );
}

const UNITS: Readonly<Record<NonNullable<TableQuestion['free']>, string>> = {
  grams: 'g',
  percent: '%',
  figure: '',
};

function Asked({
  question,
  onAnswer,
}: {
  question: TableQuestion;
  onAnswer(answer: string | undefined): void;
}) {
  const t = words().ownTable.questions;
  const { message, options, free, answer } = question;
  const listed = options.some((o) => o.answer === answer);
  const asks = (
    <>
      <span className={`question-state ${answer === undefined ? 'open' : 'answered'}`}>
        {answer === undefined ? t.isOpen : t.isAnswered}
      </span>{' '}
      {message}
    </>
  );
  return (
    <div className="question">
      {options.length > 0 ? (
        <Radios
          label={asks}
          value={listed ? answer : undefined}
          options={options.map((o) => [o.answer, o.label] as const)}
          onChange={onAnswer}
        />
      ) : (
        <p className="question-words">{asks}</p>
      )}
      {free && (
        <NumberInput
          label={options.length > 0 ? t.freeIf[free] : t.free[free]}
          unit={UNITS[free]}
          min={0}
          max={free === 'percent' ? 99.99 : 1_000_000}
          decimals={4}
          value={answer === undefined || listed ? undefined : Number(answer)}
          onCommit={(n) => onAnswer(n === undefined ? undefined : String(n))}
        />
      )}
    </div>
  );
}
