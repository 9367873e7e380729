/**
 * The same moves in the real browser: the page's own worker is asked, and the time from question to answer is taken,
 * messages between page and worker included.
 */
import { readdirSync } from 'node:fs';
import { demoHousehold } from '../src/household/demo.ts';
import { openBench } from '../test/browser/harness.ts';

const MOVES = 60;
const { problem } = demoHousehold().mixes[0]!;
const script = readdirSync('dist/web/assets').find((f) => /^formulation\.worker.*\.js$/.test(f));
if (!script) throw new Error('the browser client is not built; run: npm run build');

const bench = await openBench();
try {
  const page = await bench.page();
  await page.goto(bench.url);
  const times = (await page.evaluate(inPage, {
    script: `/assets/${script}`,
    problem,
    moves: MOVES,
  })) as number[];
  times.sort((a, b) => a - b);
  console.log(
    `in the browser's worker, ${MOVES} moves: median ${times[MOVES >> 1]!.toFixed(1)} ms, slowest ${times.at(-1)!.toFixed(1)} ms`,
  );
} finally {
  await bench.close();
}

/** Runs in the page. Speaks the worker's own messages (Comlink's: a path, its arguments as raw values). */
async function inPage({
  script,
  problem,
  moves,
}: {
  script: string;
  problem: unknown;
  moves: number;
}): Promise<number[]> {
  // biome-ignore lint/suspicious/noExplicitAny: the page's globals are not those of Node
  const { Worker, performance } = globalThis as any;
  const worker = new Worker(script, { type: 'module' });
  let next = 0;
  const ask = (name: string, ...args: unknown[]) =>
    // biome-ignore lint/suspicious/noExplicitAny: answers are the worker's own
    new Promise<any>((settle) => {
      const id = String(next++);
      const heard = ({ data }: { data: { id: string; value: unknown } }) => {
        if (data?.id !== id) return;
        worker.removeEventListener('message', heard);
        settle(data.value);
      };
      worker.addEventListener('message', heard);
      worker.postMessage({
        id,
        type: 'APPLY',
        path: [name],
        argumentList: args.map((value) => ({ type: 'RAW', value })),
      });
    });
  const first = (await ask('solve', problem)).value;
  let shares = first.shares;
  const ids = Object.keys(shares);
  const times: number[] = [];
  for (let k = 0; k < moves; k++) {
    const id = ids[k % ids.length]!;
    const [low, high] = first.spans[id];
    const start = performance.now();
    const answer = await ask('move', problem, shares, { [id]: low + (high - low) * ((k * 0.37) % 1) }, id);
    times.push(performance.now() - start);
    shares = answer.value.shares;
  }
  return times;
}
