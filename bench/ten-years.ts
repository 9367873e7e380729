/**
 * What ten years of keeping cost: every screen of the household of ten years beside the same screen of the
 * demonstration, opened cold in a real browser. Prints milliseconds until it can be used, and of these the work of the
 * page's own thread (processor time, which hardly depends on what else the machine does), their ratio, and how many
 * nodes are drawn. Needs `npm run build` and Chromium.
 */
import { type Bench, openBench } from '../test/browser/harness.ts';
import { SCREENS } from '../test/browser/ten-years-screens.ts';
import { tenYears } from '../test/household/ten-years.ts';
import { median } from './lib/timing.ts';

const ROUNDS = 3;

interface Opening {
  readonly ms: number;
  readonly work: number;
  readonly nodes: number;
}

/** From asking for the page until it stands and the browser has drawn it and answers again. */
async function opened(bench: Bench, hash: string, ready: string): Promise<Opening> {
  const page = await bench.page();
  const browser = await page.context().newCDPSession(page);
  await browser.send('Performance.enable', { timeDomain: 'threadTicks' });
  await page.goto(`${bench.url}/#/${hash}`, { waitUntil: 'commit' });
  await page.locator(ready).first().waitFor();
  const ms = Number(await page.evaluate(DRAWN));
  const { metrics } = await browser.send('Performance.getMetrics');
  const work = 1000 * (metrics.find((m) => m.name === 'TaskDuration')?.value ?? Number.NaN);
  const nodes = Number(await page.evaluate("document.querySelectorAll('*').length"));
  await page.context().close();
  return { ms, work, nodes };
}

const DRAWN =
  'new Promise((done) => requestAnimationFrame(() => setTimeout(() => done(performance.now()), 0)))';

const of = (all: readonly Opening[], what: keyof Opening) => median(all.map((o) => o[what]));
const row = (first: string, cells: readonly string[]) =>
  console.log(first.padEnd(18) + cells.map((c) => c.padStart(13)).join(''));

const today = new Date().toISOString().slice(0, 10);
const old = await openBench({ house: tenYears({ until: today }) });
const fresh = await openBench({ margin: true });
try {
  row('', ['ten years', 'its work', 'demo', 'its work', 'work, ratio', 'nodes']);
  for (const { hash, ready, demo } of SCREENS) {
    const many: Opening[] = [];
    const few: Opening[] = [];
    for (let k = 0; k < ROUNDS; k++) {
      many.push(await opened(old, hash, ready));
      if (demo) few.push(await opened(fresh, hash, ready));
    }
    const ms = (n: number) => `${n.toFixed(0)} ms`;
    row(hash, [
      ms(of(many, 'ms')),
      ms(of(many, 'work')),
      ...(demo
        ? [ms(of(few, 'ms')), ms(of(few, 'work')), (of(many, 'work') / of(few, 'work')).toFixed(1)]
        : ['', '', '']),
      String(of(many, 'nodes')),
    ]);
  }
} finally {
  await old.close();
  await fresh.close();
}
