/**
 * Two pages and two clients of the HTTP interface change the same mix, animal, lot, batch and food of a real server, their
 * requests and answers drawn in any order, some answers lost: no change that was answered is written over by who had not
 * seen it, unless both were shown; every pour is in the batch once; and every page ends showing what the store holds.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { demoHousehold } from '../../src/household/demo.ts';
import type { Kept, Kind } from '../../src/household/model.ts';
import type { KeptRecord, RecordsPage } from '../../src/household/records.ts';
import { type FileStore, openStore } from '../../src/household/store.ts';
import type { Batch, Pour } from '../../src/kitchen/model.ts';
import { createApp } from '../../src/server/app.ts';
import { fetchRecords, sendChange } from '../../src/web/store/api.ts';
import { ApiError } from '../../src/web/store/api-error.ts';
import type { Change } from '../../src/web/store/sync/change.ts';
import { Keeper } from '../../src/web/store/sync/keeper.ts';
import { draws } from '../draws.ts';
import { batchOf, lotOf } from '../kitchen/cupboards.ts';
import { Ledger } from './ledger.ts';

type Fields = Record<string, unknown>;
type Value = string | number | undefined;
/** What is changed of each record, and how a value gets there. */
const PLACES = {
  mixes: { id: 'demo-mix', fields: ['name', 'shares'] },
  animals: { id: 'demo-animal', fields: ['name', 'species'] },
  lots: { id: 'lot', fields: ['name', 'seller'] },
  foods: { id: 'demo-pellet', fields: ['name', 'source'] },
  batches: { id: 'bowl', fields: ['name'] },
} as const satisfies Partial<Record<Kind, { id: string; fields: readonly string[] }>>;
type Place = keyof typeof PLACES;
const KINDS = Object.keys(PLACES) as Place[];
const demo = demoHousehold();
/** The food whose share stands for all shares: they are taken whole from one side. */
const FOOD = 'maize';

const get = (body: unknown, field: string): Value => {
  const value = (body as Fields | null)?.[field];
  return (field === 'shares' ? (value as Fields | undefined)?.[FOOD] : value) as Value;
};
function put<K extends Place>(body: Kept<K>, field: string, n: number): { next: Kept<K>; value: Value } {
  const value = field === 'shares' ? n / 1000 : `value ${n}`;
  const shares = (body as unknown as Fields).shares as Fields | undefined;
  const next = { ...body, [field]: field === 'shares' ? { ...shares, [FOOD]: value } : value };
  return { next: next as Kept<K>, value };
}

const step = fc.record({
  do: fc.constantFrom(
    'edit',
    'edit',
    'edit',
    'pour',
    'carry',
    'carry',
    'carry',
    'answer',
    'answer',
    'answer',
    'pull',
    'choose',
    'wait',
  ),
  /** 0 and 1 are pages, 2 and 3 clients. */
  who: fc.nat(3),
  kind: fc.constantFrom(...KINDS),
  /** Which field, which of several requests, which side: taken of however many there are. */
  which: fc.nat(20),
  lost: fc.nat(5).map((n) => n === 0),
});

/** A request of a page: carried to the server when that is drawn, answered when that is drawn. */
interface Held {
  carry(): Promise<void>;
  answer?(lost: boolean): void;
}

class World {
  readonly ledger = new Ledger();
  readonly held: Held[][] = [[], []];
  readonly pages: Keeper[];
  /** Records as each client last read them. */
  readonly read: Map<string, KeptRecord>[] = [new Map(), new Map()];
  readonly pours: string[] = [];
  /** How often the keeper was asked, and a client told that a record had changed. */
  readonly met = { asked: 0, told: 0 };
  readonly app: ReturnType<typeof createApp>;
  #seq = 0;
  #n = 0;
  readonly #known = new Map<string, KeptRecord['body']>();

  readonly store: FileStore;

