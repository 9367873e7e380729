/** Kept versions of a mix: keep it as it stands, go back to one, compare two of them. */

import { useQuery } from '@tanstack/react-query';
import { useEffect, useRef, useState } from 'react';
import { Button, Input, Label, TextField } from 'react-aria-components';
import type { Evaluation } from '../../../../formulation/problem/result.ts';
import type { Mix, MixVersion } from '../../../../household/model.ts';
import { broughtBack } from '../../../../household/reckon/mix/versions.ts';
import { words } from '../../../../words/words.ts';
import { Choice } from '../../../shared/Choice.tsx';
import { Failed } from '../../../shared/Failed.tsx';
import { useParts } from '../../../shared/parts.tsx';
import { linkTo } from '../../../shared/route.ts';
import { today } from '../../../shared/today.ts';
import { Sentence } from '../../../shared/words/Sentence.tsx';
import { useRemove, useSave } from '../../../store/household.ts';
import { useMixDraft } from '../../../store/mix-draft.tsx';
import { newId } from '../../../store/new-id.ts';
import { allProfiles } from '../../../store/profiles.ts';
import { engine } from '../../../worker/engine.ts';
import { CompareMixes, type NamedMix } from './CompareMixes.tsx';
import { versionName } from './version-name.ts';
import './versions.css';

/** Stands for the mix as it is now among the ids of versions. */
const NOW = 'now';

/** Versions shown at once. */
const PART = 10;

export function MixVersions({ mix, evaluation }: { mix: Mix; evaluation: Evaluation | undefined }) {
  const t = words().versions;
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
  const parts = useParts(rows, { part: PART });
  const error = save.error ?? remove.error;
  const shown = pair?.every((id) => id === NOW || kept.some((v) => v.id === id)) ? pair : undefined;

  function keep(name: string) {
    const { id: mixId, problem, shares } = mix;
    const id = newId();
    save.mutate({ id, mixId, name, problem, shares, keptAt: new Date().toISOString() }, undefined);
    say(t.keptAs(name));
  }
  function goBack(version: MixVersion) {
    change((m) => broughtBack(m, version, allProfiles(house)));
    say(t.wentBack(version.name));
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
    <section className="versions" aria-label={t.heading}>
      <h2>{t.heading}</h2>
      <KeepForm taken={rows.map((v) => v.name)} keep={keep} />
      <Failed error={error} />
      {rows.length === 0 ? (
        <p className="hint">{t.none}</p>
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
                <span>{t.gone(version.name)}</span>
                <Button
                  className="quiet-button"
                  autoFocus
                  aria-label={t.bringBackOf(version.name)}
                  onPress={() => {
                    setGone((all) => all.filter((v) => v.id !== version.id));
                    save.mutate(version, undefined);
                  }}
                >
                  {t.bringBack}
                </Button>
              </li>
            ),
          )}
        </ul>
      )}
      {parts.more}
      <p className="hint">
        <Sentence
          of={t.year}
          with={{
            changes: (text) => <a href={linkTo('household', 'changes', 'mixes', mix.id)}>{text}</a>,
          }}
        />
      </p>
      <p className="versions-notice" aria-live="polite">
        {notice}
      </p>
      {shown && (
        <section className="comparison" aria-label={t.comparison.label} ref={comparison} tabIndex={-1}>
          <header className="comparison-head">
            <h3>{t.comparison.heading}</h3>
            <Button className="quiet-button" onPress={() => setPair([shown[1], shown[0]])}>
              {t.comparison.swap}
            </Button>
            <Button className="quiet-button" onPress={() => setPair(undefined)}>
              {words().common.close}
            </Button>
          </header>
          <div className="fields">
            <Choice
              label={t.comparison.first}
              value={shown[0]}
              options={choices(kept)}
              onChange={(a) => setPair([a, shown[1]])}
            />
            <Choice
              label={t.comparison.second}
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
  return [[NOW, words().versions.now], ...kept.map((v): [string, string] => [v.id, v.name])];
}

/** The name is suggested anew after each keeping, until one is typed. */
function KeepForm({ taken, keep }: { taken: readonly string[]; keep(name: string): void }) {
  const t = words().versions;
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
        <Label>{t.keepAs}</Label>
        <Input onFocus={(e) => e.currentTarget.select()} />
      </TextField>
      <Button type="submit" className="button">
        {t.keep}
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
  const t = words().versions;
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
        <Label className="sr-only">{t.nameOf(version.name)}</Label>
        <Input />
      </TextField>
      <time dateTime={version.keptAt}>{keptAt(version.keptAt)}</time>
      <span className="version-deeds">
        <Button className="button small" aria-label={t.compareOf(version.name)} onPress={compare}>
          {t.compare}
        </Button>
        <Button className="quiet-button small" aria-label={t.goBackOf(version.name)} onPress={goBack}>
          {t.goBack}
        </Button>
        <Button className="quiet-button small" aria-label={t.deleteOf(version.name)} onPress={drop}>
          {words().common.delete}
        </Button>
      </span>
    </li>
  );
}

/** Day and hour where the keeper is. */
function keptAt(moment: string): string {
  const { locale } = words().figures;
  return new Date(moment).toLocaleString(locale, { dateStyle: 'medium', timeStyle: 'short' });
}

interface PairProps {
  ids: readonly [a: string, b: string];
  mix: Mix;
  evaluation: Evaluation | undefined;
  versions: readonly MixVersion[];
}

/** The two chosen, once both are worked out. */
function Pair({ ids, mix, evaluation, versions }: PairProps) {
  const t = words().versions;
  const now = { ...mix, evaluation, name: t.now };
  const first = useStanding(ids[0], versions);
  const second = useStanding(ids[1], versions);
  const sides = [first, second].map((s, i) => (ids[i] === NOW ? { side: now, fault: undefined } : s));
  const faults = sides.flatMap((s) => s.fault ?? []);
  if (ids[0] === ids[1]) return <p className="hint">{t.same}</p>;
  if (faults.length > 0)
    return faults.map((f) => (
      <p key={f} role="alert" className="field-error">
        {f}
      </p>
    ));
  const [a, b] = sides.map((s) => s.side);
  if (!a?.evaluation || !b?.evaluation) return <p className="hint">{t.working}</p>;
  return <CompareMixes a={a as NamedMix} b={b as NamedMix} />;
}

type Worked = {
  side: (Omit<NamedMix, 'evaluation'> & Partial<NamedMix>) | undefined;
  fault: string | undefined;
};

/** A version with how it stands; what it holds never changes, so it is worked out once. */
function useStanding(id: string, versions: readonly MixVersion[]): Worked {
  const t = words().versions;
  const version = versions.find((v) => v.id === id);
  const { data, error } = useQuery({
    queryKey: ['version', id],
    queryFn: async () => engine.evaluate(version!.problem, version!.shares),
    enabled: version !== undefined,
    staleTime: Number.POSITIVE_INFINITY,
  });
  const said = error?.message ?? (data && !data.ok ? data.message : undefined);
  if (!version) return { side: undefined, fault: t.lost };
  return {
    side: { ...version, evaluation: data?.ok ? data.value : undefined },
    fault: said && t.fault(version.name, said),
  };
}
