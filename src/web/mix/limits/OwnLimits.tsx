/** The limits of the target that the keeper made their own in this mix, each with the way back. */
import { Button } from 'react-aria-components';
import type { Mix } from '../../../household/model.ts';
import { withLimitSetBack } from '../../../household/reckon/mix/own-limits.ts';
import { focusWhenThere } from '../../shared/focus.ts';
import type { FormulationView } from '../useFormulation.ts';
import { ownLimitWords } from './limit-words.ts';
import './limits.css';

export function OwnLimits({ mix, view }: { mix: Mix; view: FormulationView }) {
  const limits = mix.problem.own_limits ?? [];
  if (limits.length === 0) return null;
  return (
    <ul className="own-limits" aria-label="Limits that you changed">
      {limits.map((limit) => {
        const words = ownLimitWords(limit);
        return (
          <li key={words}>
            <span>{words}.</span>
            <Button
              className="quiet-button small"
              aria-label={`Set back: ${words}`}
              onPress={() => {
                void view.edit((m) => withLimitSetBack(m, limit), 'set back');
                view.say('The limit is as the target has it again.');
                focusWhenThere('.verdict .big-button');
              }}
            >
              Set back
            </Button>
          </li>
        );
      })}
    </ul>
  );
}
