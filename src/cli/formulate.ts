/** `pouchful formulate`: a problem in, one JSON result (or a table for people) out. */
import { readFileSync } from 'node:fs';
import { Formulation } from '../formulation/formulation.ts';
import { parseProblem } from '../formulation/problem/parse.ts';
import { ProblemError } from '../formulation/problem/problem.ts';
import { parseJson } from '../formulation/problem/read-json.ts';
import { loadHighs } from '../formulation/solve/highs.ts';
import { loadReference } from '../household/reference-file.ts';
import { advised, type FormulateOptions } from './advised.ts';
import { table } from './table.ts';

/** Exit codes: a mix was found; bad input; no mix can keep the rules. */
const FOUND = 0;
const BAD_INPUT = 2;
const NO_MIX = 3;

/**
 * Formulates the problem in `file` ("-" for standard input) and prints the result.
 * @returns the exit code
 */
export async function formulate(file: string, opts: FormulateOptions = {}): Promise<number> {
  try {
    const reference = loadReference();
    const { problem, ignored } = parseProblem(parseJson(read(file)), reference);
    const formulation = new Formulation(problem, { reference, highs: await loadHighs() }, ignored);
    const result = advised(formulation, opts);
    formulation.dispose();
    if (ignored.length > 0)
      process.stderr.write(`pouchful: not read, as the format has no such field: ${ignored.join(', ')}\n`);
    process.stdout.write(opts.pretty ? table(problem, result) : `${JSON.stringify(result, null, 2)}\n`);
    return result.status === 'optimal' ? FOUND : NO_MIX;
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    process.stderr.write(`pouchful: ${error.message.replace(/\s+/g, ' ')}\n`);
    return BAD_INPUT;
  }
}

function read(file: string): string {
  try {
    return readFileSync(file === '-' ? 0 : file, 'utf8');
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    const why = code === 'ENOENT' ? 'there is no such file' : `it cannot be read (${code})`;
    throw new ProblemError(
      '',
      `"${file}": ${why}; give a path to a problem.json, or - to read standard input`,
    );
  }
}
