/** The offers of one food: who sells it, what a kilogram costs there, and the form to add or change one. */
import { type ReactNode, useState } from 'react';
import { Button } from 'react-aria-components';
import { driedAtHome } from '../../household/reckon/foods/fresh-food.ts';
import type { Offer } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { words } from '../../words/words.ts';
import { Failed } from '../shared/Failed.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { useParts } from '../shared/parts.tsx';
import { useRemove, useSave } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { OfferForm } from './OfferForm.tsx';
import { bigUnit, money } from './view-model.ts';

/** @param at selector of the food's place on the page */
export function Offers(props: {
  food: string;
  name: string;
  at: string;
  /** Id of the offer that is edited; "new" for one to add. */
  editing: string | undefined;
  onEdit(offer: string | undefined): void;
  /** What was chosen of them. */
  children: ReactNode;
}) {
  const { food, name, at, editing, onEdit, children } = props;
  const { common } = words();
  const t = words().shopping.offers;
  const { house } = useMixDraft();
  const erase = useRemove('offers');
  const save = useSave('offers');
  const [gone, setGone] = useState<Offer>();
  const offers = house.offers.filter((o) => o.food === food);
  const parts = useParts(offers, { part: 20, always: (o) => o.id === editing });
  const drying = driedAtHome(house, food) !== undefined;
  const say = (o: Offer) =>
    (o.form === 'fresh' ? t.lineFresh : t.line)(o.seller, sayGrams(o.packGrams), money(o.price));
  const done = () => {
    onEdit(undefined);
    focusWhenThere(`${at} .shop-add-offer`);
  };
  const form = (offer?: Offer) => (
    <OfferForm
      key={offer?.id ?? 'new'}
      food={food}
      name={name}
      {...(offer && { offer })}
      usual={drying ? 'fresh' : 'dry'}
      drying={drying}
      onDone={done}
    />
  );

  return (
    <div className="shop-offers">
      <h4>{t.title}</h4>
      {children}
      {offers.length > 0 && (
        <ul>
          {parts.shown.map((o) =>
            editing === o.id ? (
              <li key={o.id}>{form(o)}</li>
            ) : (
              <li key={o.id} className="shop-offer">
                <span>
                  {say(o)} <small>{t.per(money((o.price / o.packGrams) * bigUnit()))}</small>
                </span>
                <span className="button-row">
                  <Button
                    className="quiet-button small"
                    aria-label={t.change(say(o))}
                    onPress={() => onEdit(o.id)}
                  >
                    {common.change}
                  </Button>
                  <Button
                    className="quiet-button small"
                    aria-label={t.erase(say(o))}
                    isDisabled={erase.isPending}
                    onPress={() =>
                      erase.mutate(o, {
                        onSuccess: () => {
                          setGone(o);
                          focusWhenThere(`${at} .shop-add-offer`);
                        },
                      })
                    }
                  >
                    {common.delete}
                  </Button>
                </span>
              </li>
            ),
          )}
        </ul>
      )}
      {parts.more}
      <p className="hint" role="status">
        {gone && t.deleted(say(gone))}{' '}
        {gone && (
          <Button
            className="quiet-button small"
            onPress={() => {
              save.mutate(gone, undefined);
              setGone(undefined);
              focusWhenThere(`${at} .shop-add-offer`);
            }}
          >
            {t.putBack}
          </Button>
        )}
      </p>
      <Failed error={erase.error ?? save.error} />
      {editing === 'new' ? (
        form()
      ) : (
        <Button
          className="button small shop-add-offer"
          aria-label={t.addOf(name)}
          onPress={() => onEdit('new')}
        >
          {t.add}
        </Button>
      )}
    </div>
  );
}
