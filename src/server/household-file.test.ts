/** Backups are made by themselves as long as the household is open. */
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import { demo } from '../../test/household/demo-version.ts';
import { folderForEachTest } from '../../test/household/folder-for-each-test.ts';
import { migrate } from '../household/migrations.ts';
import type { StoreOptions } from '../household/store.ts';
import { openHousehold } from './household-file.ts';

const folder = folderForEachTest();

/** A household whose clock and timers are moved by hand. */
function opened(path: string, now: { ms: number }, store: StoreOptions = {}) {
  const told: string[] = [];
  const running = new Set<() => void>();
  const timers = {
    every: (_ms: number, call: () => void) => {
      running.add(call);
      return () => running.delete(call);
    },
  };
  const clock = () => new Date(now.ms);
  const file = openHousehold(path, (line) => told.push(line), { clock, timers, store });
  const ticked = async () => {
    for (const call of running) call();
    await file.backups.settled();
    return file.backups.list().length;
  };
  return { ...file, told, ticked };
}

it('makes one at once of a household that was there, and none of a new one before it is filled', async () => {
  const path = join(folder(), 'household.sqlite');
  const now = { ms: Date.UTC(2026, 10, 28, 9) };
  const first = opened(path, now);
  await first.backups.settled();
  expect(first.backups.list()).toEqual([]);
  await first.store.putAll(demo);
  expect(await first.ticked()).toBe(1);
  expect(await first.ticked()).toBe(1);
  await first.close();
  now.ms += 2 * 3_600_000;
  const again = opened(path, now);
  await again.backups.settled();
  expect(again.backups.list()).toHaveLength(1);
  await again.store.putAll({ ...demo, animals: demo.animals.map((a) => ({ ...a, name: 'Thistle' })) });
  expect(await again.ticked()).toBe(2);
  await again.close();
  expect(await again.ticked()).toBe(2);
});

it('makes the one that waits for quiet when it is closed', async () => {
  const path = join(folder(), 'household.sqlite');
  const now = { ms: Date.UTC(2026, 10, 28, 9) };
  const first = opened(path, now);
  await first.store.putAll(demo);
  await first.close();
  const file = opened(path, now, { rest: 1_000_000 });
  await file.store.household();
  expect(file.backups.list()).toEqual([]);
  await file.close();
  expect(file.backups.list()).toHaveLength(1);
});

it('lets go of history that is older than a year', async () => {
  const path = join(folder(), 'household.sqlite');
  const now = { ms: Date.UTC(2024, 0, 1) };
  const file = opened(path, now);
  await file.store.putAll(demo, { device: 'desk', at: new Date(now.ms).toISOString() });
  await file.ticked();
  expect((await file.store.history({})).changes).toHaveLength(3);
  now.ms += 366 * 86_400_000;
  await file.ticked();
  await expect.poll(async () => (await file.store.history({})).changes).toEqual([]);
  expect((await file.store.household()).mixes).toEqual(demo.mixes);
  await file.close();
});

it('tells that the file was brought to a newer shape, and where its copy is', () => {
  const path = join(folder(), 'household.sqlite');
  const old = new Database(path);
  migrate(old, 5);
  old.close();
  const file = opened(path, { ms: Date.UTC(2026, 10, 28, 9) });
  expect(file.told[0]).toMatch(/a copy from before lies at .*before-upgrade-5-\d+\.sqlite$/);
  return file.close();
});
