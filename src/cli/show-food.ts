/** `pouchful foods show`: read the figures of a reference food. */
import { crudeProtein } from '../foods/crude-protein.ts';
import { whyMissing } from '../foods/missing-ref.ts';
import { loadReference } from '../household/reference-file.ts';
import { NUTRIENTS } from '../nutrition/nutrients.ts';
import { columns, figure, print } from './print.ts';

/** Prints every amount known of a food in so many grams, and names those unknown. @returns the exit code */
export function showFood(ref: string, opts: { per: number; json?: boolean }): number {
  const food = loadReference().get(ref);
  if (!food) throw new Error(whyMissing(ref));
  const scale = opts.per / 100;
  const known = NUTRIENTS.flatMap(({ tag, name, unit }) => {
    const per100 = food.composition[tag];
    return per100 === undefined ? [] : [{ tag, name, unit, value: per100 * scale }];
  });
  const crude = crudeProtein(food);
  const unknown = NUTRIENTS.filter((n) => food.composition[n.tag] === undefined);
  if (opts.json) {
    const amounts = Object.fromEntries(known.map(({ tag, value, unit }) => [tag, { value, unit }]));
    const { name, group, tableName, source } = food;
    print(
      JSON.stringify(
        {
          ref,
          name,
          group,
          tableName,
          source,
          grams: opts.per,
          amounts,
          protein_factor: food.proteinFactor,
          crude_protein: crude && {
            value: crude.value * scale,
            low: crude.low * scale,
            high: crude.high * scale,
            unit: 'g',
          },
          unknown: unknown.map((n) => n.tag),
        },
        null,
        2,
      ),
    );
    return 0;
  }
  print(`${food.name} (${food.ref})${food.tableName === food.name ? '' : `\n${food.tableName}`}`);
  print(`Source: ${food.source}`);
  print(`\nIn ${figure(opts.per)} g as fed:`);
  const rows = known.map((n) => {
    const sd = food.sd[n.tag];
    return [n.name, figure(n.value), n.unit, sd === undefined ? '' : `± ${figure(sd * scale)}`, n.tag];
  });
  print(columns(rows, [1]));
  if (crude) {
    const words = food.proteinFactor
      ? `${figure(crude.value * scale)} g; the table prints nitrogen x ${food.proteinFactor}`
      : `${figure(crude.low * scale)} to ${figure(crude.high * scale)} g; the table does not name its nitrogen factor`;
    print(`\nCrude protein, nitrogen x 6.25, as rules count it: ${words}`);
  }
  if (unknown.length > 0)
    print(`\nUnknown (not zero): ${unknown.map((n) => n.name.toLowerCase()).join(', ')}`);
  return 0;
}
