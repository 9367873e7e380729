/**
 * Reads problem.json: every field checked, every complaint names the field, the value and the way out.
 * Nothing is guessed; a field that the format does not know is left alone and listed.
 */
import type { Reference } from '../foods/reference.ts';
import { isTag, nearestTag, nutrient, type Tag } from '../nutrition/nutrients.ts';
import type { Aim, Beside, Ingredient, Objective, Override, Problem, Rule, Variation } from './problem.ts';
import { AIR_DRY_WATER, ProblemError } from './problem.ts';

/** More foods or rules than any mix has; a larger problem is a mistake, not a mix. */
const MOST_FOODS = 500;
const MOST_RULES = 500;
const MOST_AIMS = 20;

/** Marks a bare NaN or Infinity that stood where JSON wants a number. */
const NOT_A_NUMBER = '\u0000';

const DESCRIBED = ['id', 'name', 'ref', 'composition', 'sd', 'low', 'high', 'borrowed'];
const FIELDS = {
  problem: [
    'foods',
    'rules',
    'beside',
    'objective',
    'aims',
    'least_grams',
    'drop_one',
    'daily_grams',
    'confidence',
    'confidence_for',
    'variation',
    'cautions',
    'species',
    'batch_grams',
    'scale_step_grams',
  ],
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
  override: ['caution', 'note', 'on'],
  beside: [...DESCRIBED, 'share_of_ration', 'grams_a_day', 'share_min', 'share_max', 'counts_as'],
  rule: ['nutrient', 'ratio', 'group', 'food', 'count', 'min', 'max', 'on', 'basis', 'source'],
  count: ['group', 'at_least'],
  aim: ['aim', 'nutrient', 'group', 'food', 'on', 'give'],
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
  const daily = top.daily_grams === undefined ? undefined : positive(top.daily_grams, '/daily_grams');
  const beside = list(top.beside ?? [], '/beside', 50).map((b, i) =>
    besideFood(b, `/beside/${i}`, reference, daily, ignored),
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
    ...strip({
      aims:
        top.aims === undefined
          ? undefined
          : list(top.aims, '/aims', MOST_AIMS).map((a, i) => aim(a, `/aims/${i}`, foods, ignored)),
      least_grams: top.least_grams === undefined ? undefined : positive(top.least_grams, '/least_grams'),
      drop_one: flag(top.drop_one, '/drop_one'),
      daily_grams: daily,
    }),
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
function wholeProblem({ foods, beside, objective, aims, least_grams, batch_grams }: Problem): void {
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
  if (least_grams !== undefined && least_grams > batch_grams) {
    throw new ProblemError(
      '/least_grams',
      `is ${least_grams}, more than the whole batch of ${batch_grams} g; lower it or make a larger batch`,
    );
  }
  const cheap = aims?.findIndex((a) => a.aim === 'cheap') ?? -1;
  if (objective !== 'cheapest' && cheap < 0) return;
  const unpriced = foods.findIndex((f) => !f.refused && f.price_per_kg === undefined);
  if (unpriced >= 0) {
    throw new ProblemError(
      `/foods/${unpriced}/price_per_kg`,
      `is missing for ${show(foods[unpriced]!.id)}; ${objective === 'cheapest' ? '"cheapest"' : 'the aim "cheap"'} needs the price of every food`,
    );
  }
}

function ingredient(json: unknown, at: string, reference: Reference, ignored: string[]): Ingredient {
  const f = object(json, at, FIELDS.food, ignored);
  const min = optional(f.min, `${at}/min`, 0, 100);
  const max = optional(f.max, `${at}/max`, 0, 100);
  ordered(min, max, at);
  return strip({
    id: text(f.id, `${at}/id`),
    name: f.name === undefined ? undefined : text(f.name, `${at}/name`),
    ...figures(f, at, reference),
    group: f.group === undefined ? undefined : text(f.group, `${at}/group`),
    min,
    max,
    want: optional(f.want, `${at}/want`, 0, 100),
    price_per_kg: optional(f.price_per_kg, `${at}/price_per_kg`, 0, Number.MAX_VALUE),
    refused: flag(f.refused, `${at}/refused`),
    override: f.override === undefined ? undefined : override(f.override, `${at}/override`, ignored),
    if_used: optional(f.if_used, `${at}/if_used`, 0, 100),
    liked: flag(f.liked, `${at}/liked`),
    on_hand_grams: optional(f.on_hand_grams, `${at}/on_hand_grams`, 0, Number.MAX_VALUE),
  });
}

function override(json: unknown, at: string, ignored: string[]): Override {
  const o = object(json, at, FIELDS.override, ignored);
  const on = text(o.on, `${at}/on`);
  if (!/^\d{4}-\d{2}-\d{2}$/.test(on) || Number.isNaN(Date.parse(on)))
    throw new ProblemError(`${at}/on`, `must be a date such as "2026-03-14", not ${show(on)}`);
  return { caution: text(o.caution, `${at}/caution`), note: text(o.note, `${at}/note`), on };
}

function besideFood(
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
  const grams = optional(b.grams_a_day, `${at}/grams_a_day`, 0, Number.MAX_VALUE);
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
    id: text(b.id, `${at}/id`),
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
  const dry = typeof water === 'number' ? (100 - water) / (100 - AIR_DRY_WATER) : 1;
  const share = (100 * grams * dry) / daily;
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
  const subjects = ['nutrient', 'ratio', 'group', 'food', 'count'].filter((k) => r[k] !== undefined);
  if (subjects.length !== 1) {
    const found = subjects.length === 0 ? 'none' : subjects.join(' and ');
    throw new ProblemError(
      at,
      `must name one of "nutrient", "ratio", "group", "food" or "count", not ${found}`,
    );
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
  if (kind === 'count') return countRule(r, at, bounds, ignored);
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
  return { food: foodOfMix(r.food, `${at}/food`, foods), ...bounds };
}

function foodOfMix(json: unknown, at: string, foods: readonly Ingredient[]): string {
  const food = text(json, at);
  if (foods.some((f) => f.id === food)) return food;
  throw new ProblemError(at, `no food of the mix has the id ${show(food)}; use one of the ids under "foods"`);
}

function countRule(
  r: Fields,
  at: string,
  bounds: { min?: number; max?: number; source?: string; on?: string },
  ignored: string[],
): Rule {
  for (const field of ['on', 'basis'] as const) {
    if (r[field] !== undefined) {
      throw new ProblemError(`${at}/${field}`, 'foods are counted in the mix; leave it out');
    }
  }
  for (const side of ['min', 'max'] as const) {
    if (bounds[side] !== undefined && !Number.isInteger(bounds[side])) {
      throw new ProblemError(`${at}/${side}`, `is ${bounds[side]}; foods are counted whole`);
    }
  }
  const c = object(r.count, `${at}/count`, FIELDS.count, ignored);
  const at_least = optional(c.at_least, `${at}/count/at_least`, 0, 100);
  if (at_least === 0)
    throw new ProblemError(`${at}/count/at_least`, 'is 0, which every food has; write more than 0');
  if (bounds.min !== undefined && at_least === undefined) {
    throw new ProblemError(
      `${at}/count/at_least`,
      'is missing; say from which share on a food counts, in percent of the mix',
    );
  }
  const group = c.group === undefined ? undefined : text(c.group, `${at}/count/group`);
  return { count: strip({ group, at_least }), ...bounds } as Rule;
}

const SIMPLE_AIMS = ['liked', 'cupboard', 'few', 'few to buy', 'cheap'] as const;

function aim(json: unknown, at: string, foods: readonly Ingredient[], ignored: string[]): Aim {
  const a = object(json, at, FIELDS.aim, ignored);
  const kind = choice<Aim['aim']>(a.aim, `${at}/aim`, [...SIMPLE_AIMS, 'less', 'more']);
  const give = strip({ give: optional(a.give, `${at}/give`, 0, Number.MAX_VALUE) });
  const subjects = ['nutrient', 'group', 'food'].filter((k) => a[k] !== undefined);
  if (kind !== 'less' && kind !== 'more') {
    if (subjects.length > 0)
      throw new ProblemError(`${at}/${subjects[0]}`, `the aim ${show(kind)} names none; leave it out`);
    return { aim: kind, ...give };
  }
  if (subjects.length !== 1) {
    const found = subjects.length === 0 ? 'none' : subjects.join(' and ');
    throw new ProblemError(at, `must name one of "nutrient", "group" or "food", not ${found}`);
  }
  if (a.nutrient !== undefined) {
    const on = a.on === undefined ? undefined : choice<'mix' | 'ration'>(a.on, `${at}/on`, ['mix', 'ration']);
    const nutrient = tagname(text(a.nutrient, `${at}/nutrient`), `${at}/nutrient`);
    return { aim: kind, ...strip({ nutrient, on }), ...give };
  }
  if (a.group !== undefined) return { aim: kind, group: text(a.group, `${at}/group`), ...give };
  return { aim: kind, food: foodOfMix(a.food, `${at}/food`, foods), ...give };
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

function flag(json: unknown, at: string): boolean | undefined {
  if (json !== undefined && typeof json !== 'boolean')
    throw new ProblemError(at, `must be true or false, not ${show(json)}`);
  return json;
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
