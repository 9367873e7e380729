/** What the server does not have yet, while it cannot be sent; and what it refused when nobody waited for it any more. */

import { words } from '../../words/words.ts';
import { Button } from '../shared/plain/Button.tsx';
import { useKeeper } from './household.ts';
import { keeper } from './page-keeper.ts';
import { thingOf } from './thing-words.ts';
import './unsent.css';

export function Unsent() {
  const { waiting, trouble, onDevice, refusals } = useKeeper();
  const count = waiting.filter((change) => !change.theirs).length;
  const t = words().store.unsent;
  return (
    <>
      <p className={trouble !== undefined && count > 0 ? 'unsent' : 'sr-only'} role="status">
        {trouble !== undefined &&
          count > 0 &&
          (onDevice ? t.onDevice(count, trouble) : t.onPage(count, trouble))}
      </p>
      {refusals.map((refusal) => {
        const { kind, body, base, slot } = refusal.change;
        return (
          <div key={slot} className="conflict" role="alert">
            <p>{t.refused(thingOf(kind, [base.body, body]), refusal.message)}</p>
            <Button className="quiet-button" onPress={() => keeper.forget(refusal)}>
              {words().common.close}
            </Button>
          </div>
        );
      })}
    </>
  );
}
