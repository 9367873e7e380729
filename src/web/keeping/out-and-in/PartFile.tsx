/** A mix or food from another keeper: what comes in, and which of the sender's choices are taken over. */
import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import type { PartCheck } from '../../../household/exchange/wire.ts';
import type { ApiError } from '../../store/api-error.ts';
import { useHousehold } from '../../store/household.ts';
import { bringInPart, lookAtPart } from '../send-file.ts';
import { asRefusal, Refused } from './Refused.tsx';
import '../../shared/styles/ticks.css';

interface Props {
  name: string;
  text: string;
  onDone(words: string): void;
}

export function PartFile({ name, text, onDone }: Props) {
  const [check, setCheck] = useState<PartCheck>();
  const [accepted, setAccepted] = useState<ReadonlySet<string>>(new Set());
  const [error, setError] = useState<ApiError>();
  const [busy, setBusy] = useState(false);
  const { refetch } = useHousehold();

  useEffect(() => {
    lookAtPart(text).then(setCheck, (e) => setError(asRefusal(e)));
  }, [text]);

  function take(id: string, on: boolean) {
    setAccepted((a) => new Set(on ? [...a, id] : [...a].filter((x) => x !== id)));
  }

  async function write() {
    if (!check || busy) return;
    setBusy(true);
    try {
      const { coming } = await bringInPart(text, [...accepted], check.token);
      await refetch();
      onDone(`Brought in: ${coming.map((c) => c.name).join(', ') || 'nothing, all of it was here'}.`);
    } catch (e) {
      setError(asRefusal(e));
    } finally {
      setBusy(false);
    }
  }

  return (
    <div className="arrival">
      <h3>{name}</h3>
      <Refused error={error} />
      {busy && <p role="status">One moment…</p>}
      {check && (
        <>
          <p>
            <strong>Comes in:</strong>{' '}
            {check.coming.map((c) => `${NOUNS[c.kind] ?? ''} “${c.name}”`).join(', ') ||
              'nothing that is not here already'}
            .{check.same.length > 0 && ` Here already, just so: ${check.same.join(', ')}.`}
          </p>
          {check.notes.map((note) => (
            <p key={note} className="notice-line">
              {note}
            </p>
          ))}
          {check.choices.length > 0 && (
            <fieldset className="ticks their-choices">
              <legend>Choices of the sender: what you do not tick is not taken over</legend>
              {check.choices.map(({ id, words, instead }) => (
                <label key={id} className="tick">
                  <input
                    type="checkbox"
                    checked={accepted.has(id)}
                    onChange={(e) => take(id, e.target.checked)}
                  />
                  <span>
                    {words} <small>Not ticked: {instead}.</small>
                  </span>
                </label>
              ))}
            </fieldset>
          )}
          <Button className="button strong" onPress={() => void write()}>
            Bring in
          </Button>
        </>
      )}
    </div>
  );
}

const NOUNS: Readonly<Partial<Record<PartCheck['coming'][number]['kind'], string>>> = {
  foods: 'food',
  profiles: 'target',
  mixes: 'mix',
};
