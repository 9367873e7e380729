/** Keeps the worker's answers in step with the mix: how it stands, how far shares may move, what collides. */
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { Collision, Evaluation, Following } from '../../formulation/problem/result.ts';
import type { Mix } from '../../household/model.ts';
import { heldShares, withHolds, withOtherFibre } from '../../household/reckon/mix-edits.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { engine, newestMove } from '../worker/engine.ts';
import type { Answer } from '../worker/formulation.worker.ts';
import { latest } from '../worker/latest.ts';

export type Span = readonly [number, number];

export interface Weighed {
  readonly grams: Readonly<Record<string, number>> | null;
  readonly grams_conflict?: string;
}

export interface FormulationView {
  readonly evaluation: Evaluation | undefined;
  readonly spans: Readonly<Record<string, Span>> | undefined;
  readonly collision: Collision | undefined;
  /** What the best mix comes to and how far that is proven; undefined while it is sought, and where there is none. */
  readonly best: Pick<Following, 'objective' | 'gap' | 'aims'> | undefined;
  readonly weighed: Weighed | undefined;
  /** What the fibre rules would say under the other fibre measure. */
  readonly otherFibre:
    | { readonly tag: 'FIBTG' | 'FIBC'; readonly ration: number | undefined; readonly fits: boolean }
    | undefined;
  /** The problem could not be read. */
  readonly fault: { readonly field: string; readonly message: string } | undefined;
  readonly state: 'in' | 'out' | 'none' | 'working' | 'fault';
  /** A short word for screen readers after something moved or refused to. */
  readonly notice: string;
  say(notice: string): void;
  balance(): Promise<void>;
  /** Moves one share; the others follow. */
  move(id: string, share: number): Promise<void>;
  endMove(): void;
  /** Changes the rules or foods; a mix that was in range goes on to the nearest one that is. */
  edit(next: (mix: Mix) => Mix, step?: string): Promise<void>;
}

const TOTAL_SLACK = 1e-6;

/**
 * @param mix with what its animals bring @param effective brings that to a mix as it is kept
 */
