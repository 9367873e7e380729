/** Which lots the food to pour now comes from, and which may not be; nothing where the keeper keeps no lots of it. */
import type { Allocation } from '../../kitchen/cupboard/cupboard.ts';
import { dayInWords } from '../../kitchen/days.ts';
import { gramWords } from '../shared/words/gram-words.ts';
import { PassedLots } from './PassedLots.tsx';

export function PourLots(props: {
  lots: Allocation | undefined;
  /** Once a lot may be weighed out after all; g that it holds. */
  onOverruled(food: string, grams: number): void;
}) {
  const { lots } = props;
  if (!lots) return null;
  const { takes, short, passed, notes } = lots;
  return (
    <div className="weigh-lots">
      {takes.length > 0 && (
        <p>
          From{' '}
          {takes
            .map(({ lot, grams }) => {
              const name = lot.name.includes(dayInWords(lot.boughtOn))
                ? lot.name
                : `${lot.name}, ${dayInWords(lot.boughtOn)}`;
              return takes.length === 1 && short === 0 ? name : `${name} (${gramWords(grams)})`;
            })
            .join(', then ')}
          .
        </p>
      )}
      {notes.map((note) => (
        <p key={note} className="weigh-warn">
          <span aria-hidden="true">!</span> {note}
        </p>
      ))}
      {short > 0 && (
        <>
          <p className="weigh-warn">
            <span aria-hidden="true">!</span>{' '}
            {takes.length > 0
              ? `No lot that may be weighed out holds the other ${gramWords(short)}.`
              : 'No lot of it may be weighed out.'}
          </p>
          <PassedLots passed={passed} onOverruled={props.onOverruled} />
        </>
      )}
    </div>
  );
}
