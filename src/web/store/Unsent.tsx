/** What the server does not have yet, while it cannot be sent; and what it refused when nobody waited for it any more. */
import { Button } from 'react-aria-components';
import { KIND_WORDS } from './conflict-words.ts';
import { useKeeper } from './household.ts';
import { keeper } from './page-keeper.ts';
import './unsent.css';

export function Unsent() {
  const { waiting, trouble, onDevice, refusals } = useKeeper();
  const count = waiting.filter((change) => !change.theirs).length;
  const changes = count === 1 ? 'one change' : `${count} changes`;
  return (
    <>
      <p className={trouble !== undefined && count > 0 ? 'unsent' : 'sr-only'} role="status">
        {trouble !== undefined &&
          count > 0 &&
          (onDevice
            ? `Not yet sent: ${changes}, kept on this device. ${trouble}`
            : `Not yet sent: ${changes}. This device cannot keep them: leave this page open. ${trouble}`)}
      </p>
      {refusals.map((refusal) => {
        const { kind, body, base, slot } = refusal.change;
        const named = [body, base.body].find((b) => b && 'name' in b);
        return (
          <div key={slot} className="conflict" role="alert">
            <p>
              {KIND_WORDS[kind]}
              {named && 'name' in named && ` “${named.name}”`}: your change was not kept. {refusal.message}
            </p>
            <Button className="quiet-button" onPress={() => keeper.forget(refusal)}>
              Close
            </Button>
          </div>
        );
      })}
    </>
  );
}
