/** Figures beside those of a like food: a decimal slip, a unit slip, and amounts of 250 g taken for those of 100 g. */

import { nutrient, type Tag, type Unit } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import { onCrudeProtein } from '../crude-protein.ts';
import type { Figures, Food } from '../food.ts';
import { told, type Warning } from './warning.ts';

const MAIN: readonly Tag[] = ['PROCNT', 'FAT', 'CHOCDF', 'FIBTG', 'ASH', 'ENERC_KCAL'];
/** Minerals that differ little from one sample of a food to the next; sodium, salted or not, is none of them. */
const STEADY: readonly Tag[] = ['K', 'MG', 'P'];
/** How far from exactly ten, in log10: a factor of 8 to 12.5; for fat, fibre and minerals, which vary more, 9 to 11. */
const TEN_WIDTH = 0.1;
const NARROW_WIDTH = 0.045;
const VARIED: readonly Tag[] = ['FAT', 'FIBTG', ...STEADY];
/** How far from exactly a thousand: 500 to 2000. */
const THOUSAND_WIDTH = 0.3;
/** Nutrients of which a like food never holds a thousand times more; vitamin A, D and carotenes may. */
const WEIGHED: readonly Tag[] = [
  'CA',
  'FE',
  'ZN',
  'CU',
  'MN',
  'ID',
  'THIA',
  'RIBF',
  'NIA',
  'PANTAC',
  'VITB6A',
  'CHOLN',
];
/** How near each of several ratios must lie to 2.5 to show amounts per 250 g. */
const CUP_WIDTH = 0.06;
/** Amounts so small that a slip cannot be told from rounding. */
const SMALL: Readonly<Record<Unit, number>> = { g: 0.5, kcal: 10, mg: 5, ug: 5, IU: 50 };

/** Warnings from the ratios to a like food, moisture set equal where both are known. */
export function besideLike(figures: Figures, like: Food): Warning[] {
  const water = figures.composition.WATER;
  const its = like.composition.WATER;
  const dry =
    water !== undefined && its !== undefined && water < 99 && its < 99 ? (100 - its) / (100 - water) : 1;
  // A label prints crude protein, a table its own.
  const table = onCrudeProtein(like).composition;
  const compared = new Map<Tag, { own: number; other: number; ratio: number }>();
  for (const [tag, own] of Object.entries(figures.composition) as [Tag, number][]) {
    const other = table[tag];
    const small = SMALL[nutrient(tag).unit];
    if (tag === 'WATER' || tag === 'NA' || other === undefined || Math.max(own, other) < small) continue;
    if (own > 0 && other > 0) compared.set(tag, { own, other, ratio: (own / other) * dry });
  }
  const t = words().label.reading.checks;
  const found: Warning[] = [];
  for (const [tag, { own, other, ratio }] of compared) {
    const size = Math.log10(ratio);
    const beside = (dry === 1 ? t.beside : t.besideDry)(told(tag, own), other, like.name);
    if (
      (MAIN.includes(tag) || STEADY.includes(tag)) &&
      Math.abs(Math.abs(size) - 1) <= (VARIED.includes(tag) ? NARROW_WIDTH : TEN_WIDTH)
    )
      found.push({
        check: 'slip',
        tags: [tag],
        message: capital((size > 0 ? t.tenHigh : t.tenLow)(beside)),
      });
    else if (
      (WEIGHED.includes(tag) || STEADY.includes(tag)) &&
      Math.abs(Math.abs(size) - 3) <= THOUSAND_WIDTH
    )
      found.push({
        check: 'slip',
        tags: [tag],
        message: capital((size > 0 ? t.thousandHigh : t.thousandLow)(beside)),
      });
  }
  const cup = MAIN.filter((tag) => compared.has(tag));
  const ratios = cup.flatMap((tag) => compared.get(tag)?.ratio ?? []);
  for (const [factor, said] of [
    [2.5, t.per250],
    [0.4, t.per40],
  ] as const)
    if (cup.length >= 3 && ratios.every((ratio) => Math.abs(Math.log10(ratio / factor)) <= CUP_WIDTH))
      found.push({
        check: 'slip',
        tags: cup,
        message: said(like.name),
      });
  return found;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
