/** What a food holds, nutrient by nutrient, for any quantity, as fed or in its dry matter. Unknown stays "unknown". */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { CRUDE_FACTOR, crudeProtein } from '../../foods/crude-protein.ts';
import { lenders } from '../../foods/evidence.ts';
import { FIBRE_ESTIMATES } from '../../foods/fibre-ratio.ts';
import { amountOf, type Food } from '../../foods/food.ts';
import type { OwnFood } from '../../household/model.ts';
import { toDryMatter } from '../../nutrition/amount.ts';
import {
  NUTRIENTS,
  type Nutrient,
  type NutrientGroup,
  nutrientWord,
  type Tag,
  unitWord,
} from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import { Choice } from '../shared/Choice.tsx';
import { NumberInput } from '../shared/NumberInput.tsx';
import { figure } from '../shared/windows.ts';
import { NutrientName } from '../shared/words/NutrientName.tsx';
import { Term } from '../shared/words/Term.tsx';

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
  const { foods, nutrition, common } = words();
  const t = foods.amounts;
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
          {sd !== undefined && sd > 0 && <small title={t.spreadHelp}> {t.spread(written(sd))}</small>}
          {n.tag === 'PROCNT' && <small> {asCrude(food, own, factor)}</small>}
          {borrowed[n.tag] && (
            <span className="borrowed">
              <span className="tag warn">{t.borrowed}</span> <small>{t.from(borrowed[n.tag] ?? '')}</small>{' '}
              <Button
                className="quiet-button small"
                aria-label={t.takeBackOf(nutrientWord(n.tag))}
                onPress={() => onTakeBack(n.tag)}
              >
                {t.takeBack}
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
        {guaranteed(least, most, factor, unitWord(n.unit)) ??
          fibreGuess(n.tag, food, factor) ??
          common.unknown}
        {own && (
          <Button
            className="quiet-button small"
            aria-label={t.borrowOf(nutrientWord(n.tag))}
            onPress={() => onBorrow(n.tag)}
          >
            {t.borrow}
          </Button>
        )}
      </>
    );
  }

  return (
    <>
      <div className="fields">
        <NumberInput
          label={t.per}
          unit="g"
          min={0.01}
          max={100_000}
          required
          value={quantity}
          onCommit={(q) => setQuantity(q ?? 100)}
        />
        <Choice
          label={t.of}
          value={basis}
          options={
            dryKnown
              ? [
                  ['as fed', t.fed],
                  ['dry matter', t.dry],
                ]
              : [['as fed', t.fed]]
          }
          onChange={setBasis}
        />
      </div>
      <p className="hint">{dryKnown ? <Term of={basis === 'as fed' ? 'asFed' : 'dryMatter'} /> : t.noDry}</p>
      {(Object.keys(nutrition.groups) as NutrientGroup[]).map((part) => {
        const rows = NUTRIENTS.filter((n) => n.group === part);
        const known = rows.filter((n) => food.composition[n.tag] !== undefined).length;
        return (
          <details key={part} open={part === 'proximate' || part === 'carbohydrate'}>
            <summary>
              {nutrition.groups[part]} <small>{t.known(known, rows.length)}</small>
            </summary>
            <table>
              <tbody>
                {rows.map((n) => (
                  <tr key={n.tag} className={food.composition[n.tag] === undefined ? 'unknown' : ''}>
                    <th scope="row">
                      <NutrientName tag={n.tag} />
                    </th>
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
  const t = words().foods.amounts;
  if (least !== undefined && most !== undefined)
    return t.between(written(least * factor), written(most * factor), unit);
  if (least !== undefined) return t.least(written(least * factor), unit);
  return most === undefined ? undefined : t.most(written(most * factor), unit);
}

/** What one measure of fibre says of the other: an estimate with its bounds, or a least. */
function fibreGuess(tag: Tag, food: Food, factor: number): string | undefined {
  const { FIBTG, FIBC } = food.composition;
  const t = words().foods.amounts;
  if (tag === 'FIBTG' && FIBC !== undefined) return t.neverLess(written(FIBC * factor));
  const ratio = FIBRE_ESTIMATES[food.group ?? 'any'] ?? FIBRE_ESTIMATES.any;
  if (tag !== 'FIBC' || FIBTG === undefined || !ratio) return undefined;
  const part = (r: number) => written(r * FIBTG * factor);
  return t.estimated(part(ratio.mean), part(ratio.low), part(ratio.high));
}

/** What a table's protein is as crude protein; nothing where it is that already, as on labels and in own foods. */
function asCrude(food: Food, own: OwnFood | undefined, factor: number): string | undefined {
  const crude = own ? undefined : crudeProtein(food);
  if (!crude) return undefined;
  const { proteinFactor } = food;
  const t = words().foods.amounts;
  if (proteinFactor === undefined)
    return t.factorUnknown(written(crude.low * factor), written(crude.high * factor));
  if (proteinFactor === CRUDE_FACTOR) return t.crude;
  return t.printed(proteinFactor, written(crude.value * factor));
}

function written(value: number): string {
  return value > 0 && value < 0.1 ? words().figures.number(Number(value.toPrecision(2)), 8) : figure(value);
}
