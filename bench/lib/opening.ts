/** A screen opened in a real browser: when it can be used, and what it was sent. */
import type { CDPSession, Page, Request } from 'playwright-core';
import { type Ready, WATCH_LONG_TASKS, whenUsable } from '../in-browser/watch.ts';

export interface Opening {
  /** ms from asking for the page until its own contents stand and the browser has drawn them. */
  readonly drawn: number;
  /** ms until, besides, the page's thread is idle: no long task ends later within the next half second. */
  readonly usable: number;
  /** Of these, ms of work of the page's own thread: processor time, which hardly depends on what else runs. */
  readonly work: number;
  readonly nodes: number;
  readonly sent: readonly Sent[];
}

/**
 * 'script' is that of the page's own thread, 'worker' that of its worker; 'solver' HiGHS, its script and its WebAssembly;
 * 'lists' are names and figures that are kept as script, such as the words of the cautions.
 */
export type Kind =
  | 'page'
  | 'script'
  | 'worker'
  | 'lists'
  | 'style'
  | 'table'
  | 'solver'
  | 'records'
  | 'other';

export interface Sent {
  readonly path: string;
  readonly kind: Kind;
  /** Bytes as they came over the line, without headers; 0 where the cache had it. */
  readonly bytes: number;
  readonly decoded: number;
  readonly encoding: string | undefined;
  /** Whether it was asked for only after the screen was drawn. */
  readonly later: boolean;
}

/** Without a long task for so long, ms, the page's thread counts as idle. */
const IDLE_MS = 500;
/** What is fetched in advance has begun by then, ms after the screen can be used. */
const LATER_MS = 1500;
const PATIENCE_MS = 30_000;
/** Two clocks tell of one request at times this close, ms. */
const SAME = 25;

/**
 * @param page that has nothing open yet, or is to open another page in the same browser's memory
 * @param bytes whether what is sent is wanted too, also later on: that takes some time
 */
export async function openedAt(page: Page, url: string, ready: Ready, bytes = false): Promise<Opening> {
  const asked: { request: Request; at: number }[] = [];
  const note = (request: Request) => asked.push({ request, at: Date.now() });
  page.on('request', note);
  const browser = await watched(page);
  /** When the page itself first asked for a file, ms since 1970: this tells of none of its worker's. */
  const byPage = new Map<string, number>();
  if (bytes) {
    browser.on('Network.requestWillBeSent', ({ request, wallTime }) => {
      if (!byPage.has(request.url)) byPage.set(request.url, 1000 * wallTime);
    });
    await browser.send('Network.enable');
  }
  await page.goto(url, { waitUntil: 'commit' });
  const found = await Promise.race([
    page.evaluate(whenUsable(ready, IDLE_MS)) as Promise<{ drawn: number; idle: number }>,
    page.waitForTimeout(PATIENCE_MS),
  ]);
  if (!found) throw new Error(`${url}: ${ready.css} did not come in ${PATIENCE_MS / 1000} s`);
  const { drawn, idle } = found;
  const began = Number(await page.evaluate('performance.timeOrigin'));
  const { metrics } = await browser.send('Performance.getMetrics');
  const work = 1000 * (metrics.find((m) => m.name === 'TaskDuration')?.value ?? Number.NaN);
  const nodes = Number(await page.evaluate("document.querySelectorAll('*').length"));
  if (bytes) await page.waitForTimeout(LATER_MS);
  page.off('request', note);
  const sent = bytes
    ? await Promise.all(
        firstOf(asked).map(({ request, at }) => {
          const when = askedAt(request, at);
          const own = (byPage.get(request.url()) ?? Number.POSITIVE_INFINITY) < when + SAME;
          return sentFor(request, own, when > began + drawn);
        }),
      )
    : [];
  await browser.detach();
  return { drawn, usable: idle, work, nodes, sent: sent.filter((s) => s !== undefined) };
}

/** What page and worker both ask for comes once: whoever asks later has it from the browser. */
function firstOf<T extends { readonly request: Request }>(asked: readonly T[]): T[] {
  const urls = new Set<string>();
  return asked.filter(({ request }) => !urls.has(request.url()) && urls.add(request.url()));
}

const ready = new WeakSet<Page>();

async function watched(page: Page): Promise<CDPSession> {
  if (!ready.has(page)) await page.addInitScript(WATCH_LONG_TASKS);
  ready.add(page);
  const browser = await page.context().newCDPSession(page);
  await browser.send('Performance.enable', { timeDomain: 'threadTicks' });
  return browser;
}

/** When the browser began to ask, or else when that was heard of here. Both ms since 1970. */
function askedAt(request: Request, heard: number): number {
  const { startTime } = request.timing();
  return startTime > 0 ? startTime : heard;
}

async function sentFor(request: Request, byPage: boolean, later: boolean): Promise<Sent | undefined> {
  const url = new URL(request.url());
  // A data: address is no request, and the stream of changes has no end.
  if (!url.protocol.startsWith('http') || url.pathname === '/api/events') return undefined;
  const response = await request.response();
  if (!response) return undefined;
  const [body, sizes] = await Promise.all([response.body().catch(() => Buffer.alloc(0)), request.sizes()]);
  const headers = response.headers();
  return {
    path: url.pathname,
    kind: kindOf(url.pathname, byPage),
    // Of a worker's own script the browser tells no size.
    bytes: sizes.responseBodySize > 0 ? sizes.responseBodySize : Number(headers['content-length'] ?? 0),
    decoded: body.length,
    encoding: headers['content-encoding'],
    later,
  };
}

function kindOf(path: string, byPage: boolean): Kind {
  if (path.startsWith('/api/')) return 'records';
  if (/\/solver-[^/]*\.js$/.test(path)) return 'solver';
  if (/\/list-[^/]*\.js$/.test(path)) return 'lists';
  if (path.endsWith('.js')) return byPage && !/\.worker-/.test(path) ? 'script' : 'worker';
  if (path.endsWith('.css')) return 'style';
  if (path.endsWith('.wasm')) return 'solver';
  if (path.endsWith('.bin')) return 'table';
  return path === '/' || path.endsWith('.html') ? 'page' : 'other';
}
