/** A share asked of one food: taken at once, unless it would leave other foods with nothing; then the row asks first. */
import { useEffect, useRef, useState } from 'react';
import { emptiedBy } from '../../../formulation/advice/ask.ts';
import type { Ingredient } from '../../../formulation/problem/problem.ts';
import type { Mix } from '../../../household/model.ts';
import { heldShares, patchFood } from '../../../household/reckon/mix/mix-edits.ts';
import { engine } from '../../worker/engine.ts';
import type { MixActs } from '../useFormulation.ts';

/** What waits for a yes, since other foods would have nothing. */
interface Question {
  /** Percent of the mix. */
  readonly wanted: number;
  /** Ids of the foods that would be left with nothing. */
  readonly emptied: readonly string[];
  take(): Promise<void>;
}

/** What was asked of the food by hand, and the share that it came to. */
interface Asked {
  readonly wanted: number;
  readonly got: number;
}

interface ShareAsk {
  readonly question: Question | undefined;
  readonly asked: Asked | undefined;
  /** The share as it is asked for, until the mix has followed. */
  readonly pending: number | undefined;
  /** Asks for a share. */
  share(wanted: number): Promise<void>;
  /** Goes along with a dragged slider, as far as other foods keep a share; done once the mix has followed, or will not. */
  drag(share: number): Promise<unknown>;
  /** The slider is let go. @param wanted where the keeper put it */
  letGo(wanted: number): Promise<void>;
  /** Changes the keeper's own limits or wish for the food. */
  patch(change: Partial<Ingredient>): Promise<void>;
  /** Whatever is asked or told is done with. */
  leave(): void;
}

/** @param mix as it is kept, with what its animals bring @param fit whether it breaks no rule */
export function useAsk(food: Ingredient, mix: Mix, fit: boolean, acts: MixActs): ShareAsk {
  const [question, setQuestion] = useState<Question>();
  const [asked, setAsked] = useState<Asked>();
  const [pending, setPending] = useState<number>();
  const dragged = useRef<Promise<readonly string[]>>(undefined);
  // A row that goes while its slider is held lets go of it.
  useEffect(() => acts.endMove, [acts]);

  function leave() {
    setQuestion(undefined);
    setAsked(undefined);
  }
  function came(wanted: number) {
    setAsked({ wanted, got: acts.shareOf(food.id) });
  }
  /** @param emptied foods for whose sake nothing moved */
  function answered(wanted: number, emptied: readonly string[]) {
    if (emptied.length === 0) return came(wanted);
    setQuestion({
      wanted,
      emptied,
      take: async () => {
        leave();
        await acts.move(food.id, wanted);
        acts.endMove();
        came(wanted);
      },
    });
  }
  async function share(wanted: number) {
    leave();
    setPending(wanted);
    const emptied = await acts.move(food.id, wanted, true);
    acts.endMove();
    answered(wanted, emptied);
    setPending(undefined);
  }
  function drag(wanted: number) {
    leave();
    dragged.current = acts.move(food.id, wanted, true);
    return dragged.current;
  }
  async function letGo(wanted: number) {
    const last = dragged.current;
    if (!last) return;
    const emptied = await last;
    // It was taken hold of again meanwhile.
    if (last !== dragged.current) return;
    dragged.current = undefined;
    acts.endMove();
    answered(wanted, emptied);
  }
  async function patch(change: Partial<Ingredient>) {
    leave();
    const edit = async () => {
      await acts.edit((m) => patchFood(m, food.id, change));
      // A wish is met at once, as far as it can be.
      if (change.want !== undefined && fit) await share(change.want);
    };
    const bounds = change.min ?? change.max;
    if (bounds === undefined || !fit) return edit();
    const next = patchFood(mix, food.id, change);
    const answer = await engine.drag(next.problem, mix.shares, heldShares(mix)).catch(() => undefined);
    const moved = answer?.ok && answer.value.status === 'optimal' ? answer.value.shares : {};
    const emptied = emptiedBy(mix.shares, moved, food.id);
    if (emptied.length === 0) return edit();
    setQuestion({
      wanted: bounds,
      emptied,
      take: async () => {
        leave();
        await edit();
      },
    });
  }
  return { question, asked, pending, share, drag, letGo, patch, leave };
}
