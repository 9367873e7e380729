/** What a settled table comes to, shown before it is written: foods of the keeper's own and a mix. */

import { useState } from 'react';
import { Button, Label, TextField } from 'react-aria-components';
import type { ReadTable } from '../../../household/exchange/table/read-table.ts';
import { tableFile } from '../../../household/exchange/table/table-file.ts';
import { proposalOf } from '../../../household/exchange/table/table-proposal.ts';
import type { Household } from '../../../household/model.ts';
import { isHere } from '../../../household/reckon/care/here.ts';
import { words } from '../../../words/words.ts';
import { Choice } from '../../shared/Choice.tsx';
import { Failed } from '../../shared/Failed.tsx';
import { go } from '../../shared/route.ts';
import { today } from '../../shared/today.ts';
import { NameInput } from '../../shared/typing/NameInput.tsx';
import { useHousehold } from '../../store/household.ts';
import { newId } from '../../store/new-id.ts';
import { allProfiles } from '../../store/profiles.ts';
import { useReferenceFoods } from '../../worker/engine.ts';
import { bringIn, lookAt } from '../send-file.ts';
import type { TableInHand } from './useTable.ts';

interface Props {
  table: ReadTable;
  inHand: TableInHand;
  house: Household;
  /** What was pasted is kept. */
  written(): void;
}

export function TableOutcome({ table, inHand, house, written }: Props) {
  const t = words().ownTable.outcome;
  const profiles = allProfiles(house);
  const [tableName, setTableName] = useState(
    () => `${inHand.source?.name ?? words().ownTable.source.name}, ${today()}`,
  );
  const [mixName, setMixName] = useState(() => words().ownTable.outcome.mixName);
  const [withMix, setWithMix] = useState(true);
  const [profileId, setProfileId] = useState(house.animals.find(isHere)?.profileId ?? profiles[0]?.id ?? '');
  const [error, setError] = useState<{ message: string }>();
  const [busy, setBusy] = useState(false);
  const { refetch } = useHousehold();
  const refs = table.rows.flatMap((r) => (r.become?.as === 'reference' ? [r.become.ref] : []));
  const references = useReferenceFoods(refs);
  const hasShares = table.rows.some((r) => r.share !== undefined);
  const profile = profiles.find((p) => p.id === profileId) ?? profiles[0];
  const ready =
    table.settled &&
    (inHand.split?.rivals.length ?? 0) === 0 &&
    profile &&
    refs.every((ref) => references.has(ref));
  if (!ready)
    return (
      <section className="panel" aria-label={t.title}>
        <h2>{t.title}</h2>
        <p role="status">{table.lacking ?? t.notYet}</p>
      </section>
    );
  const about = {
    tableName,
    today: today(),
    now: new Date().toISOString(),
    newId,
    profile,
    ownFoods: house.foods,
    references,
  };
  const proposal = proposalOf(table, {
    ...about,
    ...(hasShares && withMix && { mixName: mixName.trim() || t.mixName }),
  });
  const { foods, mix, notes } = proposal;

  async function write() {
    if (busy) return;
    setBusy(true);
    setError(undefined);
    try {
      const text = tableFile(proposal);
      const { token, counts } = await lookAt(text, 'add');
      if (counts.kept + counts.different + counts.gone > 0) throw new Error(t.sameName);
      await bringIn(text, 'add', token);
      await refetch();
      written();
      if (mix) go('mix', mix.id);
      else go('foods');
    } catch (e) {
      setError({ message: (e as Error).message });
    } finally {
      setBusy(false);
    }
  }

  return (
    <section className="panel" aria-label={t.title}>
      <h2>{t.title}</h2>
      {table.offHundred !== undefined && (
        <p className="notice-line">
          {table.scaled ? t.scaled(table.offHundred) : t.asIs(table.offHundred)}{' '}
          <button
            type="button"
            className="quiet-button"
            onClick={() => inHand.answer('scale', table.scaled ? undefined : 'yes')}
          >
            {table.scaled ? t.leaveAsIs : t.scale}
          </button>
        </p>
      )}
      <div className="fields">
        <TextField className="wide" value={tableName} onChange={setTableName}>
          <Label>{t.from}</Label>
          <NameInput autoComplete="off" most={150} />
        </TextField>
        {hasShares && (
          <label className="tick">
            <input type="checkbox" checked={withMix} onChange={(e) => setWithMix(e.target.checked)} />
            <span>{t.makeMix}</span>
          </label>
        )}
        {hasShares && withMix && (
          <>
            <TextField value={mixName} onChange={setMixName}>
              <Label>{t.nameOfMix}</Label>
              <NameInput autoComplete="off" most={150} />
            </TextField>
            <Choice
              label={t.needs}
              value={profile.id}
              options={profiles.map((p) => [p.id, p.name] as const)}
              onChange={setProfileId}
            />
          </>
        )}
      </div>
      <p>
        <strong>
          {mix ? t.andMix(foods.length, mix.name, mix.problem.foods.length) : t.foods(foods.length)}
        </strong>
      </p>
      {notes.map((n) => (
        <p key={n} className="hint">
          {n}
        </p>
      ))}
      <p className="hint">{t.caution}</p>
      <Failed error={error} />
      {busy && <p role="status">{words().ownTable.moment}</p>}
      <Button className="button strong" isDisabled={foods.length === 0 && !mix} onPress={() => void write()}>
        {t.bringIn}
      </Button>
    </section>
  );
}
