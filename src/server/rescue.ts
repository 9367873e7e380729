/**
 * Serves a page that says what is wrong with the household's file, on this machine alone, until the keeper has chosen a
 * way on. Holds the file's lock meanwhile.
 */
import { existsSync } from 'node:fs';
import type { Server } from 'node:http';
import { createAdaptorServer } from '@hono/node-server';
import { type Context, Hono } from 'hono';
import { takeFile } from '../household/file/lock.ts';
import { OpeningError } from '../household/file/opening-error.ts';
import { beginAnew, goodBackups, putBack, putLogAside, putSalvaged } from '../household/file/rescue.ts';
import { holdsRecords, pagesAt } from '../household/file/salvage/salvage.ts';
import { trustLog } from '../household/file/session.ts';
import { words } from '../words/words.ts';
import { securityHeaders } from './guard.ts';
import { donePage, rescuePage, type Way } from './rescue-page.ts';
import { inTheirLanguage } from './spoken.ts';

/** How long connections may stay once a way was chosen, in ms. */
const LAST_ANSWER = 1000;

export interface RescueOptions {
  readonly tell: (line: string) => void;
  readonly clock: () => Date;
  /** Listens on this machine alone. @returns the port */
  readonly listen: (server: Server) => Promise<number>;
}

/** The ways on that an error leaves; none where the keeper must do something else first. */
export function waysFrom(error: OpeningError): Way[] {
  const backups: Way[] = goodBackups(error.path).length > 0 ? ['go-back'] : [];
  switch (error.reason) {
    case 'damaged':
      return [...backups, 'save-readable'];
    case 'stray log':
      return ['without-log', ...backups];
    case 'put back':
      return ['without-log', 'with-log', ...backups];
    case 'gone':
      return [...backups, 'begin-anew'];
    // A file whose first bytes are damaged looks like no household, and one without backups like another program's.
    case 'foreign':
    case 'empty':
      return holdsRecords(error.path) ? [...backups, 'save-readable'] : backups;
    default:
      return [];
  }
}

/**
 * Opens a household; where it is not to be opened and there is a way on, asks on a page first.
 * @throws OpeningError when there is no way on
 */
export async function openOrRescue<T>(open: () => T | Promise<T>, options: RescueOptions): Promise<T> {
  for (;;) {
    try {
      return await open();
    } catch (error) {
      if (!(error instanceof OpeningError) || waysFrom(error).length === 0) throw error;
      await askOnPage(error, options);
    }
  }
}

async function askOnPage(error: OpeningError, { tell, clock, listen }: RescueOptions): Promise<void> {
  const giveBack = takeFile(error.path);
  let server: Server | undefined;
  try {
    await new Promise<void>((chosen, failed) => {
      const app = rescueApp(error, clock, (lines) => {
        for (const line of lines) tell(line);
        chosen();
      });
      server = createAdaptorServer({ fetch: app.fetch }) as Server;
      listen(server).then((port) => {
        tell(error.message);
        tell(`To choose how to go on, open http://localhost:${port}`);
      }, failed);
    });
  } finally {
    // The answer that says it is done is still on its way.
    const late = setTimeout(() => server?.closeAllConnections(), LAST_ANSWER);
    await new Promise<void>((done) => {
      if (!server?.listening) return done();
      server.close(() => done());
      server.closeIdleConnections();
    });
    clearTimeout(late);
    giveBack();
  }
}

/** @param chosen called with lines for the terminal when a way on was taken */
function rescueApp(error: OpeningError, clock: () => Date, chosen: (lines: string[]) => void): Hono {
  const app = new Hono();
  const show = (c: Context, failed?: string) => {
    const view = { error, backups: goodBackups(error.path), ways: waysFrom(error) };
    c.header('Cache-Control', 'no-store');
    return c.html(
      rescuePage({ ...view, ...(failed !== undefined && { failed }) }),
      failed === undefined ? 503 : 409,
    );
  };
  app.use(inTheirLanguage(), securityHeaders(), async (c, next) => {
    if (!fromHere(c))
      return c.text('Open this page on the computer where Pouchful runs, at http://localhost', 403);
    return next();
  });
  app.post('/rescue/:way', async (c) => {
    const way = waysFrom(error).find((w) => w === c.req.param('way'));
    if (!way) return show(c, words().access.rescue.noLonger);
    try {
      const { name } = await c.req.parseBody();
      const lines = take(way, error.path, String(name ?? ''), clock().toISOString());
      // The connection must not outlive the answer: the household is served on the same port next.
      c.header('Connection', 'close');
      c.header('Refresh', '2; url=/');
      setImmediate(() => chosen(lines));
      return c.html(donePage(lines));
    } catch (failure) {
      return show(c, (failure as Error).message);
    }
  });
  app.all('/api/*', (c) => c.json({ field: '', message: error.message }, 503));
  app.all('*', (c) => show(c));
  return app;
}

/** Takes a way on. @returns what came of it, line by line */
function take(way: Way, path: string, name: string, at: string): string[] {
  switch (way) {
    case 'go-back':
      return wentBack(name, putBack(path, name, at));
    case 'without-log':
      return ['The file is used as it is.', ...kept(putLogAside(path, at).aside)];
    case 'with-log':
      trustLog(path);
      return ['File and log are used together.'];
    case 'begin-anew':
      return ['An empty household was begun.', ...kept(beginAnew(path, at).aside)];
    case 'save-readable':
      return saveReadable(path, at);
  }
}

function saveReadable(path: string, at: string): string[] {
  const saved = existsSync(path) ? putSalvaged(path, at) : undefined;
  if (!saved)
    throw new Error(
      `none of its ${existsSync(path) ? pagesAt(path).count : 0} pages holds a record that can be read`,
    );
  const counts = Object.entries(saved.records).map(([kind, count]) => `${kind}: ${count}`);
  return [
    `Saved: ${counts.join(', ') || 'no record'}; ${saved.changes} lines of the history.`,
    saved.lost.length > 0
      ? `Lost, as far as the history tells: ${saved.lost.join('; ')}.`
      : 'The history names no record that is missing; what was kept before the history began is not in it.',
    ...kept(saved.aside),
  ];
}

function wentBack(name: string, { aside, devices }: ReturnType<typeof putBack>): string[] {
  const anew = devices > 0 ? ['Devices that were paired must be paired anew.'] : [];
  return [`The backup ${name} was put back.`, ...anew, ...kept(aside)];
}

const kept = (aside: string | undefined) => (aside ? [`What lay there is kept as ${aside}`] : []);

/** Whether a request comes from this machine, and from this page where it changes something. */
function fromHere(c: Context): boolean {
  const host = c.req.header('host') ?? '';
  const origin = c.req.header('origin');
  const local = /^(localhost|127\.0\.0\.1|\[::1\])(:\d+)?$/i.test(host);
  return local && (c.req.method === 'GET' || origin === undefined || origin === `http://${host}`);
}
