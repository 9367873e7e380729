/**
 * Reads problem.json: every field checked, every complaint names the field, the value and the way out.
 * Nothing is guessed; a field that the format does not know is left alone and listed.
 */
import type { Reference } from '../foods/reference.ts';
import { isTag, nearestTag, nutrient, type Tag } from '../nutrition/nutrients.ts';
import type { Beside, Ingredient, Objective, Override, Problem, Rule, Variation } from './problem.ts';
import { ProblemError } from './problem.ts';

/** More foods or rules than any mix has; a larger problem is a mistake, not a mix. */
const MOST_FOODS = 500;
const MOST_RULES = 500;

/** Marks a bare NaN or Infinity that stood where JSON wants a number. */
const NOT_A_NUMBER = '\u0000';

const DESCRIBED = ['id', 'name', 'ref', 'composition', 'sd', 'low', 'high', 'borrowed'];
const FIELDS = {
  problem: [
    'foods',
    'rules',
    'beside',
    'objective',
    'confidence',
    'confidence_for',
    'variation',
    'cautions',
    'species',
    'batch_grams',
    'scale_step_grams',
  ],
  food: [...DESCRIBED, 'group', 'min', 'max', 'want', 'price_per_kg', 'refused', 'override'],
  override: ['caution', 'note', 'on'],
  beside: [...DESCRIBED, 'share_of_ration'],
  rule: ['nutrient', 'ratio', 'group', 'food', 'min', 'max', 'on', 'basis', 'source'],
};

type Fields = Record<string, unknown>;

/**
 * JSON text to a value.
 * @throws ProblemError when the text is empty or is not JSON, saying where
 */
export function parseJson(text: string): unknown {
  if (text.trim() === '')
    throw new ProblemError('', 'is empty; write a JSON object with "foods" and "rules"');
  const marked = text.replace(/"(?:[^"\\]|\\.)*"|[-+]?\b(?:NaN|Infinity)\b/g, (token) =>
    token.startsWith('"') ? token : JSON.stringify(NOT_A_NUMBER + token),
  );
  try {
    return JSON.parse(marked);
  } catch (error) {
    const why = String((error as Error).message).split('\n')[0];
    throw new ProblemError('', `is not JSON (${why}); check commas, quotes and brackets there`);
  }
}

/**
 * Checks a parsed problem.
 * @returns the problem with every default filled in, and pointers of fields that were not read
 * @throws ProblemError naming the first field that is wrong
 */
export function parseProblem(json: unknown, reference: Reference): { problem: Problem; ignored: string[] } {
  const ignored: string[] = [];
  const top = object(json, '', FIELDS.problem, ignored);
  const foods = list(top.foods, '/foods', MOST_FOODS).map((f, i) =>
    ingredient(f, `/foods/${i}`, reference, ignored),
  );
  if (foods.length === 0) throw new ProblemError('/foods', 'is an empty list; name at least one food');
  const beside = list(top.beside ?? [], '/beside', 50).map((b, i) =>
    besideFood(b, `/beside/${i}`, reference, ignored),
  );
  unique(foods, '/foods');
  unique(beside, '/beside');
  const clash = beside.findIndex((b) => foods.some((f) => f.id === b.id));
  if (clash >= 0) {
    throw new ProblemError(
      `/beside/${clash}/id`,
      `${show(beside[clash]!.id)} is also a food of the mix; give it another id`,
    );
  }
  const rules = list(top.rules ?? [], '/rules', MOST_RULES).map((r, i) =>
    rule(r, `/rules/${i}`, foods, ignored),
  );
  const objective = choice<Objective>(top.objective ?? 'nearest', '/objective', [
    'nearest',
    'cheapest',
    'varied',
  ]);
  const oneOf = <T extends string>(field: string, allowed: readonly T[]) =>
    top[field] === undefined ? undefined : choice<T>(top[field], `/${field}`, allowed);
  const problem: Problem = {
    foods,
    rules,
    beside,
    objective,
    confidence: number(top.confidence ?? 0, '/confidence', 0, 0.999999),
    ...strip({
      confidence_for: oneOf<'each' | 'all'>('confidence_for', ['each', 'all']),
      variation: oneOf<Variation>('variation', ['given', 'published']),
      cautions: oneOf<'apply' | 'report'>('cautions', ['apply', 'report']),
      species: top.species === undefined ? undefined : text(top.species, '/species'),
    }),
    batch_grams: positive(top.batch_grams ?? 300, '/batch_grams'),
    scale_step_grams: positive(top.scale_step_grams ?? 1, '/scale_step_grams'),
  };
  wholeProblem(problem);
  return { problem, ignored };
}

