/** A household that cannot be opened is told of on a page, and the keeper chooses how to go on. */
import {
  copyFileSync,
  linkSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { stateOf } from '../../test/household/file-states.ts';
import { folderForEachTest } from '../../test/household/folder-for-each-test.ts';
import { devicesOf } from './access/access.ts';
import { openHousehold } from './household-file.ts';
import { start } from './main.ts';

const folder = folderForEachTest();
const said: string[] = [];
let path: string;
beforeEach(() => {
  path = join(folder(), 'household.sqlite');
  said.length = 0;
  for (const to of ['log', 'error'] as const)
    vi.spyOn(console, to).mockImplementation((line) => void said.push(String(line)));
});
afterEach(() => vi.restoreAllMocks());

/** A household with the demonstration in it and one backup. @returns name of the backup */
async function household(): Promise<string> {
  const first = await start({ port: 0, data: path });
  await first.stop();
  const opened = openHousehold(path, () => {});
  const { name } = await opened.backups.saveNow();
  await opened.close();
  return name;
}

/** Starts a server that asks on a page. @returns the page's address, and what starting came to */
async function asked() {
  const started = start({ port: 0, data: path });
  const url = await vi.waitFor(() => {
    const found = /http:\/\/localhost:\d+/.exec(said.find((line) => line.startsWith('To choose')) ?? '');
    if (!found) throw new Error(`nothing asked: ${said.join(' | ')}`);
    return found[0];
  });
  const post = (way: string, fields: Record<string, string> = {}, headers: Record<string, string> = {}) =>
    fetch(`${url}/rescue/${way}`, {
      method: 'POST',
      headers: { 'content-type': 'application/x-www-form-urlencoded', ...headers },
      body: new URLSearchParams(fields).toString(),
    });
  return { started, url, post, page: async () => (await fetch(url)).text() };
}

async function foodsAt(url: string): Promise<string[]> {
  const { records } = (await (await fetch(`${url}/api/records?after=0`)).json()) as {
    records: { kind: string; id: string }[];
  };
  return records.filter((r) => r.kind === 'foods').map((r) => r.id);
}

it('offers the newest backup of a damaged file, and keeps the file aside', async () => {
  const name = await household();
  const damaged = readFileSync(path).fill(0xff, 4096, 12_288);
  writeFileSync(path, damaged);
  const { started, url, post, page } = await asked();
  expect(await page()).toContain('The household file is damaged');
  expect(await page()).toContain('Go back to the newest');
  expect((await fetch(`${url}/api/records?after=0`)).status).toBe(503);
  expect(readFileSync(path)).toEqual(damaged);
  expect((await post('go-back', { name: '../household.sqlite' })).status).toBe(409);
  expect((await post('go-back', { name }, { origin: 'http://elsewhere.example' })).status).toBe(403);
  expect(readFileSync(path)).toEqual(damaged);
  expect(await (await post('go-back', { name })).text()).toContain('was put back');
  const { url: served, stop } = await started;
  expect(await foodsAt(served)).toEqual(['demo-pellet']);
  await stop();
  const aside = readdirSync(folder()).find((n) => n.startsWith('household.sqlite.before-'));
  expect(readFileSync(join(folder(), aside as string))).toEqual(damaged);
});

it('lets no device in by a backup that was put back: it may have been put out since', async () => {
  await (await start({ port: 0, data: path })).stop();
  const opened = openHousehold(path, () => {});
  const devices = devicesOf(opened.store);
  const { device, token } = await devices.add('home', 'Phone');
  const { name } = await opened.backups.saveNow();
  await devices.revoke('home', device.id);
  // Going back while all is well leaves the devices as they are.
  await opened.backups.goBack(name);
  expect(await devices.byToken(token)).toBeUndefined();
  const tablet = await devices.add('home', 'Tablet');
  await opened.backups.goBack(name);
  expect(await devices.byToken(tablet.token)).toEqual(tablet.device);
  await opened.close();
  writeFileSync(path, readFileSync(path).fill(0xff, 4096, 12_288));
  const { started, post } = await asked();
  expect(await (await post('go-back', { name })).text()).toContain('must be paired anew');
  await (await started).stop();
  const again = openHousehold(path, () => {});
  expect(await devicesOf(again.store).list('home')).toEqual([]);
  expect(await devicesOf(again.store).byToken(token)).toBeUndefined();
  await again.close();
});

it('saves what can be read where there is no backup', async () => {
  await household();
  rmSync(join(folder(), 'backups'), { recursive: true });
  // The first page: neither header nor list of tables can be read.
  writeFileSync(path, readFileSync(path).fill(0xff, 0, 4096));
  const { started, post } = await asked();
  expect(await (await post('save-readable')).text()).toContain('foods: 1');
  const { url, stop } = await started;
  expect(await foodsAt(url)).toEqual(['demo-pellet']);
  await stop();
});

it('says so where nothing can be read', async () => {
  await household();
  writeFileSync(path, readFileSync(path).fill(0xff, 4096));
  const { started, post, url } = await asked();
  expect(await (await post('save-readable')).text()).toContain('That did not help');
  expect((await post('begin-anew')).status).toBe(409);
  const name = readdirSync(join(folder(), 'backups'))[0] as string;
  await (
    await fetch(`${url}/rescue/go-back`, { method: 'POST', body: new URLSearchParams({ name }) })
  ).text();
  await (await started).stop();
});

/** A copy of the file put back after a crash, beside the log that took all foods away. */
async function putBackBesideLog(): Promise<void> {
  await household();
  const copy = join(folder(), 'copy.sqlite');
  copyFileSync(path, copy);
  const opened = openHousehold(path, () => {});
  opened.store.opened.file.exec("DELETE FROM records WHERE kind = 'foods'");
  // As a crash leaves them: linked under other names, the log keeps its place on disk.
  for (const end of ['-wal', '-session']) linkSync(path + end, `${path}.kept${end}`);
  await opened.close();
  for (const end of ['-wal', '-session']) {
    rmSync(path + end, { force: true });
    renameSync(`${path}.kept${end}`, path + end);
  }
  copyFileSync(copy, path);
}

it.each([
  ['without-log', ['demo-pellet']],
  ['with-log', []],
])('asks where a copy was put back beside the log of another state: %s', async (way, foods) => {
  await putBackBesideLog();
  const before = stateOf(folder());
  const { started, post, page } = await asked();
  expect(await page()).toContain('Use the file as it is now');
  expect(stateOf(folder())).toEqual(before);
  await (await post(way)).text();
  const { url, stop } = await started;
  expect(await foodsAt(url)).toEqual(foods);
  await stop();
});

it('does not begin anew by itself where a household is gone', async () => {
  await household();
  rmSync(path);
  const { started, post, page } = await asked();
  expect(await page()).toContain('The household file is gone');
  await (await post('begin-anew')).text();
  const { url, stop } = await started;
  expect(await foodsAt(url)).toEqual([]);
  await stop();
  expect(readdirSync(join(folder(), 'backups')).length).toBeGreaterThan(0);
});

it('refuses what is no household, and a second server, without a page', async () => {
  writeFileSync(path, 'just words');
  await expect(start({ port: 0, data: path })).rejects.toThrow('is no household file');
  rmSync(path);
  const first = await start({ port: 0, data: path });
  await expect(start({ port: 0, data: path })).rejects.toThrow(`it is at ${first.url}`);
  await first.stop();
});
