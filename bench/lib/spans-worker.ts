/** Runs {@link spansRun} in a browser's worker. Told where the server is; answers with the lines to print. */
import { decodeReference } from '../../src/foods/reference.ts';
import { loadHighs } from '../../src/formulation/solve/highs.ts';
import { spansRun } from './spans-run.ts';

/** The worker's own scope; Node's types do not know it. */
declare const self: {
  onmessage(event: { data: { server: string; wasm: string } }): void;
  postMessage(lines: string[]): void;
};

self.onmessage = async ({ data }) => {
  try {
    const response = await fetch(`${data.server}/reference.bin`);
    const reference = decodeReference(new Uint8Array(await response.arrayBuffer()));
    self.postMessage(spansRun(reference, await loadHighs({ wasmUrl: data.server + data.wasm })));
  } catch (error) {
    self.postMessage([String(error)]);
  }
};
