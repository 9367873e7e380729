/**
 * What ten years of keeping cost: every screen of the household of ten years beside the same screen of the
 * demonstration, opened cold in a real browser. Prints milliseconds until it can be used, their ratio, and how many
 * nodes are drawn. Needs `npm run build` and Chromium.
 */
import type { Page } from 'playwright-core';
import { type Bench, openBench } from '../test/browser/harness.ts';
import { SCREENS } from '../test/browser/ten-years-screens.ts';
import { tenYears } from '../test/household/ten-years.ts';
import { median } from './lib/timing.ts';

const ROUNDS = 3;
const today = new Date().toISOString().slice(0, 10);
const old = await openBench({ house: tenYears({ until: today }) });
const fresh = await openBench();

/** From asking for the page until it stands and the browser has drawn it and answers again. */
async function opened(bench: Bench, hash: string, ready: string): Promise<{ ms: number; nodes: number }> {
  const page = await bench.page();
  await page.goto(`${bench.url}/#/${hash}`, { waitUntil: 'commit' });
  await page.locator(ready).first().waitFor();
  const ms = Number(await page.evaluate(DRAWN));
  const nodes = await nodesOf(page);
  await page.context().close();
  return { ms, nodes };
}

const DRAWN =
  'new Promise((done) => requestAnimationFrame(() => setTimeout(() => done(performance.now()), 0)))';
const nodesOf = async (page: Page) => Number(await page.evaluate("document.querySelectorAll('*').length"));

const pad = (words: string | number, width = 8) => String(words).padStart(width);
console.log(
  `${'screen'.padEnd(26)}${['ten years', 'demo', 'ratio', 'nodes'].map((w) => pad(w, 11)).join('')}`,
);
try {
  for (const { hash, ready, demo } of SCREENS) {
    const times: number[] = [];
    const others: number[] = [];
    let nodes = 0;
    for (let k = 0; k < ROUNDS; k++) {
      const one = await opened(old, hash, ready);
      times.push(one.ms);
      nodes = one.nodes;
      if (demo) others.push((await opened(fresh, hash, ready)).ms);
    }
    const [slow, quick] = [median(times), others.length > 0 ? median(others) : Number.NaN];
    console.log(
      `${hash.padEnd(26)}${pad(`${slow.toFixed(0)} ms`, 11)}${pad(`${quick.toFixed(0)} ms`, 11)}${pad((slow / quick).toFixed(1), 11)}${pad(nodes, 11)}`,
    );
  }
} finally {
  await old.close();
  await fresh.close();
}
