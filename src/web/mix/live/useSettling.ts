/** A mix that was moved at once goes on to one that keeps the rules that count foods, once it is let go of. */
import { useCallback, useEffect, useRef, useState } from 'react';
import type { Mix } from '../../../household/model.ts';
import type { Unsettled } from './moves.ts';

interface Settling {
  /** Whether such a mix is being sought. */
  readonly settling: boolean;
  /** Told where a mix is not settled; it is once it is let go of. */
  unsettled(move: Unsettled): void;
  /** While a share is held in the hand nothing is settled. */
  hold(): void;
  letGo(): void;
  /** Leaves the mix as it is. */
  leave(): void;
}

/**
 * @param mix that is shown; where it changes, what was being sought for it is dropped
 * @param kept the mix as it is kept at this moment
 */
export function useSettling(
  mix: Pick<Mix, 'problem' | 'shares'>,
  kept: () => Mix | undefined,
  settle: (move: Unsettled, signal: AbortSignal) => Promise<void>,
): Settling {
  const held = useRef(false);
  const open = useRef<Unsettled | undefined>(undefined);
  const running = useRef<{ readonly of: string; readonly leaving: AbortController } | undefined>(undefined);
  const [settling, setSettling] = useState(false);

  const leave = useCallback(() => {
    open.current = undefined;
    running.current?.leaving.abort();
    running.current = undefined;
    setSettling(false);
  }, []);

  const begin = useCallback(async () => {
    const move = open.current;
    if (!move || held.current) return;
    leave();
    const own = { of: said(kept()), leaving: new AbortController() };
    running.current = own;
    setSettling(true);
    await settle(move, own.leaving.signal);
    if (running.current === own) leave();
  }, [kept, settle, leave]);

  const { problem, shares } = mix;
  // biome-ignore lint/correctness/useExhaustiveDependencies: another mix is another one to settle
  useEffect(() => {
    if (running.current && running.current.of !== said(kept())) leave();
  }, [problem, shares, kept, leave]);
  useEffect(() => leave, [leave]);

  return {
    settling,
    unsettled: useCallback(
      (move) => {
        open.current = move;
        void begin();
      },
      [begin],
    ),
    hold: useCallback(() => {
      held.current = true;
      leave();
    }, [leave]),
    letGo: useCallback(() => {
      held.current = false;
      void begin();
    }, [begin]),
    leave,
  };
}

const said = (mix: Mix | undefined) => JSON.stringify([mix?.problem, mix?.shares]);
