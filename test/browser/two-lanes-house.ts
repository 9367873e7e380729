/** A household whose mix takes long to prove. */
import type { Ingredient } from '../../src/formulation/problem/problem.ts';
import { demoHousehold } from '../../src/household/demo.ts';
import type { Household } from '../../src/household/model.ts';
import { loadReference } from '../../src/household/reference-file.ts';

/** So many foods that it takes a machine long to prove which of them are best. */
const FOODS = 100;

/** The demonstration with many more foods, of which at least twelve are to be used, each with a least share of its own. */
export function countingHousehold(): Household {
  const house = demoHousehold();
  const reference = loadReference();
  return {
    ...house,
    mixes: house.mixes.map((mix) => {
      const { margin: _, ...problem } = mix.problem;
      const listed = new Set(problem.foods.map((f) => f.ref));
      const more: Ingredient[] = reference
        .plainFoods()
        .filter(({ ref, composition: c }) => !listed.has(ref) && c.WATER !== undefined && c.WATER < 15)
        .filter(({ composition: c }) =>
          (['PROCNT', 'FAT', 'FIBTG'] as const).every((t) => c[t] !== undefined),
        )
        .slice(0, FOODS - problem.foods.length)
        .map(({ ref, group }, i) => ({ id: `more-${i}`, ref, ...(group && { group }) }));
      const foods = [...problem.foods, ...more].map((f, i) => ({ ...f, if_used: 2 + ((i * 13) % 7) * 0.3 }));
      const rules = [...problem.rules, { count: { at_least: 4 }, min: 12 }];
      return { ...mix, problem: { ...problem, foods, rules, objective: 'varied' as const } };
    }),
  };
}
