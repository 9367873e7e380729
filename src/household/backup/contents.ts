/** What a household's database holds, counted. */
import type Database from 'better-sqlite3';
import { tablesOf } from '../file/shape.ts';

export interface Contents {
  /** Step of its shape. */
  readonly step: number;
  /** Rows of each table. */
  readonly tables: ReadonlyMap<string, number>;
  /** Records whose body is no JSON: shown to the keeper as unreadable, and no reason to have no backup. */
  readonly unreadable: number;
  /** Number of its last change and the run of numbers it is of; undefined in shapes before there were any. */
  readonly change: { readonly epoch: string; readonly seq: number } | undefined;
}

export function contentsOf(db: Database.Database): Contents {
  const names = [...tablesOf(db).keys()];
  const count = (name: string) => db.prepare(`SELECT count(*) FROM "${name}"`).pluck().get() as number;
  return {
    step: db.pragma('user_version', { simple: true }) as number,
    tables: new Map(names.map((name) => [name, count(name)])),
    unreadable: names.includes('records') ? unreadableIn(db) : 0,
    change: names.includes('households') ? lastChange(db) : undefined,
  };
}

/** The household's last change, of a file that has them numbered. */
export function lastChange(db: Database.Database): Contents['change'] {
  return db.prepare('SELECT epoch, seq FROM households LIMIT 1').get() as Contents['change'];
}

function unreadableIn(db: Database.Database): number {
  const bad = 'SELECT count(*) FROM records WHERE body IS NOT NULL AND NOT json_valid(body)';
  return db.prepare(bad).pluck().get() as number;
}

/** Whether two of them hold as much. */
export function sameContents(a: Contents, b: Contents): boolean {
  const facts = ({ step, tables, unreadable, change }: Contents) =>
    JSON.stringify([step, [...tables], unreadable, change?.epoch, change?.seq]);
  return facts(a) === facts(b);
}
