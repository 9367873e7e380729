/** The solver: HiGHS compiled to WebAssembly, loaded once. */

import type { Highs, InitOptions } from 'highs';
import { words } from '../../words/words.ts';

/** The package's types describe its CommonJS build; the ES module's default export is the loader itself. */
type Load = (options?: InitOptions) => Promise<Highs>;

/**
 * Loads HiGHS: its script, which is read for no other question, and its WebAssembly. Each call makes an own instance with
 * its own memory.
 * @param options.wasmUrl where a browser fetches the WebAssembly file; Node finds it by itself
 */
export async function loadHighs(options: { wasmUrl?: string } = {}): Promise<Highs> {
  const { wasmUrl } = options;
  const module = await import('highs');
  const load = module.default as unknown as Load;
  return load(wasmUrl === undefined ? {} : { locateFile: () => wasmUrl });
}

/** The solver came to no answer, not even that there is none: a remedy in doubt is then left out. */
export class NoAnswer extends Error {
  constructor(cause?: unknown) {
    super(words().formulation.noAnswer, { cause });
    this.name = 'NoAnswer';
  }
}

/** What was found out; undefined where the solver came to no answer. */
export function answered<T>(question: () => T): T | undefined {
  try {
    return question();
  } catch (error) {
    if (error instanceof NoAnswer) return undefined;
    throw error;
  }
}

export type { Highs };