/** Checks that need more than one field. */
function wholeProblem({ foods, beside, objective }: Problem): void {
  const fed = beside.reduce((sum, b) => sum + b.share_of_ration, 0);
  if (fed > 100 + 1e-9) {
    throw new ProblemError(
      '/beside',
      `the shares of the ration add up to ${fed} %; they may take 100 % at most`,
    );
  }
  const open = foods.filter((f) => !f.refused);
  if (open.length === 0)
    throw new ProblemError('/foods', 'every food is refused; leave at least one that is eaten');
  const most = open.reduce((sum, f) => sum + (f.max ?? 100), 0);
  if (most < 100 - 1e-9) {
    throw new ProblemError(
      '/foods',
      `the "max" shares add up to ${round(most)} %, so the mix cannot reach 100 %; raise a "max" or add a food`,
    );
  }
  const least = open.reduce((sum, f) => sum + (f.min ?? 0), 0);
  if (least > 100 + 1e-9) {
    throw new ProblemError(
      '/foods',
      `the "min" shares add up to ${round(least)} %, more than 100 %; lower a "min" or drop a food`,
    );
  }
  if (objective !== 'cheapest') return;
  const unpriced = foods.findIndex((f) => !f.refused && f.price_per_kg === undefined);
  if (unpriced >= 0) {
    throw new ProblemError(
      `/foods/${unpriced}/price_per_kg`,
      `is missing for ${show(foods[unpriced]!.id)}; "cheapest" needs the price of every food`,
    );
  }
}

function ingredient(json: unknown, at: string, reference: Reference, ignored: string[]): Ingredient {
  const f = object(json, at, FIELDS.food, ignored);
  const min = optional(f.min, `${at}/min`, 0, 100);
  const max = optional(f.max, `${at}/max`, 0, 100);
  ordered(min, max, at);
  if (f.refused !== undefined && typeof f.refused !== 'boolean') {
    throw new ProblemError(`${at}/refused`, `must be true or false, not ${show(f.refused)}`);
  }
  return strip({
    id: text(f.id, `${at}/id`),
    name: f.name === undefined ? undefined : text(f.name, `${at}/name`),
    ...figures(f, at, reference),
    group: f.group === undefined ? undefined : text(f.group, `${at}/group`),
    min,
    max,
    want: optional(f.want, `${at}/want`, 0, 100),
    price_per_kg: optional(f.price_per_kg, `${at}/price_per_kg`, 0, Number.MAX_VALUE),
    refused: f.refused as boolean | undefined,
    override: f.override === undefined ? undefined : override(f.override, `${at}/override`, ignored),
  });
}

function override(json: unknown, at: string, ignored: string[]): Override {
  const o = object(json, at, FIELDS.override, ignored);
  const on = text(o.on, `${at}/on`);
  if (!/^\d{4}-\d{2}-\d{2}$/.test(on) || Number.isNaN(Date.parse(on)))
    throw new ProblemError(`${at}/on`, `must be a date such as "2026-03-14", not ${show(on)}`);
  return { caution: text(o.caution, `${at}/caution`), note: text(o.note, `${at}/note`), on };
}

function besideFood(json: unknown, at: string, reference: Reference, ignored: string[]): Beside {
  const b = object(json, at, FIELDS.beside, ignored);
  return strip({
    id: text(b.id, `${at}/id`),
    name: b.name === undefined ? undefined : text(b.name, `${at}/name`),
    share_of_ration: number(b.share_of_ration, `${at}/share_of_ration`, 0, 100),
    ...figures(b, at, reference),
  });
}

