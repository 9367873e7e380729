/** The mix at hand: read from the household, changed at once on the screen, saved by itself. */
import { useQueryClient } from '@tanstack/react-query';
import {
  createContext,
  type ReactNode,
  useCallback,
  useContext,
  useEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import type { Household, Mix } from '../../household/model.ts';
import { put } from './api.ts';
import { Autosave, type SaveState } from './autosave.ts';
import { useCacheWriter } from './household.ts';

interface MixDraft {
  readonly house: Household;
  readonly mix: Mix | undefined;
  readonly save: SaveState;
  /** The mix as it stands this moment, also between a change and the next drawing. */
  current(): Mix | undefined;
  /** Changes the mix; changes with the same `step` made close together are undone together. */
  change(next: (mix: Mix) => Mix, step?: string): void;
  /** Takes back the last change; undefined when there is none. */
  readonly undo: (() => void) | undefined;
  choose(id: string): void;
  /** Keeps a new mix and goes to it. */
  create(mix: Mix): void;
  retry(): void;
}

const Context = createContext<MixDraft | undefined>(undefined);
const CHOSEN = 'pouchful.mix';
const STEPS_KEPT = 60;
const ONE_STEP_MS = 1200;

export function MixDraftProvider({ house, children }: { house: Household; children: ReactNode }) {
  const client = useQueryClient();
  const write = useCacheWriter();
  const [chosen, setChosen] = useState(() => localStorage.getItem(CHOSEN));
  const [save, setSave] = useState<SaveState>({ is: 'saved' });
  const [past, setPast] = useState<readonly Mix[]>([]);
  const lastStep = useRef({ step: '', at: 0 });
  const [autosave] = useState(() => new Autosave<Mix>((mix, leaving) => put('mixes', mix, leaving), setSave));
  const mix = house.mixes.find((m) => m.id === chosen) ?? house.mixes[0];
  const id = mix?.id;

  useEffect(() => {
    const leave = () => autosave.flush(true);
    window.addEventListener('pagehide', leave);
    return () => window.removeEventListener('pagehide', leave);
  }, [autosave]);

  const keep = useCallback(
    (next: Mix) => {
      const stamped = { ...next, updatedAt: new Date().toISOString() };
      write('mixes', stamped);
      autosave.queue(stamped);
    },
    [write, autosave],
  );

  const current = useCallback(
    () => client.getQueryData<Household>(['household'])?.mixes.find((m) => m.id === id),
    [client, id],
  );

  const change = useCallback(
    (next: (mix: Mix) => Mix, step = '') => {
      const now = current();
      if (!now) return;
      const changed = next(now);
      if (changed === now) return;
      const time = Date.now();
      const same = step !== '' && step === lastStep.current.step && time - lastStep.current.at < ONE_STEP_MS;
      lastStep.current = { step, at: time };
      if (!same) setPast((steps) => [...steps, now].slice(-STEPS_KEPT));
      keep(changed);
    },
    [current, keep],
  );

  const value = useMemo<MixDraft>(() => {
    const choose = (next: string) => {
      autosave.flush();
      localStorage.setItem(CHOSEN, next);
      setPast([]);
      setChosen(next);
    };
    return {
      house,
      mix,
      save,
      current,
      change,
      choose,
      undo: past.length
        ? () => {
            lastStep.current = { step: '', at: 0 };
            setPast(past.slice(0, -1));
            keep(past[past.length - 1]!);
          }
        : undefined,
      create: (made) => {
        write('mixes', made);
        choose(made.id);
        autosave.queue(made);
      },
      retry: () => autosave.flush(),
    };
  }, [house, mix, save, current, change, past, keep, write, autosave]);

  return <Context.Provider value={value}>{children}</Context.Provider>;
}

export function useMixDraft(): MixDraft {
  const draft = useContext(Context);
  if (!draft) throw new Error('useMixDraft needs MixDraftProvider around it');
  return draft;
}
