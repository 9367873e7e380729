/** The mix at hand: read from the household, changed at once on the screen, saved by itself. */
import { createContext, type ReactNode, useCallback, useContext, useMemo, useReducer, useState } from 'react';
import { mergeRecord, same } from '../../household/merge/merge-record.ts';
import type { Household, Mix } from '../../household/model.ts';
import { deviceStorage } from '../shared/device-storage.ts';
import { changed, type History, NO_HISTORY, type Remake, redone, undone } from './history.ts';
import { useKeeper } from './household.ts';
import { keeper } from './page-keeper.ts';
import { type SaveState, saveState } from './save-state.ts';

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
  const view = useKeeper();
  const [chosen, setChosen] = useState(() => deviceStorage.getItem(CHOSEN));
  /** By mix, for as long as the page is open. */
  const [histories] = useState(() => new Map<string, History<Mix>>());
  const [, redraw] = useReducer((n: number) => n + 1, 0);
  const mix = house.mixes.find((m) => m.id === chosen) ?? house.mixes[0];
  const id = mix?.id;
  const history: History<Mix> = (id !== undefined && histories.get(id)) || NO_HISTORY;
  const { is: saveIs, ...saveMore } = saveState(view, 'mixes', id);
  const saveMessage = 'message' in saveMore ? saveMore.message : '';

  const current = useCallback(() => (id === undefined ? undefined : keeper.shown('mixes', id)), [id]);

  const change = useCallback(
    (next: (mix: Mix) => Mix, step = '') => {
      const before = current();
      if (!before) return;
      const after = next(before);
      if (isSame(before, after)) return;
      const kept = keep(before, after);
      const history = changed(
        histories.get(before.id) ?? NO_HISTORY,
        { before, after: kept },
        step,
        Date.now(),
      );
      const { past } = history;
      // A slider that came back to where it was has changed nothing to take back.
      const back = past !== undefined && isSame(past.before, past.after);
      histories.set(before.id, back ? { ...history, past: past.next } : history);
      redraw();
    },
    [current, histories],
  );

  const turn = useCallback(
    (by: typeof undone) => {
      const now = current();
      const turned = now && by(histories.get(now.id) ?? NO_HISTORY, now, remake);
      if (!turned) {
        // None of the steps on this side changes anything any more.
        if (now) histories.set(now.id, { ...NO_HISTORY, ...otherSide(histories.get(now.id), by) });
        redraw();
        return;
      }
      histories.set(now.id, turned.history);
      redraw();
      keep(now, turned.present);
    },
    [current, histories],
  );

  const value = useMemo<MixDraft>(() => {
    const choose = (next: string) => {
      deviceStorage.setItem(CHOSEN, next);
      setChosen(next);
      keeper.retry();
    };
    return {
      house,
      mix,
      save: { is: saveIs, message: saveMessage },
      current,
      change,
      choose,
      undo: history.past && (() => turn(undone)),
      redo: history.future && (() => turn(redone)),
      create: (made) => {
        keeper.write('mixes', made.id, made, { base: null });
        choose(made.id);
      },
      retry: () => keeper.retry(),
    };
  }, [house, mix, saveIs, saveMessage, current, change, turn, history]);

  return <Context.Provider value={value}>{children}</Context.Provider>;
}

/** Keeps a mix in the place of how it stood. @returns the mix as it is kept */
function keep(before: Mix, next: Mix): Mix {
  // A mix taken back from before an animal was deleted must not name it.
  const there = keeper.view().household?.animals ?? [];
  const animalIds = next.animalIds.every((id) => there.some((a) => a.id === id))
    ? next.animalIds
    : next.animalIds.filter((id) => there.some((a) => a.id === id));
  const kept = { ...next, animalIds, updatedAt: new Date().toISOString() };
  keeper.write('mixes', kept.id, kept, { base: before, joins: true });
  return kept;
}

/** A step taken back or made again upon the mix as it stands; what others changed since stays as they left it. */
const remake: Remake<Mix> = (from, to, now) => {
  const made = same(from, now) ? to : (mergeRecord('mixes', from, to, now, 'theirs').merged ?? now);
  return isSame(made, now) ? now : made;
};

/** The steps of the side that was not asked for. */
function otherSide(history: History<Mix> = NO_HISTORY, by: typeof undone) {
  return by === undone ? { future: history.future } : { past: history.past };
}

/** Shares this close are one, percent: solving again leaves the last digits otherwise. */
const NO_SHARE = 1e-6;

/** Whether two versions of a mix say the same, whenever they were saved. */
function isSame(a: Mix, b: Mix): boolean {
  if (a === b) return true;
  const ids = new Set([...Object.keys(a.shares), ...Object.keys(b.shares)]);
  return (
    [...ids].every(
      (id) => Math.abs((a.shares[id] ?? Number.NaN) - (b.shares[id] ?? Number.NaN)) < NO_SHARE,
    ) && same({ ...a, shares: {}, updatedAt: '' }, { ...b, shares: {}, updatedAt: '' })
  );
}

export function useMixDraft(): MixDraft {
  const draft = useContext(Context);
  if (!draft) throw new Error('useMixDraft needs MixDraftProvider around it');
  return draft;
}
