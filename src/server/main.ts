/** Starts Pouchful: opens the household, fills it on the first run, listens on this machine alone. */
import type { Server } from 'node:http';
import { networkInterfaces } from 'node:os';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { createAdaptorServer } from '@hono/node-server';
import { seedOnFirstRun } from '../household/seed.ts';
import { createApp } from './app.ts';
import { openHousehold } from './household-file.ts';

const FIRST_PORT = 4173;
const PORTS_TRIED = 50;
const ROOT = fileURLToPath(new URL('../../', import.meta.url));

export interface StartOptions {
  readonly host?: string;
  readonly port?: number;
  /** The household file. */
  readonly data?: string;
}

/** Listens until the process is told to stop; resolves once it listens, with its address and a way to stop it. */
export async function start(options: StartOptions = {}): Promise<{ url: string; stop: () => Promise<void> }> {
  const host = options.host ?? '127.0.0.1';
  const data = resolve(options.data ?? process.env.POUCHFUL_DATA ?? join(ROOT, 'data', 'household.sqlite'));
  const household = openHousehold(data, console.log);
  const { store, backups } = household;
  try {
    if (await seedOnFirstRun(store))
      console.log('First run: an invented household was put in, marked as invented.');
    const app = createApp({
      store,
      backups,
      webDir: fileURLToPath(new URL('../web', import.meta.url)),
      referenceFile: new URL('../foods/data/reference.bin', import.meta.url),
      host: options.host,
    });
    const server = createAdaptorServer({ fetch: app.fetch }) as Server;
    const port = await listen(server, host, options.port ?? portFrom(process.env.PORT, 'PORT') ?? FIRST_PORT);
    const everywhere = host === '0.0.0.0' || host === '::';
    const own = everywhere || host === '127.0.0.1';
    const shown = own ? 'localhost' : host.includes(':') ? `[${host}]` : host;
    const url = `http://${shown}:${port}`;
    store.opened.announce(url);
    console.log(`Pouchful is at ${url}`);
    if (everywhere)
      for (const address of networkAddresses())
        console.log(`On a phone in the same network: http://${address}:${port} (open to all who are in it)`);
    return { url, stop: () => stop(server, household.close) };
  } catch (error) {
    await household.close();
    throw error;
  }
}

/** Starts and stays until SIGINT or SIGTERM; then answers what was asked, closes the file and ends. */
export async function serveUntilStopped(options: StartOptions): Promise<void> {
  const { stop } = await start(options);
  await new Promise<void>((done) => {
    // Listened to until the end: a terminal's Ctrl-C can arrive twice, and the second must not cut the closing short.
    process.on('SIGINT', () => done());
    process.on('SIGTERM', () => done());
  });
  await stop();
}

/** A port number from a text. @throws Error naming the option and the value */
export function portFrom(text: string | undefined, name: string): number | undefined {
  if (text === undefined || text === '') return undefined;
  const port = Number(text);
  if (Number.isInteger(port) && port >= 0 && port <= 65535) return port;
  throw new Error(`${name} is "${text}"; give a port number from 0 to 65535`);
}

/** Where other devices of the network find this machine, IPv4. */
function networkAddresses(): string[] {
  return Object.values(networkInterfaces())
    .flatMap((all) => all ?? [])
    .filter(({ family, internal }) => family === 'IPv4' && !internal)
    .map(({ address }) => address);
}

/** Listens on the first port that is free, from `port` upward. */
async function listen(server: Server, host: string, port: number): Promise<number> {
  for (let at = port; ; at++) {
    try {
      await new Promise<void>((done, failed) => {
        server.once('error', failed);
        server.listen(at, host, () => {
          server.off('error', failed);
          done();
        });
      });
      return (server.address() as { port: number }).port;
    } catch (error) {
      const taken = (error as NodeJS.ErrnoException).code === 'EADDRINUSE';
      if (!taken || at - port >= PORTS_TRIED || at >= 65535) throw error;
    }
  }
}

async function stop(server: Server, closeStore: () => Promise<void>): Promise<void> {
  server.closeIdleConnections();
  const late = setTimeout(() => server.closeAllConnections(), 2000);
  await new Promise<void>((done) => server.close(() => done()));
  clearTimeout(late);
  await closeStore();
}

async function main(): Promise<void> {
  const { values } = parseArgs({
    options: { host: { type: 'string' }, port: { type: 'string' }, data: { type: 'string' } },
  });
  await serveUntilStopped({ host: values.host, port: portFrom(values.port, '--port'), data: values.data });
}

if (process.argv[1] && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  main().catch((error: Error) => {
    console.error(`pouchful: ${error.message}`);
    process.exitCode = 2;
  });
}
