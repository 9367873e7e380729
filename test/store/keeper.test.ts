/** What a page keeps: shown at once, sent one after the other until the server has it, merged with what others change. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { RecordsPage, Section, Written } from '../../src/household/records.ts';
import type { Batch, Lot } from '../../src/kitchen/model.ts';
import type { DeviceStorage } from '../../src/web/shared/device-storage.ts';
import { ApiError } from '../../src/web/store/api-error.ts';
import type { Change } from '../../src/web/store/sync/change.ts';
import { Keeper } from '../../src/web/store/sync/keeper.ts';
import type { Outcome, WriteOptions } from '../../src/web/store/sync/keeper-parts.ts';
import { batchOf, lotOf, pourOf } from '../kitchen/cupboards.ts';
import { FakeServer } from './fake-server.ts';

const lot = (id: string, more: Partial<Lot> = {}) => lotOf({ id, name: id, ...more });

let server: FakeServer;
/** Requests that wait for the test to answer them. */
let asked: { change: Change; leaving: boolean; done(written: Written): void; fail(error: Error): void }[];
let stored: Map<string, string>;
/** What the device takes, in letters. */
let room: number;
let keeper: Keeper;
let ids: number;
/** What the device's clock is out by, ms. */
let clock: number;

const storage: DeviceStorage = {
  getItem: (key) => stored.get(key) ?? null,
  setItem(key, value) {
    if (value.length > room) return false;
    stored.set(key, value);
    return true;
  },
  removeItem: (key) => void stored.delete(key),
  keys: (prefix) => [...stored.keys()].filter((key) => key.startsWith(prefix)),
};

beforeEach(async () => {
  vi.useFakeTimers();
  [server, asked, stored, room] = [new FakeServer(), [], new Map(), Number.POSITIVE_INFINITY];
  [ids, clock] = [0, 0];
  server.put('lots', lot('oats'));
  server.put('lots', lot('millet'));
  keeper = await opened('a');
});
afterEach(() => vi.useRealTimers());

/** A page on this device that has heard all that the server has. */
async function opened(tab: string): Promise<Keeper> {
  const page = new Keeper({
    page: async (after, upTo, of): Promise<RecordsPage> => server.page(after, upTo, of),
    send: (change, leaving) => new Promise((done, fail) => asked.push({ change, leaving, done, fail })),
    storage,
    tab,
    newId: () => `${tab}${++ids}`,
    now: () => new Date(ids * 1000 + clock).toISOString(),
  });
  await page.pull();
  return page;
}

/** Lets the server take the request that was sent first and not answered yet. */
async function answered(how?: 'lost' | 'refused' | 'name refused' | 'no network') {
  const request = asked.shift();
  if (!request) throw new Error('nothing was sent');
  try {
    if (how === 'no network') throw new ApiError(0, 'no network');
    if (how === 'refused') throw new ApiError(400, 'refused');
    if (how === 'name refused') throw new ApiError(400, 'too long', { field: '/name' });
    const written = server.receive(request.change);
    if (how === 'lost') throw new ApiError(0, 'no network');
    request.done(written);
  } catch (error) {
    request.fail(error as Error);
  }
  await vi.advanceTimersByTimeAsync(0);
}

/** Changes a lot as a form does. @returns what the form hears */
function write(next: Lot, base: Lot | null, more: Partial<WriteOptions<'lots'>> = {}): Outcome[] {
  const heard: Outcome[] = [];
  keeper.write('lots', next.id, next, { base, ...more }, (outcome) => heard.push(outcome));
  return heard;
}
const shown = (id: string) => keeper.shown('lots', id);
const grams = () => keeper.view().household?.lots.map((l) => [l.id, l.grams]);
const there = (id: string) => server.get('lots', id)?.body as Lot | undefined;
const is = (heard: readonly Outcome[]) => heard.map((o) => o.is);
const inSlots = () => [...stored.values()].map((text) => JSON.parse(text) as Change);

describe('a change', () => {
  it('stands on the device before it is sent, shows at once, and is gone from the device once it is kept', async () => {
    const before = shown('oats')!;
    const heard = write({ ...before, grams: 7 }, before);
    expect(shown('oats')?.grams).toBe(7);
    expect(inSlots().map((c) => (c.body as Lot).grams)).toEqual([7]);
    expect(asked).toHaveLength(1);
    expect(is(heard)).toEqual([]);
    await answered();
    expect(is(heard)).toEqual(['made']);
    expect(there('oats')?.grams).toBe(7);
    expect([stored.size, keeper.view().waiting]).toEqual([0, []]);
  });

  it('leaves lists in their order, a new thing at the end', async () => {
    write(lot('new', { grams: 1 }), null);
    write({ ...shown('oats')!, grams: 2 }, shown('oats')!);
    const order = [
      ['oats', 2],
      ['millet', 100],
      ['new', 1],
    ];
    expect(grams()).toEqual(order);
    await answered();
    await answered();
    await keeper.pull();
    expect(grams()).toEqual(order);
    expect(server.list('lots').map((l) => [l.id, l.grams])).toEqual(order);
  });

  it('is sent one after the other, in the order in which they were made', async () => {
    const before = shown('oats')!;
    const once = { ...before, grams: 2 };
    write(once, before);
    write({ ...once, grams: 3 }, once);
    write(lot('new'), null);
    expect(asked.map((a) => a.change.body)).toEqual([once]);
    await answered();
    expect(asked.map((a) => (a.change.body as Lot).grams)).toEqual([3]);
    await answered();
    await answered();
    expect([there('oats')?.grams, there('new')?.id]).toEqual([3, 'new']);
  });

  it('that changes nothing is made already', () => {
    const before = shown('oats')!;
    expect(is(write({ ...before, openedOn: undefined }, before))).toEqual(['made']);
    expect(asked).toEqual([]);
  });

  it('keeps the very object that the page made it of, and every list that it did not touch', async () => {
    const before = shown('oats')!;
    const next = { ...before, grams: 7 };
    const { foods } = keeper.view().household!;
    write(next, before);
    await answered();
    await keeper.pull();
    expect(shown('oats')).toBe(next);
    expect(keeper.view().household!.foods).toBe(foods);
  });
});

