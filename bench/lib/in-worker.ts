/** Runs `bench/in-browser/worker.ts` in a worker of a real browser, each time in a browser that knows nothing yet. */
import { readFileSync } from 'node:fs';
import { createServer, get } from 'node:http';
import { build } from 'vite';
import { openBench } from '../../test/browser/harness.ts';
import type { WorkerTimes } from '../in-browser/worker.ts';

/** @param spans whether spans are asked for in the first round */
export async function inWorker(rounds: number, spans: boolean): Promise<WorkerTimes[]> {
  const made = await build({
    logLevel: 'silent',
    configFile: false,
    build: { write: false, lib: { entry: 'bench/in-browser/worker.ts', formats: ['es'] } },
  });
  const chunks =
    (made as { output: { code: string; fileName: string; isEntry: boolean }[] }[])[0]?.output ?? [];
  const files: Record<string, [type: string, body: string | Buffer]> = {
    '/': ['text/html', '<!doctype html><title>bench</title>'],
    '/highs.wasm': ['application/wasm', readFileSync('node_modules/highs/build/highs.wasm')],
  };
  for (const { code, fileName, isEntry } of chunks)
    files[isEntry ? '/worker.js' : `/${fileName}`] = ['text/javascript', code];
  const bench = await openBench();
  const server = createServer((request, response) => {
    const [type, body] = files[request.url ?? ''] ?? [];
    if (type) response.writeHead(200, { 'content-type': type }).end(body);
    // The table comes as the program's own server sends it, compressed or not.
    else
      get(`${bench.url}${request.url}`, { headers: request.headers }, (answer) => {
        response.writeHead(answer.statusCode ?? 502, answer.headers);
        answer.pipe(response);
      });
  });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  const address = server.address();
  const url = `http://127.0.0.1:${typeof address === 'object' && address ? address.port : 0}`;
  const answers: WorkerTimes[] = [];
  try {
    for (let k = 0; k < rounds; k++) {
      const page = await bench.page();
      await page.goto(url);
      const answer = (await page.evaluate(asked, { server: url, spans: spans && k === 0 })) as
        | WorkerTimes
        | { failed: string };
      if ('failed' in answer) throw new Error(answer.failed);
      answers.push(answer);
      await page.context().close();
    }
  } finally {
    await bench.close();
    server.close();
  }
  return answers;
}

/** Runs in the page. */
function asked(question: { server: string; spans: boolean }): Promise<unknown> {
  // biome-ignore lint/suspicious/noExplicitAny: the page's globals are not those of Node
  const { Worker } = globalThis as any;
  const worker = new Worker('/worker.js', { type: 'module' });
  return new Promise((done) => {
    worker.onerror = ({ message }: { message?: string }) =>
      done({ failed: message ?? 'the worker did not start' });
    worker.onmessage = ({ data }: { data: unknown }) => done(data);
    worker.postMessage(question);
  });
}
