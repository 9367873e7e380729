/** Starts Pouchful: opens what is kept, and listens on this machine alone or for the network. */
import type { Server } from 'node:http';
import { createServer } from 'node:https';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createAdaptorServer } from '@hono/node-server';
import { CommanderError } from 'commander';
import { openAccess } from './access/access.ts';
import { readCertificate } from './access/certificate.ts';
import { networkAddresses, ownNames } from './access/own-names.ts';
import { PLAIN_HTTP } from './access/say-offer.ts';
import { showOffers } from './access/show-offers.ts';
import { createApp } from './app.ts';
import { openKeptDatabase, openKeptFile } from './kept.ts';
import { listen } from './listen.ts';
import { type StartOptions, startCommand } from './start-command.ts';

/**
 * Listens until it is stopped.
 * @returns once it listens: its address, and a way to stop it
 */
export async function start(options: StartOptions = {}): Promise<{ url: string; stop: () => Promise<void> }> {
  const { lan = false, behindProxy = false, name = [], cert, key, database } = options;
  const certificate = readCertificate(cert, key);
  const scheme = certificate ? 'https' : 'http';
  const kept = database
    ? await openKeptDatabase(database)
    : await openKeptFile(options.data, (server) => listen(server, '127.0.0.1', options.port));
  try {
    const tokens = lan || behindProxy || kept.hosted;
    const origins = () =>
      behindProxy
        ? name.map((host) => `https://${host}`)
        : [...name, ...networkAddresses()].map((host) => `${scheme}://${host}:${port}`);
    const access = openAccess({
      served: { scheme, isOwn: ownNames(lan, name), behindProxy },
      tokens,
      devices: kept.devices,
      storeOf: kept.storeOf,
      origins,
      paired: (device) => console.log(`"${device.name}" is paired.`),
    });
    const app = createApp({
      access,
      backups: kept.backups,
      webDir: fileURLToPath(new URL('../web', import.meta.url)),
      referenceFile: new URL('../foods/data/reference.bin', import.meta.url),
    });
    const server = createAdaptorServer({
      fetch: app.fetch,
      ...(certificate && { createServer, serverOptions: certificate }),
    }) as Server;
    const port = await listen(server, lan ? undefined : '127.0.0.1', options.port);
    const url = `${scheme}://localhost:${port}`;
    kept.announce(url);
    console.log(`Pouchful is at ${url}`);
    if (lan && !certificate) console.log(PLAIN_HTTP);
    const end =
      tokens && !kept.hosted
        ? showOffers({
            pairing: access.pairing,
            devices: kept.devices,
            place: () => ({ url, origins: origins(), colours: process.stdout.isTTY }),
            say: (text) => console.log(text),
          })
        : () => {};
    return {
      url,
      async stop() {
        end();
        access.streams.endAll();
        await stop(server, kept.close);
      },
    };
  } catch (error) {
    await kept.close();
    throw error;
  }
}

/** Starts and stays until SIGINT or SIGTERM; then answers what was asked, closes what is kept and ends. */
export async function serveUntilStopped(options: StartOptions): Promise<void> {
  const { stop } = await start(options);
  await new Promise<void>((done) => {
    // Listened to until the end: a terminal's Ctrl-C can arrive twice, and the second must not cut the closing short.
    process.on('SIGINT', () => done());
    process.on('SIGTERM', () => done());
  });
  await stop();
}

/** Answers what was asked, then closes. */
async function stop(server: Server, close: () => Promise<void>): Promise<void> {
  // A connection is idle once its answer has ended; browsers keep idle ones open.
  const idle = setInterval(() => server.closeIdleConnections(), 20);
  const late = setTimeout(() => server.closeAllConnections(), 2000);
  await new Promise<void>((done) => server.close(() => done()));
  clearInterval(idle);
  clearTimeout(late);
  await close();
}

/** Runs with the process's own arguments. Errors are one line on stderr, with exit code 2. */
async function main(): Promise<void> {
  const command = startCommand(serveUntilStopped)
    .name('npm start --')
    .exitOverride()
    .configureOutput({
      outputError: (text, write) => write(`pouchful: ${inOneLine(text.replace(/^error: /, ''))}\n`),
    });
  try {
    await command.parseAsync();
  } catch (error) {
    if (error instanceof CommanderError) process.exitCode = error.exitCode === 0 ? 0 : 2;
    else {
      console.error(`pouchful: ${inOneLine((error as Error).message)}`);
      process.exitCode = 2;
    }
  }
}

function inOneLine(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}

if (process.argv[1] && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) await main();
