/** Kept versions of a mix: keep it as it stands, go back to one, compare two of them. */
import { useQuery } from '@tanstack/react-query';
import { useEffect, useRef, useState } from 'react';
import { Button, Input, Label, TextField } from 'react-aria-components';
import type { Evaluation } from '../../../../formulation/problem/result.ts';
import type { Mix, MixVersion } from '../../../../household/model.ts';
import { broughtBack } from '../../../../household/reckon/mix/versions.ts';
import { Choice } from '../../../shared/Choice.tsx';
import { Failed } from '../../../shared/Failed.tsx';
import { useParts } from '../../../shared/parts.tsx';
import { linkTo } from '../../../shared/route.ts';
import { today } from '../../../shared/today.ts';
import { allProfiles, useRemove, useSave } from '../../../store/household.ts';
import { useMixDraft } from '../../../store/mix-draft.tsx';
import { newId } from '../../../store/new-id.ts';
import { engine } from '../../../worker/engine.ts';
import { CompareMixes, type NamedMix } from './CompareMixes.tsx';
import { versionName } from './version-name.ts';
import './versions.css';

/** Stands for the mix as it is now among the ids of versions. */
const NOW = 'now';

/** Versions shown at once. */
const PART = 10;

export function MixVersions({ mix, evaluation }: { mix: Mix; evaluation: Evaluation | undefined }) {
  const { house, change } = useMixDraft();
  const save = useSave('versions');
  const remove = useRemove('versions');
  const [gone, setGone] = useState<readonly MixVersion[]>([]);
  const [pair, setPair] = useState<readonly [a: string, b: string]>();
  const [notice, say] = useState('');
  /** How often a comparison was asked for: each time it comes into sight. */
  const [asked, ask] = useState(0);
  const comparison = useRef<HTMLElement>(null);
  const kept = house.versions.filter((v) => v.mixId === mix.id);
  const rows = [...kept, ...gone.filter((v) => !kept.some((k) => k.id === v.id))].sort((v, w) =>
    w.keptAt.localeCompare(v.keptAt),
  );
  const parts = useParts(rows, { part: PART, of: 'versions' });
  const error = save.error ?? remove.error;
  const shown = pair?.every((id) => id === NOW || kept.some((v) => v.id === id)) ? pair : undefined;

  function keep(name: string) {
    const { id: mixId, problem, shares } = mix;
    const id = newId();
    save.mutate({ id, mixId, name, problem, shares, keptAt: new Date().toISOString() }, undefined);
    say(`Kept as “${name}”.`);
  }
  function goBack(version: MixVersion) {
    change((m) => broughtBack(m, version, allProfiles(house)));
    say(`The mix stands as in “${version.name}”. Undo takes this back.`);
  }
  function compare(version: MixVersion) {
    setPair([version.id, NOW]);
    ask((n) => n + 1);
  }
  useEffect(() => {
    if (asked === 0) return;
    comparison.current?.focus({ preventScroll: true });
    comparison.current?.scrollIntoView();
  }, [asked]);

  return (
    <section className="versions" aria-label="Versions">
      <h2>Versions</h2>
      <KeepForm taken={rows.map((v) => v.name)} keep={keep} />
      <Failed error={error} />
      {rows.length === 0 ? (
        <p className="hint">
          Nothing is kept yet. Keep the mix before you try something: you can then lay the two side by side,
          or go back.
        </p>
      ) : (
        <ul className="version-list">
          {parts.shown.map((version) =>
            kept.some((k) => k.id === version.id) ? (
              <Row
                key={version.id}
                version={version}
                rename={(name) => save.mutate({ ...version, name }, version)}
                goBack={() => goBack(version)}
                compare={() => compare(version)}
                drop={() => {
                  say('');
                  remove.mutate(version, { onSuccess: () => setGone((all) => [...all, version]) });
                }}
              />
            ) : (
              <li key={version.id} className="version gone">
                <span>“{version.name}” is deleted.</span>
                <Button
                  className="quiet-button"
                  autoFocus
                  aria-label={`Bring back ${version.name}`}
                  onPress={() => {
                    setGone((all) => all.filter((v) => v.id !== version.id));
                    save.mutate(version, undefined);
                  }}
                >
                  Bring back
                </Button>
              </li>
            ),
          )}
        </ul>
      )}
      {parts.more}
      <p className="hint">
        Every change of the mix is kept for a year:{' '}
        <a href={linkTo('household', 'changes', 'mixes', mix.id)}>what was changed in this mix</a>.
      </p>
      <p className="versions-notice" aria-live="polite">
        {notice}
      </p>
      {shown && (
        <section className="comparison" aria-label="Comparison" ref={comparison} tabIndex={-1}>
          <header className="comparison-head">
            <h3>Side by side</h3>
            <Button className="quiet-button" onPress={() => setPair([shown[1], shown[0]])}>
              Swap
            </Button>
            <Button className="quiet-button" onPress={() => setPair(undefined)}>
              Close
            </Button>
          </header>
          <div className="fields">
            <Choice
              label="First"
              value={shown[0]}
              options={choices(kept)}
              onChange={(a) => setPair([a, shown[1]])}
            />
            <Choice
              label="Second"
              value={shown[1]}
              options={choices(kept)}
              onChange={(b) => setPair([shown[0], b])}
            />
          </div>
          <Pair ids={shown} mix={mix} evaluation={evaluation} versions={kept} />
        </section>
      )}
    </section>
  );
}

