/** The mix at hand: read from the household, changed at once on the screen, saved by itself. */
import { useQueryClient } from '@tanstack/react-query';
import {
  createContext,
  type ReactNode,
  useCallback,
  useContext,
  useEffect,
  useMemo,
  useReducer,
  useState,
} from 'react';
import type { Household, Mix } from '../../household/model.ts';
import { put } from './api.ts';
import { Autosave, type SaveState } from './autosave.ts';
import { changed, type History, NO_HISTORY, redone, undone } from './history.ts';
import { useCacheWriter } from './household.ts';
import { cachedHousehold, cachedObject } from './household-cache.ts';
import { onSaveNow } from './waiting-saves.ts';

interface MixDraft {
  readonly house: Household;
  readonly mix: Mix | undefined;
  readonly save: SaveState;
  /** The mix as it stands this moment, also between a change and the next drawing. */
  current(): Mix | undefined;
  /** Changes the mix; changes with the same `step` made close together are undone together. */
  change(next: (mix: Mix) => Mix, step?: string): void;
  /** Takes back the last change of this mix since the page was opened; undefined when there is none. */
  readonly undo: (() => void) | undefined;
  /** Makes the change again that was taken back last; undefined when there is none. */
  readonly redo: (() => void) | undefined;
  choose(id: string): void;
  /** Keeps a new mix and goes to it. */
  create(mix: Mix): void;
  retry(): void;
}

const Context = createContext<MixDraft | undefined>(undefined);
const CHOSEN = 'pouchful.mix';

export function MixDraftProvider({ house, children }: { house: Household; children: ReactNode }) {
  const client = useQueryClient();
  const write = useCacheWriter();
  const [chosen, setChosen] = useState(() => localStorage.getItem(CHOSEN));
  /** One for each mix, so that a change of one never takes the place of another's that waits. */
  const [savers] = useState(() => new Map<string, Autosave<Mix>>());
  const [saves, setSaves] = useState<ReadonlyMap<string, SaveState>>(new Map());
  /** By mix, for as long as the page is open. */
  const [histories] = useState(() => new Map<string, History<Mix>>());
  const [, redraw] = useReducer((n: number) => n + 1, 0);
  const mix = house.mixes.find((m) => m.id === chosen) ?? house.mixes[0];
  const id = mix?.id;
  const history: History<Mix> = (id !== undefined && histories.get(id)) || NO_HISTORY;

  const flush = useCallback(
    (leaving = false) => {
      for (const saver of savers.values()) saver.flush(leaving);
    },
    [savers],
  );

  const queue = useCallback(
    (next: Mix) => {
      const show = (state: SaveState) => setSaves((all) => new Map(all).set(next.id, state));
      const saver = savers.get(next.id) ?? new Autosave<Mix>((m, leaving) => put('mixes', m, leaving), show);
      savers.set(next.id, saver);
      saver.queue(next);
    },
    [savers],
  );

  useEffect(() => {
    const leave = () => flush(true);
    window.addEventListener('pagehide', leave);
    return () => window.removeEventListener('pagehide', leave);
  }, [flush]);

  useEffect(() => onSaveNow(() => Promise.all([...savers.values()].map((s) => s.settled()))), [savers]);

  const keep = useCallback(
    (next: Mix) => {
      // A mix taken back from before an animal was deleted must not name it.
      const there = cachedHousehold(client)?.animals ?? [];
      const animalIds = next.animalIds.filter((id) => there.some((a) => a.id === id));
      const stamped = { ...next, animalIds, updatedAt: new Date().toISOString() };
      write('mixes', stamped);
      queue(stamped);
    },
    [client, write, queue],
  );

  const current = useCallback(
    () => (id === undefined ? undefined : cachedObject(client, 'mixes', id)),
    [client, id],
  );

  const change = useCallback(
    (next: (mix: Mix) => Mix, step = '') => {
      const now = current();
      if (!now) return;
      const then = next(now);
      if (then === now) return;
      histories.set(now.id, changed(histories.get(now.id) ?? NO_HISTORY, now, step, Date.now()));
      redraw();
      keep(then);
    },
    [current, keep, histories],
  );

  const turn = useCallback(
    (by: typeof undone) => {
      const now = current();
      const turned = now && by(histories.get(now.id) ?? NO_HISTORY, now);
      if (!turned) return;
      histories.set(now.id, turned.history);
      redraw();
      keep(turned.present);
    },
    [current, keep, histories],
  );

  const value = useMemo<MixDraft>(() => {
    const choose = (next: string) => {
      flush();
      localStorage.setItem(CHOSEN, next);
      setChosen(next);
    };
    return {
      house,
      mix,
      save: together([...saves.values()]),
      current,
      change,
      choose,
      undo: history.past && (() => turn(undone)),
      redo: history.future && (() => turn(redone)),
      create: (made) => {
        write('mixes', made);
        choose(made.id);
        queue(made);
      },
      retry: () => flush(),
    };
  }, [house, mix, saves, current, change, turn, history, write, queue, flush]);

  return <Context.Provider value={value}>{children}</Context.Provider>;
}

/** What is said of all mixes: a failure before anything else. */
function together(states: readonly SaveState[]): SaveState {
  return states.find((s) => s.is === 'failed') ?? states.find((s) => s.is === 'saving') ?? { is: 'saved' };
}

export function useMixDraft(): MixDraft {
  const draft = useContext(Context);
  if (!draft) throw new Error('useMixDraft needs MixDraftProvider around it');
  return draft;
}