describe('what is refused', () => {
  it('is told where it was made, and is taken back alone', async () => {
    const before = shown('oats')!;
    const once = { ...before, grams: 2 };
    const first = write(once, before);
    const second = write({ ...once, seller: 'Alder Mill' }, once);
    await answered('refused');
    expect(first).toMatchObject([{ is: 'refused', error: { message: 'refused' } }]);
    expect(shown('oats')).toMatchObject({ grams: 100, seller: 'Alder Mill' });
    await answered();
    expect(is(second)).toEqual(['made']);
    expect(there('oats')).toMatchObject({ grams: 100, seller: 'Alder Mill' });
    await vi.advanceTimersByTimeAsync(60_000);
    expect(asked).toEqual([]);
  });

  it('leaves the second of two quick changes of the same, though the first is refused', async () => {
    const before = shown('oats')!;
    const once = { ...before, grams: 2 };
    write(once, before);
    write({ ...once, grams: 3 }, once);
    await answered('refused');
    expect(shown('oats')?.grams).toBe(3);
    await answered();
    expect(there('oats')?.grams).toBe(3);
  });

  it('goes back to what the server has when every change was refused; a new thing goes', async () => {
    const before = shown('oats')!;
    write({ ...before, grams: 2 }, before);
    const made = write(lot('new'), null);
    await answered('refused');
    await answered('refused');
    expect(grams()).toEqual([
      ['oats', 100],
      ['millet', 100],
    ]);
    expect(is(made)).toEqual(['refused']);
  });

  it('is told of to the page where nobody waits for it any more, until it is read or made after all', async () => {
    const before = shown('oats')!;
    const heard = write({ ...before, grams: 2 }, before);
    await answered('no network');
    expect(is(heard)).toEqual(['waiting']);
    await vi.advanceTimersByTimeAsync(1000);
    await answered('refused');
    const [refusal] = keeper.view().refusals;
    expect(refusal).toMatchObject({ message: 'refused', change: { id: 'oats' } });
    keeper.forget(refusal!);
    expect(keeper.view().refusals).toEqual([]);
  });

  it('of many small changes that became one is their name alone; it is told until it is read or mended', async () => {
    const before = shown('oats')!;
    const named = { ...before, name: 'x'.repeat(201) };
    keeper.write('lots', 'oats', named, { base: before, joins: true });
    keeper.write('lots', 'oats', { ...named, grams: 7 }, { base: named, joins: true });
    await vi.advanceTimersByTimeAsync(1000);
    // While it is on its way, one more.
    keeper.write('lots', 'oats', { ...named, grams: 8 }, { base: { ...named, grams: 7 }, joins: true });
    await answered('name refused');
    await vi.advanceTimersByTimeAsync(1000);
    await answered();
    await vi.advanceTimersByTimeAsync(1000);
    await answered();
    expect(there('oats')).toMatchObject({ name: 'oats', grams: 8 });
    expect(shown('oats')).toMatchObject({ name: 'oats', grams: 8 });
    expect(keeper.view()).toMatchObject({ waiting: [], refusals: [{ field: '/name', isPast: true }] });
    const now = shown('oats')!;
    keeper.write('lots', 'oats', { ...now, name: 'Oats' }, { base: now });
    await answered();
    expect(keeper.view().refusals).toEqual([]);
  });

  it('is whole where nothing but the name and the time was changed, and stays told', async () => {
    const before = shown('oats')!;
    const named = { ...before, name: 'x'.repeat(201), updatedAt: '2026-05-01T00:00:00Z' };
    keeper.write('lots', 'oats', named, { base: before, joins: true });
    await vi.advanceTimersByTimeAsync(1000);
    await answered('name refused');
    await vi.advanceTimersByTimeAsync(1000);
    expect(asked).toEqual([]);
    expect(shown('oats')).toEqual(before);
    expect(keeper.view().refusals[0]).not.toHaveProperty('isPast');
  });
});

