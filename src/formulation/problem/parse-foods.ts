/** Foods of a problem, in the mix and beside it, read and checked. */
import { impossible, tooMuchTogether } from '../../foods/impossible.ts';
import { whyMissing } from '../../foods/missing-ref.ts';
import type { Reference, ReferenceFood } from '../../foods/reference.ts';
import { airDryPart } from '../../nutrition/air-dry.ts';
import { LEAST_PROTEIN_FACTOR, MOST_PROTEIN_FACTOR } from '../../nutrition/energy.ts';
import { nutrient, type Tag } from '../../nutrition/nutrients.ts';
import { fedFigures, fieldOf } from './fed-figures.ts';
import { type Beside, type Ingredient, type Override, ProblemError } from './problem.ts';
import {
  choice,
  type Fields,
  fieldIn,
  flag,
  LONGEST,
  list,
  MOST,
  number,
  object,
  optional,
  ordered,
  show,
  strip,
  tagname,
  text,
} from './read-json.ts';

const DESCRIBED = [
  'id',
  'name',
  'ref',
  'composition',
  'sd',
  'low',
  'high',
  'protein_factor',
  'borrowed',
  'ingredients',
];
/** Most texts in a list of them, as in `schema.ts`. */
const MOST_TEXTS = 60;
const FIELDS = {
  food: [
    ...DESCRIBED,
    'group',
    'min',
    'max',
    'want',
    'price_per_kg',
    'refused',
    'override',
    'if_used',
    'liked',
    'on_hand_grams',
  ],
  override: ['caution', 'also', 'note', 'on'],
  beside: [...DESCRIBED, 'share_of_ration', 'grams_a_day', 'share_min', 'share_max', 'counts_as'],
};

export function ingredient(json: unknown, at: string, reference: Reference, ignored: string[]): Ingredient {
  const f = object(json, at, FIELDS.food, ignored);
  const min = optional(f.min, `${at}/min`, 0, 100);
  const max = optional(f.max, `${at}/max`, 0, 100);
  ordered(min, max, at);
  return strip({
    id: text(f.id, `${at}/id`, LONGEST.id),
    name: f.name === undefined ? undefined : text(f.name, `${at}/name`),
    ...figures(f, at, reference),
    group: f.group === undefined ? undefined : text(f.group, `${at}/group`),
    min,
    max,
    want: optional(f.want, `${at}/want`, 0, 100),
    price_per_kg: optional(f.price_per_kg, `${at}/price_per_kg`, 0, MOST),
    refused: flag(f.refused, `${at}/refused`),
    override: f.override === undefined ? undefined : override(f.override, `${at}/override`, ignored),
    if_used: optional(f.if_used, `${at}/if_used`, 0, 100),
    liked: flag(f.liked, `${at}/liked`),
    on_hand_grams: optional(f.on_hand_grams, `${at}/on_hand_grams`, 0, MOST),
  });
}

function override(json: unknown, at: string, ignored: string[]): Override {
  const o = object(json, at, FIELDS.override, ignored);
  const on = text(o.on, `${at}/on`);
  if (!isDay(on)) throw new ProblemError(`${at}/on`, `must be a date such as "2026-03-14", not ${show(on)}`);
  return strip({
    caution: text(o.caution, `${at}/caution`),
    also: o.also === undefined ? undefined : texts(o.also, `${at}/also`, LONGEST.id),
    note: text(o.note, `${at}/note`, LONGEST.words),
    on,
  });
}

/** Whether a text is a day of the calendar, ISO 8601; "2026-02-31" has the form of one and is none. */
function isDay(text: string): boolean {
  const time = /^\d{4}-\d{2}-\d{2}$/.test(text) ? Date.parse(text) : Number.NaN;
  return !Number.isNaN(time) && new Date(time).toISOString().startsWith(text);
}

export function besideFood(
  json: unknown,
  at: string,
  reference: Reference,
  daily: number | undefined,
  ignored: string[],
): Beside {
  const b = object(json, at, FIELDS.beside, ignored);
  const known = figures(b, at, reference);
  const counts_as =
    b.counts_as === undefined ? undefined : choice<'air dry'>(b.counts_as, `${at}/counts_as`, ['air dry']);
  const water = known.composition?.WATER ?? (known.ref && reference.get(known.ref)?.composition.WATER);
  if (counts_as && (typeof water !== 'number' || water >= 100)) {
    throw new ProblemError(
      `${at}/counts_as`,
      'needs the water of this food to leave it out; give "WATER" in its composition',
    );
  }
  const grams = optional(b.grams_a_day, `${at}/grams_a_day`, 0, MOST);
  const share_min = optional(b.share_min, `${at}/share_min`, 0, 100);
  const share_max = optional(b.share_max, `${at}/share_max`, 0, 100);
  if (share_min !== undefined && share_max !== undefined && share_min > share_max) {
    throw new ProblemError(
      `${at}/share_min`,
      `is ${share_min}, above "share_max" ${share_max}; swap them or change one`,
    );
  }
  const share = grams === undefined ? b.share_of_ration : shareOfDay(grams, at, daily, counts_as && water);
  return strip({
    id: text(b.id, `${at}/id`, LONGEST.id),
    name: b.name === undefined ? undefined : text(b.name, `${at}/name`),
    share_of_ration: number(share, `${at}/share_of_ration`, 0, 100),
    grams_a_day: grams,
    share_min,
    share_max,
    counts_as,
    ...known,
  });
}

