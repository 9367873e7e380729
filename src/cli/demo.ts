/** `pouchful demo`: the problem of the invented mix, as a file to start from. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoProblem } from '../household/demo.ts';
import { print } from './print.ts';

/** Prints the problem, or solves it and prints the table for people. @returns the exit code */
export async function demo(opts: { solve?: boolean }): Promise<number> {
  const problem = JSON.stringify(demoProblem(), null, 2);
  if (!opts.solve) {
    print(problem);
    return 0;
  }
  const folder = mkdtempSync(join(tmpdir(), 'pouchful-'));
  try {
    const file = join(folder, 'problem.json');
    writeFileSync(file, problem);
    const { formulate } = await import('./formulate.ts');
    return await formulate(file, { pretty: true });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
