/** What a program found fit it does not check again after its next start; everything else is checked as ever. */
import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import { sql } from 'kysely';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { demo } from '../../../test/household/demo-version.ts';
import { folderForEachTest } from '../../../test/household/folder-for-each-test.ts';
import { hasPostgres, startPostgres, type TestPostgres } from '../../../test/household/postgres.ts';
import { tenYears } from '../../../test/household/ten-years.ts';
import { Backups } from '../backup/backups.ts';
import { openHosted } from '../hosted.ts';
import { checkRecord } from '../shape/check-record.ts';
import { openStore } from '../store.ts';
import type { Store } from './record-store.ts';
import type { Db } from './tables.ts';

vi.mock(import('../shape/check-record.ts'), async (original) => {
  const real = await original();
  return { ...real, checkRecord: vi.fn(real.checkRecord) };
});
const check = vi.mocked(checkRecord);

const house = tenYears({ size: 0.02 });
/** Where the numbers of changes begin, so that the rows lie in two parts of what is kept. */
const BEGIN = 2048 - 100;
const COUNT = Object.values(house).reduce((n, list) => n + list.length, 0);
const by = { device: 'test', at: '2026-03-10T10:00:00.000Z' };
const weighing = house.weighings[5]!;
const folder = folderForEachTest();
/** Fills a new household. */
async function fill({ store, db }: Pick<Opened, 'store' | 'db'>): Promise<void> {
  await db.updateTable('households').set({ seq: BEGIN }).execute();
  await store.putAll(house);
}

interface Opened {
  readonly store: Store;
  readonly db: Db;
  close(): Promise<void>;
}

let postgres: TestPostgres | undefined;
let url = '';
beforeAll(async () => {
  if (hasPostgres) postgres = await startPostgres();
});
afterAll(() => postgres?.stop());

const path = () => join(folder(), 'household.sqlite');
const inFile = async (program?: string): Promise<Opened> => {
  const store = openStore(path(), { program });
  return { store, db: store.db, close: () => store.close() };
};
const inPostgres = async (program?: string): Promise<Opened> => {
  const hosted = await openHosted(url, { serves: true, program });
  const [ours = await hosted.add('Ours')] = await hosted.list();
  return { store: hosted.store(ours.id), db: hosted.db, close: () => hosted.close() };
};
const OPENERS: [string, typeof inFile][] = [['a file', inFile]];
if (hasPostgres) OPENERS.push(['PostgreSQL', inPostgres]);

describe.each(OPENERS)('in %s', (_name, open) => {
  let opened: Opened;
  const start = async (program?: string) => {
    opened = await open(program);
    check.mockClear();
  };
  const restart = async (program?: string) => {
    await opened.close();
    await start(program);
  };
  const lookThrough = async () => {
    await opened.store.lookThrough();
    return check.mock.calls.length;
  };
  /** All that a page asks for. */
  async function readAll(): Promise<number> {
    for (let after = 0, more = true; more; )
      ({ seq: after, more } = JSON.parse((await opened.store.recordsText({ after })).text ?? ''));
    return check.mock.calls.length;
  }

  beforeEach(async () => {
    if (open === inPostgres) url = (await postgres?.database()) ?? '';
    await start('one');
    await fill(opened);
    await restart('one');
    expect(await lookThrough()).toBe(COUNT);
  });
  afterEach(() => opened.close());

  it('the second start checks nothing that stands as it stood, and keeps to what it kept', async () => {
    await restart('one');
    expect(await readAll()).toBe(0);
    expect(await lookThrough()).toBe(0);
    expect(await opened.store.household()).toEqual(house);
    expect(check).not.toHaveBeenCalled();
  });

  it('what was written since is checked once more, and then no more', async () => {
    const { store } = opened;
    await store.write({ kind: 'weighings', id: 'new', body: { ...weighing, id: 'new' }, basedOn: 0 }, by);
    await store.write(
      { kind: 'weighings', id: weighing.id, body: { ...weighing, grams: 99 }, basedOn: 1 },
      by,
    );
    await store.write({ kind: 'notes', id: house.notes[0]!.id, body: null, basedOn: 1 }, by);
    await restart('one');
    expect(await lookThrough()).toBe(2);
    await restart('one');
    expect(await lookThrough()).toBe(0);
  });

  it.each<[string, (db: Db) => Promise<unknown>, string | undefined]>([
    [
      'makes it unfit',
      (db) =>
        db
          .updateTable('records')
          .set({ body: JSON.stringify({ ...weighing, grams: -1 }) })
          .where('id', '=', weighing.id)
          .execute(),
      'is -1',
    ],
    [
      'leaves its length as it was',
      (db) =>
        db
          .updateTable('records')
          .set({ body: JSON.stringify(weighing).replace('"grams"', '"grama"') })
          .where('id', '=', weighing.id)
          .execute(),
      'is missing',
    ],
    [
      'makes it one of another kind',
      (db) => db.updateTable('records').set({ kind: 'notes' }).where('id', '=', weighing.id).execute(),
      '',
    ],
    [
      'leaves it fit',
      (db) =>
        db
          .updateTable('records')
          .set({ body: JSON.stringify({ ...weighing, grams: 98 }) })
          .where('id', '=', weighing.id)
          .execute(),
      undefined,
    ],
  ])(
    'a row that another program wrote is checked again, also where its edit %s',
    async (_what, edit, why) => {
      await edit(opened.db);
      await restart('one');
      expect(await lookThrough()).toBe(1);
      const { records } = await opened.store.records({ after: 0, of: 'weighings' });
      expect(records.length).toBeGreaterThan(0);
      const row = (await opened.store.everything()).find((r) => r.id === weighing.id);
      if (why === undefined) expect(row?.body).toMatchObject({ grams: 98 });
      else expect(row).toMatchObject({ body: null, unreadable: { why: expect.stringContaining(why) } });
      // What is unfit is checked whenever it is read; what was found fit, no more.
      await restart('one');
      expect(await lookThrough()).toBe(why === undefined ? 0 : 1);
    },
  );

  it('another program checks all, and so does one without a mark; neither trusts what the other found', async () => {
    await restart('two');
    expect(await readAll()).toBe(COUNT);
    await opened.store.lookThrough();
    expect(check).toHaveBeenCalledTimes(COUNT);
    await restart('one');
    expect(await lookThrough()).toBe(COUNT);
    await restart();
    expect(await lookThrough()).toBe(COUNT);
    await restart('one');
    expect(await lookThrough()).toBe(0);
  });

  it('a program whose schemas are others refuses what the older one took', async () => {
    const stricter: typeof checkRecord = (kind) =>
      kind === 'weighings' ? { field: '/grams', message: 'no longer so' } : undefined;
    await restart('stricter');
    check.mockImplementation(stricter);
    try {
      const all = await opened.store.everything();
      expect(all.filter((r) => r.unreadable)).toHaveLength(house.weighings.length);
    } finally {
      check.mockReset();
      const { checkRecord: real } =
        await vi.importActual<typeof import('../shape/check-record.ts')>('../shape/check-record.ts');
      check.mockImplementation(real);
    }
  });

  it('what is kept makes no change: no new number, nobody is told, no backup is due', async () => {
    await restart('two');
    const before = await opened.store.newest();
    const heard: number[] = [];
    opened.store.watch((seq) => heard.push(seq));
    const rows = () => opened.db.selectFrom('records').selectAll().orderBy('seq').execute();
    const stood = await rows();
    await opened.store.lookThrough();
    const programs = await opened.db.selectFrom('found_fit').select('program').distinct().execute();
    expect(programs).toEqual([{ program: 'two' }]);
    expect(await opened.store.newest()).toEqual(before);
    expect(await rows()).toEqual(stood);
    expect(heard).toEqual([]);
  });

  it('sums that were damaged or belong to other texts only make it check again', async () => {
    await sql`UPDATE found_fit SET sums = 'no sums at all' WHERE part = 1`.execute(opened.db);
    await restart('one');
    const again = await lookThrough();
    expect(again).toBeGreaterThan(0);
    expect(again).toBeLessThan(COUNT);
    await restart('one');
    expect(await lookThrough()).toBe(0);
  });
});

