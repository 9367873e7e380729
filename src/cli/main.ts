/** The command line: `npx pouchful <command>`. Each command is thin; the work is done in the folders below. */

import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { optimizeLater, plainFormulate } from './plain-formulate.ts';
import { complain } from './print.ts';

/**
 * Runs the command line.
 * @param args the words after the program's name
 * @returns the exit code; errors have been said on stderr, in one line
 */
export async function run(args: readonly string[]): Promise<number> {
  const asked = plainFormulate(args);
  if (!asked) return (await import('./program.ts')).runProgram(args);
  try {
    const { formulate } = await import('./formulate.ts');
    return await formulate(asked.file, asked.options);
  } catch (error) {
    return complain(error);
  }
}

/** Runs with the process's own arguments; a reader that stops reading (`| head`) is no error. */
export async function main(): Promise<void> {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
    process.exit(process.exitCode ?? 0);
  });
  const args = process.argv.slice(2);
  // The server stays.
  if (args[0] !== 'start') optimizeLater();
  process.exitCode = await run(args);
}

if (process.argv[1] && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) await main();
