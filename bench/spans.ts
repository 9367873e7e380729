/**
 * All spans and the nearest mix of 30 foods: in this process, and in the real browser's worker, where the keeper waits
 * for them; each beside the naive way, which writes LP text and starts a fresh solver for every question.
 */
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { build } from 'vite';
import { loadHighs } from '../src/formulation/solve/highs.ts';
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
const chunks = (made as { output: { code: string; fileName: string; isEntry: boolean }[] }[])[0]!.output;
const entry = chunks.find((c) => c.isEntry)!;
const files: Record<string, [type: string, body: string | Buffer]> = {
  ...Object.fromEntries(chunks.map((c) => [`/${c.fileName}`, ['text/javascript', c.code]])),
  '/': ['text/html', '<!doctype html><title>bench</title>'],
  '/worker.js': ['text/javascript', entry.code],
  '/highs.wasm': ['application/wasm', readFileSync('node_modules/highs/build/highs.wasm')],
  '/reference.bin': ['application/octet-stream', readFileSync('src/foods/data/reference.bin')],
};
const server = createServer(({ url }, response) => {
  const [type, body] = files[url ?? ''] ?? ['text/plain', ''];
  response.writeHead(200, { 'content-type': type }).end(body);
});
await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
const address = server.address();
const url = `http://127.0.0.1:${typeof address === 'object' && address ? address.port : 0}`;

const bench = await openBench();
try {
  const page = await bench.page();
  await page.goto(url);
  console.log("in the browser's worker:");
  for (const line of await page.evaluate(inPage, url)) console.log(`  ${line}`);
} finally {
  await bench.close();
  server.close();
}

/** Runs in the page. */
function inPage(url: string): Promise<string[]> {
  // biome-ignore lint/suspicious/noExplicitAny: the page's globals are not those of Node
  const { Worker } = globalThis as any;
  const worker = new Worker('/worker.js', { type: 'module' });
  return new Promise((done, failed) => {
    worker.onerror = ({ message }: { message?: string }) =>
      failed(new Error(message ?? 'the worker did not start'));
    worker.onmessage = ({ data }: { data: string[] }) => done(data);
    worker.postMessage({ server: url, wasm: '/highs.wasm' });
  });
}
