/** The household as React sees it, and changes of it: shown at once, taken back where the server refuses them. */
import { useEffect, useRef, useState, useSyncExternalStore } from 'react';
import type { Kept, Kind } from '../../household/model.ts';
import type { KeptRecord } from '../../household/records.ts';
import { builds, keeper, startKeeping } from './page-keeper.ts';
import type { KeeperView, Outcome } from './sync/keeper-parts.ts';

/** Keeps this page and the server the same from here on. */
export function useKeeping(): void {
  useEffect(startKeeping, []);
}

/** What this page keeps. A change is seen within the press that makes it. */
export function useKeeper(): KeeperView {
  return useSyncExternalStore(keeper.subscribe, keeper.view);
}

/**
 * The household, once most of it is here: who reads a list that has not come yet waits for it (React's `Suspense`). `error`
 * says why something of it could not be had.
 */
export function useHousehold() {
  const { household, isWhole, fault } = useKeeper();
  return { data: household, isWhole, error: fault, refetch: () => keeper.pull() };
}

/** Records that are kept and cannot be shown as what they should be. */
export function useUnreadable(): readonly KeptRecord[] {
  return useKeeper().unreadable;
}

/** The build that the server gives pages of, as it last said; undefined until it did. */
export function useServerBuild(): string | undefined {
  return useSyncExternalStore(builds.subscribe, builds.view);
}

interface Done<T> {
  /** @param kept the object as it is kept, with what others changed of it meanwhile */
  onSuccess(kept: T): void;
}

/** Changes under way, and what was refused of those that were made together. */
interface Saves {
  readonly pending: number;
  readonly made: number;
  readonly refused: readonly string[];
}

const NONE: Saves = { pending: 0, made: 0, refused: [] };

/** Counts changes of one component, so that each refusal is told where it was made. */
function useSaves() {
  const [saves, setSaves] = useState(NONE);
  const mounted = useRef(true);
  useEffect(() => {
    mounted.current = true;
    return () => {
      mounted.current = false;
    };
  }, []);

  /**
   * @param change starts a change, and is told its outcome @param name of what is changed
   * @returns ready once it is kept, or waits on the device; rejects where it is refused
   */
  function start(
    change: (heard: (outcome: Outcome) => void) => void,
    name: string,
    done?: () => void,
  ): Promise<void> {
    setSaves((s) => ({ ...(s.pending > 0 ? s : NONE), pending: s.pending + 1 }));
    return new Promise((made, refused) =>
      change((outcome) => {
        const ok = outcome.is !== 'refused';
        setSaves((s) => ({
          pending: s.pending - 1,
          made: s.made + (ok ? 1 : 0),
          refused: ok ? s.refused : [...s.refused, `${name}${outcome.error.message}`],
        }));
        if (outcome.is === 'refused') return refused(outcome.error);
        if (mounted.current) done?.();
        made();
      }),
    );
  }

  const { pending, made, refused } = saves;
  const told = refused.length > 1 ? refused.join(' ') : refused[0]?.replace(/^[^\0]*\0/, '');
  return {
    start,
    isPending: pending > 0,
    isSuccess: pending === 0 && made > 0 && refused.length === 0,
    error: told === undefined ? null : new Error(told.replaceAll('\0', ': ')),
  };
}

/** What is told of a thing that was refused beside others; the mark is where its name ends. */
function nameOf(object: object): string {
  return 'name' in object ? `${object.name}\0` : '';
}

/**
 * Changes objects of one kind. Every change names the object as the keeper saw it when they began to change it (undefined
 * where it is new): only what differs from that is changed, whatever others changed meanwhile.
 */
export function useSave<K extends Kind>(kind: K) {
  const { start, ...state } = useSaves();
  const save = (object: Kept<K>, base: Kept<K> | undefined, done?: Done<Kept<K>>) =>
    start(
      (heard) => keeper.write(kind, object.id, object, { base: base ?? null }, heard),
      nameOf(object),
      () => done?.onSuccess(keeper.shown(kind, object.id) ?? object),
    );
  return {
    ...state,
    mutate: (object: Kept<K>, base: Kept<K> | undefined, done?: Done<Kept<K>>): void => {
      save(object, base, done).catch(() => {}); // `error` says why
    },
    mutateAsync: (object: Kept<K>, base: Kept<K> | undefined) => save(object, base),
  };
}

/**
 * Deletes objects of one kind, as the keeper saw them; they go from the page once the server has deleted them, or does not
 * answer. What was changed before is sent before: a food that was just taken out of a mix can be deleted.
 */
export function useRemove<K extends Kind>(kind: K) {
  const { start, ...state } = useSaves();
  const remove = (object: Kept<K>, done?: { onSuccess(): void }) =>
    start(
      (heard) => keeper.write(kind, object.id, null, { base: object, unseen: true }, heard),
      nameOf(object),
      () => done?.onSuccess(),
    );
  return {
    ...state,
    mutate: (object: Kept<K>, done?: { onSuccess(): void }): void => {
      remove(object, done).catch(() => {}); // `error` says why
    },
    mutateAsync: (object: Kept<K>) => remove(object),
  };
}
