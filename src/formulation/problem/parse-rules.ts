/** Rules and aims of a problem, read and checked. */
import type { Aim, Ingredient, Rule } from './problem.ts';
import { ProblemError } from './problem.ts';
import {
  choice,
  type Fields,
  LONGEST,
  MOST,
  object,
  optional,
  ordered,
  show,
  strip,
  tagname,
  text,
} from './read-json.ts';

const FIELDS = {
  rule: ['nutrient', 'ratio', 'group', 'food', 'count', 'min', 'max', 'on', 'basis', 'source'],
  count: ['group', 'at_least'],
  aim: ['aim', 'nutrient', 'group', 'food', 'on', 'give'],
};

export function rule(json: unknown, at: string, foods: readonly Ingredient[], ignored: string[]): Rule {
  const r = object(json, at, FIELDS.rule, ignored);
  const subjects = ['nutrient', 'ratio', 'group', 'food', 'count'].filter((k) => r[k] !== undefined);
  const [kind, ...others] = subjects;
  if (kind === undefined || others.length > 0) {
    const found = kind === undefined ? 'none' : subjects.join(' and ');
    throw new ProblemError(
      at,
      `must name one of "nutrient", "ratio", "group", "food" or "count", not ${found}`,
    );
  }
  // A share ends at 100; a nutrient bound above what is possible is odd, but it says something.
  const most = kind === 'group' || kind === 'food' ? 100 : MOST;
  const bounds = strip({
    min: optional(r.min, `${at}/min`, 0, most),
    max: optional(r.max, `${at}/max`, 0, most),
    source: r.source === undefined ? undefined : text(r.source, `${at}/source`, LONGEST.words),
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
    const [top, bottom] = r.ratio;
    const read = (t: unknown, field: string) => tagname(text(t, field), field);
    return { ratio: [read(top, `${at}/ratio/0`), read(bottom, `${at}/ratio/1`)], ...bounds };
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

export function aim(json: unknown, at: string, foods: readonly Ingredient[], ignored: string[]): Aim {
  const a = object(json, at, FIELDS.aim, ignored);
  const kind = choice<Aim['aim']>(a.aim, `${at}/aim`, [...SIMPLE_AIMS, 'less', 'more']);
  const give = strip({ give: optional(a.give, `${at}/give`, 0, MOST) });
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
