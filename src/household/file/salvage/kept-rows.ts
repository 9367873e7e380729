/** Which table a row is of, by what it holds: the page of a damaged file does not say. */
import { KINDS } from '../../model.ts';
import type { Value } from './cells.ts';

type Check = (value: Value) => boolean;
const text: Check = (v) => typeof v === 'string';
const textOrNone: Check = (v) => v === null || text(v);
const number: Check = (v) => typeof v === 'number' && Number.isSafeInteger(v) && v >= 0;
const kind: Check = (v) => (KINDS as readonly Value[]).includes(v);

/** The columns of the newest shape in their order, each with what may stand in it. */
export const TABLES = {
  households: { id: text, name: text, epoch: text, seq: number },
  records: { household: text, kind, id: text, version: number, seq: number, place: number, body: textOrNone },
  changes: {
    household: text,
    seq: number,
    kind,
    id: text,
    version: number,
    before: textOrNone,
    at: text,
    device: text,
    together: number,
  },
  writes: { household: text, write_id: text, kind, id: text, at: text },
  devices: {
    household: text,
    id: text,
    name: text,
    token_hash: text,
    created_at: text,
    seen_at: text,
    revoked_at: textOrNone,
  },
} as const satisfies Record<string, Record<string, Check>>;

export type TableName = keyof typeof TABLES;

/** The table whose row it is; undefined where it fits none. */
export function tableOf(values: readonly Value[]): TableName | undefined {
  for (const [name, columns] of Object.entries(TABLES)) {
    const checks: Check[] = Object.values(columns);
    if (checks.length === values.length && checks.every((fits, i) => fits(values[i])))
      return name as TableName;
  }
  return undefined;
}