describe('a file', () => {
  beforeEach(async () => {
    const first = openStore(path(), { program: 'one' });
    await fill({ store: first, db: first.db });
    await first.close();
  });

  it.each([
    ['that cannot be written', 'query_only = ON'],
    ['on a full disk', 'max_page_count = 1'],
  ])('%s is read all the same', async (_what, pragma) => {
    const store = openStore(path(), { program: 'one' });
    store.opened.file.pragma(pragma);
    await store.lookThrough();
    expect(await store.household()).toEqual(house);
    expect(await store.db.selectFrom('found_fit').selectAll().execute()).toEqual([]);
    await store.close();
    // Nothing stands in the way of the next time.
    const again = openStore(path(), { program: 'one' });
    await again.lookThrough();
    check.mockClear();
    await again.close();
    const third = openStore(path(), { program: 'one' });
    expect(await third.household()).toEqual(house);
    expect(check).not.toHaveBeenCalled();
    await third.close();
  });

  it('gone back to an older state trusts of it what this program found, and no more', async () => {
    const store = openStore(path(), { program: 'one' });
    await store.lookThrough();
    const backups = new Backups({
      ...{ opened: store.opened, clock: () => new Date('2026-03-10T10:00:00.000Z') },
      ...{ tell: () => {}, onGoneBack: () => store.stirred() },
    });
    const { name } = await backups.saveNow();
    const edited = JSON.stringify({ ...weighing, grams: 77 });
    await store.write({ kind: 'weighings', id: weighing.id, body: JSON.parse(edited), basedOn: 1 }, by);
    await store.household();
    check.mockClear();
    await backups.goBack(name);
    expect(await store.household()).toEqual(house);
    await store.close();
    const again = openStore(path(), { program: 'one' });
    expect(await again.household()).toEqual(house);
    expect(check).not.toHaveBeenCalled();
    await again.close();
    // The same backup, put in the place of the file, under a program that came later.
    copyFileSync(join(backups.folder, name), path());
    const later = openStore(path(), { program: 'later' });
    expect(await later.household()).toEqual(house);
    expect(check).toHaveBeenCalledTimes(COUNT);
    await later.close();
  });

  it('of the shape before is brought up, and then looked through once', async () => {
    const old = openStore(path(), { program: 'one' });
    old.opened.file.exec('DROP TABLE found_fit; PRAGMA user_version = 9');
    await old.close();
    const store = openStore(path(), { program: 'one' });
    expect(store.opened.copyBefore).toContain('before-upgrade-9-10');
    check.mockClear();
    await store.lookThrough();
    expect(check).toHaveBeenCalledTimes(COUNT);
    expect(await store.household()).toEqual(house);
    await store.close();
    const again = openStore(path(), { program: 'one' });
    check.mockClear();
    await again.lookThrough();
    expect(check).not.toHaveBeenCalled();
    await again.close();
  });
});

it('the demonstration, filled in by this program, is not checked after its next start', async () => {
  const first = openStore(path(), { program: 'one' });
  await first.putAll(demo);
  await first.lookThrough();
  await first.close();
  const store = openStore(path(), { program: 'one' });
  check.mockClear();
  expect(await store.household()).toMatchObject(demo);
  expect(check).not.toHaveBeenCalled();
  await store.close();
});
