/**
 * Two pages of one browser and another device change the same few records while answers are late, lost or refused and
 * pages are loaded anew with much unsent: no change that was kept is written over unseen, none that was made is lost, what
 * was poured on a screen is in sight there all the time, once and in its order, and once all is sent, every page shows what
 * the server has.
 */
import fc from 'fast-check';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { RecordsPage, Written } from '../../src/household/records.ts';
import type { Batch, Lot } from '../../src/kitchen/model.ts';
import { ApiError } from '../../src/web/store/api-error.ts';
import type { Change } from '../../src/web/store/sync/change.ts';
import { Keeper } from '../../src/web/store/sync/keeper.ts';
import type { Outcome } from '../../src/web/store/sync/keeper-parts.ts';
import { draws } from '../draws.ts';
import { batchOf, lotOf, pourOf } from '../kitchen/cupboards.ts';
import { FakeServer } from './fake-server.ts';
import { Ledger } from './ledger.ts';

const PAGES = ['left', 'right'] as const;
const LOTS = ['oats', 'millet', 'new'] as const;
const FIELDS = ['seller', 'name', 'openedOn'] as const;
type Field = (typeof FIELDS)[number];
const NETWORK = ['well', 'well', 'well', 'lost', 'down', 'busy', 'refused'] as const;

const page = fc.constantFrom(0, 1);
const id = fc.constantFrom(...LOTS);
const field = fc.constantFrom(...FIELDS);
const pourDeed = fc.record({
  do: fc.constant('pour' as const),
  page,
  goes: fc.integer({ min: 1, max: 3 }),
});
const takeBack = fc.record({ do: fc.constant('take back' as const), page });
const answer = fc.record({ do: fc.constant('answer' as const), page, how: fc.constantFrom(...NETWORK) });
const pull = fc.record({ do: fc.constant('pull' as const), page });
const deliver = fc.record({ do: fc.constant('deliver' as const), page, ok: fc.boolean() });
const loadAnew = fc.record({ do: fc.constant('load anew' as const), page, dies: fc.boolean() });
const hearWhoIsOpen = fc.record({ do: fc.constant('hear who is open' as const), page });
const arriveLate = fc.record({ do: fc.constant('arrives late' as const) });
const wait = fc.record({ do: fc.constant('wait' as const), ms: fc.constantFrom(1, 400, 20_000) });
const deed = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.record({ do: fc.constant('edit' as const), page, id, field, joins: fc.boolean() }),
  },
  { weight: 3, arbitrary: fc.record({ do: fc.constant('open' as const), page, id }) },
  { weight: 3, arbitrary: fc.record({ do: fc.constant('save' as const), page, id, field }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('delete' as const), page, id }) },
  { weight: 3, arbitrary: fc.record({ do: fc.constant('elsewhere' as const), id, field }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('deleted elsewhere' as const), id }) },
  {
    weight: 6,
    arbitrary: pourDeed,
  },
  { weight: 1, arbitrary: takeBack },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('poured elsewhere' as const) }) },
  {
    weight: 8,
    arbitrary: answer,
  },
  { weight: 4, arbitrary: pull },
  { weight: 6, arbitrary: deliver },
  {
    weight: 2,
    arbitrary: fc.record({
      do: fc.constant('choose' as const),
      page,
      side: fc.constantFrom('mine', 'theirs'),
    }),
  },
  { weight: 3, arbitrary: loadAnew },
  { weight: 2, arbitrary: hearWhoIsOpen },
  { weight: 2, arbitrary: arriveLate },
  {
    weight: 2,
    arbitrary: wait,
  },
);
/** Of what happens at the scale alone: more comes of it than is met among all the rest. */
const atTheScale = fc.oneof(
  { weight: 4, arbitrary: pourDeed },
  { weight: 1, arbitrary: takeBack },
  { weight: 4, arbitrary: answer },
  { weight: 1, arbitrary: pull },
  { weight: 6, arbitrary: deliver },
  { weight: 2, arbitrary: loadAnew },
  { weight: 1, arbitrary: hearWhoIsOpen },
  { weight: 1, arbitrary: arriveLate },
  { weight: 1, arbitrary: wait },
);
type Deed = typeof deed extends fc.Arbitrary<infer D> ? D : never;

