/** `pouchful formulate` as it is nearly always asked: without the parts of the command line that it does not need. */
import { setFlagsFromString } from 'node:v8';
import type { FormulateOptions } from './advised.ts';

/** Latest version of Node whose V8 is known to have these settings. */
const LATEST_KNOWN = 24;

const OPTIONS = new Map<string, FormulateOptions>([
  ['--pretty', { pretty: true }],
  ['--why', { why: true }],
  ['--swaps', { swaps: true }],
]);

/**
 * A file and options, each written out in full, as `formulate` takes them; undefined for anything else, which the
 * command line then reads, or refuses in its own words.
 * @param args the words after the program's name
 */
export function plainFormulate(
  args: readonly string[],
): { readonly file: string; readonly options: FormulateOptions } | undefined {
  const [command, ...words] = args;
  const [file, ...more] = words.filter((word) => !OPTIONS.has(word));
  if (command !== 'formulate' || file === undefined || more.length > 0) return undefined;
  if (file.startsWith('-') && file !== '-') return undefined;
  return { file, options: Object.assign({}, ...words.map((word) => OPTIONS.get(word))) };
}

/**
 * Has V8 optimize later than it would: in a process of a few tenths of a second most of that is thrown away unused, and
 * the process waits at its end for what is under way. What runs for seconds is optimized all the same.
 */
export function optimizeLater(): void {
  // A version that does not know a setting says so on stderr.
  if (Number.parseInt(process.versions.node, 10) > LATEST_KNOWN) return;
  // Of its own 1.8 million (bytes of WebAssembly run) and 135 thousand (bytes of bytecode), in Node 20.
  setFlagsFromString('--wasm-tiering-budget=30000000');
  setFlagsFromString('--interrupt-budget=540672');
}