  constructor(store: FileStore) {
    this.store = store;
    this.app = createApp({ store, webDir: 'nowhere', referenceFile: 'nowhere' });
    vi.stubGlobal('navigator', { userAgent: 'a test' });
    vi.stubGlobal('fetch', (path: string, init?: RequestInit) => this.app.request(path, init));
    this.pages = [0, 1].map((n) => {
      const stored = new Map<string, string>();
      return new Keeper({
        page: (after, upTo, of) => this.#hold(n, () => fetchRecords(after, upTo, of)),
        send: (change) => this.#hold(n, () => sendChange(change, false)),
        storage: {
          getItem: (key) => stored.get(key) ?? null,
          setItem: (key, value) => stored.set(key, value) !== undefined,
          removeItem: (key) => void stored.delete(key),
          keys: (prefix) => [...stored.keys()].filter((key) => key.startsWith(prefix)),
        },
        tab: `page-${n}`,
        newId: () => `page-${n}-${++this.#n}`,
        now: () => '2026-11-28T12:00:00.000Z',
      });
    });
  }

  #hold<T>(n: number, ask: () => Promise<T>): Promise<T> {
    return new Promise<T>((done, fail) => {
      const held: Held = {
        carry: async () => {
          const answer = await ask().then(
            (value) => () => done(value),
            (error: unknown) => () => fail(error),
          );
          held.answer = (lost) => (lost ? fail(new ApiError(0, 'no network')) : answer());
          await this.noted();
        },
      };
      this.held[n]?.push(held);
    });
  }

  /** Notes in the ledger what changed on the server. */
  async noted(): Promise<void> {
    const page = await this.store.records({ after: this.#seq });
    this.#seq = page.seq;
    for (const { kind, id, body } of page.records) {
      if (!(kind in PLACES)) continue;
      const before = this.#known.get(kind);
      for (const field of PLACES[kind as Place].fields)
        this.ledger.stands(
          `${kind} ${id} ${field}`,
          get(body, field),
          get(before, field),
          before === undefined,
        );
      this.#known.set(kind, body);
    }
  }

  edit(who: number, kind: Place, which: number): Promise<void> | undefined {
    const { id, fields } = PLACES[kind];
    const field = fields[which % fields.length] ?? 'name';
    const at = `${kind} ${id} ${field}`;
    const n = ++this.#n;
    const page = this.pages[who];
    if (!page) return this.#editByClient(who, kind, field, n);
    const base = page.shown(kind, id);
    if (!base) return undefined;
    const { next, value } = put(base, field, n);
    this.ledger.set(who, at, value, get(base, field));
    page.write(kind, id, next, { base, ...(kind === 'mixes' && { joins: true }) });
    return undefined;
  }

  /** A client reads a record once, and writes it upon what it read; told that it changed, it reads anew the next time. */
  async #editByClient(who: number, kind: Place, field: string, n: number): Promise<void> {
    const { id } = PLACES[kind];
    const read = this.read[who - 2];
    const seen = read?.get(kind);
    if (!read || !seen?.body) {
      const answer = await this.app.request('/api/records');
      const { records } = (await answer.json()) as RecordsPage;
      for (const record of records) read?.set(record.kind, record);
      return;
    }
    const { next, value } = put(seen.body as Kept<typeof kind>, field, n);
    this.ledger.set(who, `${kind} ${id} ${field}`, value, get(seen.body, field));
    const answer = await this.app.request(`/api/${kind}/${id}`, {
      method: 'PUT',
      headers: { 'content-type': 'application/json', 'if-match': `"${seen.version}"` },
      body: JSON.stringify(next),
    });
    read.delete(kind);
    if (answer.status === 409) {
      this.met.told += 1;
      this.ledger.excuse(`${kind} ${id} ${field}`, who);
    } else expect(answer.status).toBe(200);
    await this.noted();
  }

  async pour(who: number): Promise<void> {
    const at = new Date(Date.UTC(2026, 10, 28, 12, 0, ++this.#n)).toISOString();
    const pour: Pour = { food: FOOD, lots: [], target: 1, grams: 1, at };
    const page = this.pages[who];
    const base = page?.shown('batches', PLACES.batches.id);
    if (page && !base) return;
    this.pours.push(at);
    if (page && base) {
      page.write('batches', base.id, { ...base, pours: [...base.pours, pour] }, { base, unseen: true });
      return;
    }
    const answer = await this.app.request(`/api/batches/${PLACES.batches.id}/pours`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ pours: [pour] }),
    });
    expect(answer.status).toBe(200);
    await this.noted();
  }

  /** What the page asks of the keeper, if anything, is answered. */
  choose(page: Keeper, side: 'mine' | 'theirs'): void {
    const asked = page.view().waiting.find((c) => c.theirs);
    if (!asked) return;
    this.met.asked += 1;
    const { kind, id, body, theirs } = asked as Change & { kind: Place };
    for (const field of PLACES[kind].fields) {
      if (side === 'mine')
        this.ledger.chose(`${kind} ${id} ${field}`, get(body, field), get(theirs?.body, field));
      else this.ledger.excuse(`${kind} ${id} ${field}`, this.pages.indexOf(page));
    }
    page.choose(asked, side);
  }

  /** The network is well: everything is sent, fetched and chosen, till nothing is left to be done. */
  async settle(): Promise<void> {
    for (let round = 0; round < 100; round++) {
      for (const [n, page] of this.pages.entries()) {
        void page.pull();
        vi.advanceTimersByTime(20_000);
        for (let held = this.held[n]?.shift(); held; held = this.held[n]?.shift()) {
          if (!held.answer) await held.carry();
          held.answer?.(false);
          await turned();
        }
        this.choose(page, 'mine');
      }
      const { seq } = await this.store.newest();
      if (this.pages.every((p) => p.view().waiting.length === 0 && p.heard()?.seq === seq)) return;
    }
    throw new Error(`it never comes to rest: ${this.pages.map((p) => p.view().trouble).join('; ')}`);
  }
}