/** What a page asked of the server and was not answered yet. */
interface Open {
  readonly tab: string;
  page: Keeper;
  /** Gone: whatever it still does, nobody hears of it. */
  gone: boolean;
  sent: { change: Change; done(written: Written): void; fail(error: Error): void }[];
  pulls: { part: RecordsPage; done(part: RecordsPage): void; fail(error: Error): void }[];
  /** The lot as a form was opened on it. */
  readonly forms: Map<string, Lot>;
}

class World {
  readonly server = new FakeServer(2);
  readonly stored = new Map<string, string>();
  readonly open: Open[];
  readonly ledger = new Ledger();
  /** Lots that a page deleted, as they were seen last: what is made under their id comes in their place. */
  readonly deleted = new Map<string, Lot>();
  /** Times of what was poured and not taken back: on each screen, and on the other device. */
  readonly pours: string[][] = [...PAGES.map(() => []), []];
  /** Requests of pages that are gone, on their way still. */
  readonly late: Change[] = [];
  /** How often a page was loaded anew with several pours unsent. */
  reloads = 0;
  #n = 0;

  constructor() {
    this.server.changed = ({ kind, id, before, after }) => {
      if (kind !== 'lots' || !after) return;
      const was = before as Lot | null;
      for (const each of FIELDS)
        this.ledger.stands(`${id} ${each}`, (after as Lot)[each], was?.[each], was === null);
    };
    this.server.put('lots', lotOf({ id: 'oats', name: 'oats' }));
    this.server.put('lots', lotOf({ id: 'millet', name: 'millet' }));
    this.server.put('batches', batchOf({ id: 'bowl' }));
    this.open = PAGES.map((name) => this.#opened(name));
  }

  #opened(tab: string): Open {
    const opened: Open = {
      tab,
      page: undefined as never,
      gone: false,
      sent: [],
      pulls: [],
      forms: new Map(),
    };
    opened.page = new Keeper({
      page: (after, upTo, of) =>
        new Promise((done, fail) =>
          opened.pulls.push({ part: this.server.page(after, upTo, of), done, fail }),
        ),
      send: (change) => new Promise((done, fail) => opened.sent.push({ change, done, fail })),
      storage: {
        getItem: (key) => this.stored.get(key) ?? null,
        setItem: (key, value) => opened.gone || this.stored.set(key, value) !== undefined,
        removeItem: (key) => void (opened.gone || this.stored.delete(key)),
        keys: (prefix) => [...this.stored.keys()].filter((key) => key.startsWith(prefix)),
      },
      tab,
      newId: () => `${tab} ${++this.#n}`,
      now: () => new Date(this.#n * 1000).toISOString(),
    });
    void opened.page.pull();
    return opened;
  }

  value(): string {
    return `value ${++this.#n}`;
  }

  /** A field of a lot is changed on a page. @param base as the keeper saw the lot */
  edit(n: number, id: string, field: Field, base: Lot | null, joins = false): void {
    const { page } = this.open[n]!;
    if (!page.view().household) return;
    const value = this.value();
    const next = { ...(base ?? lotOf({ id, name: this.value() })), [field]: value };
    const before = (base ?? this.deleted.get(id))?.[field];
    this.ledger.set(n, `${id} ${field}`, value, before);
    const heard = (outcome: Outcome) => {
      if (outcome.is === 'refused') this.excuse(id, n);
    };
    page.write('lots', id, next, { base, ...(joins && { joins }) }, heard);
  }

  excuse(id: string, n?: number): void {
    this.ledger.excuse(`${id} `, n);
  }

  /** The keeper was shown both and keeps their own. */
  keptMine({ id, body, theirs }: Change): void {
    const [mine, other] = [body, theirs?.body] as (Lot | null)[];
    for (const each of FIELDS) this.ledger.chose(`${id} ${each}`, mine?.[each], other?.[each]);
  }

  /** @param who the screen, or the other device */
  pour(who: number): Batch['pours'][number] {
    const at = new Date(Date.UTC(2026, 3, 1, 10, 0, ++this.#n)).toISOString();
    this.pours[who]!.push(at);
    return pourOf({ food: 'oats', grams: 1, at });
  }

  answer({ sent }: Open, how: (typeof NETWORK)[number]): void {
    const request = sent.shift();
    if (!request) return;
    const { kind, id } = request.change;
    // A pour that is refused is told, and is no matter of this test.
    const refuses = how === 'refused' && kind === 'lots';
    if (refuses) this.excuse(id);
    try {
      if (how === 'down') throw new ApiError(0, 'down');
      if (how === 'busy') throw new ApiError(503, 'busy');
      if (refuses) throw new ApiError(400, 'refused');
      const written = this.server.receive(request.change);
      if (how === 'lost') throw new ApiError(0, 'down');
      request.done(written);
    } catch (error) {
      request.fail(error as Error);
    }
  }

  takenBack(at: string): void {
    for (const made of this.pours) if (made.includes(at)) made.splice(made.indexOf(at), 1);
  }

  /** @param dies without a word: else the page sends what it can when it is left */
  loadAnew(n: number, dies: boolean): void {
    const before = this.open[n]!;
    const waits = before.page.view().waiting.filter((c) => c.kind === 'batches');
    if (waits.length > 1) this.reloads += 1;
    if (!dies) before.page.leave();
    before.gone = true;
    this.late.push(...before.sent.map(({ change }) => change));
    const after = this.#opened(`${PAGES[n]} ${++this.#n}`);
    this.open[n] = after;
    // As the page does it: at first it knows for sure only of the one that it stands in the place of.
    after.page.adopt((tab) => tab !== before.tab);
  }

  hearWhoIsOpen({ page }: Open): void {
    page.adopt((tab) => this.open.some((o) => o.tab === tab));
  }

  /** A request whose page is gone comes to the server; nobody hears the answer. */
  arrivesLate(): void {
    const change = this.late.shift();
    try {
      if (change) this.server.receive(change);
    } catch {}
  }

  /** What was poured on a screen is in sight there, once and in its order. */
  inSight(): void {
    for (const [n, { page }] of this.open.entries()) {
      const bowl = page.shown('batches', 'bowl');
      if (!bowl) continue;
      const own = new Set(this.pours[n]);
      const seen = bowl.pours.map((p) => p.at);
      expect(seen.filter((at) => own.has(at))).toEqual(this.pours[n]);
    }
  }
}

async function does(world: World, d: Deed): Promise<void> {
  const open = 'page' in d ? world.open[d.page]! : world.open[0]!;
  const { page } = open;
  const lot = (id: string) => page.shown('lots', id) ?? null;
  switch (d.do) {
    case 'edit':
      world.edit(d.page, d.id, d.field, lot(d.id), d.joins);
      break;
    case 'open': {
      const seen = lot(d.id);
      if (seen) open.forms.set(d.id, seen);
      break;
    }
    case 'save': {
      const opened = open.forms.get(d.id);
      open.forms.delete(d.id);
      if (opened) world.edit(d.page, d.id, d.field, opened);
      break;
    }
    case 'delete': {
      const seen = lot(d.id);
      world.excuse(d.id);
      if (seen) world.deleted.set(d.id, seen);
      if (seen) page.write('lots', d.id, null, { base: seen, unseen: true });
      break;
    }
    case 'elsewhere': {
      const now = world.server.get('lots', d.id)?.body as Lot | null | undefined;
      if (now) world.server.put('lots', { ...now, [d.field]: world.value() });
      break;
    }
    case 'deleted elsewhere':
      if (world.server.get('lots', d.id)?.body) world.server.delete('lots', d.id);
      world.excuse(d.id);
      break;
    case 'pour': {
      for (let n = 0; n < d.goes; n++) {
        const base = page.shown('batches', 'bowl');
        if (!base) break;
        const pours = [...base.pours, world.pour(d.page)];
        page.write('batches', 'bowl', { ...base, pours }, { base });
      }
      break;
    }
    case 'take back': {
      const base = page.shown('batches', 'bowl');
      const last = base?.pours.at(-1);
      if (!base || !last) break;
      world.takenBack(last.at);
      page.write('batches', 'bowl', { ...base, pours: base.pours.slice(0, -1) }, { base });
      break;
    }
    case 'poured elsewhere': {
      const now = world.server.get('batches', 'bowl')!.body as Batch;
      world.server.put('batches', { ...now, pours: [...now.pours, world.pour(PAGES.length)] });
      break;
    }
    case 'answer':
      world.answer(open, d.how);
      break;
    case 'pull':
      void page.pull();
      break;
    case 'deliver': {
      const pull = open.pulls.shift();
      if (d.ok) pull?.done(pull.part);
      else pull?.fail(new ApiError(0, 'down'));
      break;
    }
    case 'choose': {
      const asked = page.view().waiting.find((c) => c.theirs);
      if (asked && d.side === 'theirs') world.excuse(asked.id);
      if (asked && d.side === 'mine') world.keptMine(asked);
      if (asked) page.choose(asked, d.side as 'mine' | 'theirs');
      break;
    }
    case 'load anew':
      world.loadAnew(d.page, d.dies);
      break;
    case 'hear who is open':
      world.hearWhoIsOpen(open);
      break;
    case 'arrives late':
      world.arrivesLate();
      break;
    case 'wait':
      await vi.advanceTimersByTimeAsync(d.ms);
  }
  await vi.advanceTimersByTimeAsync(0);
}

/** The network is well again: everything is answered and fetched, and the keeper keeps their own wherever they are asked. */
async function settle(world: World): Promise<void> {
  for (let round = 0; round < 200; round++) {
    while (world.late.length > 0) world.arrivesLate();
    for (const open of world.open) {
      world.hearWhoIsOpen(open);
      void open.page.pull();
      await vi.advanceTimersByTimeAsync(20_000);
      while (open.sent.length + open.pulls.length > 0) {
        world.answer(open, 'well');
        const pull = open.pulls.shift();
        // What is fetched now is what stands now.
        pull?.done(pull.part);
        await vi.advanceTimersByTimeAsync(0);
      }
      const asked = open.page.view().waiting.find((c) => c.theirs);
      if (asked) world.keptMine(asked);
      if (asked) open.page.choose(asked, 'mine');
    }
    const quiet = world.open.every(
      ({ page, sent, pulls }) =>
        page.view().waiting.length + sent.length + pulls.length === 0 &&
        page.heard()?.seq === world.server.seq &&
        page.heard()?.epoch === world.server.epoch,
    );
    if (quiet && world.stored.size === 0) return;
  }
  throw new Error(`it never comes to rest: ${JSON.stringify([...world.stored])}`);
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

it.each([
  ['with all that is kept', deed, 0],
  ['at the scale', atTheScale, 1 / 5],
] as const)('loses nothing, and ends showing what the server has: %s', async (_, drawn, often) => {
  const numRuns = draws(20_000, 500);
  let reloads = 0;
  await fc.assert(
    fc.asyncProperty(fc.array(drawn, { minLength: 5, maxLength: 60, size: 'max' }), async (deeds) => {
      const world = new World();
      for (const n of [0, 0, 1, 1] as const) await does(world, { do: 'deliver', page: n, ok: true });
      for (const d of deeds) {
        await does(world, d);
        world.inSight();
      }
      reloads += world.reloads;
      await settle(world);
      world.inSight();
      expect(world.ledger.broken).toEqual([]);
      expect(world.ledger.lost()).toEqual([]);
      for (const { page } of world.open) {
        const house = page.view().household!;
        expect(house.lots).toEqual(world.server.list('lots'));
        expect(house.batches).toEqual(world.server.list('batches'));
      }
      const inBowl = (world.server.get('batches', 'bowl')!.body as Batch).pours.map((p) => p.at);
      expect([...inBowl].sort()).toEqual(world.pours.flat().sort());
    }),
    { numRuns },
  );
  // The draws meet what they are about.
  expect(reloads).toBeGreaterThan(numRuns * often);
});
