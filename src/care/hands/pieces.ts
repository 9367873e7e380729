/** Foods whose pieces are large or hard for a small rodent as they come. */
import type { FoodGroup } from '../../foods/food.ts';
import { allergensOf, type Handled } from './allergens.ts';

/** What has been made small or soft already, in three languages. */
const MADE_SMALL =
  /flour|meal\b|flak|ground|powder|crush|broken|split|puff|cooked|sprout|butter|oil\b|mehl|flocke|gemahlen|pulver|geschrotet|schrot|gebrochen|halbe|schälerbsen|gepufft|gekocht|sprossen|meel|vlok|gemalen|poeder|gebroken|spliterwt|gepoft|gekookt|tofu|lentil|linsen|linzen|mung/i;
const MAIZE = /\b(maize|corn kernels|mais|maiskörner|maiskorrels|maïs)\b/i;

/** Whole dry pulses, nuts and maize; lentils and mung beans are small as they are. */
export function largePieces(food: Handled & { readonly group?: FoodGroup }): boolean {
  const names = [food.name, food.tableName ?? ''].join(' ');
  if (MADE_SMALL.test(names)) return false;
  const { holds } = allergensOf({ name: food.name, ref: food.ref });
  return food.group === 'legume' || MAIZE.test(names) || holds.includes('nuts') || holds.includes('peanut');
}
