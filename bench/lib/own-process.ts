/** Programs run as a keeper or a script would run them: each a process of its own, from its start to its end. */
import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';

/** A compiled file of bench/own-process. */
export const ownProcess = (name: string) => resolve('dist/bench-run/bench/own-process', `${name}.js`);

/** @returns what it printed @throws Error where it ends with another code than 0 */
export function said(args: readonly string[], input?: string): string {
  const { status, stdout, stderr } = spawnSync(process.execPath, args, {
    encoding: 'utf8',
    maxBuffer: 64 * 2 ** 20,
    ...(input !== undefined && { input }),
  });
  if (status !== 0) throw new Error(`node ${args.join(' ')} ended with ${status}: ${stderr}`);
  return stdout;
}
