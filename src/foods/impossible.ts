/**
 * Figures that no food can have. The label reader asks about odd figures and leaves the answer to the keeper; what is
 * told here is refused wherever figures are reckoned with. Tolerances leave room for rounding and nitrogen factors: no
 * food of the open tables is refused (`impossible.test.ts`).
 */

import { gramsPer, NUTRIENTS, nutrient, nutrientWord, type Tag } from '../nutrition/nutrients.ts';
import { words } from '../words/words.ts';
import type { Figures } from './food.ts';
import { checkFigures } from './label/checks.ts';
import { told } from './label/warning.ts';

export interface Impossible {
  /** The nutrients it is about, the likeliest culprit first. */
  readonly tags: readonly Tag[];
  /** Sentence without its full stop, and the way out. */
  readonly message: string;
}

/** What the parts of 100 g may come to, g: crude protein of a food with a low nitrogen factor is a fifth too heavy. */
const MOST_SUM = 110;

/** How far a part may stand above its whole, g and as a part: two figures of different samples. */
const MOST_OVER = 2;
const MOST_OVER_PART = 0.05;

/** What one amount may weigh in 100 g: a figure is rounded. */
const MOST_WEIGHT = 100.5;

/** More energy than any food has, kcal per 100 g: lard and oils have 902 (USDA SR28 04002) and 884. */
const MOST_ENERGY = 950;

/** Grams in one international unit: 0.3 ug of retinol, 0.025 ug of vitamin D (WHO; from memory). */
const GRAMS_PER_IU: Partial<Record<Tag, number>> = { VITA_IU: 0.3e-6, VITD_IU: 0.025e-6 };

/** What cannot be in figures per 100 g as fed, by value or by guaranteed least. Empty where nothing is wrong. */
export function impossible(figures: Figures): readonly Impossible[] {
  return [
    ...tooHeavy(figures),
    ...tooMuchEnergy(figures),
    ...tooMuchTogether(figures),
    ...partOverWhole(figures),
  ];
}

/** What the label reader would ask about, and what can still not be brushed aside: one amount well above its whole. */
function partOverWhole(figures: Figures): Impossible[] {
  return checkFigures(figures).flatMap(({ check, tags, message }) => {
    const [part, whole] = tags;
    // A label of the European Union prints carbohydrate without the fibre.
    if ((check !== 'part' && check !== 'fibre') || !part || !whole || part === 'FIBTG') return [];
    const all = figures.composition[whole] ?? figures.high?.[whole] ?? 0;
    if ((least(figures, part) ?? 0) - all <= MOST_OVER + all * MOST_OVER_PART) return [];
    return [
      {
        tags: [part, whole],
        message: words().label.reading.impossible.correctOne(message.replace(/\.$/, '')),
      },
    ];
  });
}

function least({ composition, low }: Figures, tag: Tag): number | undefined {
  return composition[tag] ?? low?.[tag];
}

function tooHeavy(figures: Figures): Impossible[] {
  const named = Object.keys({ ...figures.low, ...figures.composition }) as Tag[];
  return named.flatMap((tag) => {
    const { unit } = nutrient(tag);
    const grams = (least(figures, tag) ?? 0) * (gramsPer(unit) ?? GRAMS_PER_IU[tag] ?? 0);
    if (grams <= MOST_WEIGHT) return [];
    const message = words().label.reading.impossible.weighs(told(tag, least(figures, tag) ?? 0), grams, unit);
    return [{ tags: [tag], message }];
  });
}

function tooMuchEnergy(figures: Figures): Impossible[] {
  const energy = least(figures, 'ENERC_KCAL');
  if (energy === undefined || energy <= MOST_ENERGY) return [];
  const message = words().label.reading.impossible.energy(energy);
  return [{ tags: ['ENERC_KCAL'], message }];
}

/** That the parts of 100 g come to more than it can hold. */
export function tooMuchTogether(figures: Figures): readonly Impossible[] {
  const { sum, parts } = partsTogether(figures);
  if (sum <= MOST_SUM) return [];
  const t = words().label.reading.impossible;
  const list = parts.map(({ name, grams }) => t.grams(grams, name));
  return [
    {
      tags: [...parts].sort((a, b) => b.grams - a.grams).map(({ tag }) => tag),
      message: t.together(sum, list),
    },
  ];
}

interface Part {
  readonly tag: Tag;
  readonly name: string;
  readonly grams: number;
}

/** The parts of 100 g that do not overlap, g: of carbohydrate and its kinds the largest, of ash and its minerals too. */
function partsTogether(figures: Figures): { readonly parts: readonly Part[]; readonly sum: number } {
  const part = (tag: Tag): Part => ({
    tag,
    name: nutrientWord(tag),
    grams: least(figures, tag) ?? 0,
  });
  const most = (parts: readonly Part[]) => parts.reduce((a, b) => (b.grams > a.grams ? b : a));
  const minerals = mineralGrams(figures);
  const parts = [
    ...(['WATER', 'PROCNT', 'FAT'] as const).map(part),
    most([
      part('ASH'),
      ...minerals.slice(0, 1).map(({ tag }) => ({
        tag,
        name: words().label.reading.impossible.minerals,
        grams: totalOf(minerals),
      })),
    ]),
    // Carbohydrate by difference holds the fibre, the sugars and the starch.
    most((['CHOCDF', 'FIBTG', 'FIBC', 'SUGAR', 'STARCH'] as const).map(part)),
  ].filter(({ grams }) => grams > 0);
  return { parts, sum: totalOf(parts) };
}

const totalOf = (parts: readonly { readonly grams: number }[]) => parts.reduce((sum, p) => sum + p.grams, 0);

/** Minerals by weight, g, the heaviest first. */
function mineralGrams(figures: Figures) {
  return NUTRIENTS.filter((n) => n.group === 'mineral')
    .map(({ tag, unit }) => ({ tag, grams: (least(figures, tag) ?? 0) * (gramsPer(unit) ?? 0) }))
    .filter(({ grams }) => grams > 0)
    .sort((a, b) => b.grams - a.grams);
}
