/** Processes that a test kills without warning: a server on a household file of its own, and browsers. */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { type Browser, type BrowserServer, chromium, type Page } from 'playwright-core';
import { freePort, PHONE } from './harness.ts';
import { PATIENCE_MS } from './patience.ts';

const MAIN = resolve('dist/server/main.js');

/** A server that dies at any moment and is started again on the same file and port. */
export class MortalServer {
  readonly file: string;
  private readonly folder = mkdtempSync(join(tmpdir(), 'pouchful-killed-'));
  private port = 0;
  private running: ChildProcess | undefined;

  constructor() {
    this.file = join(this.folder, 'household.sqlite');
  }

  get url(): string {
    return `http://127.0.0.1:${this.port}`;
  }

  async start(): Promise<void> {
    this.port ||= await freePort();
    const server = spawn(process.execPath, [MAIN, '--port', String(this.port)], {
      env: { ...process.env, POUCHFUL_DATA: this.file },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    this.running = server;
    await new Promise<void>((done, reject) => {
      let said = '';
      const heard = (chunk: Buffer) => {
        said += chunk;
        if (said.includes(`:${this.port}`)) done();
        else if (said.includes('Pouchful is at')) reject(new Error(`not on the port asked for: ${said}`));
      };
      server.stdout?.on('data', heard);
      server.stderr?.on('data', heard);
      server.once('exit', (code, signal) =>
        reject(new Error(`the server ended, ${code ?? signal}: ${said}`)),
      );
    });
  }

  /** SIGKILL: nothing is closed, nothing is written any more. */
  kill(): Promise<void> {
    return killed(this.running!);
  }

  /** Stops it in its tracks, so that what is sent to it stays unanswered. */
  freeze(): void {
    this.running!.kill('SIGSTOP');
  }

  async killAndStart(): Promise<void> {
    await this.kill();
    await this.start();
  }

  async end(): Promise<void> {
    if (this.running) await killed(this.running);
    rmSync(this.folder, { recursive: true, force: true });
  }
}

/** A browser process of its own with one page, the size of a phone, that knows nothing of any other. */
export class MortalBrowser {
  private constructor(
    private readonly server: BrowserServer,
    private readonly browser: Browser,
    readonly page: Page,
  ) {}

  static async open(url: string): Promise<MortalBrowser> {
    const server = await chromium.launchServer({
      executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
      args: ['--headless', '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'],
    });
    const browser = await chromium.connect(server.wsEndpoint());
    const page = await (await browser.newContext({ viewport: PHONE })).newPage();
    page.setDefaultTimeout(PATIENCE_MS);
    await page.goto(url);
    return new MortalBrowser(server, browser, page);
  }

  async kill(): Promise<void> {
    await killed(this.server.process());
    await this.browser.close().catch(() => {});
    await this.server.close().catch(() => {});
  }
}

async function killed(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const gone = new Promise((done) => child.once('exit', done));
  child.kill('SIGKILL');
  await gone;
}