describe('where the server does not answer', () => {
  it('waits on the device, is told, and is sent again under the same id, each time later', async () => {
    const before = shown('oats')!;
    const heard = write({ ...before, grams: 2 }, before);
    const { writeId } = asked[0]!.change;
    for (const pause of [1000, 2000, 4000]) {
      await answered('no network');
      expect(keeper.view()).toMatchObject({ trouble: 'no network', onDevice: true });
      expect(is(heard)).toEqual(['waiting']);
      expect(shown('oats')?.grams).toBe(2);
      await vi.advanceTimersByTimeAsync(pause - 1);
      expect(asked).toEqual([]);
      await vi.advanceTimersByTimeAsync(1);
      expect(asked.map((a) => a.change.writeId)).toEqual([writeId]);
    }
    await answered();
    expect(keeper.view()).toMatchObject({ trouble: undefined, waiting: [] });
    expect(there('oats')?.grams).toBe(2);
  });

  it.each([500, 503, 507, 401, 429])('the same for an answer of %i', async (status) => {
    const before = shown('oats')!;
    write({ ...before, grams: 2 }, before);
    asked.shift()!.fail(new ApiError(status, 'not now'));
    await vi.advanceTimersByTimeAsync(1000);
    await answered();
    expect(there('oats')?.grams).toBe(2);
  });

  it('is not made twice where only its answer was lost, whatever changed meanwhile', async () => {
    const before = shown('oats')!;
    const once = { ...before, grams: 2 };
    write(once, before);
    await answered('lost');
    write({ ...once, grams: 3 }, once);
    server.put('lots', { ...there('oats')!, seller: 'Elsewhere' });
    await keeper.pull();
    await answered();
    await answered();
    expect(there('oats')).toMatchObject({ grams: 3, seller: 'Elsewhere' });
    expect(shown('oats')).toEqual(there('oats'));
    expect(keeper.view().waiting).toEqual([]);
  });

  it('is sent at once when asked to, never twice at a time', async () => {
    const before = shown('oats')!;
    write({ ...before, grams: 2 }, before);
    keeper.retry();
    expect(asked).toHaveLength(1);
    await answered('no network');
    keeper.retry();
    keeper.retry();
    expect(asked).toHaveLength(1);
    await vi.advanceTimersByTimeAsync(60_000);
    expect(asked).toHaveLength(1);
  });

  it('goes on from the device on the page that is opened next', async () => {
    const before = shown('oats')!;
    const once = { ...before, grams: 2 };
    write(once, before);
    write({ ...once, seller: 'Alder Mill' }, once);
    await answered('lost');
    asked = [];
    keeper = await opened('b');
    expect(shown('oats')?.grams).toBe(2);
    keeper.adopt((tab) => tab === 'a');
    expect(keeper.view().waiting).toEqual([]);
    keeper.adopt(() => false);
    expect(shown('oats')).toMatchObject({ grams: 2, seller: 'Alder Mill' });
    await answered();
    await answered();
    expect(there('oats')).toMatchObject({ grams: 2, seller: 'Alder Mill' });
    expect(server.seq).toBe(4);
    expect(stored.size).toBe(0);
  });

  it('goes on also where the first of two was made and the page died before it noted that', async () => {
    const before = shown('oats')!;
    const once = { ...before, grams: 2 };
    write(once, before);
    write({ ...once, seller: 'Alder Mill' }, once);
    const [first] = [...stored.keys()].sort();
    server.receive(asked.shift()!.change);
    stored.delete(first!);
    keeper = await opened('b');
    keeper.adopt(() => false);
    await answered();
    expect(there('oats')).toMatchObject({ grams: 2, seller: 'Alder Mill' });
  });

  describe('of food that is poured', () => {
    const pours = () => keeper.shown('batches', 'bowl')?.pours.map((p) => p.grams);
    const pour = (grams: number) => {
      const base = keeper.shown('batches', 'bowl')!;
      const poured = pourOf({ food: 'oats', grams, at: new Date(1e12 + grams).toISOString() });
      keeper.write('batches', 'bowl', { ...base, pours: [...base.pours, poured] }, { base });
    };
    const inBowl = () => (server.get('batches', 'bowl')!.body as Batch).pours.map((p) => p.grams);
    /** The page is loaded anew: at first it knows for sure only that the one before it is gone. */
    async function loadedAnew(before: string, tab: string) {
      asked = [];
      keeper = await opened(tab);
      keeper.adopt((other) => other !== before);
    }
    async function allSent() {
      while (asked.length > 0) await answered();
    }
    beforeEach(async () => {
      server.put('batches', batchOf({ id: 'bowl' }));
      await keeper.pull();
    });

    it('is in sight and in its order on a page that was loaded anew twice', async () => {
      for (const grams of [1, 2, 3]) pour(grams);
      await answered('lost');
      await loadedAnew('a', 'b');
      expect(pours()).toEqual([1, 2, 3]);
      for (const grams of [4, 5]) pour(grams);
      await loadedAnew('b', 'c');
      expect(pours()).toEqual([1, 2, 3, 4, 5]);
      pour(6);
      keeper.adopt(() => false);
      expect(pours()).toEqual([1, 2, 3, 4, 5, 6]);
      await allSent();
      expect(inBowl()).toEqual([1, 2, 3, 4, 5, 6]);
      expect(stored.size).toBe(0);
    });

    it('is in sight with what a page left that is found to be gone later, and can be taken back', async () => {
      for (const grams of [1, 2]) pour(grams);
      asked = [];
      keeper = await opened('b');
      for (const grams of [3, 4]) pour(grams);
      keeper.adopt(() => false);
      expect(pours()).toEqual([1, 2, 3, 4]);
      const base = keeper.shown('batches', 'bowl')!;
      keeper.write('batches', 'bowl', { ...base, pours: base.pours.slice(1) }, { base });
      expect(pours()).toEqual([2, 3, 4]);
      await allSent();
      expect(inBowl()).toEqual([3, 2, 4]);
    });

    it('keeps its order though the clock was put back between', async () => {
      pour(1);
      clock = -10_000;
      pour(2);
      await loadedAnew('a', 'b');
      expect(pours()).toEqual([1, 2]);
      clock = -60_000;
      pour(3);
      await loadedAnew('b', 'c');
      expect(pours()).toEqual([1, 2, 3]);
      await allSent();
      expect(inBowl()).toEqual([1, 2, 3]);
    });

    it('stays before what was poured on the page that took it over, whatever the clock says', async () => {
      for (const grams of [1, 2]) pour(grams);
      asked = [];
      clock = -60_000;
      keeper = await opened('b');
      for (const grams of [3, 4]) pour(grams);
      keeper.adopt(() => false);
      expect(pours()).toEqual([1, 2, 3, 4]);
      await loadedAnew('b', 'c');
      expect(pours()).toEqual([1, 2, 3, 4]);
      await allSent();
      expect(inBowl()).toEqual([1, 2, 3, 4]);
    });

    it('is taken over once from a page that was gone while it took it over', async () => {
      for (const grams of [1, 2]) pour(grams);
      const left = new Map(stored);
      await loadedAnew('a', 'b');
      for (const [key, text] of left) stored.set(key, text);
      await loadedAnew('b', 'c');
      keeper.adopt(() => false);
      expect(keeper.view().waiting).toHaveLength(2);
      await allSent();
      expect(inBowl()).toEqual([1, 2]);
      expect(stored.size).toBe(0);
    });

    it('stays where it stands on a device that has no room for it twice', async () => {
      for (const grams of [1, 2]) pour(grams);
      const left = [...stored.keys()];
      room = 10;
      await loadedAnew('a', 'b');
      expect([pours(), [...stored.keys()]]).toEqual([[1, 2], left]);
      room = Number.POSITIVE_INFINITY;
      await allSent();
      expect(inBowl()).toEqual([1, 2]);
      expect(stored.size).toBe(0);
    });
  });

  it('is the same for two pages that both take it over', async () => {
    const before = shown('oats')!;
    write({ ...before, grams: 2 }, before);
    asked = [];
    const pages = [await opened('b'), await opened('c')];
    for (const page of pages) page.adopt(() => false);
    await answered();
    await answered();
    expect(server.seq).toBe(3);
    expect(pages.map((p) => p.view().waiting)).toEqual([[], []]);
  });

  it('says where the device does not take it', async () => {
    room = 10;
    const before = shown('oats')!;
    write({ ...before, grams: 2 }, before);
    expect(keeper.view().onDevice).toBe(false);
    await answered();
    expect(keeper.view().onDevice).toBe(true);
    expect(there('oats')?.grams).toBe(2);
  });
});

