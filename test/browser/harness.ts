/** A real server with a household of its own and a real browser, for one test file. */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { type Browser, type BrowserContext, chromium, type Locator, type Page } from 'playwright-core';
import type { Household } from '../../src/household/model.ts';
import { openStore } from '../../src/household/store.ts';
import { markOf } from '../../src/server/program.ts';
import { householdAt, putAt } from './household-at.ts';
import { PATIENCE_MS } from './patience.ts';

/** Tests and benches run from the project root. */
const MAIN = resolve('dist/server/main.js');
/** The sum that the build wrote into it, as `scripts/build.mjs` notes it. */
const BUILD = resolve('dist/.stamp-node');
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const FLAGS = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  // The pages of a new window's own address bar, which the browser would load beside ours.
  '--disable-features=WebUIOmniboxPopup,WebUIOmniboxAimPopup',
];

export const DESKTOP = { width: 1280, height: 900 };
export const PHONE = { width: 390, height: 844 };

export interface Bench {
  readonly url: string;
  /** What the server has said in its terminal. */
  said(): string;
  /** A page in a fresh context; what the browser complains of is collected in `complaints`. */
  page(size?: { width: number; height: number }, touch?: boolean): Promise<Page>;
  readonly complaints: string[];
  close(): Promise<void>;
}

/**
 * @param options.margin whether the demonstration's mix keeps its margin from the bounds, as a newcomer finds it
 * @param options.house what is kept when the server starts; the demonstration where absent
 * @param options.lan whether it is open to the network: then only paired devices come in, and its mix is left as it is
 */
export async function openBench({
  margin = false,
  house,
  lan = false,
}: {
  margin?: boolean;
  house?: Household;
  lan?: boolean;
} = {}): Promise<Bench> {
  const server = await openServer(house, lan);
  const { url } = server;
  const contexts: BrowserContext[] = [];
  const complaints: string[] = [];
  let browser: Browser | undefined;

  async function close() {
    for (const context of contexts) await context.close();
    await browser?.close();
    await server.close();
  }

  try {
    if (!margin && !house && !lan) await goToTheBounds(url);
    browser = await chromium.launch({
      executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
      args: FLAGS,
    });
  } catch (error) {
    await close();
    throw error;
  }
  const running = browser;
  return {
    url,
    said: server.said,
    complaints,
    close,
    async page(size = DESKTOP, touch = false) {
      const context = await running.newContext({ viewport: size, hasTouch: touch });
      contexts.push(context);
      const page = await context.newPage();
      page.setDefaultTimeout(PATIENCE_MS);
      page.on('console', (m) => m.type() === 'error' && complaints.push(m.text()));
      page.on('pageerror', (e) => complaints.push(e.message));
      return page;
    },
  };
}

/** A real server with a household of its own: what is given, or the demonstration. */
export async function openServer(
  house?: Household,
  lan = false,
): Promise<{ readonly url: string; said(): string; close(): Promise<void> }> {
  const folder = mkdtempSync(join(tmpdir(), 'pouchful-'));
  if (house) await keep(join(folder, 'household.sqlite'), house);
  const port = await freePort();
  const server = spawn(process.execPath, [MAIN, '--port', String(port), ...(lan ? ['--lan'] : [])], {
    env: { ...process.env, POUCHFUL_DATA: join(folder, 'household.sqlite') },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let said = '';
  server.stdout?.on('data', (chunk: Buffer) => {
    said += chunk;
  });
  async function close() {
    await ended(server);
    rmSync(folder, { recursive: true, force: true });
  }
  try {
    await listening(server);
  } catch (error) {
    await close();
    throw error;
  }
  return { url: `http://127.0.0.1:${port}`, said: () => said, close };
}

/** Serious and critical findings of axe on the page as it stands, one line each. */
export async function axeFindings(page: Page): Promise<string[]> {
  return found(page, '{}', "v.impact === 'serious' || v.impact === 'critical'");
}

/** All that axe finds against WCAG 2.2 at levels A and AA, one line each. */
export async function wcagFindings(page: Page): Promise<string[]> {
  const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
  return found(page, JSON.stringify({ runOnly: { type: 'tag', values: tags } }), 'true');
}

async function found(page: Page, options: string, counts: string): Promise<string[]> {
  await page.evaluate(AXE);
  return (await page.evaluate(
    `axe.run(document, ${options}).then((r) => r.violations.filter((v) => ${counts})
      .map((v) => v.id + ': ' + v.nodes.slice(0, 3).map((n) => n.html.slice(0, 160) + ' ' + (n.failureSummary || '').slice(0, 200)).join(' | ')))`,
  )) as string[];
}

/** How far the page is wider than the window, in pixels. */
export async function overflow(page: Page): Promise<number> {
  return (await page.evaluate(
    'document.documentElement.scrollWidth - document.documentElement.clientWidth',
  )) as number;
}

/** Presses a button that may have gone by itself, such as one that tries again what was tried again meanwhile. */
export async function pressIfThere(button: Locator): Promise<void> {
  await button.evaluateAll((all) => {
    for (const one of all as unknown as { click(): void }[]) one.click();
  });
}

export function freePort(): Promise<number> {
  return new Promise((found, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => found(typeof address === 'object' && address ? address.port : 0));
    });
  });
}

function listening(server: ChildProcess): Promise<void> {
  return new Promise((done, reject) => {
    let said = '';
    const heard = (chunk: Buffer) => {
      said += chunk;
      if (said.includes('Pouchful is at')) done();
    };
    server.stdout?.on('data', heard);
    server.stderr?.on('data', heard);
    server.once('exit', (code) => reject(new Error(`the server ended with ${code}: ${said}`)));
  });
}

async function ended(server: ChildProcess): Promise<void> {
  if (server.exitCode !== null) return;
  const gone = new Promise((done) => server.once('exit', done));
  server.kill('SIGTERM');
  await gone;
}

/** As a server of this build leaves a household behind at its end: it has looked through it. */
async function keep(path: string, house: Household): Promise<void> {
  const store = openStore(path, { program: markOf(readFileSync(BUILD, 'utf8').trim()) });
  await store.putAll(house);
  await store.lookThrough();
  await store.close();
}

/** Takes the margin off the demonstration's mix: its best mix then stands at its bounds, which many stories need. */
async function goToTheBounds(url: string): Promise<void> {
  for (const mix of (await householdAt(url)).mixes) {
    const { margin: _, ...problem } = mix.problem;
    await putAt(url, 'mixes', { ...mix, problem });
  }
}
