/** A file gets its new shape and its mark at one moment. */
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { expect, it, vi } from 'vitest';
import { folderForEachTest } from '../../../test/household/folder-for-each-test.ts';
import { migrate, SCHEMA_VERSION } from '../migrations.ts';
import { upgrade } from './upgrade.ts';

const folder = folderForEachTest();
const AT = '2026-11-28T10:00:00.000Z';

it('has the old shape still where it could not be marked, and the new one with the mark', () => {
  const file = new Database(join(folder(), 'household.sqlite'));
  migrate(file, 5);
  const pragma = file.pragma.bind(file);
  vi.spyOn(file, 'pragma').mockImplementation((text, options) => {
    if (/application_id =/.test(text)) throw new Error('power cut');
    return pragma(text, options);
  });
  expect(() => upgrade(file, 5, AT)).toThrow('power cut');
  vi.restoreAllMocks();
  expect(file.pragma('user_version', { simple: true })).toBe(5);
  upgrade(file, 5, AT);
  expect(file.pragma('user_version', { simple: true })).toBe(SCHEMA_VERSION);
  expect(file.pragma('application_id', { simple: true })).toBe(0x506f7563);
  file.close();
});
