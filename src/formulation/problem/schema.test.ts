/** The field-by-field description of problem.json has every field of the schema. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import {
  aimSchema,
  besideSchema,
  countRuleSchema,
  groupRuleSchema,
  ingredientSchema,
  nutrientRuleSchema,
  overrideSchema,
  problemSchema,
  ratioRuleSchema,
  shareRuleSchema,
} from './schema.ts';

const text = readFileSync(new URL('../../../docs/problem.md', import.meta.url), 'utf8');

/** The part of the text under a heading. */
const under = (...headings: string[]) =>
  headings.map((heading) => text.split(`## ${heading}\n`)[1]?.split('\n## ')[0] ?? '').join('');

const FOOD = 'A food, in the mix or beside it';

test.each<readonly [string, object, string]>([
  ['the problem', problemSchema.shape, under('The problem')],
  ['a food of the mix', ingredientSchema.shape, under(FOOD, 'A food of the mix')],
  ['a food beside it', besideSchema.shape, under(FOOD, 'A food beside the mix')],
  ['an override', overrideSchema.shape, under('A food of the mix')],
  ...[nutrientRuleSchema, ratioRuleSchema, groupRuleSchema, shareRuleSchema, countRuleSchema].map(
    (schema) => ['a rule', schema.shape, under('A rule')] as const,
  ),
  ['what is counted', countRuleSchema.shape.count.shape, under('A rule')],
  ...aimSchema.options.map((schema) => ['an aim', schema.shape, under('An aim')] as const),
])('%s: %o', (_name, shape, described) => {
  const missing = Object.keys(shape).filter((field) => !described.includes(`\`${field}\``));
  expect(missing).toEqual([]);
});

test('it names no field that the schema does not have', () => {
  const fields = new Set(
    [
      problemSchema.shape,
      ingredientSchema.shape,
      besideSchema.shape,
      overrideSchema.shape,
      nutrientRuleSchema.shape,
      ratioRuleSchema.shape,
      countRuleSchema.shape,
      countRuleSchema.shape.count.shape,
      ...aimSchema.options.map((schema) => schema.shape),
      shareRuleSchema.shape,
    ].flatMap((shape) => Object.keys(shape)),
  );
  const named = [...text.matchAll(/^\| ((?:`\w+`(?:, )?)+) \|/gm)].flatMap((row) => [
    ...row[1]!.matchAll(/\w+/g),
  ]);
  expect(named.map(([field]) => field).filter((field) => !fields.has(field))).toEqual([]);
  expect(named.length).toBeGreaterThan(40);
});