describe('many small changes', () => {
  it('are sent as one, a little after the last', async () => {
    for (const g of [1, 2, 3]) {
      await vi.advanceTimersByTimeAsync(399);
      write({ ...shown('oats')!, grams: g }, shown('oats')!, { joins: true });
    }
    expect(asked).toEqual([]);
    expect(inSlots().map((c) => (c.body as Lot).grams)).toEqual([3]);
    await vi.advanceTimersByTimeAsync(400);
    await answered();
    expect(server.seq).toBe(3);
    expect(there('oats')?.grams).toBe(3);
  });

  it('that come while one is on its way follow it as one', async () => {
    write({ ...shown('oats')!, grams: 1 }, shown('oats')!, { joins: true });
    await vi.advanceTimersByTimeAsync(400);
    for (const g of [2, 3]) write({ ...shown('oats')!, grams: g }, shown('oats')!, { joins: true });
    expect(asked).toHaveLength(1);
    await answered();
    await vi.advanceTimersByTimeAsync(400);
    expect(asked.map((a) => (a.change.body as Lot).grams)).toEqual([3]);
    await answered();
    expect(there('oats')?.grams).toBe(3);
  });

  it('go before whatever is changed after them, at once', async () => {
    write({ ...shown('oats')!, grams: 1 }, shown('oats')!, { joins: true });
    keeper.write('lots', 'millet', null, { base: shown('millet')!, unseen: true });
    expect(asked.map((a) => a.change.id)).toEqual(['oats']);
    await answered();
    expect(asked.map((a) => a.change.id)).toEqual(['millet']);
  });

  it('are not lost where another page took over the first of them, and sent it: the keeper is asked', async () => {
    const before = shown('oats')!;
    const first = { ...before, seller: 'First' };
    write(first, before, { joins: true });
    const asleep = keeper;
    keeper = await opened('b');
    keeper.adopt(() => false);
    await answered();
    keeper = asleep;
    write({ ...first, seller: 'Second' }, first, { joins: true });
    keeper = await opened('c');
    keeper.adopt(() => false);
    await answered();
    const [waits] = keeper.view().waiting;
    expect(waits).toMatchObject({ body: { seller: 'Second' }, theirs: { body: { seller: 'First' } } });
  });

  it('do not take in what another page changed, which may be refused alone', async () => {
    const before = shown('oats')!;
    write({ ...before, grams: 2 }, before);
    asked = [];
    keeper = await opened('b');
    write({ ...before, seller: 'First' }, before, { joins: true });
    keeper.adopt(() => false);
    const both = shown('oats')!;
    expect(both).toMatchObject({ grams: 2, seller: 'First' });
    write({ ...both, seller: 'Second' }, both, { joins: true });
    await answered('refused');
    while (keeper.view().waiting.length > 0) {
      await vi.advanceTimersByTimeAsync(400);
      await answered();
    }
    expect(there('oats')).toMatchObject({ grams: before.grams, seller: 'Second' });
  });

  it('are sent when the page is left, beside a request that is on its way', async () => {
    write(lot('new'), null);
    write({ ...shown('oats')!, grams: 1 }, shown('oats')!, { joins: true });
    keeper.leave();
    expect(asked.map((a) => [a.change.id, a.leaving])).toEqual([
      ['new', false],
      ['new', true],
      ['oats', true],
    ]);
    while (asked.length > 0) await answered();
    expect(server.seq).toBe(4);
    expect(keeper.view().waiting).toEqual([]);
  });
});

