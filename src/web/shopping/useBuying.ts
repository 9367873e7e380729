/** What was bought goes into the stock as packs, all in one step: asked about once, told, and taken back while it is new. */
import { useState } from 'react';
import { groupsIn } from '../../household/reckon/cupboard/lot-foods.ts';
import { withoutFoods } from '../../household/reckon/shopping/basket.ts';
import { type Purchase, purchasedLots } from '../../household/reckon/shopping/purchased-lots.ts';
import { needsTreatment } from '../../kitchen/freezing/freeze-treatment.ts';
import type { Kitchen, Lot } from '../../kitchen/model.ts';
import { focusWhenThere } from '../shared/focus.ts';
import { today } from '../shared/today.ts';
import { useRemove, useSave } from '../store/household.ts';
import { useKitchen } from '../store/kitchen.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { newId } from '../store/new-id.ts';

/** Something bought, before it is in the stock. */
export interface Bringing {
  readonly purchases: readonly Purchase[];
  /** Names of foods that are left out, since nobody knows how much there is of them. */
  readonly without?: readonly string[];
  /** More to say once it is there. */
  readonly notes?: readonly string[];
}

interface Told extends Bringing {
  readonly kept: readonly Lot[];
  /** Lots that were not saved (or, taking back, not deleted), each with why. */
  readonly failed: readonly { readonly lot: Lot; readonly why: string }[];
  readonly what: 'bought' | 'back';
  /** The kitchen as it stood at the press, with its basket: what others tick meanwhile stays. */
  readonly kitchen: Kitchen;
}

export interface Buying {
  readonly busy: boolean;
  /** What waits for the one question. */
  readonly asking: Bringing | undefined;
  readonly told: Told | undefined;
  /** Asks whether it was frozen, or keeps it at once where nothing of it needs to be. */
  bring(what: Bringing): void;
  /** @param frozen by whom it was frozen already; undefined: it is not, or nobody knows */
  answer(frozen: string | undefined): Promise<void>;
  leave(): void;
  retry(): Promise<void>;
  undo(): Promise<void>;
  close(): void;
}

const HEAD = '.shop-list-head';
const WORDS = '.shop-told-words';

export function useBuying(): Buying {
  const { house } = useMixDraft();
  const { kitchen, change } = useKitchen();
  const save = useSave('lots');
  const erase = useRemove('lots');
  const [busy, setBusy] = useState(false);
  const [asking, setAsking] = useState<Bringing>();
  const [told, setTold] = useState<Told>();
  const groupOf = groupsIn(house);

  /** One after the other: what failed can be tried again under the same id, so nothing is ever kept twice. */
  async function keep(lots: readonly Lot[], after: Omit<Told, 'failed'>) {
    setBusy(true);
    const kept: Lot[] = [];
    const failed: Told['failed'][number][] = [];
    for (const lot of lots) {
      try {
        await save.mutateAsync(lot, undefined);
        kept.push(lot);
      } catch (error) {
        failed.push({ lot, why: error instanceof Error ? error.message : String(error) });
      }
    }
    const foods = kept.map((l) => l.food);
    const { basket } = after.kitchen;
    if (foods.some((f) => basket?.[f])) change({ basket: withoutFoods(basket, foods) }, after.kitchen);
    setTold({ ...after, kept: [...after.kept, ...kept], failed });
    setBusy(false);
    focusWhenThere(WORDS);
  }

  async function put(what: Bringing, frozen: string | undefined) {
    if (busy) return;
    const taken = house.lots.map((l) => l.name);
    const lots = purchasedLots(what.purchases, { on: today(), taken, id: newId, frozen, groupOf });
    await keep(lots, { ...what, kept: [], what: 'bought', kitchen });
  }

  return {
    busy,
    asking,
    told,
    bring(what) {
      if (busy) return;
      setTold(undefined);
      if (!what.purchases.some(({ form, food }) => needsTreatment({ form }, groupOf(food)).needs)) {
        void put(what, undefined);
        return;
      }
      setAsking(what);
      focusWhenThere('.shop-ask input:checked');
    },
    async answer(frozen) {
      if (!asking) return;
      setAsking(undefined);
      await put(asking, frozen);
    },
    leave() {
      setAsking(undefined);
      focusWhenThere('.shop-all');
    },
    async retry() {
      if (busy || !told) return;
      await keep(
        told.failed.map((f) => f.lot),
        { ...told, kitchen },
      );
    },
    async undo() {
      if (busy || !told) return;
      setBusy(true);
      const gone: Lot[] = [];
      const failed: Told['failed'][number][] = [];
      for (const lot of told.kept) {
        try {
          await erase.mutateAsync(lot);
          gone.push(lot);
        } catch (error) {
          failed.push({ lot, why: error instanceof Error ? error.message : String(error) });
        }
      }
      // What was ticked is ticked again.
      const ticks = Object.entries(told.kitchen.basket ?? {}).filter(([food]) =>
        gone.some((l) => l.food === food),
      );
      if (ticks.length > 0) change({ basket: { ...kitchen.basket, ...Object.fromEntries(ticks) } }, kitchen);
      setTold({ ...told, kept: gone, failed, what: 'back' });
      setBusy(false);
      focusWhenThere(WORDS);
    },
    close() {
      setTold(undefined);
      focusWhenThere(HEAD);
    },
  };
}
