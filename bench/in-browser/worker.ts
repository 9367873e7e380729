/**
 * In a worker of a real browser: table, search and solver made ready, then spans and nearest mix beside the naive way.
 * Answers with ms, or with what went wrong.
 */
import '../../src/words/plain-english.ts';
import { decodeReference } from '../../src/foods/reference.ts';
import { createFoodSearch } from '../../src/foods/search.ts';
import { loadHighs } from '../../src/formulation/solve/highs.ts';
import { asTyped } from '../lib/queries.ts';
import { type SpansRun, spansRun } from './spans-run.ts';

export interface WorkerTimes {
  /** The table asked for until it can be used. */
  readonly table: number;
  /** Of that, until its bytes were there. */
  readonly fetched: number;
  readonly search: number;
  readonly solver: number;
  /** Each text while the English queries are typed. */
  readonly typed: readonly number[];
  /** Only where it was asked for. */
  readonly spans?: SpansRun;
}

/** The worker's own scope; Node's types do not know it. */
declare const self: {
  onmessage(event: { data: { server: string; spans: boolean } }): void;
  postMessage(answer: WorkerTimes | { failed: string }): void;
};

self.onmessage = async ({ data: { server, spans } }) => {
  try {
    const start = performance.now();
    const response = await fetch(`${server}/reference.bin`);
    const bytes = new Uint8Array(await response.arrayBuffer());
    const there = performance.now();
    const reference = decodeReference(bytes);
    const read = performance.now();
    const search = createFoodSearch(reference, 'en');
    const indexed = performance.now();
    const highs = await loadHighs({ wasmUrl: `${server}/highs.wasm` });
    const loaded = performance.now();
    const typed = asTyped('en').map((text) => {
      const before = performance.now();
      search.find(text);
      search.note(text);
      return performance.now() - before;
    });
    self.postMessage({
      table: read - start,
      fetched: there - start,
      search: indexed - read,
      solver: loaded - indexed,
      typed,
      ...(spans && { spans: spansRun(reference, highs) }),
    });
  } catch (error) {
    self.postMessage({ failed: String(error) });
  }
};