describe('a deletion', () => {
  it('shows once the server has made it; who asked for it hears of it before', async () => {
    const seen: unknown[] = [];
    keeper.write('lots', 'oats', null, { base: shown('oats')!, unseen: true }, () =>
      seen.push(shown('oats')?.id),
    );
    expect(shown('oats')?.id).toBe('oats');
    await answered();
    expect(seen).toEqual(['oats']);
    expect(shown('oats')).toBeUndefined();
  });

  it('shows also where the server does not answer, and comes back where it is refused', async () => {
    keeper.write('lots', 'oats', null, { base: shown('oats')!, unseen: true });
    await answered('no network');
    expect(shown('oats')).toBeUndefined();
    await vi.advanceTimersByTimeAsync(1000);
    await answered('refused');
    expect(shown('oats')?.id).toBe('oats');
  });

  it('of what another device deleted too is made already', async () => {
    keeper.write('lots', 'oats', null, { base: shown('oats')!, unseen: true });
    server.delete('lots', 'oats');
    await answered();
    expect(keeper.view()).toMatchObject({ waiting: [], refusals: [] });
    expect(shown('oats')).toBeUndefined();
  });

  it('can be undone: the thing stands where it stood', async () => {
    const gone = shown('oats')!;
    keeper.write('lots', 'oats', null, { base: gone, unseen: true });
    await answered();
    // On a page that never saw that it was there, too.
    keeper = await opened('b');
    write(gone, null);
    await answered();
    await answered();
    expect(
      grams()
        ?.map(([id]) => id)
        .sort(),
    ).toEqual(['millet', 'oats']);
    expect(server.list('lots').map((l) => l.id)).toEqual(['oats', 'millet']);
  });
});

