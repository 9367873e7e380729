/** Backups are whole, rotate, are made only where something changed, and can be gone back to. */
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { demo } from '../../../test/household/demo-version.ts';
import { EMPTY } from '../../../test/household/empty-household.ts';
import { folderForEachTest } from '../../../test/household/folder-for-each-test.ts';
import type { OwnFood } from '../model.ts';
import { type FileStore, openStore } from '../store.ts';
import { Backups } from './backups.ts';
import { checkCopy } from './check-copy.ts';

const HOUR = 3_600_000;
const folder = folderForEachTest();
let store: FileStore;
let backups: Backups;
let now: number;
let told: string[];
let goneBack: number;

beforeEach(() => {
  now = Date.UTC(2026, 10, 28, 10);
  told = [];
  goneBack = 0;
  open();
});
afterEach(() => store.close());

function open(quiet?: () => Promise<void>): void {
  store = openStore(join(folder(), 'household.sqlite'));
  backups = new Backups({
    opened: store.opened,
    clock: () => new Date(now),
    tell: (line) => told.push(line),
    onGoneBack: () => {
      goneBack += 1;
    },
    ...(quiet && { quiet }),
  });
}

const names = () => readdirSync(backups.folder).sort();
const keep = (id: string) => {
  const food: OwnFood = { ...(demo.foods[0] as OwnFood), id };
  return store.putAll({ ...EMPTY, foods: [food] }, { device: 'test', at: new Date(now).toISOString() });
};
const foods = async () => (await store.household()).foods.map((f) => f.id);

describe('a backup', () => {
  it('is one whole file, named by its time, made while writing goes on', async () => {
    await store.putAll(demo);
    const writing = (async () => {
      for (let i = 0; i < 40; i++) await keep(`food-${i}`);
    })();
    const made = await backups.saveNow();
    await writing;
    expect(made.name).toBe('household.2026-11-28T10-00-00.000Z.pressed.sqlite');
    expect(names()).toEqual([made.name]);
    const copy = new Database(backups.pathOf(made.name), { readonly: true });
    expect(copy.pragma('integrity_check', { simple: true })).toBe('ok');
    expect(copy.pragma('journal_mode', { simple: true })).toBe('delete');
    copy.close();
    expect(names()).toEqual([made.name]);
    expect((await foods()).length).toBe(41);
  });

  it('holds records that cannot be read, too', async () => {
    await store.putAll(demo);
    store.opened.file.exec("UPDATE records SET body = '{not json' WHERE kind = 'foods'");
    const made = await backups.saveNow();
    expect(checkCopy(backups.pathOf(made.name)).unreadable).toBe(1);
  });

  it('is made by itself each hour, where something changed', async () => {
    await store.putAll(demo);
    await backups.saveWhereDue();
    expect(names()).toHaveLength(1);
    now += 2 * HOUR;
    await backups.saveWhereDue();
    expect(names()).toHaveLength(1);
    await keep('more');
    await backups.saveWhereDue();
    expect(names()).toHaveLength(2);
    await keep('and more');
    now += HOUR / 2;
    await backups.saveWhereDue();
    expect(names()).toHaveLength(2);
    await store.close();
    // What the last run saved is found out from its newest backup.
    now += HOUR;
    open();
    await backups.saveWhereDue();
    expect(names()).toHaveLength(3);
    now += HOUR;
    await store.close();
    open();
    await backups.saveWhereDue();
    expect(names()).toHaveLength(3);
  });

  it('that is made by itself waits until nobody asks for anything; one that is pressed does not', async () => {
    await store.close();
    let isQuiet = () => {};
    open(
      () =>
        new Promise((done) => {
          isQuiet = done;
        }),
    );
    await store.putAll(demo);
    const due = backups.saveWhereDue();
    await backups.saveNow();
    expect(names()).toEqual([expect.stringContaining('pressed')]);
    await keep('more');
    now += 2 * HOUR;
    let isSettled = false;
    const settled = backups.settled().then(() => {
      isSettled = true;
    });
    await store.household();
    expect(isSettled).toBe(false);
    isQuiet();
    await Promise.all([due, settled]);
    expect(names()).toHaveLength(2);
  });

  it('is still made where the clock was set back', async () => {
    await backups.saveWhereDue();
    now -= 100 * HOUR;
    await keep('later');
    await backups.saveWhereDue();
    expect(names()).toHaveLength(2);
  });

  it('that cannot be made is told, leaves nothing half-made, and takes no good one away', async () => {
    const good = await backups.saveNow();
    const bytes = readFileSync(backups.pathOf(good.name));
    now += 2 * HOUR;
    await keep('more');
    const blocked = join(backups.folder, 'household.2026-11-28T12-00-00.000Z.auto.sqlite.half');
    mkdirSync(join(blocked, 'x'), { recursive: true });
    await backups.saveWhereDue();
    expect(told.at(-1)).toContain('no backup could be made');
    expect(backups.fault?.message).toContain('the backups before it are still there');
    expect(readFileSync(backups.pathOf(good.name))).toEqual(bytes);
    rmSync(blocked, { recursive: true });
    await backups.saveNow();
    expect(backups.fault).toBeUndefined();
    expect(backups.list()).toHaveLength(2);
  });

  it('of a household found damaged is none, and nothing more is written', async () => {
    await store.putAll(demo);
    await store.close();
    open();
    const path = store.opened.path;
    const bytes = readFileSync(path);
    bytes.fill(0xff, 8192);
    writeFileSync(path, bytes);
    await expect(backups.saveNow()).rejects.toMatchObject({ kind: 'damaged' });
    expect(backups.list()).toEqual([]);
    await expect(keep('more')).rejects.toMatchObject({ kind: 'damaged' });
    await store.close();
    expect(readFileSync(path)).toEqual(bytes);
  });

  it('has a name that leads nowhere else', () => {
    for (const name of ['../household.sqlite', 'household.sqlite', '', '..', 'a/b', 'x'.repeat(300)]) {
      expect(() => backups.pathOf(name)).toThrow('there is no backup');
    }
  });
});

