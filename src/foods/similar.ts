/**
 * Foods whose dry matter is made up like a given food's, so that a keeper may fill a gap from one of them, knowingly.
 * Nothing here fills a gap by itself.
 */

import { nutrient, type Tag } from '../nutrition/nutrients.ts';
import { words } from '../words/words.ts';
import { CRUDE_FACTOR, crudePerPrinted } from './crude-protein.ts';
import type { Composition, Figures, Food } from './food.ts';
import type { Reference, ReferenceFood } from './reference.ts';
import { type VariationClass, variationClass } from './variation-class.ts';

/** What foods are compared by, g per 100 g of dry matter. */
const PROXIMATES = ['PROCNT', 'FAT', 'FIBTG', 'FIBC', 'ASH', 'CHOCDF'] as const satisfies readonly Tag[];

interface Similar {
  readonly food: ReferenceFood;
  /** Root mean square difference of the proximates that both know, g per 100 g of dry matter. */
  readonly distance: number;
}

/**
 * Reference foods that know `tag`, likest first: the foods keepers really use in this group, and only after them
 * the rest of the table groups those stand in. The first call over a reference file builds the names of its 9,000
 * foods (0.1 to 0.2 s, once); later calls take under 10 ms. A food is compared by at least two proximates that both know, on dry
 * matter where both moistures are known, else as fed.
 * @param group the food's group; undefined compares with every food
 */
export function similarFoods(
  figures: Figures,
  group: string | undefined,
  reference: Reference,
  tag: Tag,
  limit = 5,
): Similar[] {
  const plain = reference.plainFoods().filter((food) => group === undefined || food.group === group);
  const near = likest(figures, plain, tag, limit);
  if (near.length >= limit) return near;
  const tableGroups = new Set(plain.map((food) => food.tableGroup));
  const rest: ReferenceFood[] = [];
  for (let row = 0; row < reference.size; row++) {
    const food = reference.at(row);
    if (!food.plain && tableGroups.has(food.tableGroup)) rest.push(food);
  }
  return [...near, ...likest(figures, rest, tag, limit - near.length)];
}

function likest(figures: Figures, foods: readonly ReferenceFood[], tag: Tag, limit: number): Similar[] {
  return foods
    .flatMap((food) => {
      if (food.composition[tag] === undefined) return [];
      const distance = distanceOf(figures, food, tag);
      return distance === undefined ? [] : [{ food, distance }];
    })
    .sort((a, b) => a.distance - b.distance || (a.food.ref < b.food.ref ? -1 : 1))
    .slice(0, limit);
}

/** Undefined where the two share fewer than two proximates. The nutrient that is looked for is left out of the comparison. */
function distanceOf(one: Figures, other: Figures, sought: Tag): number | undefined {
  const [a, b] = [one.composition, other.composition];
  const dry = dryScale(a, b);
  const [f, g] = dry ?? [1, 1];
  let squares = 0;
  let shared = 0;
  for (const tag of PROXIMATES) {
    const [x, y] = [a[tag], b[tag]];
    if (tag === sought || x === undefined || y === undefined) continue;
    // Protein is compared as crude protein.
    const [k, l] = tag === 'PROCNT' ? [perPrinted(one), perPrinted(other)] : [1, 1];
    squares += (x * f * k - y * g * l) ** 2;
    shared++;
  }
  return shared < 2 ? undefined : Math.sqrt(squares / shared);
}

/** What printed protein is multiplied by to be crude protein; 1 where nobody says the factor, as labels mean it. */
function perPrinted({ proteinFactor = CRUDE_FACTOR }: Figures): number {
  return crudePerPrinted(proteinFactor);
}

/** Factors that bring both to dry matter, where both moistures are known and leave some. */
function dryScale(a: Composition, b: Composition): readonly [number, number] | undefined {
  const [x, y] = [a.WATER, b.WATER];
  if (x === undefined || y === undefined || x >= 100 || y >= 100) return undefined;
  return [100 / (100 - x), 100 / (100 - y)];
}

/**
 * Sd of a borrowed amount, as a part of it, by kind of nutrient: so wide that 90 of 100 misses lie within 1.645 sd.
 * Measured on the foods keepers really use, each left out in turn and its figure borrowed from the likest other of
 * its group (`similar.test.ts` reckons them anew). A root mean square would not do here: a few figures borrowed from
 * near nothing miss a hundredfold and would swamp it; held down by counting misses against the mean of borrowed and
 * true, it holds too few.
 */
export const BORROWING_ERROR: Readonly<Record<VariationClass, number>> = {
  moisture: 0.27,
  macronutrient: 0.44,
  fibre: 0.82,
  'major mineral': 0.82,
  'trace mineral': 1.08,
  'water-soluble vitamin': 1.6,
  'fat-soluble vitamin': 7.6,
  'fatty acid': 1.42,
};

export interface Borrowed {
  /** Per 100 g as fed, in the unit of the tagname. */
  readonly value: number;
  readonly sd: number;
  /** Where it is borrowed from and how it was scaled, in words. */
  readonly source: string;
}

/**
 * An amount borrowed from a like food: scaled by dry matter where both moistures are known, else as fed; protein is
 * counted with the nitrogen factor of the food that borrows. Its sd is
 * as wide as such borrowing misses in the tables themselves, so it is far less sure than a measured figure.
 * Undefined where `from` does not know the nutrient.
 */
export function borrow(figures: Figures, tag: Tag, from: Food): Borrowed | undefined {
  const printed = from.composition[tag];
  if (printed === undefined) return undefined;
  const value = tag === 'PROCNT' ? (printed * perPrinted(from)) / perPrinted(figures) : printed;
  const scale = tag === 'WATER' ? undefined : dryScale(figures.composition, from.composition);
  const scaled = scale ? (value * scale[1]) / scale[0] : value;
  const t = words().foods.borrow;
  const how = scale ? t.moisture : tag === 'WATER' ? t.asItStands : t.asFed;
  const error = BORROWING_ERROR[variationClass(tag)];
  const doubt = error >= 1 ? `; ${t.doubt}` : '';
  return {
    value: scaled,
    sd: error * scaled,
    source: `${t.source(nutrient(tag).name, from.name, from.source, how)}${doubt}`,
  };
}