describe('what others change', () => {
  it('comes in when it is fetched, in parts, with what was deleted', async () => {
    for (const n of [1, 2, 3, 4, 5]) server.put('lots', lot(`n${n}`));
    server.delete('lots', 'oats');
    await keeper.pull();
    expect(keeper.view().household?.lots.map((l) => l.id)).toEqual(['millet', 'n1', 'n2', 'n3', 'n4', 'n5']);
    expect(keeper.heard()).toEqual({ epoch: 'first', seq: 8 });
  });

  it('is merged with what waits, without a word, where it touches other fields', async () => {
    const before = shown('oats')!;
    server.put('lots', { ...before, barred: { why: 'recalled', on: '2026-03-01' } });
    const heard = write({ ...before, seller: 'Alder Mill' }, before);
    await answered();
    await answered();
    expect(there('oats')).toMatchObject({ seller: 'Alder Mill', barred: { why: 'recalled' } });
    expect(shown('oats')).toEqual(there('oats'));
    expect(is(heard)).toEqual(['made']);
  });

  it('stays where a form was opened before it came in', async () => {
    const opening = shown('oats')!;
    server.put('lots', { ...opening, barred: { why: 'recalled', on: '2026-03-01' } });
    await keeper.pull();
    write({ ...opening, seller: 'Alder Mill' }, opening);
    expect(shown('oats')).toMatchObject({ seller: 'Alder Mill', barred: { why: 'recalled' } });
    await answered();
    expect(there('oats')).toMatchObject({ seller: 'Alder Mill', barred: { why: 'recalled' } });
  });

  it('is merged while the change waits for the server', async () => {
    const before = shown('oats')!;
    write({ ...before, grams: 1 }, before, { joins: true });
    server.put('lots', { ...before, seller: 'Elsewhere' });
    await keeper.pull();
    expect(shown('oats')).toMatchObject({ grams: 1, seller: 'Elsewhere' });
    await vi.advanceTimersByTimeAsync(400);
    await answered();
    expect(there('oats')).toMatchObject({ grams: 1, seller: 'Elsewhere' });
  });

  it('of another household shows whole; what waits is put upon it', async () => {
    const before = shown('oats')!;
    write({ ...before, grams: 1 }, before);
    await answered('no network');
    server.restore(() => {
      server.put('lots', { ...before, seller: 'From a backup' });
      server.delete('lots', 'millet');
    });
    await keeper.pull();
    expect(shown('oats')).toMatchObject({ grams: 1, seller: 'From a backup' });
    expect(grams()?.map(([id]) => id)).toEqual(['oats']);
    await answered();
    expect(there('oats')).toMatchObject({ grams: 1, seller: 'From a backup' });
  });

  it('of another household is met by a change, too, before the page heard of it', async () => {
    const before = shown('oats')!;
    for (const grams of [2, 3]) server.put('lots', { ...before, grams });
    await keeper.pull();
    const now = shown('oats')!;
    server.restore(() => server.put('lots', { ...before, seller: 'From a backup' }));
    write({ ...now, openedOn: '2026-03-01' }, now);
    for (let n = 0; asked.length > 0 && n < 10; n++) await answered();
    expect(there('oats')).toMatchObject({ seller: 'From a backup', openedOn: '2026-03-01' });
    expect(keeper.heard()?.epoch).toBe('first again');
    expect(shown('oats')).toEqual(there('oats'));
    expect(keeper.view().waiting).toEqual([]);
  });

  it('that cannot be read is kept apart', async () => {
    server.spoil('lots', 'oats');
    await keeper.pull();
    expect(grams()?.map(([id]) => id)).toEqual(['millet']);
    expect(keeper.view().unreadable).toMatchObject([{ id: 'oats', unreadable: { why: 'It is no JSON.' } }]);
  });
});

describe('the same changed here and elsewhere', () => {
  /** Seller and grams changed here; seller and price elsewhere. @returns what the form hears */
  async function collided(): Promise<Outcome[]> {
    const before = shown('oats')!;
    server.put('lots', { ...before, seller: 'Elsewhere', price: 2 });
    const heard = write({ ...before, seller: 'Here', grams: 5 }, before);
    await answered();
    return heard;
  }
  const waits = () => keeper.view().waiting[0]!;

  it('waits for the keeper, on the device, and shows as it was changed here', async () => {
    const heard = await collided();
    expect(is(heard)).toEqual(['waiting']);
    expect(waits().theirs?.body).toMatchObject({ seller: 'Elsewhere', price: 2 });
    expect(shown('oats')).toMatchObject({ seller: 'Here', grams: 5 });
    await vi.advanceTimersByTimeAsync(60_000);
    expect(asked).toEqual([]);
    expect(there('oats')).toMatchObject({ seller: 'Elsewhere' });
    expect(inSlots()).toHaveLength(1);
  });

  it('is kept as here, with what else was changed elsewhere', async () => {
    await collided();
    keeper.choose(waits(), 'mine');
    await answered();
    expect(there('oats')).toMatchObject({ seller: 'Here', grams: 5, price: 2 });
    expect(shown('oats')).toEqual(there('oats'));
  });

  it('is taken as elsewhere, with what else was changed here', async () => {
    await collided();
    keeper.choose(waits(), 'theirs');
    expect(shown('oats')).toMatchObject({ seller: 'Elsewhere', grams: 5, price: 2 });
    await answered();
    expect(there('oats')).toMatchObject({ seller: 'Elsewhere', grams: 5, price: 2 });
  });

  it('does not hold up other changes', async () => {
    await collided();
    write({ ...shown('millet')!, grams: 9 }, shown('millet')!);
    await answered();
    expect(there('millet')?.grams).toBe(9);
  });

  it('is asked about anew where it changes elsewhere again, and no more where both agree', async () => {
    await collided();
    server.put('lots', { ...there('oats')!, seller: 'A third' });
    await keeper.pull();
    expect(waits().theirs?.body).toMatchObject({ seller: 'A third' });
    server.put('lots', { ...there('oats')!, seller: 'Here' });
    await keeper.pull();
    await answered();
    expect(there('oats')).toMatchObject({ seller: 'Here', grams: 5, price: 2 });
  });

  it('is asked about where a form was opened before', async () => {
    const opening = shown('oats')!;
    server.put('lots', { ...opening, seller: 'Elsewhere' });
    await keeper.pull();
    const heard = write({ ...opening, seller: 'Here' }, opening);
    expect(is(heard)).toEqual(['waiting']);
    expect(waits().theirs?.body).toMatchObject({ seller: 'Elsewhere' });
    expect(asked).toEqual([]);
    keeper.choose(waits(), 'mine');
    await answered();
    expect(there('oats')?.seller).toBe('Here');
  });

  it('waits also on the page that is opened next', async () => {
    await collided();
    keeper = await opened('b');
    keeper.adopt(() => false);
    keeper.choose(waits(), 'mine');
    await answered();
    expect(there('oats')).toMatchObject({ seller: 'Here', grams: 5, price: 2 });
  });

  it.each([
    ['mine', true],
    ['theirs', false],
  ] as const)('deleted elsewhere: %s', async (side, isThere) => {
    const before = shown('oats')!;
    server.delete('lots', 'oats');
    write({ ...before, grams: 5 }, before);
    await answered();
    expect(waits().theirs).toMatchObject({ version: 2, body: null });
    keeper.choose(waits(), side);
    if (isThere) await answered();
    expect(there('oats')?.grams).toBe(isThere ? 5 : undefined);
    expect(shown('oats')?.grams).toBe(isThere ? 5 : undefined);
    expect(keeper.view().waiting).toEqual([]);
  });

  it.each([
    ['mine', false],
    ['theirs', true],
  ] as const)('deleted here, changed elsewhere: %s', async (side, isThere) => {
    const before = shown('oats')!;
    server.put('lots', { ...before, grams: 5 });
    keeper.write('lots', 'oats', null, { base: before, unseen: true });
    await answered();
    expect(waits()).toMatchObject({ body: null, theirs: { body: { grams: 5 } } });
    keeper.choose(waits(), side);
    if (!isThere) await answered();
    expect(there('oats')?.grams).toBe(isThere ? 5 : undefined);
    expect(shown('oats')?.grams).toBe(isThere ? 5 : undefined);
  });
});

