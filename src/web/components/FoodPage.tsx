/** What a food holds, for any quantity, as fed or in its dry matter. Unknown stays "unknown". */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { amountOf, type Food } from '../../foods/food.ts';
import type { OwnFood } from '../../household/model.ts';
import { toDryMatter } from '../../nutrition/amount.ts';
import { NUTRIENTS, type NutrientGroup } from '../../nutrition/nutrients.ts';
import { useRemove } from '../data/household.ts';
import { useMixDraft } from '../data/mix-draft.tsx';
import { go } from '../data/route.ts';
import { addFood, groupName, ingredientFromOwn, usesOwnFood } from '../mix/edits.ts';
import { tableNote } from '../mix/table-name.ts';
import { figure, unitWord } from '../mix/windows.ts';
import { Choice } from './Choice.tsx';
import { NumberInput } from './NumberInput.tsx';

const PARTS: Record<NutrientGroup, string> = {
  proximate: 'Main parts',
  carbohydrate: 'Fibre, starch and sugars',
  mineral: 'Minerals',
  vitamin: 'Vitamins',
  fat: 'Fats',
};

type Basis = 'as fed' | 'dry matter';

export function FoodPage({
  food,
  own,
  onEdit,
}: {
  food: Food & { tableName?: string };
  own?: OwnFood;
  onEdit?(): void;
}) {
  const { mix, change, house } = useMixDraft();
  const erase = useRemove('foods');
  const [quantity, setQuantity] = useState(100);
  const [basis, setBasis] = useState<Basis>('as fed');
  const water = food.composition.WATER;
  const dryKnown = water !== undefined && water < 100;
  const inMix = mix?.problem.foods.some((f) => f.id === food.ref || f.ref === food.ref);
  const users = own ? house.mixes.filter((m) => usesOwnFood(m, own.id)) : [];
  const decimals = 2;

  function amount(tag: (typeof NUTRIENTS)[number]['tag']) {
    const fed = amountOf(food, tag);
    const a = basis === 'dry matter' && dryKnown ? toDryMatter(fed, water) : fed;
    return a.known ? { value: (a.value * quantity) / 100, sd: a.sd && (a.sd * quantity) / 100 } : undefined;
  }

  return (
    <article className="food-page">
      <header>
        <h2>
          {food.name} {own?.invented && <span className="tag">invented</span>}
        </h2>
        <p className="hint">
          {[
            own?.kind === 'pellet' ? 'Complete pellet' : food.group && groupName(food.group),
            food.tableName && tableNote({ name: food.name, tableName: food.tableName }),
            food.source,
          ]
            .filter(Boolean)
            .join(' · ')}
        </p>
      </header>
      <div className="button-row">
        {mix && own?.kind !== 'pellet' && (
          <Button
            className="button"
            isDisabled={inMix}
            onPress={() =>
              change((m) =>
                addFood(
                  m,
                  own
                    ? ingredientFromOwn(own)
                    : { id: slug(food.ref), name: food.name, ref: food.ref, group: food.group },
                ),
              )
            }
          >
            {inMix ? 'In the mix' : 'Add to mix'}
          </Button>
        )}
        {own && (
          <>
            <Button className="quiet-button" onPress={onEdit}>
              Edit
            </Button>
            <Button
              className="quiet-button"
              isDisabled={users.length > 0}
              onPress={() => erase.mutate(own.id, { onSuccess: () => go('foods') })}
            >
              Delete
            </Button>
            {users.length > 0 && (
              <span className="hint">
                Used in {users.map((m) => m.name).join(', ')}; remove it there to delete it.
              </span>
            )}
          </>
        )}
      </div>
      {erase.error && (
        <p role="alert" className="field-error">
          {erase.error.message}
        </p>
      )}
      <div className="fields">
        <NumberInput
          label="Amounts per"
          unit="g"
          min={0.01}
          max={100_000}
          required
          value={quantity}
          onCommit={(q) => setQuantity(q ?? 100)}
        />
        <Choice
          label="Of"
          value={basis}
          options={
            dryKnown
              ? [
                  ['as fed', 'the food as fed'],
                  ['dry matter', 'its dry matter'],
                ]
              : [['as fed', 'the food as fed']]
          }
          onChange={setBasis}
        />
      </div>
      {!dryKnown && <p className="hint">Dry matter cannot be shown: the moisture of this food is unknown.</p>}
      {(Object.keys(PARTS) as NutrientGroup[]).map((part) => {
        const rows = NUTRIENTS.filter((n) => n.group === part);
        const known = rows.filter((n) => food.composition[n.tag] !== undefined).length;
        return (
          <details key={part} open={part === 'proximate' || part === 'carbohydrate'}>
            <summary>
              {PARTS[part]}{' '}
              <small>
                {known} of {rows.length} known
              </small>
            </summary>
            <table>
              <tbody>
                {rows.map((n) => {
                  const a = amount(n.tag);
                  return (
                    <tr key={n.tag} className={a ? '' : 'unknown'}>
                      <th scope="row">{n.name}</th>
                      <td>
                        {a
                          ? `${a.value > 0 && a.value < 0.1 ? a.value.toPrecision(2) : figure(a.value)} ${unitWord(n.unit)}`
                          : 'unknown'}
                        {a?.sd !== undefined && <small> ± {a.sd.toFixed(decimals)} sd</small>}
                      </td>
                    </tr>
                  );
                })}
              </tbody>
            </table>
          </details>
        );
      })}
    </article>
  );
}

function slug(ref: string): string {
  return ref.replace(/[^A-Za-z0-9]+/g, '-');
}
