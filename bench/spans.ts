/**
 * All spans and the nearest mix of 30 foods: in this process, and in the real browser's worker, where the keeper waits
 * for them; each beside the naive way, which writes LP text and starts a fresh solver for every question.
 */
import { readdirSync } from 'node:fs';
import { build } from 'vite';
import { loadHighs } from '../src/formulation/highs.ts';
import { loadReference } from '../src/household/reference-file.ts';
import { openBench } from '../test/browser/harness.ts';
import { spansRun } from './lib/spans-run.ts';

console.log('in this process:');
for (const line of spansRun(loadReference(), await loadHighs())) console.log(`  ${line}`);

const made = await build({
  logLevel: 'silent',
  configFile: false,
  build: { write: false, minify: false, lib: { entry: 'bench/lib/spans-worker.ts', formats: ['es'] } },
});
const script = (made as { output: { code: string }[] }[])[0]!.output[0]!.code;
const wasm = readdirSync('dist/web/assets').find((f) => f.endsWith('.wasm'));
if (!wasm) throw new Error('the browser client is not built; run: npm run build');

const bench = await openBench();
try {
  const page = await bench.page();
  await page.goto(bench.url);
  const lines = await page.evaluate(inPage, { script, server: bench.url, wasm: `/assets/${wasm}` });
  console.log("in the browser's worker:");
  for (const line of lines) console.log(`  ${line}`);
} finally {
  await bench.close();
}

/** Runs in the page. */
function inPage({ script, ...where }: { script: string; server: string; wasm: string }): Promise<string[]> {
  // biome-ignore lint/suspicious/noExplicitAny: the page's globals are not those of Node
  const { Worker, Blob, URL } = globalThis as any;
  const source = URL.createObjectURL(new Blob([script], { type: 'text/javascript' }));
  const worker = new Worker(source, { type: 'module' });
  return new Promise((done) => {
    worker.onmessage = ({ data }: { data: string[] }) => done(data);
    worker.postMessage(where);
  });
}
