/** Which port is listened on. */
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterEach, expect, test } from 'vitest';
import { listen } from './listen.ts';

const open: Server[] = [];
afterEach(async () => {
  for (const server of open.splice(0)) await new Promise((done) => server.close(done));
});

/** A server that answers everything with `body`, on a port of its own. */
async function holder(body: string): Promise<number> {
  const server = createServer((_, answer) => answer.end(body));
  open.push(server);
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  return (server.address() as AddressInfo).port;
}

function another(): Server {
  const server = createServer();
  open.push(server);
  return server;
}

test('a port that was asked for and is taken is an error that says who may hold it', async () => {
  const program = await holder('hello');
  await expect(listen(another(), '127.0.0.1', program)).rejects.toThrow(
    `port ${program} is taken by another program, perhaps a Pouchful that still runs; stop that, name another with --port, or leave --port out to get a free one`,
  );
  const pouchful = await holder('{"tokenNeeded":false}');
  await expect(listen(another(), '127.0.0.1', pouchful)).rejects.toThrow(
    `port ${pouchful} is taken by another Pouchful, at http://localhost:${pouchful};`,
  );
  // Open to the network, a port that is taken for this machine alone is no less taken.
  await expect(listen(another(), undefined, program)).rejects.toThrow(`port ${program} is taken`);
});

test('without one the first that is free is taken, two servers side by side', async () => {
  const first = await listen(another(), '127.0.0.1');
  const second = await listen(another(), '127.0.0.1');
  expect(first).toBeGreaterThanOrEqual(4173);
  expect(second).not.toBe(first);
});

test('any free one is given for 0', async () => {
  expect(await listen(another(), '127.0.0.1', 0)).toBeGreaterThan(0);
});
