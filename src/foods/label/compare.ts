/**
 * What the amounts of a label say of each other: two figures for one nutrient that differ beyond rounding,
 * carbohydrate with or without its fibre, and dry matter without moisture.
 */

import { perHundred } from '../../nutrition/amount.ts';
import { nutrient, type Tag } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import type { Questions } from './ask.ts';
import type { ReadAmount } from './reading.ts';
import { inTagUnit, SALT_PER_SODIUM } from './units.ts';

/** A printed figure per 100 g of what it is part of, in the unit of the tagname. Undefined without a weight. */
export function content(amount: ReadAmount, printed: number): number | undefined {
  if (amount.per.grams === undefined) return undefined;
  const own = inTagUnit(printed, amount.unit, amount.tag);
  return perHundred(amount.as === 'salt' ? own / SALT_PER_SODIUM : own, amount.per.grams);
}

/** Labels round; beyond half the last digit of each figure and this share of the larger, two figures differ. */
const LEEWAY = 0.01;
/** kJ and kcal are rounded factors each (17/4, 37/9), so they part by up to 2 % even on an exact label; Regulation (EU) 1169/2011, Annex XIV. */
const ENERGY_LEEWAY = 0.03;

/** Whether an amount may be used: no question open, and not set aside for another. */
export function counts(amount: ReadAmount): boolean {
  return amount.open.length === 0 && !amount.setAside;
}

const FACETS = ['value', 'low', 'high'] as const;
type Facet = (typeof FACETS)[number];

/** Asks where a nutrient has figures that differ; gives the amounts back with the question open, or without those not chosen. */
export function askDifferences(amounts: readonly ReadAmount[], questions: Questions): ReadAmount[] {
  const dropped = new Set<ReadAmount>();
  const opened = new Map<ReadAmount, string>();
  const groups = new Map<string, ReadAmount[]>();
  for (const amount of amounts) {
    if (amount.open.length > 0) continue;
    const key = `${amount.tag} ${amount.per.basis}`;
    const group = groups.get(key);
    if (group) group.push(amount);
    else groups.set(key, [amount]);
  }
  for (const group of groups.values())
    for (const facet of FACETS) {
      // "At least 0" says nothing, so it differs from nothing.
      const having = group.filter(
        (a) => a[facet] !== undefined && !dropped.has(a) && !(facet === 'low' && a.low === 0),
      );
      const [first] = having;
      if (!first || having.length < 2 || agree(having, facet)) continue;
      const { tag, per } = first;
      const id = `differ:${tag}:${facet}${per.basis === 'dry matter' ? ':dry' : ''}`;
      const shown = having.slice(0, 12);
      const answers = [...shown.map((_, k) => String(k)), 'none'];
      const chosen = questions.choose(id, answers, () => ({
        message: words().label.reading.ask.differ(
          nutrient(tag).name,
          shown.map((a) => inWords(a, facet)),
        ),
        options: [
          ...shown.map((a, k) => ({ answer: String(k), label: inWords(a, facet) })),
          { answer: 'none', label: words().label.reading.ask.neither },
        ],
      }));
      for (const [k, amount] of having.entries())
        if (chosen === undefined) opened.set(amount, id);
        else if (String(k) !== chosen) dropped.add(amount);
    }
  return amounts.map((a) => {
    const id = opened.get(a);
    if (id) return { ...a, open: [...a.open, id] };
    return dropped.has(a) ? { ...a, setAside: true } : a;
  });
}

/**
 * Whether figures are one figure but for rounding. Figures in one unit must agree by themselves; energy in kJ beside
 * energy in kcal is given more room, whichever is printed first.
 */
function agree(amounts: readonly ReadAmount[], facet: Facet): boolean {
  const units = [...new Set(amounts.map((a) => a.unit))];
  const alike = (unit: ReadAmount['unit']) => amounts.filter((a) => a.unit === unit);
  return (
    meet(amounts, facet, units.length > 1 ? ENERGY_LEEWAY : 0) &&
    units.every((unit) => meet(alike(unit), facet, 0))
  );
}