/** Everything that was due has run. */
const turned = () => new Promise<void>((done) => setImmediate(done));

let folder: string;
let count: number;
beforeEach(() => {
  [folder, count] = [mkdtempSync(join(tmpdir(), 'pouchful-')), 0];
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
  rmSync(folder, { recursive: true, force: true });
});

it('loses no acknowledged change unseen, and all end with what the store holds', async () => {
  const met = { asked: 0, told: 0 };
  const numRuns = draws(500, 25);
  await fc.assert(
    fc.asyncProperty(fc.array(step, { minLength: 30, maxLength: 150 }), async (steps) => {
      const store = openStore(join(folder, `${++count}.sqlite`));
      try {
        await store.putAll({
          ...demo,
          lots: [lotOf({ id: 'lot', food: FOOD, seller: 'first' })],
          batches: [
            batchOf({ id: 'bowl', problem: demo.mixes[0]!.problem, order: [FOOD], shares: { [FOOD]: 100 } }),
          ],
        });
        const world = new World(store);
        await world.noted();
        await world.settle();
        for (const s of steps) {
          const held = world.held[s.who % 2] ?? [];
          const page = world.pages[s.who % 2]!;
          if (s.do === 'edit') await world.edit(s.who, s.kind, s.which);
          else if (s.do === 'pour') await world.pour(s.who);
          else if (s.do === 'carry') await held.find((h) => !h.answer)?.carry();
          else if (s.do === 'answer') {
            const ready = held.filter((h) => h.answer);
            const one = ready[s.which % Math.max(1, ready.length)];
            if (one) held.splice(held.indexOf(one), 1);
            one?.answer?.(s.lost);
          } else if (s.do === 'pull') void page.pull();
          else if (s.do === 'choose') world.choose(page, s.which % 2 === 0 ? 'mine' : 'theirs');
          else vi.advanceTimersByTime(s.which * 100);
          await turned();
        }
        await world.settle();
        met.asked += world.met.asked;
        met.told += world.met.told;
        expect(world.ledger.broken).toEqual([]);
        expect(world.ledger.lost()).toEqual([]);
        const kept = await store.household();
        for (const page of world.pages) expect(page.view().household).toEqual(kept);
        const inBowl = (kept.batches[0] as Batch).pours.map((p) => p.at);
        expect([...inBowl].sort()).toEqual([...world.pours].sort());
      } finally {
        await store.close();
      }
    }),
    { numRuns },
  );
  // The draws meet what they are about.
  expect(met.asked).toBeGreaterThan(numRuns / 4);
  expect(met.told).toBeGreaterThan(numRuns / 4);
});