function choices(kept: readonly MixVersion[]): [string, string][] {
  return [[NOW, 'The mix now'], ...kept.map((v): [string, string] => [v.id, v.name])];
}

/** The name is suggested anew after each keeping, until one is typed. */
function KeepForm({ taken, keep }: { taken: readonly string[]; keep(name: string): void }) {
  const [typed, setTyped] = useState<string>();
  const name = typed ?? versionName(today(), taken);
  return (
    <form
      className="keep-form"
      onSubmit={(event) => {
        event.preventDefault();
        keep(name.trim() || versionName(today(), taken));
        setTyped(undefined);
      }}
    >
      <TextField value={name} onChange={setTyped} maxLength={120}>
        <Label>Keep the mix as it stands, as</Label>
        <Input onFocus={(e) => e.currentTarget.select()} />
      </TextField>
      <Button type="submit" className="button">
        Keep
      </Button>
    </form>
  );
}

interface RowProps {
  version: MixVersion;
  rename(name: string): void;
  goBack(): void;
  compare(): void;
  drop(): void;
}

function Row({ version, rename, goBack, compare, drop }: RowProps) {
  /** What is being typed; what is kept shows otherwise. */
  const [typed, setTyped] = useState<string>();
  function commit() {
    const next = typed?.trim();
    setTyped(undefined);
    if (next && next !== version.name) rename(next);
  }
  return (
    <li className="version">
      <TextField
        className="version-name"
        value={typed ?? version.name}
        onChange={setTyped}
        maxLength={120}
        onBlur={commit}
        onKeyDown={(e) => e.key === 'Enter' && commit()}
      >
        <Label className="sr-only">Name of the version {version.name}</Label>
        <Input />
      </TextField>
      <time dateTime={version.keptAt}>{KEPT_AT.format(new Date(version.keptAt))}</time>
      <span className="version-deeds">
        <Button className="button small" aria-label={`Compare ${version.name}`} onPress={compare}>
          Compare
        </Button>
        <Button
          className="quiet-button small"
          aria-label={`Go back to this: ${version.name}`}
          onPress={goBack}
        >
          Go back to this
        </Button>
        <Button className="quiet-button small" aria-label={`Delete ${version.name}`} onPress={drop}>
          Delete
        </Button>
      </span>
    </li>
  );
}

/** Day and hour where the keeper is. */
const KEPT_AT = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short' });

interface PairProps {
  ids: readonly [a: string, b: string];
  mix: Mix;
  evaluation: Evaluation | undefined;
  versions: readonly MixVersion[];
}

/** The two chosen, once both are worked out. */
function Pair({ ids, mix, evaluation, versions }: PairProps) {
  const now = { ...mix, evaluation, name: 'The mix now' };
  const first = useStanding(ids[0], versions);
  const second = useStanding(ids[1], versions);
  const sides = [first, second].map((s, i) => (ids[i] === NOW ? { side: now, fault: undefined } : s));
  const faults = sides.flatMap((s) => s.fault ?? []);
  if (ids[0] === ids[1]) return <p className="hint">These are the same. Choose another to lay beside it.</p>;
  if (faults.length > 0)
    return faults.map((f) => (
      <p key={f} role="alert" className="field-error">
        {f}
      </p>
    ));
  const [a, b] = sides.map((s) => s.side);
  if (!a?.evaluation || !b?.evaluation) return <p className="hint">Working it out…</p>;
  return <CompareMixes a={a as NamedMix} b={b as NamedMix} />;
}

type Worked = {
  side: (Omit<NamedMix, 'evaluation'> & Partial<NamedMix>) | undefined;
  fault: string | undefined;
};

/** A version with how it stands; what it holds never changes, so it is worked out once. */
function useStanding(id: string, versions: readonly MixVersion[]): Worked {
  const version = versions.find((v) => v.id === id);
  const { data, error } = useQuery({
    queryKey: ['version', id],
    queryFn: async () => engine.evaluate(version!.problem, version!.shares),
    enabled: version !== undefined,
    staleTime: Number.POSITIVE_INFINITY,
  });
  const said = error?.message ?? (data && !data.ok ? data.message : undefined);
  if (!version) return { side: undefined, fault: 'This version is not kept any more; choose another.' };
  return {
    side: { ...version, evaluation: data?.ok ? data.value : undefined },
    fault: said && `“${version.name}” cannot be worked out: ${said}`,
  };
}
