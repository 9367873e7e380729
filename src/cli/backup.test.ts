/** A copy of the household as one file, and back, by commands. */
import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { demo } from '../../test/household/demo-version.ts';
import { folderForEachTest } from '../../test/household/folder-for-each-test.ts';
import { openStore } from '../household/store.ts';
import { run } from './main.ts';

const folder = folderForEachTest();
let out = '';
let err = '';
beforeEach(() => {
  out = '';
  err = '';
  vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    out += String(text);
    return true;
  });
  vi.spyOn(console, 'error').mockImplementation((text) => {
    err += `${text}\n`;
  });
});
afterEach(() => vi.restoreAllMocks());

it('saves while the household is open, and puts back once it is closed', async () => {
  const data = join(folder(), 'household.sqlite');
  const copy = join(folder(), 'copy.sqlite');
  const store = openStore(data);
  await store.putAll(demo);
  store.opened.file.exec("INSERT INTO devices VALUES ('home', 'd1', 'Phone', 'hash', '', '', NULL)");
  expect(await run(['backup', copy, '--data', data])).toBe(0);
  expect(out).toContain(`Saved and checked: ${copy}`);
  expect(await run(['backup', copy, '--data', data])).toBe(2);
  expect(err).toContain('is there already');
  const { version } = (await store.records({ after: 0 })).records.find((r) => r.kind === 'mixes') ?? {
    version: 0,
  };
  await store.write(
    { kind: 'mixes', id: 'demo-mix', body: null, basedOn: version },
    { device: 'test', at: '2026-11-28T00:00:00.000Z' },
  );
  expect(await run(['restore', copy, '--data', data])).toBe(2);
  expect(err).toContain('Pouchful already has');
  await store.close();
  expect(await run(['restore', copy, '--data', data])).toBe(0);
  const aside = /kept as (\S+)/.exec(out)?.[1];
  expect(existsSync(aside ?? '')).toBe(true);
  const again = openStore(data);
  expect((await again.household()).mixes).toHaveLength(1);
  // It may have been put out since.
  const left = again.opened.file.prepare('SELECT id FROM devices WHERE revoked_at IS NULL').all();
  expect(left).toEqual([]);
  await again.close();
});

it('puts nothing back that is no household', async () => {
  const data = join(folder(), 'household.sqlite');
  await openStore(data).close();
  writeFileSync(join(folder(), 'words.txt'), 'just words');
  expect(await run(['restore', join(folder(), 'words.txt'), '--data', data])).toBe(2);
  expect(await run(['backup', '--data', join(folder(), 'none.sqlite')])).toBe(2);
  expect(await run(['backup', join(folder(), 'to.sqlite'), '--data', join(folder(), 'words.txt')])).toBe(2);
  expect(err).toContain('is no household file');
  expect(err).toContain('there is no household at');
  await openStore(data).close();
});
