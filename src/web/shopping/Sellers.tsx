/** What each seller asks for beside the price of the packs: delivery, and the least it sends. */
import { withTerms } from '../../household/reckon/shopping/sellers.ts';
import { words } from '../../words/words.ts';
import { Failed } from '../shared/Failed.tsx';
import { NumberInput } from '../shared/NumberInput.tsx';
import { useParts } from '../shared/parts.tsx';
import { useKitchen } from '../store/kitchen.ts';
import { useMixDraft } from '../store/mix-draft.tsx';

export function Sellers() {
  const t = words().shopping.sellers;
  const { house } = useMixDraft();
  const { kitchen, change, error } = useKitchen();
  const { currency } = words().figures;
  const all = kitchen.sellers ?? [];
  const names = [...new Set([...house.offers.map((o) => o.seller), ...all.map((s) => s.seller)])].sort(
    (a, b) => a.localeCompare(b, words().figures.locale),
  );
  const parts = useParts(names, { part: 10 });
  if (names.length === 0) return null;
  return (
    <section className="shop-sellers" aria-label={t.label}>
      <details>
        <summary>{t.summary(names.length)}</summary>
        <p className="hint">{t.hint}</p>
        {parts.shown.map((seller) => {
          const terms = all.find((s) => s.seller === seller) ?? { seller };
          return (
            <fieldset key={seller}>
              <legend>{seller}</legend>
              <div className="fields">
                <NumberInput
                  label={t.delivery}
                  unit={currency}
                  min={0}
                  max={1_000_000}
                  value={terms.delivery}
                  placeholder={t.none}
                  onCommit={(delivery) => change({ sellers: withTerms(all, { ...terms, delivery }) })}
                />
                <NumberInput
                  label={t.minimum}
                  unit={currency}
                  min={0}
                  max={1_000_000}
                  value={terms.minimumOrder}
                  placeholder={t.none}
                  onCommit={(minimumOrder) => change({ sellers: withTerms(all, { ...terms, minimumOrder }) })}
                />
              </div>
            </fieldset>
          );
        })}
        {parts.more}
        <Failed error={error} />
      </details>
    </section>
  );
}
