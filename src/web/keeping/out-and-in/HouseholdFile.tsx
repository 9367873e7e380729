/** A whole household from a file: the way it is to come in, what that would change, and the press that does it. */
import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import type { ImportCheck, ImportMode, RecordChange } from '../../../household/exchange/wire.ts';
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
  onDone(words: string): void;
}

export function HouseholdFile({ name, text, onDone }: Props) {
  const [mode, setMode] = useState<ImportMode>();
  const [check, setCheck] = useState<ImportCheck>();
  const [error, setError] = useState<ApiError>();
  const [busy, setBusy] = useState(false);
  const { refetch } = useHousehold();
  const t = words().exchange;

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
        options={[
          ['add', t.add],
          ['update', t.update],
          ['replace', t.replace],
        ]}
        onChange={(way) => void look(way)}
      />
      <Refused error={error} />
      {busy && <p role="status">{t.moment}</p>}
      {check && mode && (
        <>
          <Changes check={check} />
          <Button className="button strong" onPress={() => void write()}>
            {mode === 'replace' ? t.replaceNow : t.bringIn}
          </Button>
        </>
      )}
    </div>
  );
}

function counted({ new: added, different, gone, kept, same }: ImportCheck['counts']): string {
  return words().exchange.counts(added, different, gone, kept, same);
}

/** "Changes: the pack “Millet” (…)". */
function said({ what, kind, name, why }: RecordChange): string {
  const { exchange, household } = words();
  const line = exchange[what](household.things[kind](name));
  return why ? exchange.because(line, why) : line;
}

function Changes({ check }: { check: ImportCheck }) {
  const { shown, more } = useParts(check.changes, { part: 30 });
  const t = words().exchange;
  const all = check.counts.new + check.counts.different + check.counts.gone + check.counts.kept;
  return (
    <section aria-label={t.changesTitle}>
      <p role="status" className="answer-state">
        <Sentence of={t.changes(counted(check.counts))} with={{ b: (text) => <strong>{text}</strong> }} />
      </p>
      {check.leftOut > 0 && <p className="notice-line">{t.leftOut(check.leftOut)}</p>}
      <ul className="change-list">
        {shown.map((c) => (
          <li key={`${c.kind} ${c.id}`} className={c.what}>
            {said(c)}
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
