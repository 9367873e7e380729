/** A food that is bought fresh and dried at home: from what, how dry, and what is trimmed off. */
import type { ReactNode } from 'react';
import {
  driedAtHome,
  driedFrom,
  freshFoodOf,
  PLANNED_MOISTURE,
  withDried,
} from '../../household/reckon/foods/fresh-food.ts';
import { trimOf } from '../../kitchen/drying/yields.ts';
import type { DriedAtHome } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { Failed } from '../shared/Failed.tsx';
import { FreshFoodChoice } from '../shared/FreshFoodChoice.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { NumberInput } from '../shared/NumberInput.tsx';
import { linkTo } from '../shared/route.ts';
import { Sentence } from '../shared/words/Sentence.tsx';
import { useKitchen } from '../store/kitchen.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { useReferenceFoods } from '../worker/engine.ts';

interface Props {
  /** Id, as the mix names it. */
  readonly food: string;
  readonly name: string;
  /** Reference number of the food as it is mixed. */
  readonly dried: string | undefined;
  /** Selector of its place. */
  readonly at: string;
  onChosen(): void;
  readonly children: ReactNode;
}

export function DryAtHome({ food, name, dried, at, onChosen, children }: Props) {
  const { house } = useMixDraft();
  const { kitchen, change, error } = useKitchen();
  const t = words().shopping.dryAtHome;
  const how = driedAtHome(house, food);
  const table = useReferenceFoods(how ? [how.fresh] : []);
  const fresh = how && freshFoodOf(how.fresh, house.foods, table);
  const water = fresh?.composition.WATER;
  const keep = (next: Omit<DriedAtHome, 'food'>) =>
    change({ driedAtHome: withDried(kitchen.driedAtHome ?? [], how?.food ?? food, next) });

  function choose(id: string) {
    keep(driedFrom(how, id));
    onChosen();
    focusWhenThere(`${at} .shop-how`);
  }

  return (
    <div className="shop-dried">
      <h4>{t.title}</h4>
      {!how && <FreshFoodChoice food={food} name={name} dried={dried} suggest onChoose={choose} />}
      {how && (
        <>
          <p>
            {fresh ? (
              <Sentence
                of={t.from(water === undefined ? t.waterUnknown : t.water(water))}
                with={{
                  fresh: () => <strong>{fresh.name}</strong>,
                  source: () => <span className="source">({fresh.source})</span>,
                }}
              />
            ) : (
              t.lost
            )}
          </p>
          {fresh && water === undefined && (
            <p className="notice-line">
              <Sentence
                of={t.cannot}
                with={{ food: (text) => <a href={linkTo('foods', how.fresh)}>{text}</a> }}
              />
            </p>
          )}
          {children}
          <FreshFoodChoice food={food} name={name} dried={dried} suggest={false} onChoose={choose} />
          <div className="fields">
            <NumberInput
              label={t.moisture}
              unit="%"
              value={how.moisture}
              min={0}
              max={50}
              step={1}
              decimals={1}
              required
              hint={t.moistureHint(PLANNED_MOISTURE)}
              onCommit={(moisture) => moisture !== undefined && keep({ ...unnamed(how), moisture })}
            />
            <NumberInput
              label={t.trim}
              unit="%"
              value={how.trimLoss}
              min={0}
              max={95}
              step={1}
              decimals={1}
              placeholder={tableTrim(fresh)}
              onCommit={(trimLoss) => {
                const { trimLoss: _, ...rest } = unnamed(how);
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

const unnamed = ({ food: _, ...how }: DriedAtHome): Omit<DriedAtHome, 'food'> => how;

function tableTrim(fresh: Parameters<typeof trimOf>[0] | undefined): string {
  const t = words().shopping.dryAtHome;
  const loss = fresh && trimOf(fresh).trimLoss;
  return loss === undefined ? t.notKnown : t.trimTable(loss);
}
