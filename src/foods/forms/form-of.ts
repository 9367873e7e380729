/**
 * A food in another form: dried, blanched, roasted or sprouted. Where no published factor exists the answer is the
 * reason, never a guess.
 */

import { NUTRIENTS, nutrient, type Tag } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import { factorOf } from '../figures.ts';
import type { Composition, Figures, Food, FoodGroup } from '../food.ts';
import { concentration } from './concentration.ts';
import { driedForm } from './dried-composition.ts';
import { type Prepared, RETENTION_SOURCE, type RetentionRow, retentionRow } from './retention.ts';

export type Form = 'dried' | 'blanched' | 'roasted' | 'sprouted';

interface FormInput {
  /** Moisture of the result, g water per 100 g. */
  readonly moisture: number;
  /** Weight before and after, any unit: needed for blanching, which washes dry matter out. */
  readonly before?: number;
  readonly after?: number;
  /** What kind of food the factors are for; by default it follows from the food's group. */
  readonly as?: Prepared;
}

export interface Formed {
  readonly formed: true;
  readonly figures: Figures;
  readonly notes: Partial<Record<Tag, string>>;
  readonly source: string;
}

interface NoSource {
  readonly formed: false;
  /** A plain sentence: what is missing, and what would help. */
  readonly reason: string;
}

/**
 * A food in another form, per 100 g of the result.
 *
 * - dried: see `driedForm`.
 * - roasted: nuts, by published factors; dry matter conserved for what has no factor but cannot evaporate.
 * - blanched: published factors for boiling in covering water, drained, which lasts longer than a blanch: the value
 *   is what boiling leaves, `high` what would be there had nothing been lost. Protein, fat, carbohydrate and fibre
 *   have no factor: they get bounds from the dry matter lost.
 * - sprouted: no published factors were found.
 * @throws RangeError when a moisture or weight is out of range, or the food's own moisture is unknown
 */
export function formOf(food: Food, form: Form, p: FormInput): Formed | NoSource {
  if (form === 'dried') {
    const { notes, ...figures } = driedForm(food, p.moisture);
    return {
      formed: true,
      figures,
      notes,
      source: words().foodForms.source.dried(food.source, p.moisture),
    };
  }
  if (form === 'sprouted') return no(words().foodForms.no.sprouted);
  const kind = p.as ?? kindOf(food);
  const row = kind && retentionRow(form, kind);
  if (!row) return no(noRow(form, kind ?? food.group));
  return form === 'roasted' ? roasted(food, p.moisture, row) : blanched(food, p, row);
}

function noRow(form: 'roasted' | 'blanched', kind: Prepared | FoodGroup | undefined): string {
  const { kinds, ...t } = words().foodForms.no;
  return t[form](kinds[kind ?? 'none']);
}

function no(reason: string): NoSource {
  return { formed: false, reason };
}

function kindOf(food: Food): Prepared | undefined {
  switch (food.group) {
    case 'herb':
      return 'leaf';
    case 'vegetable':
    case 'legume':
    case 'nut':
    case 'fruit':
      return food.group;
    default:
      return undefined;
  }
}

function roasted(food: Food, moisture: number, row: RetentionRow): Formed {
  const factor = concentration(moistureOf(food), inRange(moisture));
  const composition: Composition = { WATER: moisture };
  const sd: Composition = {};
  const notes: Partial<Record<Tag, string>> = { WATER: words().foodForms.notes.asGiven };
  for (const { tag, group } of NUTRIENTS) {
    const value = food.composition[tag];
    if (tag === 'WATER' || value === undefined) continue;
    const percent = keptOf(row, tag);
    // Heat destroys vitamins, and of the amino acids lysine above all.
    if (percent === undefined && (group === 'vitamin' || group === 'amino acid') && value > 0) {
      notes[tag] = words().foodForms.notes.noFactor;
      continue;
    }
    const kept = (percent ?? 100) / 100;
    composition[tag] = value * factor * kept;
    if (food.sd[tag] !== undefined) sd[tag] = food.sd[tag] * factor * kept;
    notes[tag] =
      percent === undefined ? words().foodForms.notes.conserved : words().foodForms.notes.rounded(percent);
  }
  const figures = { composition, sd, ...factorOf(food) };
  return { formed: true, figures, notes, source: sourceOf(food, row) };
}

function blanched(food: Food, p: FormInput, row: RetentionRow): Formed | NoSource {
  const { before, after } = p;
  if (before === undefined || after === undefined) return no(words().foodForms.no.weights);
  for (const [name, weight] of Object.entries({ before, after }))
    if (!(Number.isFinite(weight) && weight > 0))
      throw new RangeError(`${name} must be a weight above 0, not ${weight}`);
  const yielded = after / before;
  // Dry matter lost, in g per 100 g of the result: no solid can have lost more than that.
  const lost = (100 - moistureOf(food)) / yielded - (100 - inRange(p.moisture));
  if (lost < 0)
    throw new RangeError(
      `moisture ${p.moisture} with ${before} before and ${after} after would mean that dry matter was gained; check the weights`,
    );
  const composition: Composition = { WATER: p.moisture };
  const sd: Composition = {};
  const low: Composition = {};
  const high: Composition = {};
  const notes: Partial<Record<Tag, string>> = { WATER: words().foodForms.notes.asGiven };
  for (const { tag, group } of NUTRIENTS) {
    const value = food.composition[tag];
    if (tag === 'WATER' || value === undefined) continue;
    const whole = value / yielded;
    const percent = keptOf(row, tag);
    if (value === 0) {
      composition[tag] = 0;
      notes[tag] = words().foodForms.notes.rawNone;
    } else if (percent !== undefined) {
      composition[tag] = (whole * percent) / 100;
      if (food.sd[tag] !== undefined) sd[tag] = (food.sd[tag] / yielded) * (percent / 100);
      high[tag] = whole;
      notes[tag] = words().foodForms.notes.boiled(percent);
    } else if (nutrient(tag).unit === 'g' && group !== 'vitamin') {
      low[tag] = Math.max(0, whole - lost);
      high[tag] = Math.min(whole, 100 - p.moisture);
      notes[tag] = words().foodForms.notes.boundsOnly;
    } else notes[tag] = words().foodForms.notes.noFactor;
  }
  const figures = { composition, sd, low, high, ...factorOf(food) };
  return { formed: true, figures, notes, source: sourceOf(food, row) };
}

/** Folate's dietary equivalents have no factor of their own but are folate. */
function keptOf(row: RetentionRow, tag: Tag): number | undefined {
  return row.percent[tag === 'FOLDFE' ? 'FOL' : tag];
}

function sourceOf(food: Food, row: RetentionRow): string {
  return words().foodForms.source.by(food.source, RETENTION_SOURCE, String(row.code), row.title);
}

function moistureOf(food: Food): number {
  const moisture = food.composition.WATER;
  if (moisture === undefined)
    throw new RangeError(`${food.name} (${food.ref}): composition.WATER is unknown; give its moisture first`);
  return inRange(moisture);
}

function inRange(moisture: number): number {
  if (!(moisture >= 0 && moisture < 100))
    throw new RangeError(`moisture must be from 0 to below 100 g per 100 g, not ${moisture}`);
  return moisture;
}