/** Whether what each figure can be before rounding has something in common. @param wider further room for energy, of 1 */
function meet(amounts: readonly ReadAmount[], facet: Facet, wider: number): boolean {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const a of amounts) {
    const printed = a[facet];
    if (printed === undefined) continue;
    const value = content(a, printed)!;
    const energy = a.tag === 'ENERC_KCAL' && wider > 0 ? wider * value + 1 : 0;
    const slack = content(a, a.rounding)! + LEEWAY * value + energy;
    least = Math.min(least, value + slack);
    most = Math.max(most, value - slack);
  }
  return most <= least;
}

function inWords(a: ReadAmount, facet: Facet): string {
  const per = a.unit === '%' ? '' : ` ${a.per.text}`;
  const { line } = words().label.reading;
  const figure = a[facet] ?? 0;
  const said =
    facet === 'low'
      ? line.least(figure)
      : facet === 'high'
        ? line.most(figure)
        : words().figures.number(figure, 6);
  return `${said} ${a.unit}${per}`;
}

/** Whether the label's carbohydrate holds its fibre; undefined when print does not settle it. */
export type CarbohydrateStyle = 'with fibre' | 'without fibre' | undefined;

/**
 * Marks carbohydrate as "available" where it leaves the fibre out, and asks where that is unsettled.
 * US labels: total carbohydrate holds the fibre, 21 CFR 101.9(c)(6). EU labels: fibre stands apart,
 * Regulation (EU) 1169/2011, Annex I, points 7 and 12.
 */
export function askCarbohydrate(
  amounts: readonly ReadAmount[],
  plain: ReadonlySet<ReadAmount>,
  style: CarbohydrateStyle,
  questions: Questions,
): ReadAmount[] {
  const fibre = amounts.some((a) => a.tag === 'FIBTG' && a.value !== undefined && a.open.length === 0);
  return amounts.map((a) => {
    if (!plain.has(a) || style === 'with fibre') return a;
    if (style === 'without fibre' && fibre) return { ...a, as: 'available carbohydrate' };
    const id = 'carbohydrate';
    const chosen = questions.choose(id, ['with fibre', 'without fibre'], () => ({
      line: a.line,
      message: words().label.reading.ask.carbohydrate,
      options: [
        { answer: 'with fibre', label: words().label.reading.ask.holds },
        {
          answer: 'without fibre',
          label: words().label.reading.ask.leavesOut,
        },
      ],
    }));
    if (chosen === 'without fibre') return { ...a, as: 'available carbohydrate' };
    return chosen ? a : { ...a, open: [...a.open, id] };
  });
}

/** The one value of a tag as fed, free of questions; undefined when there is none. */
export function settledValue(amounts: readonly ReadAmount[], tag: Tag): number | undefined {
  const having = amounts.filter(
    (a) => a.tag === tag && counts(a) && a.value !== undefined && a.per.basis === 'as fed',
  );
  const finest = having.sort((a, b) => content(a, a.rounding)! - content(b, b.rounding)!)[0];
  return finest && content(finest, finest.value!);
}

/** Asks for moisture where amounts are of the dry matter and no moisture is printed. */
export function askMoisture(
  amounts: readonly ReadAmount[],
  questions: Questions,
): { amounts: ReadAmount[]; moisture?: number } {
  const fed = amounts.map((a) =>
    a.tag === 'WATER' ? { ...a, per: { ...a.per, basis: 'as fed' as const } } : a,
  );
  if (!fed.some((a) => a.per.basis === 'dry matter')) return { amounts: fed };
  const printed = settledValue(fed, 'WATER');
  if (printed !== undefined && printed < 100) return { amounts: fed };
  const moisture = questions.measure('moisture', 'percent', () => ({
    message: words().label.reading.ask.moisture,
    options: [],
  }));
  if (moisture !== undefined) return { amounts: fed, moisture };
  return {
    amounts: fed.map((a) => (a.per.basis === 'dry matter' ? { ...a, open: [...a.open, 'moisture'] } : a)),
  };
}
