/** Versions, repeats, history and parts of a household, over a real file and over a real PostgreSQL. */
import { join } from 'node:path';
import { sql } from 'kysely';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { demo, mix, version } from '../../../test/household/demo-version.ts';
import { folderForEachTest } from '../../../test/household/folder-for-each-test.ts';
import { hasPostgres, startPostgres, type TestPostgres } from '../../../test/household/postgres.ts';
import { put, recordIn, remove } from '../../../test/household/put.ts';
import type { Lot } from '../../kitchen/model.ts';
import { openHosted } from '../hosted.ts';
import type { Kind } from '../model.ts';
import {
  type By,
  type KeptRecord,
  type RecordsPage,
  recordInFull,
  type Section,
  type SentRecord,
} from '../records.ts';
import { openStore } from '../store.ts';
import type { Sent } from './pages.ts';
import type { Store } from './record-store.ts';
import type { Asked } from './section.ts';
import type { Db } from './tables.ts';

const lot: Lot = {
  id: 'l',
  food: 'millet',
  name: 'Millet',
  grams: 500,
  form: 'dry',
  boughtOn: '2026-03-01',
  frozen: false,
  cold: [],
};
const by = (device: string, minute = 0): By => ({
  device,
  at: new Date(Date.UTC(2026, 2, 20, 10, minute)).toISOString(),
});
const desk = by('desk');

interface Opened {
  readonly store: Store;
  readonly db: Db;
  close(): Promise<void>;
}

const folder = folderForEachTest();
let postgres: TestPostgres | undefined;
beforeAll(async () => {
  if (hasPostgres) postgres = await startPostgres();
});
afterAll(() => postgres?.stop());

const OPENERS: [string, (again: boolean) => Promise<Opened>][] = [
  [
    'a file',
    async () => {
      const store = openStore(join(folder(), 'household.sqlite'));
      return { store, db: store.db, close: () => store.close() };
    },
  ],
];
let url = '';
if (hasPostgres)
  OPENERS.push([
    'PostgreSQL',
    async (again) => {
      if (!again) url = (await postgres?.database()) ?? '';
      const hosted = await openHosted(url, { serves: true });
      // Another household beside it, with the same records: nothing of it may show.
      const others = again ? [] : [await hosted.add('Others'), await hosted.add('Ours')];
      if (others[0]) await hosted.store(others[0].id).putAll(demo);
      const ours = (await hosted.list()).find((h) => h.name === 'Ours');
      return { store: hosted.store(ours?.id ?? ''), db: hosted.db, close: () => hosted.close() };
    },
  ]);