/** Grams a day as percent of the day's ration; a fresh food counts without its water. */
function shareOfDay(grams: number, at: string, daily: number | undefined, water: unknown): number {
  if (daily === undefined) {
    throw new ProblemError(
      `${at}/grams_a_day`,
      'needs "daily_grams", the whole ration of a day; write it, or give "share_of_ration"',
    );
  }
  const part = airDryPart(typeof water === 'number' ? water : undefined);
  const share = (100 * grams * part) / daily;
  if (share > 100) {
    throw new ProblemError(
      `${at}/grams_a_day`,
      `is ${grams}, more than the whole ration of ${daily} g a day; lower it or raise "daily_grams"`,
    );
  }
  return share;
}

/** Where a food's amounts come from: a reference number, own figures, or both. */
function figures(
  f: Fields,
  at: string,
  reference: Reference,
): Pick<
  Ingredient,
  'ref' | 'composition' | 'sd' | 'low' | 'high' | 'protein_factor' | 'borrowed' | 'ingredients'
> {
  if (f.ref === undefined && f.composition === undefined) {
    throw new ProblemError(
      at,
      'has neither "ref" nor "composition"; name a reference food or give its amounts per 100 g',
    );
  }
  const ref = f.ref === undefined ? undefined : text(f.ref, `${at}/ref`, LONGEST.id);
  if (ref !== undefined && !reference.get(ref)) throw new ProblemError(`${at}/ref`, whyMissing(ref));
  const low = amounts(f.low, `${at}/low`);
  const high = amounts(f.high, `${at}/high`);
  for (const [tag, least] of Object.entries(low ?? {}) as [Tag, number][]) {
    const most = high?.[tag];
    if (most !== undefined && least > most)
      throw new ProblemError(
        `${at}/low/${tag}`,
        `is ${least}, above "high" ${most}; swap them or change one`,
      );
  }
  const told = {
    ...(ref !== undefined && { ref }),
    composition: amounts(f.composition, `${at}/composition`),
    sd: amounts(f.sd, `${at}/sd`),
    low,
    high,
  };
  refuseImpossible(told, at, ref === undefined ? undefined : reference.get(ref));
  return {
    ...told,
    protein_factor: proteinFactor(f.protein_factor, `${at}/protein_factor`),
    borrowed: f.borrowed === undefined ? undefined : lenders(f.borrowed, `${at}/borrowed`),
    ingredients: f.ingredients === undefined ? undefined : printed(f.ingredients, `${at}/ingredients`),
  };
}

/** One text, or several of them. */
function printed(json: unknown, at: string): readonly string[] {
  return typeof json === 'string' ? [text(json, at, LONGEST.words)] : texts(json, at, LONGEST.words);
}

function texts(json: unknown, at: string, longest: number): string[] {
  return list(json, at, MOST_TEXTS).map((each, i) => text(each, `${at}/${i}`, longest));
}

/**
 * Figures of a table are the table's own affair. What the keeper writes must be possible by itself, and fit into 100 g
 * with what the table gives; an own amount below one of the table's that is a part of it is asked about.
 */
function refuseImpossible(
  told: Pick<Ingredient, 'composition' | 'sd' | 'low' | 'high'>,
  at: string,
  ref: ReferenceFood | undefined,
): void {
  if (!told.composition && !told.low) return;
  const food = { id: '', ...told };
  const [wrong] = [...impossible(fedFigures(food, undefined)), ...tooMuchTogether(fedFigures(food, ref))];
  if (wrong) throw new ProblemError(fieldOf(food, at, wrong.tags), wrong.message);
}

function proteinFactor(json: unknown, at: string): number | undefined {
  const factor = optional(json, at, 0, MOST);
  if (factor === undefined || (factor >= LEAST_PROTEIN_FACTOR && factor <= MOST_PROTEIN_FACTOR))
    return factor;
  throw new ProblemError(
    at,
    `is ${factor}; the nitrogen factor of a food is ${LEAST_PROTEIN_FACTOR} to ${MOST_PROTEIN_FACTOR} (oats 5.83, nuts and seeds 5.3, labels 6.25); leave it out for crude protein`,
  );
}

/** Which food lent each borrowed amount, by tagname. */
function lenders(json: unknown, at: string): Ingredient['borrowed'] {
  const named = Object.entries(object(json, at));
  return Object.fromEntries(
    named.map(([key, from]) => {
      const field = fieldIn(at, key);
      return [tagname(key, field), text(from, field)];
    }),
  );
}

/** Amounts by tagname; null is an unknown amount and is left out. */
function amounts(json: unknown, at: string): Ingredient['composition'] {
  if (json === undefined) return undefined;
  const out: Partial<Record<Tag, number>> = {};
  for (const [key, value] of Object.entries(object(json, at))) {
    const field = fieldIn(at, key);
    const tag = tagname(key, field);
    if (value === null) continue;
    const most = nutrient(tag).unit === 'g' ? 100 : MOST;
    out[tag] = number(value, field, 0, most);
  }
  return out;
}
