/** What no label can truly say: parts that outweigh the whole, bounds that cross, dry matter without moisture. */
import { gramsPer, nutrient, type Tag } from '../../nutrition/nutrients.ts';
import { amountWords, shortNumber } from '../figure-words.ts';
import type { Figures } from '../food.ts';
import { figuresFrom, type LabelForm } from './form.ts';

/** A fault in words, with the way out; `tag` names the field it is about. */
export type Fault = { readonly tag?: Tag; readonly message: string };

/** What cannot be true of the fields, each fault with the way out. */
export function faultsOf(form: LabelForm): Fault[] {
  const water = form.amounts.WATER?.value;
  if (form.basis === 'dry matter' && water === undefined) {
    return [
      {
        tag: 'WATER',
        message:
          'Amounts in dry matter need the moisture, exactly and not as a bound; give it, or choose “as fed”.',
      },
    ];
  }
  if (water !== undefined && water >= 100) {
    return [{ tag: 'WATER', message: `Moisture is ${water} %; it must be below 100 %.` }];
  }
  return impossible(
    figuresFrom(form),
    `Check the amount as typed, the quantity (${form.quantity} g) and the basis (${form.basis}).`,
  );
}

/** Parts that share no matter with one another, so together weigh 100 g at most. */
const APART: readonly Tag[] = ['WATER', 'PROCNT', 'FAT', 'ASH'];
const TOTAL_AT_MOST = 100.5;

/**
 * What cannot be true of 100 g of any food; the first fault only, since one slip often causes the rest.
 * @param wayOut what to look at again, as a sentence
 */
export function impossible(told: Figures, wayOut: string): Fault[] {
  const { composition, low = {}, high = {} } = told;
  const least = (tag: Tag) => composition[tag] ?? low[tag];
  for (const amounts of [composition, low, high])
    for (const [tag, value] of Object.entries(amounts) as [Tag, number][]) {
      const { name, unit } = nutrient(tag);
      if (value * (gramsPer(unit) ?? 0) > 100)
        return [
          {
            tag,
            message: `${name} comes to ${shortNumber(value)} ${unit} in 100 g, more than the food weighs. ${wayOut}`,
          },
        ];
    }
  for (const tag of Object.keys({ ...low, ...high }) as Tag[]) {
    const from = low[tag] ?? 0;
    const to = high[tag] ?? Number.POSITIVE_INFINITY;
    const value = composition[tag];
    if (from > to || (value !== undefined && (value < from || value > to)))
      return [
        {
          tag,
          message: `${nutrient(tag).name} is given as ${amountWords(told, tag)}; both cannot be. ${wayOut}`,
        },
      ];
  }
  const fibre = Math.max(least('FIBTG') ?? 0, least('FIBC') ?? 0);
  const carbohydrate = Math.max(least('CHOCDF') ?? 0, fibre + (least('STARCH') ?? 0));
  const sum = APART.reduce((s, tag) => s + (least(tag) ?? 0), carbohydrate);
  if (sum > TOTAL_AT_MOST) {
    const parts = APART.flatMap((tag) => {
      const value = least(tag);
      return value === undefined ? [] : [`${nutrient(tag).name.toLowerCase()} ${shortNumber(value)}`];
    });
    if (carbohydrate) parts.push(`carbohydrate with fibre ${shortNumber(carbohydrate)}`);
    return [
      { message: `The parts add up to ${shortNumber(sum)} g in 100 g: ${parts.join(', ')}. ${wayOut}` },
    ];
  }
  const crude = least('FIBC');
  if (crude !== undefined && composition.FIBTG !== undefined && crude > composition.FIBTG) {
    return [
      {
        tag: 'FIBC',
        message: `Crude fibre (${shortNumber(crude)}) is above dietary fibre (${shortNumber(composition.FIBTG)}), of which it is a part; check which of the two the label prints.`,
      },
    ];
  }
  return [];
}