describe.each(OPENERS)('in %s', (_name, open) => {
  let opened: Opened;
  let store: Store;
  beforeEach(async () => {
    opened = await open(false);
    store = opened.store;
    await store.putAll(demo);
  });
  afterEach(async () => {
    await opened.close();
  });

  const write = (body: Lot | null, basedOn: number, who = desk, writeId?: string) =>
    store.write({ kind: 'lots', id: 'l', body, basedOn, ...(writeId && { writeId }) }, who);
  const lots = async () => (await store.household()).lots;

  describe('a write', () => {
    it('names the version that it is based on, and is refused with what stands there', async () => {
      expect((await write(lot, 0)).record).toMatchObject({ version: 1, body: lot });
      const phone = { ...lot, seller: 'Mill' };
      expect((await write(phone, 1)).record.version).toBe(2);
      await expect(write({ ...lot, grams: 400 }, 1)).rejects.toMatchObject({
        kind: 'changed',
        stands: { version: 2, body: phone },
      });
      await expect(write(null, 1)).rejects.toMatchObject({ stands: { version: 2 } });
      await expect(write(lot, 0)).rejects.toMatchObject({ stands: { version: 2 } });
      expect(await lots()).toEqual([phone]);
    });

    it('of something deleted is refused, unless its sender saw that', async () => {
      await write(lot, 0);
      await write(null, 1);
      await expect(write(lot, 1)).rejects.toMatchObject({ stands: { version: 2, body: null } });
      await expect(write(lot, 0)).rejects.toMatchObject({ stands: { version: 2, body: null } });
      await write(lot, 2);
      expect(await lots()).toEqual([lot]);
      await write(null, 3);
      await expect(write(null, 4)).rejects.toMatchObject({ kind: 'missing' });
    });

    it('sent again by its id is not a second write, even after others went on', async () => {
      await write(lot, 0, desk, 'w1');
      await write({ ...lot, grams: 400 }, 1, desk, 'w2');
      await write({ ...lot, grams: 300 }, 2, by('phone'), 'w3');
      expect((await write({ ...lot, grams: 400 }, 1, desk, 'w2')).record).toMatchObject({ version: 3 });
      expect((await lots())[0]?.grams).toBe(300);
      await expect(
        store.write(
          { kind: 'foods', id: 'f', body: { ...demo.foods[0]!, id: 'f' }, basedOn: 0, writeId: 'w2' },
          desk,
        ),
      ).rejects.toMatchObject({ kind: 'invalid' });
    });

    it('of what cannot be shown, or names what is not there, leaves nothing', async () => {
      const before = await store.newest();
      await expect(write({ ...lot, boughtOn: '0001-01-01' }, 0)).rejects.toMatchObject({
        field: '/boughtOn',
      });
      await expect(write({ ...lot, food: 'moon-dust' }, 0)).rejects.toMatchObject({ field: '/food' });
      await expect(write({ ...lot, driedIn: 'nothing' }, 0)).rejects.toMatchObject({ field: '/driedIn' });
      expect(await store.newest()).toEqual(before);
    });

    it('tells who watches, once it is on disk', async () => {
      const heard: number[] = [];
      const stop = store.watch((seq) => heard.push(seq));
      await write(lot, 0);
      await expect(write(lot, 7)).resolves.toBeDefined();
      await expect(write({ ...lot, grams: 1 }, 7)).rejects.toThrow();
      stop();
      await write(null, 1);
      expect(heard).toEqual([4]);
    });
  });

  describe('what goes along', () => {
    it('mixes go on without a deleted animal, versions go with their mix; both come back together', async () => {
      await put(store, 'versions', version);
      const animal = await remove(store, 'animals', 'demo-animal');
      expect(animal.along.map((r) => [r.kind, r.version])).toEqual([['mixes', 2]]);
      const gone = await remove(store, 'mixes', mix.id);
      expect(gone.along.map((r) => [r.kind, r.body])).toEqual([['versions', null]]);
      await store.takeBack(gone.record.seq, desk);
      await store.takeBack(animal.record.seq, desk);
      const house = await store.household();
      expect(house.mixes).toEqual([mix]);
      expect(house.versions).toEqual([version]);
      expect(house.animals).toEqual(demo.animals);
    });

    it('what was written down of an animal goes with it, that of others stays, and all comes back together', async () => {
      const [first] = demo.animals;
      if (!first) throw new Error('the demonstration has no animal');
      await put(store, 'animals', { ...first, id: 'other', name: 'Other' });
      const noted = (animalId: string) => ({
        weighings: [{ id: `w-${animalId}`, animalId, at: '2026-03-01T20:00:00Z', grams: 131 }],
        feedings: [{ id: `2026-03-01.${animalId}`, animalId, on: '2026-03-01', beside: [] }],
        trials: [{ id: `t-${animalId}`, animalId, food: 'millet', name: 'Millet', days: [], offerings: [] }],
        notes: [{ id: `n-${animalId}`, animalId, on: '2026-03-01', kind: 'seen' as const, text: 'Lively.' }],
        photos: [{ id: animalId, jpeg: '/9j/AAAA' }],
      });
      const [own, others] = [noted(first.id), noted('other')];
      for (const all of [own, others]) {
        for (const w of all.weighings) await put(store, 'weighings', w);
        for (const f of all.feedings) await put(store, 'feedings', f);
        for (const t of all.trials) await put(store, 'trials', t);
        for (const n of all.notes) await put(store, 'notes', n);
        for (const p of all.photos) await put(store, 'photos', p);
      }
      const gone = await remove(store, 'animals', first.id);
      expect(gone.along.map((r) => r.kind).sort()).toEqual([
        ...['feedings', 'mixes', 'notes', 'photos', 'trials', 'weighings'],
      ]);
      expect(await store.household()).toMatchObject(others);
      expect((await store.household()).animals.map((a) => a.id)).toEqual(['other']);
      await store.takeBack(gone.record.seq, desk);
      const back = await store.household();
      for (const kind of ['weighings', 'feedings', 'trials', 'notes', 'photos'] as const)
        expect(back[kind]).toEqual([...own[kind], ...others[kind]]);
      expect(back.animals.map((a) => a.id)).toEqual([first.id, 'other']);
      expect(back.mixes).toEqual([mix]);
    });
  });

  describe('the history', () => {
    it('says what was changed, when and from which device, newest first', async () => {
      await write(lot, 0, by('desk', 0));
      await write({ ...lot, grams: 400 }, 1, by('phone', 1));
      await write(null, 2, by('desk', 2));
      const { changes } = await store.history({ kind: 'lots', id: 'l' });
      expect(changes.map(({ what, device, version: v, newest }) => [what, device, v, newest])).toEqual([
        ['deleted', 'desk', 3, true],
        ['changed', 'phone', 2, false],
        ['made', 'desk', 1, false],
      ]);
      expect(await store.change(changes[1]!.seq)).toMatchObject({
        name: 'Millet',
        before: lot,
        after: { ...lot, grams: 400 },
      });
      expect((await store.history({ deleted: true })).changes.map((c) => c.id)).toEqual(['l']);
      await write(lot, 3, by('desk', 9));
      expect((await store.history({ kind: 'lots' })).changes[0]?.what).toBe('brought back');
      expect((await store.history({ deleted: true })).changes).toEqual([]);
    });

    it('has one line for what one device changed in one sitting', async () => {
      await write(lot, 0);
      for (let i = 1; i < 10; i++) await write({ ...lot, grams: 500 - i }, i, by('desk', i));
      await write({ ...lot, grams: 50 }, 10, by('desk', 60));
      const { changes } = await store.history({ kind: 'lots' });
      expect(changes.map((c) => c.version)).toEqual([11, 10, 1]);
      expect((await store.change(changes[1]!.seq)).before).toEqual(lot);
    });

    it('comes in parts', async () => {
      for (let i = 0; i < 60; i++) await write({ ...lot, grams: 500 + i }, i, by(`device ${i}`, i));
      const first = await store.history({});
      expect(first).toMatchObject({ more: true, changes: { length: 50 } });
      const rest = await store.history({ before: first.changes.at(-1)!.seq });
      expect(rest).toMatchObject({ more: false, changes: { length: 13 } });
    });

    it('takes a change back where later ones left the same fields alone', async () => {
      await write(lot, 0);
      const seller = await write({ ...lot, seller: 'Mill' }, 1, by('desk', 10));
      await write({ ...lot, seller: 'Mill', openedOn: '2026-03-21' }, 2, by('phone', 20));
      await store.takeBack(seller.record.seq, by('desk', 30));
      expect(await lots()).toEqual([{ ...lot, openedOn: '2026-03-21' }]);
      const grams = await write({ ...lot, grams: 100 }, 4, by('phone', 40));
      await write({ ...lot, grams: 50 }, 5, by('desk', 50));
      await expect(store.takeBack(grams.record.seq, desk)).rejects.toMatchObject({
        kind: 'in-use',
        field: '/grams',
        message: expect.stringContaining('“Millet” was changed again'),
      });
      await expect(store.takeBack(4000, desk)).rejects.toMatchObject({ kind: 'missing' });
    });

    it('reaches back a year', async () => {
      await write(lot, 0, { device: 'desk', at: '2020-01-01T00:00:00.000Z' });
      await write({ ...lot, grams: 1 }, 1, by('desk'));
      await store.forgetOld('2026-03-21T00:00:00.000Z');
      expect((await store.history({ kind: 'lots' })).changes.map((c) => c.version)).toEqual([2]);
      expect(await lots()).toHaveLength(1);
    });
  });

  describe('all at once', () => {
    it('records written together may name one another, and are written all or none', async () => {
      const foods = [{ ...demo.foods[0]!, id: 'own', kind: 'mix' as const }];
      const refuses = ['own'];
      const animals = [{ ...demo.animals[0]!, refuses }];
      await store.putAll({ ...demo, foods, animals });
      expect((await store.household()).animals[0]?.refuses).toEqual(refuses);
      const before = await store.household();
      const broken = { ...mix, id: 'm2', profileId: 'nowhere' };
      await expect(store.putAll({ ...demo, mixes: [broken] })).rejects.toMatchObject({ field: '/profileId' });
      expect(await store.household()).toEqual(before);
    });
  });

  describe('parts', () => {
    const textOf = async (asked: Asked & Sent) => (await store.recordsText(asked)).text ?? '';
    const everything = async () => {
      const found = [];
      for (let after = 0, answers = 1; ; answers++) {
        const page = await store.records({ after });
        expect(JSON.parse(await textOf({ after }))).toEqual(page);
        expect(JSON.stringify(page).length).toBeLessThan(200_000);
        found.push(...page.records);
        if (!page.more) return { found, seq: page.seq, answers };
        after = page.seq;
      }
    };

    it('come in the order of the changes, each small enough, and nothing is missing', async () => {
      const words = 'x'.repeat(3900);
      for (let i = 0; i < 120; i++)
        await put(store, 'foods', { ...demo.foods[0]!, id: `f${i}`, source: words });
      const { found, seq } = await everything();
      expect(found).toHaveLength(123);
      expect(seq).toBe(123);
      const middle = await store.records({ after: 10, upTo: 20 });
      expect(middle.records.map((r) => r.seq)).toEqual([11, 12, 13, 14, 15, 16, 17, 18, 19, 20]);
      expect(middle).toMatchObject({ seq: 20, more: false, newest: 20 });
      expect(JSON.parse(await textOf({ after: 10, upTo: 20 }))).toEqual(middle);
      await remove(store, 'foods', 'f7');
      const after = await store.records({ after: seq });
      expect(after.records.map((r) => [r.id, r.body, r.seq])).toEqual([['f7', null, 124]]);
      const there = (await everything()).found.filter((r) => r.body !== null);
      expect(there).toHaveLength(122);
    });

    it('say briefly what follows from the rest, and hold more so', async () => {
      const weighings = Array.from({ length: 3000 }, (_, i) => ({
        ...{ id: `weighing-${i}`, animalId: demo.animals[0]!.id, at: `2026-01-01T00:00:00.${i % 1000}Z` },
        grams: 100,
      }));
      await store.putAll({ ...demo, weighings });
      await put(store, 'weighings', { ...weighings[1]!, grams: 120 });
      await remove(store, 'weighings', 'weighing-0');
      const all = await everything();
      const found: KeptRecord[] = [];
      let answers = 0;
      for (let asked = { after: 0 }, more = true; more; answers++) {
        const text = await textOf({ ...asked, brief: true });
        expect(text.length).toBeLessThan(200_000);
        const page: RecordsPage = JSON.parse(text);
        found.push(...(page.records as SentRecord[]).map(recordInFull));
        asked = { after: page.seq };
        more = page.more;
      }
      expect(found).toEqual(all.found);
      expect(answers).toBeLessThanOrEqual(all.answers * 0.6);
    });

    it('tell what was deleted also to who asks for one section alone', async () => {
      const weighing = { id: 'w', animalId: demo.animals[0]!.id, at: '2026-01-01T08:00:00.000Z', grams: 100 };
      await put(store, 'weighings', weighing);
      await write(lot, 0);
      const { seq } = await everything();
      await remove(store, 'weighings', 'w');
      await remove(store, 'lots', lot.id);
      const deleted = async (of: Section) =>
        (await store.records({ after: seq, of })).records.map(({ id, body }) => [id, body]);
      expect(await deleted('weighings')).toEqual([['w', null]]);
      expect(await deleted('rest')).toEqual([[lot.id, null]]);
      expect(await deleted('feedings')).toEqual([]);
    });

    it('give what cannot be read with its text and why, and go on', async () => {
      await write(lot, 0);
      const { db } = opened;
      // Also while it is open, and of the same length.
      await store.household();
      const spoiled = JSON.stringify(lot).replace('}', ',').replace('{', '[');
      await sql`UPDATE records SET body = ${spoiled} WHERE kind = ${'lots'}`.execute(db);
      const page = JSON.parse(await textOf({ after: 0 })) as RecordsPage;
      expect(page.records.at(-1)?.unreadable?.raw).toBe(spoiled);
      await sql`UPDATE records SET body = ${'{"id":"l","grams":'} WHERE kind = ${'lots'}`.execute(db);
      await sql`UPDATE records SET body = ${'{"id":"demo-animal"}'} WHERE kind = ${'animals'}`.execute(db);
      await opened.close();
      opened = await open(true);
      store = opened.store;
      const { found } = await everything();
      const odd = found.filter((r) => r.unreadable).map((r) => [r.kind as Kind, r.unreadable?.raw]);
      expect(odd).toEqual([
        ['animals', '{"id":"demo-animal"}'],
        ['lots', '{"id":"l","grams":'],
      ]);
      const house = await store.household();
      expect([house.lots, house.animals, house.mixes.length]).toEqual([[], [], 1]);
      // It can be deleted, and written anew.
      expect((await recordIn(store, 'lots', 'l')).version).toBe(1);
      await write(null, 1);
      await write(lot, 2);
      expect(await lots()).toEqual([lot]);
    });
  });
});

