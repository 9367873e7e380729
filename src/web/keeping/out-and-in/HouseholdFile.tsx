/** A whole household from a file: the way it is to come in, what that would change, and the press that does it. */
import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import type { ImportCheck, ImportMode, RecordChange } from '../../../household/exchange/wire.ts';
import { useParts } from '../../shared/parts.tsx';
import { Radios } from '../../shared/Radios.tsx';
import type { ApiError } from '../../store/api-error.ts';
import { useHousehold } from '../../store/household.ts';
import { bringIn, lookAt } from '../send-file.ts';
import { asRefusal, Refused } from './Refused.tsx';

interface Props {
  name: string;
  text: string;
  onDone(words: string): void;
}

const WAYS: readonly (readonly [ImportMode, string])[] = [
  ['add', 'Add what is not here; all that is here stays as it is'],
  ['update', 'Add what is not here, and make what differs as in the file'],
  ['replace', 'Replace everything: the household holds what the file holds, and nothing else'],
];

export function HouseholdFile({ name, text, onDone }: Props) {
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
      onDone(
        `Brought in from ${name}: ${counted(counts)}. It stands under “Changes” and can be taken back there.`,
      );
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
      <Radios label="How is it to come in?" value={mode} options={WAYS} onChange={(way) => void look(way)} />
      <Refused error={error} />
      {busy && <p role="status">One moment…</p>}
      {check && mode && (
        <>
          <Changes check={check} />
          <Button className="button strong" onPress={() => void write()}>
            {mode === 'replace' ? 'Replace everything' : 'Bring in'}
          </Button>
        </>
      )}
    </div>
  );
}

function counted({ new: added, different, gone, kept, same }: ImportCheck['counts']): string {
  const parts = [
    `${added} new`,
    `${different} changed`,
    `${gone} gone`,
    ...(kept > 0 ? [`${kept} that differ left as they are`] : []),
    `${same} the same`,
  ];
  return parts.join(', ');
}

const WORDS: Readonly<Record<RecordChange['what'], string>> = {
  new: 'New',
  different: 'Changes',
  gone: 'Goes',
  kept: 'Stays as it is here',
};

const KINDS: Readonly<Record<RecordChange['kind'], string>> = {
  foods: 'food',
  profiles: 'target',
  animals: 'animal',
  mixes: 'mix',
  versions: 'kept version',
  lots: 'lot',
  offers: 'offer',
  dryingRuns: 'drying run',
  batches: 'batch',
  kitchen: 'kitchen',
};

function Changes({ check }: { check: ImportCheck }) {
  const { shown, more } = useParts(check.changes, { part: 30, of: 'changes' });
  const all = check.counts.new + check.counts.different + check.counts.gone + check.counts.kept;
  return (
    <section aria-label="What would change">
      <p role="status" className="answer-state">
        <strong>What would change:</strong> {counted(check.counts)}.
      </p>
      {check.leftOut > 0 && (
        <p className="notice-line">
          {check.leftOut} records of the file were not readable where it was made. They stay in the file and
          are not taken in.
        </p>
      )}
      <ul className="change-list">
        {shown.map((c) => (
          <li key={`${c.kind} ${c.id}`} className={c.what}>
            <strong>{WORDS[c.what]}</strong>: {KINDS[c.kind]} “{c.name}”{c.why && ` (${c.why})`}
            {c.fields && (
              <ul>
                {c.fields.map((f) => (
                  <li key={f.field}>
                    <code>{f.field || 'all of it'}</code>: {f.before ?? 'nothing'} → {f.after ?? 'nothing'}
                  </li>
                ))}
                {c.moreFields !== undefined && <li>and {c.moreFields} more fields</li>}
              </ul>
            )}
          </li>
        ))}
      </ul>
      {more}
      {all > check.changes.length && (
        <p className="hint">{all - check.changes.length} more changes are not listed here.</p>
      )}
    </section>
  );
}
