/** Starting on this machine alone, and for the network; stopping while pages listen. */
import { writeFileSync } from 'node:fs';
import { Server } from 'node:http';
import { request } from 'node:https';
import { networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { afterEach, expect, test, vi } from 'vitest';
import { folderForEachTest } from '../../test/household/folder-for-each-test.ts';
import { CERT, KEY } from '../../test/server/self-signed.ts';
import { start } from './main.ts';

const folder = folderForEachTest();
const said = vi.spyOn(console, 'log').mockImplementation(() => {});
afterEach(() => said.mockClear());
const output = () => said.mock.calls.join('\n');

test('alone it says one address', async () => {
  const alone = await start({ port: 0, data: join(folder(), 'a.sqlite') });
  try {
    expect(alone.url).toMatch(/^http:\/\/localhost:\d+$/);
    expect(output().match(/https?:\S+/g)).toEqual([alone.url]);
    for (const address of externalAddresses())
      await expect(fetch(`http://${address}:${new URL(alone.url).port}/`)).rejects.toThrow();
    expect((await fetch(`${alone.url}/api/records`)).status).toBe(200);
  } finally {
    await alone.stop();
  }
});

test('for the network it says a code, a link and where a phone finds it; each needs to be paired', async () => {
  const open = await start({ lan: true, port: 0, data: join(folder(), 'a.sqlite') });
  try {
    const { port } = new URL(open.url);
    const [, code = ''] = /Pairing code: (\S+)/.exec(output()) ?? [];
    const [, secret = ''] = /(http:\/\/localhost:\d+\/#pair=\S+)/.exec(output()) ?? [];
    expect(secret).toMatch(new RegExp(`^${open.url}/#pair=[\\w-]{22}$`));
    expect(output()).toContain('By plain HTTP anyone in the same network who listens in can read');
    for (const address of ['localhost', '127.0.0.1', ...externalAddresses()]) {
      const at = `http://${address}:${port}`;
      if (externalAddresses().includes(address)) expect(output()).toContain(at);
      expect((await fetch(`${at}/api/records`)).status, at).toBe(401);
      expect((await fetch(`${at}/reference.bin`)).status, at).toBe(200);
    }
    const answer = await fetch(`${open.url}/api/pair`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ code, name: 'Kitchen phone', bearer: true }),
    });
    const { token } = (await answer.json()) as { token: string };
    expect(output()).toContain('"Kitchen phone" is paired.');
    const records = await fetch(`${open.url}/api/records`, { headers: { authorization: `Bearer ${token}` } });
    expect(records.status).toBe(200);
  } finally {
    await open.stop();
  }
});

test('it stops at once while pages listen for changes', async () => {
  const { url, stop } = await start({ port: 0, data: join(folder(), 'a.sqlite') });
  const { body } = await fetch(`${url}/api/events`);
  const reader = body!.getReader();
  expect(new TextDecoder().decode((await reader.read()).value)).toContain('event: hello');
  const cutOff = vi.spyOn(Server.prototype, 'closeAllConnections');
  await stop();
  expect((await reader.read()).done).toBe(true);
  expect(cutOff).not.toHaveBeenCalled();
});

test('with a certificate it serves HTTPS', async () => {
  const [cert, key] = [join(folder(), 'c.pem'), join(folder(), 'k.pem')];
  writeFileSync(cert, CERT);
  writeFileSync(key, KEY);
  const open = await start({ lan: true, port: 0, data: join(folder(), 'a.sqlite'), cert, key });
  try {
    expect(open.url).toMatch(/^https:/);
    expect(output()).not.toContain('plain HTTP');
    expect(output()).toContain(`${open.url}/#pair=`);
    const status = await new Promise((done, failed) =>
      request(`${open.url}/api/pair`, { ca: CERT }, (answer) => done(answer.statusCode))
        .on('error', failed)
        .end(),
    );
    expect(status).toBe(200);
  } finally {
    await open.stop();
  }
  await expect(start({ data: join(folder(), 'b.sqlite'), cert })).rejects.toThrow(
    '--cert is given without --key',
  );
});

function externalAddresses(): string[] {
  return Object.values(networkInterfaces())
    .flatMap((all) => all ?? [])
    .filter(({ internal, family }) => !internal && family === 'IPv4')
    .map(({ address }) => address);
}