describe('pours', () => {
  const first = pourOf({ food: 'oats', grams: 5, at: '2026-04-01T10:01:00Z' });
  const second = pourOf({ food: 'millet', grams: 6, at: '2026-04-01T10:02:00Z' });
  const other = pourOf({ food: 'oats', grams: 7, at: '2026-04-01T10:01:30Z' });
  let base: Batch;
  beforeEach(async () => {
    server.put('batches', batchOf({ id: 'b' }));
    await keeper.pull();
    base = keeper.shown('batches', 'b')!;
  });
  const pour = (...pours: Batch['pours']) =>
    keeper.write('batches', 'b', { ...base, pours: [...base.pours, ...pours] }, { base, unseen: true });
  const inBowl = () => (server.get('batches', 'b')!.body as Batch).pours;

  it('of another device stay, though something is changed while an own one is on its way', async () => {
    pour(first);
    server.put('batches', { ...base, name: 'Named elsewhere', pours: [other] });
    await keeper.pull();
    const seen = keeper.shown('batches', 'b')!;
    expect(seen.pours).toEqual([other]);
    keeper.write('batches', 'b', { ...seen, name: 'Named here' }, { base: seen });
    while (asked.length > 0) await answered();
    expect(new Set(inBowl().map((p) => p.grams))).toEqual(new Set([5, 7]));
    expect((server.get('batches', 'b')!.body as Batch).name).toBe('Named here');
    expect(keeper.view().waiting).toEqual([]);
  });

  it('count as made once the server has them', async () => {
    pour(first);
    expect(keeper.shown('batches', 'b')?.pours).toEqual([]);
    await answered('no network');
    expect(keeper.shown('batches', 'b')?.pours).toEqual([]);
    await vi.advanceTimersByTimeAsync(1000);
    await answered();
    expect(keeper.shown('batches', 'b')?.pours).toEqual([first]);
  });

  it('of two devices are all in the batch, each once', async () => {
    pour(first);
    pour(second);
    server.put('batches', { ...base, pours: [other] });
    await answered('lost');
    await vi.advanceTimersByTimeAsync(1000);
    await answered();
    await answered();
    expect(inBowl()).toEqual([other, first, second]);
    expect(keeper.shown('batches', 'b')?.pours).toEqual(inBowl());
    expect(keeper.view().waiting).toEqual([]);
  });

  it('are kept where another device deleted the batch while it was empty', async () => {
    pour(first);
    server.delete('batches', 'b');
    await answered();
    await answered();
    expect(inBowl()).toEqual([first]);
  });

  it('into a batch that another device finished are refused, and told', async () => {
    const heard: Outcome[] = [];
    const next = { ...base, pours: [first] };
    keeper.write('batches', 'b', next, { base, unseen: true }, (o) => heard.push(o));
    server.put('batches', { ...base, finishedAt: '2026-04-01T11:00:00Z' });
    await answered();
    expect(is(heard)).toEqual(['refused']);
    expect(keeper.view().waiting).toEqual([]);
  });
});