describe('going back', () => {
  it('puts the old state there, under a new epoch, and keeps what stood there', async () => {
    await keep('first');
    const old = await backups.saveNow();
    await keep('second');
    store.opened.file.exec("INSERT INTO devices VALUES ('home', 'd1', 'Phone', 'hash', '', '', NULL)");
    const { epoch } = await store.newest();
    now += 60_000;
    const before = await backups.goBack(old.name);
    expect(await foods()).toEqual(['first']);
    expect((await store.newest()).epoch).not.toBe(epoch);
    expect(goneBack).toBe(1);
    expect(before.why).toBe('before-going-back');
    // Who may come in does not change with it.
    expect(store.opened.file.prepare('SELECT id FROM devices').pluck().all()).toEqual(['d1']);
    expect(store.opened.file.pragma('foreign_keys', { simple: true })).toBe(1);
    now += 60_000;
    await backups.goBack(before.name);
    expect(await foods()).toEqual(['first', 'second']);
    expect(readdirSync(folder()).filter((n) => n.includes('going-back'))).toEqual([]);
  });

  it('refuses a backup that is not whole, and changes nothing', async () => {
    await keep('first');
    const old = await backups.saveNow();
    await keep('second');
    writeFileSync(backups.pathOf(old.name), readFileSync(backups.pathOf(old.name)).fill(0, 4096));
    await expect(backups.goBack(old.name)).rejects.toThrow('this backup is not whole');
    expect(await foods()).toEqual(['first', 'second']);
    await expect(backups.goBack('household.2020-01-01T00-00-00.000Z.auto.sqlite')).rejects.toThrow(
      'there is no backup',
    );
    expect(goneBack).toBe(0);
  });

  it('waits for writes that are under way', async () => {
    await keep('first');
    const old = await backups.saveNow();
    now += 60_000;
    const writes = Promise.all(Array.from({ length: 30 }, (_, i) => keep(`food-${i}`)));
    const back = backups.goBack(old.name);
    await Promise.all([writes, back]);
    const left = await foods();
    expect(left[0]).toBe('first');
    const file = store.opened.file;
    expect(file.pragma('integrity_check', { simple: true })).toBe('ok');
    const { seq } = await store.newest();
    expect(file.prepare('SELECT max(seq) FROM records').pluck().get()).toBe(seq);
  });

  it('goes back to a backup of an older shape', async () => {
    const { migrate } = await import('../migrations.ts');
    mkdirSync(backups.folder);
    const name = 'household.2026-01-01T00-00-00.000Z.before-upgrade-5-6.sqlite';
    const file = new Database(join(backups.folder, name));
    migrate(file, 5);
    file.exec(`INSERT INTO lots VALUES ('l1', '{"id":"l1"}')`);
    file.close();
    await keep('first');
    await backups.goBack(name);
    expect(await foods()).toEqual([]);
    expect(store.opened.file.prepare('SELECT kind, id FROM records').all()).toEqual([
      { kind: 'lots', id: 'l1' },
    ]);
    expect(existsSync(join(backups.folder, name))).toBe(true);
  });
});
