/** Stands where a panel needs a mix in range and there is none. */
import { Button } from 'react-aria-components';
import { words } from '../../words/words.ts';
import { AnswerState } from '../shared/answer.tsx';
import type { FormulationView } from './useFormulation.ts';

export function BalanceFirst({ view, what }: { view: FormulationView; what: string }) {
  if (view.state === 'working') return <AnswerState working fault={undefined} />;
  const t = words().mix;
  return (
    <div className="balance-first">
      <p>{view.state === 'none' ? t.fitFirst.none(what) : t.fitFirst.out(what)}</p>
      {view.state === 'out' && (
        <Button className="button" onPress={() => void view.balance()}>
          {t.makeFit}
        </Button>
      )}
    </div>
  );
}
