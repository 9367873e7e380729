/** What no label can truly say: parts that outweigh the whole, bounds that cross, dry matter without moisture. */

import { gramsPer, nutrient, nutrientWord, type Tag, unitWord } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import { amountWords, shortNumber } from '../figure-words.ts';
import type { Figures } from '../food.ts';
import { figuresFrom, type LabelForm } from './form.ts';

/** A fault in words, with the way out; `tag` names the field it is about. */
export type Fault = { readonly tag?: Tag; readonly message: string };

/** What cannot be true of the fields, each fault with the way out. */
export function faultsOf(form: LabelForm): Fault[] {
  const water = form.amounts.WATER?.value;
  const t = words().label.reading.faults;
  if (form.basis === 'dry matter' && water === undefined) {
    return [
      {
        tag: 'WATER',
        message: t.needsMoisture,
      },
    ];
  }
  if (water !== undefined && water >= 100) {
    return [{ tag: 'WATER', message: t.moisture(water) }];
  }
  return impossible(
    figuresFrom(form),
    form.basis === 'as fed' ? t.checkFed(form.quantity) : t.checkDry(form.quantity),
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
  const t = words().label.reading.faults;
  const least = (tag: Tag) => composition[tag] ?? low[tag];
  for (const amounts of [composition, low, high])
    for (const [tag, value] of Object.entries(amounts) as [Tag, number][]) {
      const { name, unit } = nutrient(tag);
      if (value * (gramsPer(unit) ?? 0) > 100)
        return [
          {
            tag,
            message: t.tooHeavy(name, shortNumber(value), unitWord(unit), wayOut),
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
          message: t.crossed(nutrient(tag).name, amountWords(told, tag), wayOut),
        },
      ];
  }
  const fibre = Math.max(least('FIBTG') ?? 0, least('FIBC') ?? 0);
  const carbohydrate = Math.max(least('CHOCDF') ?? 0, fibre + (least('STARCH') ?? 0));
  const sum = APART.reduce((s, tag) => s + (least(tag) ?? 0), carbohydrate);
  if (sum > TOTAL_AT_MOST) {
    const parts = APART.flatMap((tag) => {
      const value = least(tag);
      return value === undefined ? [] : [t.part(nutrientWord(tag), shortNumber(value))];
    });
    if (carbohydrate) parts.push(t.carbohydrate(shortNumber(carbohydrate)));
    return [{ message: t.sum(shortNumber(sum), parts, wayOut) }];
  }
  const crude = least('FIBC');
  if (crude !== undefined && composition.FIBTG !== undefined && crude > composition.FIBTG) {
    return [
      {
        tag: 'FIBC',
        message: t.fibre(shortNumber(crude), shortNumber(composition.FIBTG)),
      },
    ];
  }
  return [];
}
