/** At the foot of the list: how much is ticked, all bought in one press, the one question, and what went into the stock. */
import { type FormEvent, useState } from 'react';
import { Button } from 'react-aria-components';
import { groupsIn } from '../../household/reckon/cupboard/lot-foods.ts';
import { needsTreatment } from '../../kitchen/freezing/freeze-treatment.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { words } from '../../words/words.ts';
import { Radios } from '../shared/Radios.tsx';
import { linkTo } from '../shared/route.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import type { Bringing, Buying } from './useBuying.ts';

interface Props {
  readonly buying: Buying;
  /** Everything on the list, and what is ticked of it. */
  readonly all: Bringing;
  readonly ticked: Bringing;
  /** Foods on the list, and how many of them are ticked. */
  readonly foods: number;
  readonly tickedFoods: number;
  /** Whether the list may not be the answer to what is asked now. */
  readonly stale: boolean;
}

/** Up to so many packs are named in the line that tells of them. */
const NAMED = 3;

export function BoughtBar(props: Props) {
  const { buying, all, ticked, foods, tickedFoods, stale } = props;
  const t = words().shopping.bar;
  const still = stale || buying.busy;
  if (buying.asking)
    return (
      <section className="shop-bar" aria-label={t.label}>
        <Asking key={buying.asking.purchases.length} what={buying.asking} buying={buying} />
      </section>
    );
  if (buying.told) return <Told buying={buying} told={buying.told} />;
  if (foods === 0) return null;
  return (
    <section className="shop-bar" aria-label={t.label}>
      <p role="status">{t.ticked(tickedFoods, foods)}</p>
      <div className="button-row">
        <Button className="button strong shop-all" isDisabled={still} onPress={() => buying.bring(all)}>
          {t.all}
        </Button>
        {tickedFoods > 0 && tickedFoods < foods && (
          <Button className="button" isDisabled={still} onPress={() => buying.bring(ticked)}>
            {t.only(tickedFoods)}
          </Button>
        )}
      </div>
    </section>
  );
}

type Frozen = 'no' | 'seller' | 'self';

function Asking({ what, buying }: { what: Bringing; buying: Buying }) {
  const t = words().shopping.bar;
  const [frozen, setFrozen] = useState<Frozen>('no');
  const foods = new Set(what.purchases.map((p) => p.food)).size;
  function submit(event: FormEvent) {
    event.preventDefault();
    void buying.answer({ no: undefined, seller: t.frozenBySeller, self: t.frozenByMe }[frozen]);
  }
  return (
    <form
      className="shop-ask"
      onSubmit={submit}
      onKeyDown={(e) => {
        if (e.key === 'Escape') buying.leave();
      }}
    >
      <Radios
        label={t.ask(foods)}
        value={frozen}
        options={[
          ['no', t.no],
          ['seller', t.seller],
          ['self', t.self],
        ]}
        onChange={setFrozen}
      />
      <p className="hint">{t.askHint}</p>
      <div className="button-row">
        <Button type="submit" className="button strong">
          {t.put}
        </Button>
        <Button className="quiet-button" onPress={() => buying.leave()}>
          {t.notYet}
        </Button>
      </div>
    </form>
  );
}

function Told({ buying, told }: { buying: Buying; told: NonNullable<Buying['told']> }) {
  const { house } = useMixDraft();
  const t = words().shopping.told;
  const { common, figures } = words();
  const { kept, failed, what, without = [], notes = [] } = told;
  const groupOf = groupsIn(house);
  const bought = what === 'bought';
  const toFreeze = bought && kept.some((l) => !l.overruled && needsTreatment(l, groupOf(l.food)).needs);
  const [firstFailed] = failed;
  const names = figures.list(kept.map((l) => t.pack(l.name, sayGrams(l.grams))));
  return (
    <section className="shop-bar shop-told" aria-label={t.label}>
      <div role="status" className="shop-told-words" tabIndex={-1}>
        {kept.length > 0 && bought && (
          <p>
            <strong>{kept.length <= NAMED ? t.keptNamed(names) : t.kept(kept.length)}</strong>
          </p>
        )}
        {kept.length > 0 && !bought && <p>{t.back(names)}</p>}
        {firstFailed && (
          <p className="field-error">
            {(bought ? t.notKept : t.stillThere)(
              figures.list(failed.map((f) => f.lot.name)),
              firstFailed.why,
            )}
          </p>
        )}
        {bought && without.length > 0 && <p className="hint">{t.noWeight(figures.list(without))}</p>}
        {bought &&
          notes.map((note) => (
            <p key={note} className="hint">
              {note}
            </p>
          ))}
      </div>
      {kept.length > NAMED && bought && (
        <details>
          <summary>{t.which}</summary>
          <ul>
            {kept.map((lot) => (
              <li key={lot.id}>
                <a href={linkTo('cupboard', lot.id)}>{lot.name}</a>, {sayGrams(lot.grams)}
              </li>
            ))}
          </ul>
        </details>
      )}
      <div className="button-row">
        {bought && failed.length > 0 && (
          <Button className="button" isDisabled={buying.busy} onPress={() => void buying.retry()}>
            {t.rest}
          </Button>
        )}
        {bought && kept.length > 0 && (
          <Button className="button" isDisabled={buying.busy} onPress={() => void buying.undo()}>
            {common.undo}
          </Button>
        )}
        {toFreeze && <a href={linkTo('cupboard', 'cold')}>{t.plan}</a>}
        <Button className="quiet-button" onPress={() => buying.close()}>
          {common.close}
        </Button>
      </div>
    </section>
  );
}
