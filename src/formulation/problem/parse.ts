/**
 * Reads problem.json: every field checked, every complaint names the field, the value and the way out.
 * Nothing is guessed; a field that the format does not know is left alone and listed.
 */
import type { Reference } from '../../foods/reference.ts';
import { besideFood, ingredient } from './parse-foods.ts';
import { aim, rule } from './parse-rules.ts';
import { type Objective, type Problem, ProblemError, type Variation } from './problem.ts';
import {
  choice,
  flag,
  LONGEST,
  list,
  number,
  object,
  positive,
  show,
  strip,
  text,
  unique,
} from './read-json.ts';

/** More foods or rules than any mix has; a larger problem is a mistake, not a mix. */
const MOST_FOODS = 500;
const MOST_RULES = 500;
const MOST_BESIDE = 50;
const MOST_AIMS = 20;
const MOST_NOT_OFFERED = 2000;

/** More steps than any scale has over its whole range (common practice, no source). */
const MOST_STEPS = 1e8;

const FIELDS = [
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
  'margin',
  // A record of what the keeper changed: it binds nothing.
  'own_limits',
  'variation',
  'cautions',
  'species',
  'not_offered',
  'batch_grams',
  'scale_step_grams',
];

/**
 * Checks a parsed problem.
 * @returns the problem with every default filled in, and pointers of fields that were not read
 * @throws ProblemError naming the first field that is wrong
 */
export function parseProblem(json: unknown, reference: Reference): { problem: Problem; ignored: string[] } {
  const ignored: string[] = [];
  const top = object(json, '', FIELDS, ignored);
  const foods = list(top.foods, '/foods', MOST_FOODS).map((f, i) =>
    ingredient(f, `/foods/${i}`, reference, ignored),
  );
  if (foods.length === 0) throw new ProblemError('/foods', 'is an empty list; name at least one food');
  const daily = top.daily_grams === undefined ? undefined : positive(top.daily_grams, '/daily_grams');
  const beside = list(top.beside, '/beside', MOST_BESIDE, []).map((b, i) =>
    besideFood(b, `/beside/${i}`, reference, daily, ignored),
  );
  unique(foods, '/foods');
  unique(beside, '/beside');
  for (const [i, { id }] of beside.entries()) {
    if (foods.some((f) => f.id === id))
      throw new ProblemError(`/beside/${i}/id`, `${show(id)} is also a food of the mix; give it another id`);
  }
  const rules = list(top.rules, '/rules', MOST_RULES, []).map((r, i) =>
    rule(r, `/rules/${i}`, foods, ignored),
  );
  const objective = choice<Objective>(or(top.objective, 'nearest'), '/objective', [
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
    confidence: number(or(top.confidence, 0), '/confidence', 0, 0.999999),
    ...strip({
      margin: top.margin === undefined ? undefined : number(top.margin, '/margin', 0, 0.999999),
      confidence_for: oneOf<'each' | 'all'>('confidence_for', ['each', 'all']),
      variation: oneOf<Variation>('variation', ['given', 'published']),
      cautions: oneOf<'apply' | 'report'>('cautions', ['apply', 'report']),
      species: top.species === undefined ? undefined : text(top.species, '/species', LONGEST.words),
      not_offered:
        top.not_offered === undefined
          ? undefined
          : list(top.not_offered, '/not_offered', MOST_NOT_OFFERED).map((f, i) =>
              text(f, `/not_offered/${i}`),
            ),
    }),
    batch_grams: positive(or(top.batch_grams, 300), '/batch_grams'),
    scale_step_grams: positive(or(top.scale_step_grams, 1), '/scale_step_grams'),
  };
  wholeProblem(problem);
  return { problem, ignored };
}

/** A field's value, or its default where it is left out; null is no way to leave a field out. */
function or(value: unknown, ifLeftOut: unknown): unknown {
  return value === undefined ? ifLeftOut : value;
}

/** Checks that need more than one field. */
function wholeProblem({
  foods,
  beside,
  objective,
  aims,
  least_grams,
  batch_grams,
  scale_step_grams,
}: Problem): void {
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
  if (batch_grams / scale_step_grams > MOST_STEPS) {
    throw new ProblemError(
      '/scale_step_grams',
      `is ${scale_step_grams}, too small a part of the batch of ${batch_grams} g; no scale tells more than ${MOST_STEPS} steps apart`,
    );
  }
  const cheap = aims?.findIndex((a) => a.aim === 'cheap') ?? -1;
  if (objective !== 'cheapest' && cheap < 0) return;
  for (const [i, { id, refused, price_per_kg }] of foods.entries()) {
    if (refused || price_per_kg !== undefined) continue;
    throw new ProblemError(
      `/foods/${i}/price_per_kg`,
      `is missing for ${show(id)}; ${objective === 'cheapest' ? '"cheapest"' : 'the aim "cheap"'} needs the price of every food`,
    );
  }
}

function round(value: number): number {
  return Number(value.toFixed(6));
}
