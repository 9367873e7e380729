/** What was bought goes into the cupboard as lots; told at the foot of the page, and taken back while it is new. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { groupsIn } from '../../household/reckon/cupboard/lot-foods.ts';
import { type Purchase, purchasedLots } from '../../household/reckon/shopping/purchased-lots.ts';
import { needsTreatment } from '../../kitchen/freezing/freeze-treatment.ts';
import type { Lot } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { focusWhenThere } from '../shared/focus.ts';
import { linkTo } from '../shared/route.ts';
import { today } from '../shared/today.ts';
import { useRemove, useSave } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { newId } from '../store/new-id.ts';

interface Told {
  readonly kept: readonly Lot[];
  /** Lots that were not saved (or, taking back, not deleted), each with why. */
  readonly failed: readonly { readonly lot: Lot; readonly why: string }[];
  readonly what: 'bought' | 'taken back';
  /** More to say. */
  readonly note?: string;
}

export interface Buying {
  readonly busy: boolean;
  readonly told: Told | undefined;
  /** Keeps what was bought. @param back selector of the place that gets the keyboard @param note said with it */
  buy(bought: readonly Purchase[], back: string, note?: string): Promise<void>;
  retry(): Promise<void>;
  undo(): Promise<void>;
  close(): void;
}

export function useBuying(): Buying {
  const { house } = useMixDraft();
  const save = useSave('lots');
  const erase = useRemove('lots');
  const [busy, setBusy] = useState(false);
  const [told, setTold] = useState<Told>();

  /** One after the other: what failed can be tried again under the same id, so nothing is ever kept twice. */
  async function keep(lots: readonly Lot[], before: readonly Lot[], note?: string) {
    setBusy(true);
    const kept: Lot[] = [];
    const failed: { lot: Lot; why: string }[] = [];
    for (const lot of lots) {
      try {
        await save.mutateAsync(lot, undefined);
        kept.push(lot);
      } catch (error) {
        failed.push({ lot, why: error instanceof Error ? error.message : String(error) });
      }
    }
    setTold({ kept: [...before, ...kept], failed, what: 'bought', ...(note !== undefined && { note }) });
    setBusy(false);
  }

  return {
    busy,
    told,
    async buy(bought, back, note) {
      if (busy) return;
      focusWhenThere(back);
      const taken = house.lots.map((l) => l.name);
      await keep(purchasedLots(bought, { on: today(), taken, id: newId }), [], note);
    },
    async retry() {
      if (busy || !told) return;
      await keep(
        told.failed.map((f) => f.lot),
        told.kept,
        told.note,
      );
    },
    async undo() {
      if (busy || !told) return;
      setBusy(true);
      const gone: Lot[] = [];
      const failed: { lot: Lot; why: string }[] = [];
      for (const lot of told.kept) {
        try {
          await erase.mutateAsync(lot);
          gone.push(lot);
        } catch (error) {
          failed.push({ lot, why: error instanceof Error ? error.message : String(error) });
        }
      }
      setTold({ kept: gone, failed, what: 'taken back' });
      setBusy(false);
      focusWhenThere('.shop-told-words');
    },
    close() {
      setTold(undefined);
      focusWhenThere('.shop-list-head');
    },
  };
}

export function BoughtPacks({ buying }: { buying: Buying }) {
  const { house } = useMixDraft();
  const { told, busy } = buying;
  const groupOf = groupsIn(house);
  const toFreeze = told?.what === 'bought' && told.kept.some((l) => needsTreatment(l, groupOf(l.food)).needs);
  const firstFailed = told?.failed[0];
  return (
    <section className={told ? 'shop-told' : 'shop-told-none'} aria-label="Bought just now">
      <div role="status" className="shop-told-words" tabIndex={-1}>
        {told && told.kept.length > 0 && (
          <p>
            <strong>{told.what === 'bought' ? 'In the cupboard:' : 'Taken back:'}</strong>{' '}
            {told.kept.map((lot, i) => (
              <span key={lot.id}>
                {i > 0 && '; '}
                {told.what === 'bought' ? <a href={linkTo('cupboard', lot.id)}>{lot.name}</a> : lot.name},{' '}
                {sayGrams(lot.grams)}
              </span>
            ))}
            .
          </p>
        )}
        {told && firstFailed && (
          <p className="field-error">
            {told.what === 'bought' ? 'Not kept: ' : 'Still in the cupboard: '}
            {told.failed.map((f) => f.lot.name).join('; ')}. {firstFailed.why}
          </p>
        )}
        {told?.note && told.kept.length > 0 && <p className="hint">{told.note}</p>}
      </div>
      {told && (
        <div className="button-row">
          {told.what === 'bought' && told.failed.length > 0 && (
            <Button className="button" isDisabled={busy} onPress={() => void buying.retry()}>
              Try the rest again
            </Button>
          )}
          {told.what === 'bought' && told.kept.length > 0 && (
            <Button className="button" isDisabled={busy} onPress={() => void buying.undo()}>
              Undo
            </Button>
          )}
          {toFreeze && <a href={linkTo('cupboard', 'cold')}>Plan its days in the freezer</a>}
          <Button className="quiet-button" onPress={() => buying.close()}>
            Close
          </Button>
        </div>
      )}
    </section>
  );
}
