/** Backups are made by themselves as long as the household is open. */
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import { demo } from '../../test/household/demo-version.ts';
import { folderForEachTest } from '../../test/household/folder-for-each-test.ts';
import { migrate } from '../household/migrations.ts';
import { openHousehold } from './household-file.ts';

const folder = folderForEachTest();

/** A household whose clock and timers are moved by hand. */
function opened(path: string, now: { ms: number }) {
  const told: string[] = [];
  let tick = () => {};
  const timers = {
    every: (_ms: number, call: () => void) => {
      tick = call;
      return () => {
        tick = () => {};
      };
    },
  };
  const file = openHousehold(path, (line) => told.push(line), { clock: () => new Date(now.ms), timers });
  const ticked = async () => {
    tick();
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

it('tells that the file was brought to a newer shape, and where its copy is', () => {
  const path = join(folder(), 'household.sqlite');
  const old = new Database(path);
  migrate(old, 5);
  old.close();
  const file = opened(path, { ms: Date.UTC(2026, 10, 28, 9) });
  expect(file.told[0]).toMatch(/a copy from before lies at .*before-upgrade-5-\d+\.sqlite$/);
  return file.close();
});
