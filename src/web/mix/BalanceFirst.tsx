/** Stands where a panel needs a mix in range and there is none. */
import { Button } from 'react-aria-components';
import { AnswerState } from '../shared/answer.tsx';
import type { FormulationView } from './useFormulation.ts';

export function BalanceFirst({ view, what }: { view: FormulationView; what: string }) {
  if (view.state === 'working') return <AnswerState working fault={undefined} />;
  return (
    <div className="balance-first">
      <p>
        {view.state === 'none'
          ? `No mix keeps these rules. What collides, and what mends it, is listed near the top; ${what} after that.`
          : `The mix is not in range as it stands. Balance it first; ${what} after that.`}
      </p>
      {view.state === 'out' && (
        <Button className="button" onPress={() => void view.balance()}>
          Balance it
        </Button>
      )}
    </div>
  );
}