describe('a household that comes in', () => {
  /** Requests for parts that wait for the test to answer them. */
  let parts: { of: Section | undefined; done(): void; fail(): void }[];
  const weighing = (id: string) => ({ id, animalId: 'a', at: '2026-03-01T20:00:00.000Z', grams: 100 });

  /** A page that has asked for the first part. */
  function opening(tab: string): Keeper {
    const page = new Keeper({
      page: (after, upTo, of) =>
        new Promise((done, fail) => {
          const part = server.page(after, upTo, of);
          parts.push({ of, done: () => done(part), fail: () => fail(new ApiError(0, 'nobody there')) });
        }),
      send: (change, leaving) => new Promise((done, fail) => asked.push({ change, leaving, done, fail })),
      storage,
      tab,
      newId: () => `${tab}${++ids}`,
      now: () => new Date(ids * 1000).toISOString(),
    });
    void page.pull();
    return page;
  }
  /** Answers all that is asked, but for parts that are held back. */
  async function give(held: readonly (Section | undefined)[] = [], how: 'done' | 'fail' = 'done') {
    for (let round = 0; round < 40; round++) {
      const some = parts.filter(({ of }) => !held.includes(of));
      parts = parts.filter((p) => !some.includes(p));
      for (const part of some) part[how]();
      await vi.advanceTimersByTimeAsync(0);
    }
  }
  /** What is thrown to who reads a list, or how long it is. */
  function read(page: Keeper, kind: 'lots' | 'feedings' | 'weighings') {
    try {
      return page.view().household?.[kind].length;
    } catch (wait) {
      return wait;
    }
  }

  beforeEach(() => {
    parts = [];
    for (let n = 0; n < 9; n++) server.put('weighings', weighing(`w${n}`));
    server.put('lots', lot('rye'));
  });

  it('is shown without what is written down daily; who reads that waits until all of it is here', async () => {
    const page = opening('p');
    expect(page.view().household).toBeUndefined();
    await give(['weighings', 'feedings']);
    expect(read(page, 'lots')).toBe(3);
    const [feedings, weighings] = [read(page, 'feedings'), read(page, 'weighings')];
    expect(() => ({ ...page.view().household })).toThrow();
    expect(feedings).toBeInstanceOf(Promise);
    const came: string[] = [];
    void (feedings as Promise<void>).then(() => came.push('feedings'));
    void (weighings as Promise<void>).then(() => came.push('weighings'));
    const { lots } = page.view().household!;
    await give(['weighings']);
    expect([came, read(page, 'feedings'), read(page, 'weighings')]).toEqual([['feedings'], 0, weighings]);
    await give();
    expect([came, read(page, 'weighings')]).toEqual([['feedings', 'weighings'], 9]);
    expect(page.view().household?.lots).toBe(lots);
    expect(page.heard()?.seq).toBe(server.seq);
  });

  it('takes what others changed meanwhile, and what came before it', async () => {
    const page = opening('p');
    await give(['weighings']);
    server.put('lots', lot('rye', { seller: 'mill' }));
    server.put('weighings', { ...weighing('w3'), grams: 90 });
    server.put('weighings', weighing('later'));
    await give();
    expect(page.shown('lots', 'rye')?.seller).toBe('mill');
    expect(page.shown('weighings', 'w3')?.grams).toBe(90);
    expect(read(page, 'weighings')).toBe(10);
  });

  it('is changed already: that is sent, and stays in sight', async () => {
    const page = opening('p');
    await give(['weighings']);
    page.write('lots', 'rye', lot('rye', { grams: 1 }), { base: lot('rye'), joins: true });
    page.write('weighings', 'new', weighing('new'), { base: null });
    expect(page.shown('lots', 'rye')?.grams).toBe(1);
    await vi.advanceTimersByTimeAsync(1000);
    for (const { change, done } of asked.splice(0)) done(server.receive(change));
    await vi.advanceTimersByTimeAsync(1000);
    expect(page.shown('lots', 'rye')?.grams).toBe(1);
    await give();
    await vi.advanceTimersByTimeAsync(1000);
    for (const { change, done } of asked.splice(0)) done(server.receive(change));
    await give();
    expect([page.view().waiting, read(page, 'weighings')]).toEqual([[], 10]);
    expect(server.get('lots', 'rye')?.body).toMatchObject({ grams: 1 });
  });

  it('says why a list cannot be had, keeps what is here, and asks again', async () => {
    const page = opening('p');
    await give(['weighings']);
    await give([], 'fail');
    expect(page.view().fault?.message).toBe('nobody there');
    expect([read(page, 'lots'), read(page, 'weighings')]).toEqual([3, expect.any(Promise)]);
    const wait = read(page, 'weighings') as Promise<void>;
    void page.pull();
    await give();
    await wait;
    expect([page.view().fault, read(page, 'weighings')]).toEqual([undefined, 9]);
  });

  it('that is another one by then is shown whole, and nobody waits for ever', async () => {
    const page = opening('p');
    await give(['weighings', 'feedings']);
    const wait = read(page, 'feedings') as Promise<void>;
    server.restore(() => server.put('lots', lot('spelt')));
    await give();
    await wait;
    expect([read(page, 'lots'), read(page, 'weighings')]).toEqual([4, 9]);
  });
});
