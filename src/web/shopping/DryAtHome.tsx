/** Whether a food is bought as it is mixed, or fresh and dried at home: from what, how dry, and what is trimmed off. */
import { useState } from 'react';
import {
  driedFrom,
  freshFoodOf,
  PLANNED_MOISTURE,
  PLANNED_MOISTURE_SOURCE,
  withDried,
} from '../../household/reckon/foods/fresh-food.ts';
import { trimOf } from '../../kitchen/drying/yields.ts';
import type { DriedAtHome } from '../../kitchen/model.ts';
import { Failed } from '../shared/Failed.tsx';
import { FreshFoodChoice } from '../shared/FreshFoodChoice.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { NumberInput } from '../shared/NumberInput.tsx';
import { Radios } from '../shared/Radios.tsx';
import { linkTo } from '../shared/route.ts';
import { useKitchen } from '../store/kitchen.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { useReferenceFoods } from '../worker/engine.ts';
import '../shared/asking.css';

/** @param food id, as mixes name it @param dried reference number of the food as it is mixed @param at selector of its place */
export function DryAtHome(props: { food: string; name: string; dried: string | undefined; at: string }) {
  const { food, name, dried, at } = props;
  const { house } = useMixDraft();
  const { kitchen, change, error } = useKitchen();
  const all = kitchen.driedAtHome ?? [];
  const how = all.find((d) => d.food === food);
  /** Chosen, and its fresh food not yet. */
  const [asking, setAsking] = useState(false);
  const table = useReferenceFoods(how ? [how.fresh] : []);
  const fresh = how && freshFoodOf(how.fresh, house.foods, table);
  const keep = (next: Omit<DriedAtHome, 'food'> | undefined) =>
    change({ driedAtHome: withDried(all, food, next) });

  function choose(id: string) {
    keep(driedFrom(how, id));
    setAsking(false);
    focusWhenThere(`${at} .shop-dried input:checked`);
  }

  return (
    <div className="shop-dried">
      <Radios
        label={<h4>How it comes</h4>}
        value={how || asking ? 'home' : 'dry'}
        options={[
          ['dry', 'Bought dry'],
          ['home', 'Dried at home'],
        ]}
        onChange={(to) => {
          setAsking(to === 'home');
          if (to === 'dry' && how) keep(undefined);
        }}
      />
      {asking && !how && <FreshFoodChoice food={food} name={name} dried={dried} suggest onChoose={choose} />}
      {how && (
        <>
          <p>
            {fresh ? (
              <>
                Dried from <strong>{fresh.name}</strong>,{' '}
                {fresh.composition.WATER === undefined
                  ? 'of which the water is not known'
                  : `${fresh.composition.WATER} g water per 100 g`}{' '}
                <span className="source">({fresh.source})</span>.
              </>
            ) : (
              'The fresh food that was chosen is not to be found; choose another.'
            )}
          </p>
          {fresh && fresh.composition.WATER === undefined && (
            <p className="notice-line">
              How much of it is left dried cannot be worked out. Choose a food with its water known, or{' '}
              <a href={linkTo('foods', how.fresh)}>enter it</a>.
            </p>
          )}
          <FreshFoodChoice food={food} name={name} dried={dried} suggest={false} onChoose={choose} />
          <div className="fields">
            <NumberInput
              label="Water when dried"
              unit="%"
              value={how.moisture}
              min={0}
              max={50}
              step={1}
              decimals={1}
              required
              hint={`${PLANNED_MOISTURE} is ${PLANNED_MOISTURE_SOURCE}.`}
              onCommit={(m) => m !== undefined && keep({ ...how, moisture: m })}
            />
            <NumberInput
              label="Trimmed off, as you weighed it"
              unit="%"
              value={how.trimLoss}
              min={0}
              max={95}
              step={1}
              decimals={1}
              placeholder={tableTrim(fresh)}
              hint={fresh ? trimOf(fresh).note : undefined}
              onCommit={(trimLoss) => {
                const { trimLoss: _, ...rest } = how;
                keep(trimLoss === undefined ? rest : { ...rest, trimLoss });
              }}
            />
          </div>
        </>
      )}
      <Failed error={error} />
    </div>
  );
}

function tableTrim(fresh: Parameters<typeof trimOf>[0] | undefined): string {
  const loss = fresh && trimOf(fresh).trimLoss;
  return loss === undefined ? 'not known' : `${loss} (table)`;
}
