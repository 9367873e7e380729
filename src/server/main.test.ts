/** Starting on this machine alone, and for the network. */
import { join } from 'node:path';
import { afterEach, expect, test, vi } from 'vitest';
import { folderForEachTest } from '../../test/household/folder-for-each-test.ts';
import { start } from './main.ts';

const folder = folderForEachTest();
const said = vi.spyOn(console, 'log').mockImplementation(() => {});
afterEach(() => said.mockClear());

test('alone it says one address', async () => {
  const alone = await start({ port: 0, data: join(folder(), 'a.sqlite') });
  try {
    expect(alone.url).toMatch(/^http:\/\/localhost:\d+$/);
    expect(said.mock.calls.map(([line]) => String(line)).filter((line) => line.includes('http'))).toEqual([
      `Pouchful is at ${alone.url}`,
    ]);
    expect((await fetch(`${alone.url}/api/records`)).status).toBe(200);
  } finally {
    await alone.stop();
  }
});
