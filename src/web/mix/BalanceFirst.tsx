/** Stands where a panel needs a mix in range and there is none. */

import { Button } from 'react-aria-components';
import { words } from '../../words/words.ts';
import { AnswerState } from '../shared/answer.tsx';
import type { FormulationView } from './useFormulation.ts';

/** @param words what to say where no mix is found, and where the mix is not in range */
export function BalanceFirst(props: {
  view: FormulationView;
  words: { readonly none: string; readonly out: string };
}) {
  const { view } = props;
  if (view.state === 'working') return <AnswerState working fault={undefined} />;
  return (
    <div className="balance-first">
      <p>{view.state === 'none' ? props.words.none : props.words.out}</p>
      {view.state === 'out' && (
        <Button className="button" onPress={() => void view.balance()}>
          {words().mix.makeMixFit}
        </Button>
      )}
    </div>
  );
}
