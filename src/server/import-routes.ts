/** Bringing files in: one request says what would change, another writes just that. */
import { createHash } from 'node:crypto';
import { setImmediate } from 'node:timers/promises';
import { createRoute, type OpenAPIHono, z } from '@hono/zod-openapi';
import { nameOf } from '../household/exchange/compare.ts';
import { planningImport } from '../household/exchange/plan-import.ts';
import type { Entry } from '../household/exchange/read-household.ts';
import { readPart } from '../household/exchange/read-part.ts';
import type { ImportCheck, PartCheck, RecordChange } from '../household/exchange/wire.ts';
import type { Fault } from '../household/shape/fault-words.ts';
import { errorSchema } from '../household/shape/schemas.ts';
import { type Store, StoreError } from '../household/store.ts';
import { words } from '../words/words.ts';
import type { CallerEnv } from './caller.ts';
import { json } from './json.ts';
import { byCaller } from './record-routes.ts';

const modes = z.enum(['replace', 'update', 'add']);
const token = z.string().length(64);
const refusals = {
  400: json(
    errorSchema.extend({ faults: z.array(errorSchema).optional() }),
    'The file cannot be taken in; nothing was written',
  ),
  409: json(errorSchema, 'The household or the file is another than was looked at; nothing was written'),
  413: json(errorSchema, 'The file is too large'),
};

export function importRoutes(app: OpenAPIHono<CallerEnv>): void {
  const one = oneAtATime();
  for (const step of ['check', 'write'] as const)
    app.openapi(
      createRoute({
        method: 'post',
        path: step === 'check' ? '/api/import/check' : '/api/import',
        request: { query: z.object({ mode: modes, ...(step === 'write' && { token }) }) },
        responses: {
          200: json(
            z.looseObject({ token: z.string() }),
            step === 'check' ? 'What would change' : 'Written as it was shown',
          ),
          ...refusals,
        },
      }),
      async (c) => {
        const { mode, token: shown } = c.req.valid('query') as {
          mode: z.infer<typeof modes>;
          token?: string;
        };
        const caller = c.get('caller');
        return one(async () => {
          const text = await c.req.text();
          const { seq, entries, here } = await standing(caller.store);
          const plan = await unhurried(planningImport(text, entries, mode));
          if (!plan.ok) return c.json(refused(plan.faults), 400);
          const now = tokenOf([here, mode, text]);
          if (step === 'write') {
            if (shown !== now) throw changedSince();
            await caller.store.bringIn(
              {
                put: plan.put,
                remove: plan.remove,
                ...(mode === 'replace' && { order: plan.entries }),
                seen: seq,
              },
              byCaller(caller),
            );
          }
          const check: ImportCheck = {
            token: now,
            counts: countsOf(plan.changes, plan.same),
            changes: firstOf(plan.changes),
            leftOut: plan.leftOut.length,
          };
          return c.json(check as never, 200);
        });
      },
    );
  for (const step of ['check', 'write'] as const)
    app.openapi(
      createRoute({
        method: 'post',
        path: step === 'check' ? '/api/import/part/check' : '/api/import/part',
        request: {
          query: z.object({
            accept: z
              .union([z.string(), z.array(z.string())])
              .optional()
              .openapi({ description: 'Ids of the choices of the sender that are taken over' }),
            ...(step === 'write' && { token }),
          }),
        },
        responses: {
          200: json(
            z.looseObject({ token: z.string() }),
            step === 'check' ? 'What would come in' : 'Written as it was shown',
          ),
          ...refusals,
        },
      }),
      async (c) => {
        const { accept = [], token: shown } = c.req.valid('query') as {
          accept?: string | string[];
          token?: string;
        };
        const accepted = new Set(typeof accept === 'string' ? [accept] : accept);
        const caller = c.get('caller');
        return one(async () => {
          const text = await c.req.text();
          const { seq, here } = await standing(caller.store);
          const by = byCaller(caller);
          const reading = readPart(text, {
            here: await caller.store.household(),
            accepted,
            newId: (of) => tokenOf([of, text]).slice(0, 32),
            now: by.at,
          });
          if (!reading.ok) return c.json(refused(reading.faults), 400);
          const { put, same, choices, notes } = reading.arrival;
          const now = tokenOf([here, text]);
          if (step === 'write') {
            if (shown !== now) throw changedSince();
            await caller.store.bringIn({ put, remove: [], seen: seq }, by);
          }
          const check: PartCheck = {
            token: now,
            coming: put.map((e) => ({ kind: e.kind, id: e.id, name: nameOf(e) })),
            same,
            choices,
            notes,
          };
          return c.json(check as never, 200);
        });
      },
    );
}

/** What the household holds that can be read, and a text that changes whenever it does. */
async function standing(store: Store): Promise<{ seq: number; here: string; entries: Entry[] }> {
  const { seq, epoch } = await store.newest();
  const records = await store.everything();
  const entries = records.flatMap((r): Entry[] => (r.body ? [{ kind: r.kind, id: r.id, body: r.body }] : []));
  return { seq, here: `${epoch} ${seq}`, entries };
}

function tokenOf(parts: readonly string[]): string {
  const hash = createHash('sha256');
  for (const part of parts) hash.update(`${part.length}:`).update(part);
  return hash.digest('hex');
}

function changedSince(): StoreError {
  return new StoreError('changed', '', words().access.refusal.notAsLookedAt);
}

function refused(faults: readonly Fault[]) {
  const [first] = faults;
  return {
    field: first?.field ?? '',
    message: first?.message ?? words().access.refusal.fileRefused,
    faults: [...faults],
  };
}

function countsOf(changes: readonly RecordChange[], same: number): ImportCheck['counts'] {
  const of = (what: RecordChange['what']) => changes.filter((c) => c.what === what).length;
  return { new: of('new'), different: of('different'), gone: of('gone'), kept: of('kept'), same };
}

/** Characters of all changes that an answer lists. */
const MOST_LISTED = 120_000;

/** What goes and what changes first, as much as an answer holds. */
function firstOf(changes: readonly RecordChange[]): RecordChange[] {
  const order = ['gone', 'different', 'kept', 'new'];
  const listed: RecordChange[] = [];
  let room = MOST_LISTED;
  for (const change of [...changes].sort((a, b) => order.indexOf(a.what) - order.indexOf(b.what))) {
    room -= JSON.stringify(change).length;
    if (room < 0) break;
    listed.push(change);
  }
  return listed;
}

/** Carries work through in parts, and lets others be answered between them. */
async function unhurried<T>(work: Generator<void, T>): Promise<T> {
  for (;;) {
    const { done, value } = work.next();
    if (done) return value as T;
    await setImmediate();
  }
}

/** A large file takes much memory while it is looked at: one after the other. */
function oneAtATime(): <T>(work: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve();
  return (work) => {
    const next = last.then(work, work);
    last = next.catch(() => {});
    return next;
  };
}