/** Where a food's amounts come from: a reference number, own figures, or both. */
function figures(
  f: Fields,
  at: string,
  reference: Reference,
): Pick<Ingredient, 'ref' | 'composition' | 'sd' | 'low' | 'high' | 'borrowed'> {
  if (f.ref === undefined && f.composition === undefined) {
    throw new ProblemError(
      at,
      'has neither "ref" nor "composition"; name a reference food or give its amounts per 100 g',
    );
  }
  const ref = f.ref === undefined ? undefined : text(f.ref, `${at}/ref`);
  if (ref !== undefined && !reference.get(ref)) {
    throw new ProblemError(
      `${at}/ref`,
      `no food ${show(ref)} in the reference tables; find one with: npx pouchful foods search <words>`,
    );
  }
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
  return {
    ref,
    composition: amounts(f.composition, `${at}/composition`),
    sd: amounts(f.sd, `${at}/sd`),
    low,
    high,
    borrowed: f.borrowed === undefined ? undefined : lenders(f.borrowed, `${at}/borrowed`),
  };
}

/** Which food lent each borrowed amount, by tagname. */
function lenders(json: unknown, at: string): Ingredient['borrowed'] {
  const named = Object.entries(object(json, at));
  return Object.fromEntries(
    named.map(([key, from]) => [tagname(key, `${at}/${key}`), text(from, `${at}/${key}`)]),
  );
}

/** Amounts by tagname; null is an unknown amount and is left out. */
function amounts(json: unknown, at: string): Ingredient['composition'] {
  if (json === undefined) return undefined;
  const out: Partial<Record<Tag, number>> = {};
  for (const [key, value] of Object.entries(object(json, at))) {
    const tag = tagname(key, `${at}/${key}`);
    if (value === null) continue;
    const most = nutrient(tag).unit === 'g' ? 100 : Number.MAX_VALUE;
    out[tag] = number(value, `${at}/${key}`, 0, most);
  }
  return out;
}

function rule(json: unknown, at: string, foods: readonly Ingredient[], ignored: string[]): Rule {
  const r = object(json, at, FIELDS.rule, ignored);
  const subjects = ['nutrient', 'ratio', 'group', 'food'].filter((k) => r[k] !== undefined);
  if (subjects.length !== 1) {
    const found = subjects.length === 0 ? 'none' : subjects.join(' and ');
    throw new ProblemError(at, `must name one of "nutrient", "ratio", "group" or "food", not ${found}`);
  }
  const kind = subjects[0]!;
  // A share ends at 100; a nutrient bound above what is possible is odd, but it says something.
  const most = kind === 'group' || kind === 'food' ? 100 : Number.MAX_VALUE;
  const bounds = strip({
    min: optional(r.min, `${at}/min`, 0, most),
    max: optional(r.max, `${at}/max`, 0, most),
    source: r.source === undefined ? undefined : text(r.source, `${at}/source`),
    on: r.on === undefined ? undefined : choice<'mix' | 'ration'>(r.on, `${at}/on`, ['mix', 'ration']),
  });
  ordered(bounds.min, bounds.max, at);
  if (r.basis !== undefined && kind !== 'nutrient') {
    throw new ProblemError(`${at}/basis`, 'only a nutrient rule has a basis; leave it out');
  }
  if (kind === 'nutrient') {
    const basis =
      r.basis === undefined ? undefined : choice<'as fed' | 'DM'>(r.basis, `${at}/basis`, ['as fed', 'DM']);
    return strip({
      nutrient: tagname(text(r.nutrient, `${at}/nutrient`), `${at}/nutrient`),
      ...bounds,
      basis,
    });
  }
  if (kind === 'ratio') {
    if (!Array.isArray(r.ratio) || r.ratio.length !== 2) {
      throw new ProblemError(`${at}/ratio`, `must be two tagnames such as ["CA", "P"], not ${show(r.ratio)}`);
    }
    const [top, bottom] = r.ratio.map((t, i) => tagname(text(t, `${at}/ratio/${i}`), `${at}/ratio/${i}`));
    return { ratio: [top!, bottom!], ...bounds };
  }
  if (kind === 'group') return { group: text(r.group, `${at}/group`), ...bounds };
  const food = text(r.food, `${at}/food`);
  if (!foods.some((f) => f.id === food)) {
    throw new ProblemError(
      `${at}/food`,
      `no food of the mix has the id ${show(food)}; use one of the ids under "foods"`,
    );
  }
  return { food, ...bounds };
}

