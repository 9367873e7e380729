/** A whole household from a file: the way it is to come in, what that would change, and the press that does it. */

import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import type { ImportCheck, ImportMode } from '../../../household/exchange/wire.ts';
import { words } from '../../../words/words.ts';
import { useParts } from '../../shared/parts.tsx';
import { Radios } from '../../shared/Radios.tsx';
import { Sentence } from '../../shared/words/Sentence.tsx';
import type { ApiError } from '../../store/api-error.ts';
import { useHousehold } from '../../store/household.ts';
import { bringIn, lookAt } from '../send-file.ts';
import { asRefusal, Refused } from './Refused.tsx';

interface Props {
  name: string;
  text: string;
  onDone(told: string): void;
}

const WAYS: readonly ImportMode[] = ['add', 'update', 'replace'];

export function HouseholdFile({ name, text, onDone }: Props) {
  const t = words().exchange.bringIn;
  const [mode, setMode] = useState<ImportMode>();
  const [check, setCheck] = useState<ImportCheck>();
  const [error, setError] = useState<ApiError>();
  const [busy, setBusy] = useState(false);
  const { refetch } = useHousehold();

  useEffect(() => {
    // A wrong file is told at once, whichever way it would come in.
    lookAt(text, 'replace').catch((e) => setError(asRefusal(e)));
  }, [text]);

  async function look(way: ImportMode) {
    setMode(way);
    setCheck(undefined);
    setError(undefined);
    setBusy(true);
    try {
      setCheck(await lookAt(text, way));
    } catch (e) {
      setError(asRefusal(e));
    } finally {
      setBusy(false);
    }
  }

  async function write() {
    if (!mode || !check || busy) return;
    setBusy(true);
    try {
      const { counts } = await bringIn(text, mode, check.token);
      await refetch();
      onDone(t.done(name, counted(counts)));
    } catch (e) {
      setError(asRefusal(e));
      setCheck(undefined);
    } finally {
      setBusy(false);
    }
  }

  return (
    <div className="arrival">
      <h3>{name}</h3>
      <Radios
        label={t.how}
        value={mode}
        options={WAYS.map((way) => [way, t.ways[way]])}
        onChange={(way) => void look(way)}
      />
      <Refused error={error} />
      {busy && <p role="status">{words().exchange.moment}</p>}
      {check && mode && (
        <>
          <Changes check={check} />
          <Button className="button strong" onPress={() => void write()}>
            {mode === 'replace' ? t.replace : t.press}
          </Button>
        </>
      )}
    </div>
  );
}

function counted({ new: added, different, gone, kept, same }: ImportCheck['counts']): string {
  const t = words().exchange.bringIn.counts;
  return [
    t.new(added),
    t.different(different),
    t.gone(gone),
    ...(kept > 0 ? [t.kept(kept)] : []),
    t.same(same),
  ].join(', ');
}

function Changes({ check }: { check: ImportCheck }) {
  const t = words().exchange.bringIn;
  const { shown, more } = useParts(check.changes, { part: 30 });
  const all = check.counts.new + check.counts.different + check.counts.gone + check.counts.kept;
  return (
    <section aria-label={t.changes}>
      <p role="status" className="answer-state">
        <Sentence
          of={t.changesAre(counted(check.counts))}
          with={{ head: (text) => <strong>{text}</strong> }}
        />
      </p>
      {check.leftOut > 0 && <p className="notice-line">{t.leftOut(check.leftOut)}</p>}
      <ul className="change-list">
        {shown.map((c) => (
          <li key={`${c.kind} ${c.id}`} className={c.what}>
            <strong>{t.what[c.what]}</strong>: {words().household.kinds[c.kind]} “{c.name}”
            {c.why && ` (${c.why})`}
            {c.fields && (
              <ul>
                {c.fields.map((f) => (
                  <li key={f.field}>
                    <code>{f.field || t.allOfIt}</code>: {f.before ?? t.nothing} → {f.after ?? t.nothing}
                  </li>
                ))}
                {c.moreFields !== undefined && <li>{t.moreFields(c.moreFields)}</li>}
              </ul>
            )}
          </li>
        ))}
      </ul>
      {more}
      {all > check.changes.length && <p className="hint">{t.moreChanges(all - check.changes.length)}</p>}
    </section>
  );
}
