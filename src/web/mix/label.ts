/** From a printed label to a composition per 100 g as fed, checked. */
import type { Composition } from '../../foods/food.ts';
import { perHundred } from '../../nutrition/amount.ts';
import { gramsPer, nutrient, type Tag } from '../../nutrition/nutrients.ts';

export interface LabelForm {
  /** The quantity the label's amounts are for, grams. */
  readonly quantity: number;
  readonly basis: 'as fed' | 'dry matter';
  /** As printed; moisture always in percent of the food as fed. */
  readonly amounts: Composition;
}

export type Fault = { readonly tag?: Tag; readonly message: string };

/** Per 100 g as fed; moisture is taken as percent of the food whatever the label's quantity. */
export function compositionOf({ quantity, basis, amounts }: LabelForm): Composition {
  const dry = basis === 'dry matter' ? (100 - (amounts.WATER ?? 0)) / 100 : 1;
  return Object.fromEntries(
    Object.entries(amounts).map(([tag, value]) => [
      tag,
      tag === 'WATER' ? value : Number((perHundred(value, quantity) * dry).toPrecision(10)),
    ]),
  );
}

/** Parts that share no matter with one another, so together weigh 100 g at most. */
const APART: readonly Tag[] = ['WATER', 'PROCNT', 'FAT', 'ASH'];
const TOTAL_AT_MOST = 100.5;

/** What cannot be true of the label, each fault with the way out. */
export function faultsOf(form: LabelForm): Fault[] {
  if (form.basis === 'dry matter' && form.amounts.WATER === undefined) {
    return [
      { tag: 'WATER', message: 'Amounts in dry matter need the moisture; give it, or choose “as fed”.' },
    ];
  }
  const water = form.amounts.WATER;
  if (water !== undefined && water >= 100) {
    return [{ tag: 'WATER', message: `Moisture is ${water} %; it must be below 100 %.` }];
  }
  const found = compositionOf(form);
  for (const [tag, value] of Object.entries(found) as [Tag, number][]) {
    const grams = value * (gramsPer(nutrient(tag).unit) ?? 0);
    if (grams > 100) {
      return [
        {
          tag,
          message: `${nutrient(tag).name} comes to ${short(value)} ${nutrient(tag).unit} in 100 g, more than the food weighs; check the amount (${form.amounts[tag]}) and the quantity (${form.quantity} g).`,
        },
      ];
    }
  }
  const fibre = Math.max(found.FIBTG ?? 0, found.FIBC ?? 0);
  const carbohydrate = Math.max(found.CHOCDF ?? 0, fibre + Math.max(found.STARCH ?? 0, 0));
  const sum = APART.reduce((s, tag) => s + (found[tag] ?? 0), carbohydrate);
  if (sum > TOTAL_AT_MOST) {
    const parts = APART.filter((t) => found[t] !== undefined).map(
      (t) => `${nutrient(t).name.toLowerCase()} ${short(found[t]!)}`,
    );
    if (carbohydrate) parts.push(`carbohydrate with fibre ${short(carbohydrate)}`);
    return [
      {
        message: `The parts add up to ${short(sum)} g in 100 g: ${parts.join(', ')}. Check the largest of them, the quantity (${form.quantity} g) and the basis (${form.basis}).`,
      },
    ];
  }
  if (found.FIBC !== undefined && found.FIBTG !== undefined && found.FIBC > found.FIBTG) {
    return [
      {
        tag: 'FIBC',
        message: `Crude fibre (${short(found.FIBC)}) is above dietary fibre (${short(found.FIBTG)}), of which it is a part; check which of the two the label prints.`,
      },
    ];
  }
  return [];
}

function short(value: number): string {
  return String(Number(value.toFixed(2)));
}
