/**
 * What is offered to a keeper whose mix cannot be: one further floor or ceiling after another, drawn from the targets,
 * is put on foods of the demonstration, and every food among the remedies is looked at.
 */
import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { cautionsFor } from '../../src/foods/cautions/find.ts';
import { Formulation } from '../../src/formulation/formulation.ts';
import type { NutrientRule, Problem, RatioRule } from '../../src/formulation/problem/problem.ts';
import type { Addition } from '../../src/formulation/problem/result.ts';
import { rulesFrom } from '../../src/formulation/problem/rules-from-profile.ts';
import { loadHighs } from '../../src/formulation/solve/highs.ts';
import { demoProblem } from '../../src/household/demo.ts';
import { loadReference } from '../../src/household/reference-file.ts';
import { PROFILES } from '../../src/targets/profiles.ts';
import { draws } from '../draws.ts';
import { randomFrom } from './problems.ts';

const reference = loadReference();
const highs = await loadHighs();
const TRIED = draws(10_000, 60);

/** Plain foods of USDA SR26: the source table lists no maker's row and no ready meal. */
const plain = new Set(
  gunzipSync(readFileSync(new URL('../../tables/usda-sr26/foods.tsv.gz', import.meta.url)))
    .toString()
    .split('\n')
    .slice(1)
    .map((line) => `sr28:${line.split('\t', 1)[0]?.padStart(5, '0')}`),
);

/** Kinds of food that nobody pours into a dry mix, by words of the title. */
const NOT_FED_DRY =
  /(?<!not )\b(oil|butter|sauce|soup|drink|beverage|juice|yeast|leaven|baking|extract|salted|with salt|sweetened|candied|syrup|cooked|boiled|canned|frozen|fresh|infant|gelatin|mix, dry|cereals? ready)\b/i;

const targets = PROFILES.flatMap((p) => rulesFrom(p)).filter(
  (r): r is NutrientRule | RatioRule => 'nutrient' in r || 'ratio' in r,
);

/** Some foods of the demonstration, with its rules and one end of one bound of a target moved by up to four times. */
function draw(seed: number): Problem {
  const random = randomFrom(seed);
  const { margin: _, ...demo } = demoProblem();
  const target = targets[Math.floor(random() * targets.length)];
  if (!target) throw new Error('no target bounds anything');
  const factor = 4 ** (2 * random() - 1);
  const { min, max, ...about } = target;
  const floor = max === undefined || (min !== undefined && random() < 0.5);
  const rule = floor ? { ...about, min: (min ?? 0) * factor } : { ...about, max: (max ?? 0) * factor };
  return {
    ...demo,
    foods: demo.foods.filter(() => random() < 0.6),
    rules: [...demo.rules.filter((r) => 'nutrient' in r), rule as NutrientRule],
    confidence: 0,
  };
}

test(`among the remedies of ${TRIED} mixes there is no maker’s food, none with a caution and none that is not fed dry`, () => {
  let offered = 0;
  for (let seed = 1; seed <= TRIED; seed++) {
    const problem = draw(seed);
    if (problem.foods.length === 0) continue;
    const formulation = new Formulation(problem, { reference, highs });
    const result = formulation.solve();
    formulation.dispose();
    if (result.status !== 'infeasible') continue;
    const added = result.remedies.filter((r): r is Addition => r.kind === 'add');
    for (const { food } of added) {
      offered++;
      const row = reference.get(food.ref);
      const what = `${food.ref} ${row?.tableName} (seed ${seed})`;
      expect(row && (row.plain || plain.has(row.ref)), what).toBe(true);
      expect(row?.composition.WATER, what).toBeLessThanOrEqual(20);
      expect(row?.tableName, what).not.toMatch(NOT_FED_DRY);
      const cautions = cautionsFor({ ...food, tableName: row?.tableName }, problem.species);
      expect(
        cautions.map((c) => c.caution.id),
        what,
      ).toEqual([]);
    }
    // Foods that keepers use stand before the rest of the tables.
    const usual = added.map(({ food }) => reference.get(food.ref)?.plain === true);
    expect(usual, `seed ${seed}`).toEqual([...usual].sort((a, b) => Number(b) - Number(a)));
  }
  expect(offered).toBeGreaterThan(TRIED / 4);
});