it.runIf(hasPostgres)('a database of an earlier shape gets what it lacks, once', async () => {
  const database = (await postgres?.database()) ?? '';
  const first = await openHosted(database);
  const { id } = await first.add('Ours');
  await first.store(id).putAll(demo);
  const indexes = async (db: Db) =>
    (await sql<{ name: string }>`SELECT indexname AS name FROM pg_indexes`.execute(db)).rows.map(
      (r) => r.name,
    );
  const later = ['records_deleted', 'changes_by_kind', 'records_by_kind', 'records_rest'];
  for (const index of later) await sql`DROP INDEX ${sql.id(index)}`.execute(first.db);
  await sql`DROP TABLE found_fit`.execute(first.db);
  await sql`UPDATE pouchful SET shape = 1`.execute(first.db);
  await first.close();
  for (let k = 0; k < 2; k++) {
    const again = await openHosted(database);
    expect(await indexes(again.db)).toEqual(expect.arrayContaining(later));
    const { rows } = await sql`SELECT shape FROM pouchful`.execute(again.db);
    expect(rows).toEqual([{ shape: 3 }]);
    expect(await again.db.selectFrom('found_fit').selectAll().execute()).toEqual([]);
    expect((await again.store(id).household()).mixes).toHaveLength(1);
    await again.close();
  }
});