export function useFormulation(mix: Mix, effective: (mix: Mix) => Mix): FormulationView {
  const { change, current: kept } = useMixDraft();
  const current = useCallback(() => {
    const now = kept();
    return now && effective(now);
  }, [kept, effective]);
  const [evaluation, setEvaluation] = useState<Evaluation>();
  const [spans, setSpans] = useState<Record<string, Span>>();
  const [collision, setCollision] = useState<Collision>();
  const [best, setBest] = useState<FormulationView['best']>();
  const [weighed, setWeighed] = useState<Weighed>();
  const [otherFibre, setOtherFibre] = useState<FormulationView['otherFibre']>();
  const [fault, setFault] = useState<FormulationView['fault']>();
  const [notice, say] = useState('');
  const anchor = useRef<{ id: string; shares: Readonly<Record<string, number>> } | undefined>(undefined);

  const evaluate = useMemo(
    () =>
      latest(
        async (m: Pick<Mix, 'problem' | 'shares'>): Promise<Answer<Evaluation>> =>
          engine.evaluate(m.problem, m.shares),
      ),
    [],
  );
  const { problem, shares } = mix;

  useEffect(() => {
    let stale = false;
    void evaluate({ problem, shares }).then((answer) => {
      if (!answer || stale) return;
      if (answer.ok) setEvaluation(answer.value);
      setFault(answer.ok ? undefined : answer);
    }, failed);
    function failed(error: unknown) {
      if (!stale) setFault({ field: '', message: error instanceof Error ? error.message : String(error) });
    }
    return () => {
      stale = true;
    };
  }, [evaluate, problem, shares]);

  const fits =
    evaluation !== undefined &&
    evaluation.breaches.length === 0 &&
    Math.abs(evaluation.total - 100) < TOTAL_SLACK;
  const fitsNow = useRef(fits);
  fitsNow.current = fits;

  const bound = JSON.stringify(withHolds(mix));
  useEffect(() => {
    let stale = false;
    setBest(undefined);
    const timer = setTimeout(async () => {
      const answer = await engine.solve(JSON.parse(bound)).catch(() => undefined);
      if (stale || !answer?.ok) return;
      const infeasible = answer.value.status === 'infeasible';
      setCollision(infeasible ? (answer.value as Collision) : undefined);
      setSpans(answer.value.status === 'optimal' ? { ...answer.value.spans } : undefined);
      setBest(answer.value.status === 'optimal' ? answer.value : undefined);
    }, 60);
    return () => {
      stale = true;
      clearTimeout(timer);
    };
  }, [bound]);

  useEffect(() => {
    let stale = false;
    setWeighed(undefined);
    const timer = setTimeout(async () => {
      if (fits) {
        const answer = await engine.grams(problem, shares).catch(() => undefined);
        if (!stale && answer?.ok) setWeighed(answer.value);
      }
      const swapped = withOtherFibre(problem);
      const other = swapped && (await engine.evaluate(swapped.problem, shares).catch(() => undefined));
      if (stale) return;
      const fibreOf = (e: Evaluation, tag: 'FIBTG' | 'FIBC', pointers: readonly string[]) => ({
        tag,
        ration: e.nutrients[tag]?.ration,
        fits: !e.breaches.some((b) => pointers.some((p) => `${b.pointer}/`.startsWith(p))),
      });
      setOtherFibre(swapped && other?.ok ? fibreOf(other.value, swapped.other, swapped.pointers) : undefined);
    }, 220);
    return () => {
      stale = true;
      clearTimeout(timer);
    };
  }, [problem, shares, fits]);

  const balance = useCallback(async () => {
    const now = current();
    if (!now) return;
    const answer = await engine.solve(withHolds(now));
    if (!answer.ok) return setFault(answer);
    const result = answer.value;
    if (result.status === 'infeasible') {
      setCollision(result);
      say('No mix can keep these rules. What collides is listed below the verdict.');
      return;
    }
    change((m) => ({ ...m, shares: { ...m.shares, ...result.shares } }));
    say('Balanced.');
  }, [change, current]);

  const move = useCallback(
    async (id: string, share: number) => {
      const now = current();
      if (!now) return;
      if (anchor.current?.id !== id) anchor.current = { id, shares: now.shares };
      const from = { ...anchor.current.shares, [id]: share };
      const answer = await newestMove(now.problem, from, { ...heldShares(now), [id]: share }, id);
      if (!answer) return;
      if (!answer.ok) return setFault(answer);
      const result = answer.value;
      const next = result.status === 'optimal' ? result.shares : { [id]: share };
      change((m) => ({ ...m, shares: { ...m.shares, ...next } }), `move ${id}`);
    },
    [change, current],
  );

  const edit = useCallback(
    async (next: (mix: Mix) => Mix, step?: string) => {
      const follow = fitsNow.current;
      say('');
      change(next, step ?? 'edit');
      if (!follow) return;
      const stored = kept();
      if (!stored) return;
      const changed = effective(stored);
      const answer = await engine
        .move(changed.problem, changed.shares, heldShares(changed))
        .catch(() => undefined);
      if (!answer?.ok || answer.value.status !== 'optimal') return;
      const followed = answer.value.shares;
      change(
        (m) => (m.problem === stored.problem ? { ...m, shares: { ...m.shares, ...followed } } : m),
        step ?? 'edit',
      );
    },
    [change, kept, effective],
  );

  return {
    evaluation,
    spans,
    collision,
    best,
    weighed,
    otherFibre,
    fault,
    state: fault ? 'fault' : collision && !fits ? 'none' : !evaluation ? 'working' : fits ? 'in' : 'out',
    notice,
    say,
    balance,
    move,
    endMove: useCallback(() => {
      anchor.current = undefined;
    }, []),
    edit,
  };
}
