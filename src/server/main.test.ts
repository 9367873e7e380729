/** Starting on this machine alone, and for the network. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, expect, test, vi } from 'vitest';
import { start } from './main.ts';

const folder = mkdtempSync(join(tmpdir(), 'pouchful-start-'));
const said = vi.spyOn(console, 'log').mockImplementation(() => {});
afterEach(() => {
  said.mockClear();
  rmSync(folder, { recursive: true, force: true });
});
const lines = () => said.mock.calls.map(([line]) => String(line));

test('alone it says one address; for the network it also says where a phone finds it', async () => {
  const alone = await start({ port: 0, data: join(folder, 'a.sqlite') });
  try {
    expect(alone.url).toMatch(/^http:\/\/localhost:\d+$/);
    expect(lines().filter((l) => l.includes('On a phone'))).toEqual([]);
  } finally {
    await alone.stop();
  }
  const open = await start({ host: '0.0.0.0', port: 0, data: join(folder, 'b.sqlite') });
  try {
    expect(open.url).toMatch(/^http:\/\/localhost:\d+$/);
    for (const line of lines().filter((l) => l.startsWith('On a phone'))) {
      const address = /http:\/\/[\d.]+:\d+/.exec(line)![0];
      expect((await fetch(`${address}/api/records`)).status).toBe(200);
    }
    expect((await fetch(`${open.url}/api/records`)).status).toBe(200);
  } finally {
    await open.stop();
  }
});
