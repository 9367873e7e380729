/** Which packs the food to pour now comes from, and which are not ready; nothing where the keeper keeps no packs of it. */
import type { Allocation } from '../../kitchen/cupboard/cupboard.ts';
import { words } from '../../words/words.ts';
import { PassedLots } from './PassedLots.tsx';
import { packWords } from './view-model.ts';

export function PourLots(props: {
  lots: Allocation | undefined;
  /** Once a lot may be weighed out after all; g that it holds. */
  onOverruled(food: string, grams: number): void;
}) {
  const { lots } = props;
  const t = words().weighing.lots;
  if (!lots) return null;
  const { takes, short, passed, notes } = lots;
  return (
    <div className="weigh-lots">
      {takes.length > 0 && <p>{t.from(packWords(lots))}</p>}
      {notes.map((note) => (
        <p key={note} className="weigh-warn">
          <span aria-hidden="true">!</span> {note}
        </p>
      ))}
      {short > 0 && (
        <>
          <p className="weigh-warn">
            <span aria-hidden="true">!</span> {takes.length > 0 ? t.rest(short) : t.none}
          </p>
          <PassedLots passed={passed} onOverruled={props.onOverruled} />
        </>
      )}
    </div>
  );
}
