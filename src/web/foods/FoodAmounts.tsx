/** What a food holds, nutrient by nutrient, for any quantity, as fed or in its dry matter. Unknown stays "unknown". */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { lenders } from '../../foods/evidence.ts';
import { FIBRE_ESTIMATES } from '../../foods/fibre-ratio.ts';
import { amountOf, type Food } from '../../foods/food.ts';
import type { OwnFood } from '../../household/model.ts';
import { toDryMatter } from '../../nutrition/amount.ts';
import {
  NUTRIENTS,
  type Nutrient,
  type NutrientGroup,
  type Tag,
  unitWord,
} from '../../nutrition/nutrients.ts';
import { Choice } from '../shared/Choice.tsx';
import { NumberInput } from '../shared/NumberInput.tsx';
import { figure } from '../shared/windows.ts';

const PARTS: Record<NutrientGroup, string> = {
  proximate: 'Main parts',
  carbohydrate: 'Fibre, starch and sugars',
  mineral: 'Minerals',
  vitamin: 'Vitamins',
  fat: 'Fats',
  'amino acid': 'Amino acids',
};

type Basis = 'as fed' | 'dry matter';

interface Props {
  food: Food;
  own: OwnFood | undefined;
  /** Opens the choice of a similar food that may lend a missing amount. */
  onBorrow(tag: Tag): void;
  onTakeBack(tag: Tag): void;
}

export function FoodAmounts({ food, own, onBorrow, onTakeBack }: Props) {
  const [quantity, setQuantity] = useState(100);
  const [basis, setBasis] = useState<Basis>('as fed');
  const water = food.composition.WATER;
  const dryKnown = water !== undefined && water < 100;
  const borrowed = own ? lenders(own) : {};
  /** From per 100 g as fed to the quantity and basis shown. */
  const factor = ((basis === 'dry matter' && dryKnown ? 100 / (100 - water) : 1) * quantity) / 100;

  function said(n: Nutrient) {
    const fed = amountOf(food, n.tag);
    const a = basis === 'dry matter' && dryKnown ? toDryMatter(fed, water) : fed;
    if (a.known) {
      const sd = a.sd && (a.sd * quantity) / 100;
      return (
        <>
          {written((a.value * quantity) / 100)} {unitWord(n.unit)}
          {sd !== undefined && sd > 0 && <small> ± {written(sd)} sd</small>}
          {borrowed[n.tag] && (
            <span className="borrowed">
              <span className="tag warn">borrowed</span> <small>from {borrowed[n.tag]}</small>{' '}
              <Button
                className="quiet-button small"
                aria-label={`Take back the borrowed ${n.name.toLowerCase()}`}
                onPress={() => onTakeBack(n.tag)}
              >
                Take back
              </Button>
            </span>
          )}
        </>
      );
    }
    const least = food.low?.[n.tag];
    const most = food.high?.[n.tag];
    return (
      <>
        {guaranteed(least, most, factor, unitWord(n.unit)) ?? fibreGuess(n.tag, food, factor) ?? 'unknown'}
        {own && (
          <Button
            className="quiet-button small"
            aria-label={`Borrow ${n.name.toLowerCase()} from a similar food`}
            onPress={() => onBorrow(n.tag)}
          >
            Borrow…
          </Button>
        )}
      </>
    );
  }

  return (
    <>
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
                {rows.map((n) => (
                  <tr key={n.tag} className={food.composition[n.tag] === undefined ? 'unknown' : ''}>
                    <th scope="row">{n.name}</th>
                    <td>{said(n)}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </details>
        );
      })}
    </>
  );
}

function guaranteed(least: number | undefined, most: number | undefined, factor: number, unit: string) {
  if (least !== undefined && most !== undefined)
    return `${written(least * factor)} to ${written(most * factor)} ${unit} guaranteed`;
  if (least !== undefined) return `at least ${written(least * factor)} ${unit}`;
  return most === undefined ? undefined : `at most ${written(most * factor)} ${unit}`;
}

/** What one measure of fibre says of the other: an estimate with its bounds, or a least. */
function fibreGuess(tag: Tag, food: Food, factor: number): string | undefined {
  const { FIBTG, FIBC } = food.composition;
  if (tag === 'FIBTG' && FIBC !== undefined)
    return `unknown; never less than its crude fibre, ${written(FIBC * factor)} g`;
  const ratio = FIBRE_ESTIMATES[food.group ?? 'any'] ?? FIBRE_ESTIMATES.any;
  if (tag !== 'FIBC' || FIBTG === undefined || !ratio) return undefined;
  const [low, middle, high] = [ratio.low, ratio.mean, ratio.high].map((r) => written(r * FIBTG * factor));
  return `unknown; by estimate from dietary fibre ${middle} g (${low} to ${high})`;
}

function written(value: number): string {
  return value > 0 && value < 0.1 ? value.toPrecision(2) : figure(value);
}