// ---- small checks, each naming its field ----

function object(json: unknown, at: string, known?: readonly string[], ignored?: string[]): Fields {
  if (typeof json !== 'object' || json === null || Array.isArray(json)) {
    throw new ProblemError(at, `must be an object in braces, not ${show(json)}`);
  }
  if (known && ignored) {
    for (const key of Object.keys(json)) if (!known.includes(key)) ignored.push(`${at}/${key}`);
  }
  return json as Fields;
}

function list(json: unknown, at: string, most: number): unknown[] {
  if (json === undefined) throw new ProblemError(at, 'is missing; write a list in square brackets');
  if (!Array.isArray(json))
    throw new ProblemError(at, `must be a list in square brackets, not ${show(json)}`);
  if (json.length > most) throw new ProblemError(at, `has ${json.length} entries; ${most} is the most`);
  return json;
}

function text(json: unknown, at: string): string {
  if (json === undefined) throw new ProblemError(at, 'is missing; write a text in quotes');
  if (typeof json !== 'string' || json.trim() === '')
    throw new ProblemError(at, `must be a text in quotes, not ${show(json)}`);
  return json;
}

function number(json: unknown, at: string, least: number, most: number): number {
  if (json === undefined) throw new ProblemError(at, 'is missing; write a number');
  if (typeof json === 'string') {
    if (json.startsWith(NOT_A_NUMBER))
      throw new ProblemError(at, `${json.slice(1)} is not a number; write one, or leave the field out`);
    throw new ProblemError(at, `must be a number, not the text ${show(json)}; write it without quotes`);
  }
  if (typeof json !== 'number' || !Number.isFinite(json))
    throw new ProblemError(at, `must be a number, not ${show(json)}`);
  if (json < least) throw new ProblemError(at, `is ${json}; it must be ${least} or more`);
  if (json > most) {
    throw new ProblemError(
      at,
      most === 0.999999
        ? `is ${json}; it must be below 1 (0.9 means 90 %)`
        : `is ${json}; it must be ${most} or less`,
    );
  }
  return json;
}

function optional(json: unknown, at: string, least: number, most: number): number | undefined {
  return json === undefined || json === null ? undefined : number(json, at, least, most);
}

function positive(json: unknown, at: string): number {
  const value = number(json, at, 0, 1e9);
  if (value === 0) throw new ProblemError(at, 'is 0; it must be above 0');
  return value;
}

function choice<T extends string>(json: unknown, at: string, allowed: readonly T[]): T {
  if (!allowed.includes(json as T)) {
    throw new ProblemError(
      at,
      `must be one of ${allowed.map((a) => `"${a}"`).join(', ')}, not ${show(json)}`,
    );
  }
  return json as T;
}

function tagname(key: string, at: string): Tag {
  if (isTag(key)) return key;
  const near = nearestTag(key);
  throw new ProblemError(
    at,
    `${show(key)} is no INFOODS tagname known here${near ? `; did you mean "${near}"?` : '; see: npx pouchful foods show sr28:20038'}`,
  );
}

function ordered(min: number | undefined, max: number | undefined, at: string): void {
  if (min !== undefined && max !== undefined && min > max) {
    throw new ProblemError(`${at}/min`, `is ${min}, above "max" ${max}; swap them or change one`);
  }
}

function unique(items: readonly { id: string }[], at: string): void {
  const seen = new Set<string>();
  items.forEach(({ id }, i) => {
    if (seen.has(id))
      throw new ProblemError(`${at}/${i}/id`, `${show(id)} is used twice; give each its own id`);
    seen.add(id);
  });
}

function show(value: unknown): string {
  if (typeof value === 'string' && value.startsWith(NOT_A_NUMBER)) return value.slice(1);
  const json = JSON.stringify(value) ?? String(value);
  return json.length > 60 ? `${json.slice(0, 57)}...` : json;
}

function round(value: number): number {
  return Number(value.toFixed(6));
}

/** Drops absent fields, so that a problem written out again reads as it was written in. */
function strip<T extends object>(fields: T): T {
  return Object.fromEntries(Object.entries(fields).filter(([, v]) => v !== undefined)) as T;
}
