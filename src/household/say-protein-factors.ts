/**
 * Own foods that were taken from a table before figures named their nitrogen factor. The table's protein stood among
 * them as though it were crude protein; the factor is written beside it, and what follows from it is reckoned anew.
 */
import type Database from 'better-sqlite3';
import { type Evidenced, withEvidence } from '../foods/evidence.ts';
import type { Composition } from '../foods/food.ts';
import type { Reference } from '../foods/reference.ts';
import type { FoodSource } from '../foods/sources/source.ts';
import { loadReference } from './reference-file.ts';

interface FoodRow {
  readonly id: string;
  readonly food_group: string | null;
  readonly composition: string;
  readonly sd: string;
  readonly evidence: string | null;
}

interface MixRow {
  readonly id: string;
  readonly problem: string;
}

/** One step of the migrations. Foods of records (batches, versions of a mix) stay as they were weighed out. */
export function sayProteinFactors(db: Database.Database): void {
  const changed = new Map<string, Pick<Evidenced, 'composition' | 'sd'>>();
  const rows = db.prepare('SELECT id, food_group, composition, sd, evidence FROM foods').all() as FoodRow[];
  const update = db.prepare(
    'UPDATE foods SET composition = ?, sd = ?, low = ?, high = ?, evidence = ? WHERE id = ?',
  );
  for (const row of rows) {
    const food = withFactors(row);
    if (!food) continue;
    changed.set(row.id, food);
    const { composition, sd, low = {}, high = {}, evidence } = food;
    update.run(...[composition, sd, low, high, evidence].map((part) => JSON.stringify(part)), row.id);
  }
  if (changed.size === 0) return;
  const write = db.prepare('UPDATE mixes SET problem = ? WHERE id = ?');
  for (const { id, problem } of db.prepare('SELECT id, problem FROM mixes').all() as MixRow[])
    write.run(JSON.stringify(withFoods(JSON.parse(problem), changed)), id);
}

/** The food with factors beside the figures it took from a table; undefined where it took none. */
function withFactors({ food_group, composition, sd, evidence }: FoodRow): Evidenced | undefined {
  if (!evidence) return undefined;
  const kept = JSON.parse(evidence) as NonNullable<Evidenced['evidence']>;
  const sources = kept.sources?.map(withFactor);
  if (!sources || sources.every((s, i) => s === kept.sources?.[i])) return undefined;
  const food: Evidenced = {
    composition: JSON.parse(composition) as Composition,
    sd: JSON.parse(sd) as Composition,
    ...(food_group !== null && { group: food_group as Evidenced['group'] }),
  };
  return withEvidence(food, { ...kept, sources });
}

function withFactor(source: FoodSource): FoodSource {
  if (source.ref === undefined || source.composition.PROCNT === undefined) return source;
  if (source.proteinFactor !== undefined) return source;
  const reference: Reference = loadReference();
  const proteinFactor = reference.get(source.ref)?.proteinFactor;
  return proteinFactor === undefined ? source : { ...source, proteinFactor };
}

interface Named {
  readonly id: string;
  readonly composition?: Composition;
  readonly sd?: Composition;
}

/** A mix's problem with the protein of these foods as it is now. */
function withFoods(
  problem: { readonly foods: readonly Named[]; readonly beside: readonly Named[] },
  changed: ReadonlyMap<string, Pick<Evidenced, 'composition' | 'sd'>>,
) {
  const brought = (food: Named): Named => {
    const now = changed.get(food.id);
    if (!now || food.composition?.PROCNT === undefined) return food;
    const { PROCNT } = now.composition;
    const spread = now.sd.PROCNT;
    return {
      ...food,
      composition: { ...food.composition, PROCNT },
      ...(food.sd && spread !== undefined && { sd: { ...food.sd, PROCNT: spread } }),
    };
  };
  return { ...problem, foods: problem.foods.map(brought), beside: problem.beside.map(brought) };
}
