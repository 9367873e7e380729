/** A mix or food from another keeper: what comes in, and which of the sender's choices are taken over. */

import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import type { PartCheck } from '../../../household/exchange/wire.ts';
import { words } from '../../../words/words.ts';
import { Sentence } from '../../shared/words/Sentence.tsx';
import type { ApiError } from '../../store/api-error.ts';
import { useHousehold } from '../../store/household.ts';
import { bringInPart, lookAtPart } from '../send-file.ts';
import { asRefusal, Refused } from './Refused.tsx';
import '../../shared/styles/ticks.css';

interface Props {
  name: string;
  text: string;
  onDone(told: string): void;
}

export function PartFile({ name, text, onDone }: Props) {
  const t = words().exchange.part;
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
      onDone(coming.length > 0 ? t.done(coming.map((c) => c.name).join(', ')) : t.doneNothing);
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
      {busy && <p role="status">{words().exchange.moment}</p>}
      {check && (
        <>
          <p>
            <Sentence
              of={check.coming.length > 0 ? t.comes(check.coming.map(named).join(', ')) : t.comesNothing}
              with={{ head: (text) => <strong>{text}</strong> }}
            />{' '}
            {check.same.length > 0 && t.same(check.same.join(', '))}
          </p>
          {check.notes.map((note) => (
            <p key={note} className="notice-line">
              {note}
            </p>
          ))}
          {check.choices.length > 0 && (
            <fieldset className="ticks their-choices">
              <legend>{t.choices}</legend>
              {check.choices.map(({ id, words: says, instead }) => (
                <label key={id} className="tick">
                  <input
                    type="checkbox"
                    checked={accepted.has(id)}
                    onChange={(e) => take(id, e.target.checked)}
                  />
                  <span>
                    {says} <small>{t.notTicked(instead)}</small>
                  </span>
                </label>
              ))}
            </fieldset>
          )}
          <Button className="button strong" onPress={() => void write()}>
            {words().exchange.bringIn.press}
          </Button>
        </>
      )}
    </div>
  );
}

/** "mix “Winter”". */
function named({ kind, name }: PartCheck['coming'][number]): string {
  const { kinds } = words().exchange.part;
  return kind in kinds ? `${kinds[kind as keyof typeof kinds]} “${name}”` : `“${name}”`;
}
