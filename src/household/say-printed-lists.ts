/**
 * Mixes made before the printed lists of own foods went into their problems: the lists are put beside the foods, so that
 * what must not be fed stays out. Foods of batches stay as they were weighed out.
 */
import { randomUUID } from 'node:crypto';
import type Database from 'better-sqlite3';
import type { Mix, MixVersion, OwnFood } from './model.ts';
import { withPrintedLists } from './reckon/foods/printed-lists.ts';

interface Row {
  readonly household: string;
  readonly kind: string;
  readonly id: string;
  readonly body: string;
}

/** One step of the migrations. */
export function sayPrintedLists(db: Database.Database): void {
  const rows = db
    .prepare(
      "SELECT household, kind, id, body FROM records WHERE kind IN ('foods', 'mixes', 'versions') AND body IS NOT NULL ORDER BY seq",
    )
    .all() as Row[];
  const next = db.prepare('UPDATE households SET seq = seq + 1, epoch = ? WHERE id = ? RETURNING seq');
  const write = db.prepare(
    'UPDATE records SET body = ?, version = version + 1, seq = ? WHERE household = ? AND kind = ? AND id = ?',
  );
  const foods = rows.flatMap((row) => {
    const food = row.kind === 'foods' ? read<OwnFood>(row) : undefined;
    return food ? [{ household: row.household, food }] : [];
  });
  for (const row of rows) {
    const kept = row.kind === 'foods' ? undefined : read<Mix | MixVersion>(row);
    if (!kept?.problem?.foods || !kept.problem.beside) continue;
    const own = foods.filter((f) => f.household === row.household).map((f) => f.food);
    const problem = withPrintedLists(kept.problem, own);
    if (problem === kept.problem) continue;
    // Pages that held the mix as it was fetch it anew, and put upon it what waits there.
    const { seq } = next.get(randomUUID(), row.household) as { seq: number };
    write.run(JSON.stringify({ ...kept, problem }), seq, row.household, row.kind, row.id);
  }
}

/** A record that cannot be read is left to those who mend it. */
function read<T>({ body }: Row): T | undefined {
  try {
    return JSON.parse(body) as T;
  } catch {
    return undefined;
  }
}
