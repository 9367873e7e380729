/** A weight far from the last: is it right? Until that is said it does not count. */
import { Button } from 'react-aria-components';
import type { Day } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import type { Unlikely } from './pad-figures.ts';
import { askWords } from './weight-words.ts';
import '../../shared/asking.css';

export function AskUnlikely(props: {
  /** g of the animal alone. */
  grams: number;
  why: Unlikely;
  /** The day of the weighing. */
  on: Day;
  onCorrect(): void;
  onRight(): void;
}) {
  const { grams, why, onCorrect } = props;
  const t = words().bodyWeight.ask;
  const lost = why.against === 'last' && grams < why.grams;
  return (
    <fieldset
      className="asking ask-weight"
      onKeyDown={(e) => {
        if (e.key === 'Escape') onCorrect();
      }}
    >
      <legend>{askWords(grams, why, props.on)}</legend>
      {lost && <p>{t.rightAlarm}</p>}
      <div className="button-row">
        <Button className="button keep" onPress={onCorrect}>
          {t.correct}
        </Button>
        <Button className="quiet-button" onPress={props.onRight}>
          {t.right}
        </Button>
      </div>
    </fieldset>
  );
}
