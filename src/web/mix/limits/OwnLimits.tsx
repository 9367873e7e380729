/** The limits of the target that the keeper made their own in this mix, each with the way back. */
import { Button } from 'react-aria-components';
import type { Mix } from '../../../household/model.ts';
import { withLimitSetBack } from '../../../household/reckon/mix/own-limits.ts';
import { words } from '../../../words/words.ts';
import { focusWhenThere } from '../../shared/focus.ts';
import type { FormulationView } from '../useFormulation.ts';
import { ownLimitWords } from './limit-words.ts';
import './limits.css';

export function OwnLimits({ mix, view }: { mix: Mix; view: FormulationView }) {
  const t = words().limits;
  const limits = mix.problem.own_limits ?? [];
  if (limits.length === 0) return null;
  return (
    <ul className="own-limits" aria-label={t.changed}>
      {limits.map((limit) => {
        const told = ownLimitWords(limit);
        return (
          <li key={told}>
            <span>{told}.</span>
            <Button
              className="quiet-button small"
              aria-label={t.setBackOf(told)}
              onPress={() => {
                void view.edit((m) => withLimitSetBack(m, limit), 'limit');
                view.say(t.isBack);
                focusWhenThere('.verdict .big-button');
              }}
            >
              {t.setBack}
            </Button>
          </li>
        );
      })}
    </ul>
  );
}
