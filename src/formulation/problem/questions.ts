/** What is odd in a problem and yet possible: it is asked, and counts as it stands. */
import { checkFigures } from '../../foods/label/checks.ts';
import type { Reference, ReferenceFood } from '../../foods/reference.ts';
import { fedFigures, fieldOf } from './fed-figures.ts';
import type { Beside, Ingredient, Problem } from './problem.ts';
import type { Statement } from './result.ts';

/** Every doubt about the figures of foods, and about rules and aims that ask for nothing; each with its pointer. */
export function questionsOn(problem: Problem, reference: Reference): Statement[] {
  return [
    ...problem.foods.flatMap((food, i) => onFigures(food, `/foods/${i}`, reference)),
    ...problem.beside.flatMap((food, i) => onFigures(food, `/beside/${i}`, reference)),
    ...problem.rules.flatMap((rule, i) => {
      const at = `/rules/${i}`;
      const group = 'group' in rule ? rule.group : 'count' in rule ? rule.count.group : undefined;
      return [
        ...(rule.min === undefined && rule.max === undefined
          ? [
              {
                pointer: at,
                sentence: 'This rule has neither "min" nor "max", so it asks for nothing; write one.',
              },
            ]
          : []),
        ...onGroup(group, 'count' in rule ? `${at}/count/group` : `${at}/group`, problem),
      ];
    }),
    ...(problem.aims ?? []).flatMap((aim, i) =>
      onGroup('group' in aim ? aim.group : undefined, `/aims/${i}/group`, problem),
    ),
  ];
}

/** Figures that the keeper wrote, in so far as the label reader would ask about them too. */
function onFigures(food: Ingredient | Beside, at: string, reference: Reference): Statement[] {
  if (!food.composition && !food.low && !food.high) return [];
  const ref = food.ref === undefined ? undefined : reference.get(food.ref);
  const warnings = checkFigures(fedFigures(food, ref), { name: food.name, group: ref?.group });
  return [
    ...warnings.map(({ tags, message }) => ({
      pointer: fieldOf(food, at, tags),
      sentence: `${food.name ?? ref?.name ?? food.id}: ${message}`,
    })),
    ...onMoisture(food, at, ref),
  ];
}

/** A table's figures cannot follow the moisture as fed where the table has none. */
function onMoisture(
  { composition }: Ingredient | Beside,
  at: string,
  ref: ReferenceFood | undefined,
): Statement[] {
  if (!ref || composition?.WATER === undefined || ref.composition.WATER !== undefined) return [];
  const sentence = `The table has no moisture for ${ref.name}, so its other amounts count as they stand; give those that matter in "composition".`;
  return [{ pointer: `${at}/composition/WATER`, sentence }];
}

function onGroup(group: string | undefined, pointer: string, { foods }: Problem): Statement[] {
  const groups = [...new Set(foods.flatMap((f) => f.group ?? []))];
  if (group === undefined || groups.includes(group)) return [];
  const there =
    groups.length > 0 ? `; there are ${groups.map((g) => `"${g}"`).join(', ')}` : '; no food has one';
  return [{ pointer, sentence: `No food is in the group "${group}", so nothing is counted${there}.` }];
}
