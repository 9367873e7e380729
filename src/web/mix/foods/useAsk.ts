/** A share asked of one food: taken at once, unless it would leave other foods with nothing; then the row asks first. */
import { useRef, useState } from 'react';
import { emptiedBy } from '../../../formulation/advice/ask.ts';
import type { Ingredient } from '../../../formulation/problem/problem.ts';
import type { Mix } from '../../../household/model.ts';
import { heldShares, patchFood } from '../../../household/reckon/mix/mix-edits.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { engine } from '../../worker/engine.ts';
import { type FormulationView, isFit } from '../useFormulation.ts';

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
  /** Goes along with a dragged slider, as far as other foods keep a share. @returns whether the mix followed */
  drag(share: number): Promise<boolean>;
  /** The slider is let go. @param wanted where the keeper put it */
  letGo(wanted: number): Promise<void>;
  /** Changes the keeper's own limits or wish for the food. */
  patch(change: Partial<Ingredient>): Promise<void>;
  /** Whatever is asked or told is done with. */
  leave(): void;
}

/** @param mix with what its animals bring */
export function useAsk(food: Ingredient, mix: Mix, view: FormulationView): ShareAsk {
  const { current } = useMixDraft();
  const [question, setQuestion] = useState<Question>();
  const [asked, setAsked] = useState<Asked>();
  const [pending, setPending] = useState<number>();
  const dragged = useRef<Promise<readonly string[]>>(Promise.resolve([]));

  function leave() {
    setQuestion(undefined);
    setAsked(undefined);
  }
  function came(wanted: number) {
    setAsked({ wanted, got: current()?.shares[food.id] ?? 0 });
  }
  /** @param emptied foods for whose sake nothing moved */
  function answered(wanted: number, emptied: readonly string[]) {
    if (emptied.length === 0) return came(wanted);
    setQuestion({
      wanted,
      emptied,
      take: async () => {
        leave();
        await view.move(food.id, wanted);
        view.endMove();
        came(wanted);
      },
    });
  }
  async function share(wanted: number) {
    leave();
    setPending(wanted);
    const emptied = await view.move(food.id, wanted, true);
    view.endMove();
    answered(wanted, emptied);
    setPending(undefined);
  }
  async function drag(wanted: number) {
    leave();
    dragged.current = view.move(food.id, wanted, true);
    return (await dragged.current).length === 0;
  }
  async function letGo(wanted: number) {
    view.endMove();
    const emptied = await dragged.current;
    dragged.current = Promise.resolve([]);
    answered(wanted, emptied);
  }
  async function patch(change: Partial<Ingredient>) {
    leave();
    const edit = async () => {
      await view.edit((m) => patchFood(m, food.id, change));
      // A wish is met at once, as far as it can be.
      if (change.want !== undefined && isFit(view.state)) await share(change.want);
    };
    const bounds = change.min ?? change.max;
    if (bounds === undefined || !isFit(view.state)) return edit();
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
