/** `pouchful formulate`: a problem in, one JSON result (or a table for people) out. */
import { readFileSync } from 'node:fs';
import { Formulation } from '../formulation/formulation.ts';
import { parseProblem } from '../formulation/problem/parse.ts';
import { ProblemError } from '../formulation/problem/problem.ts';
import { parseJson } from '../formulation/problem/read-json.ts';
import { loadHighs, NoAnswer } from '../formulation/solve/highs.ts';
import { loadReference } from '../household/reference-file.ts';
import { advised, type FormulateOptions } from './advised.ts';
import { BAD_INPUT, legible, oneLine } from './print.ts';
import { table } from './table.ts';
import '../words/plain-english.ts';

/** Exit codes: a mix was found; no mix can keep the rules. */
const FOUND = 0;
const NO_MIX = 3;

/** A problem of 500 foods with every amount is a tenth of this. */
const MOST_BYTES = 16 * 2 ** 20;

/** Fields that were not read are all listed in the result; on stderr the first. */
const MOST_NAMED = 10;

/**
 * Formulates the problem in `file` ("-" for standard input) and prints the result.
 * @returns the exit code
 */
export async function formulate(file: string, opts: FormulateOptions = {}): Promise<number> {
  // The solver is compiled beside all that goes before its first question.
  const solver = loadHighs();
  solver.catch(() => {});
  try {
    const reference = loadReference();
    const { problem, ignored } = parseProblem(parseJson(read(file)), reference);
    const formulation = new Formulation(problem, { reference, highs: await solver }, ignored);
    const result = advised(formulation, opts);
    formulation.dispose();
    if (ignored.length > 0) process.stderr.write(`pouchful: ${notRead(ignored)}\n`);
    process.stdout.write(
      opts.pretty ? legible(table(problem, result)) : `${JSON.stringify(result, null, 2)}\n`,
    );
    return result.status === 'optimal' ? FOUND : NO_MIX;
  } catch (error) {
    const told = error instanceof ProblemError ? error : solverFailure(error);
    process.stderr.write(`pouchful: ${oneLine(told.message)}\n`);
    return BAD_INPUT;
  }
}

/** What a keeper can do where the solver broke off. @throws whatever else went wrong */
function solverFailure(error: unknown): ProblemError {
  if (!(error instanceof NoAnswer || (error instanceof Error && error.message.includes('HiGHS'))))
    throw error;
  return new ProblemError(
    '',
    'the solver came to no answer; look for amounts or bounds that are many powers of ten apart',
  );
}

function notRead(ignored: readonly string[]): string {
  const further = ignored.length > MOST_NAMED ? ` and ${ignored.length - MOST_NAMED} more` : '';
  return oneLine(
    `not read, as the format has no such field: ${ignored.slice(0, MOST_NAMED).join(', ')}${further}`,
  );
}

function read(file: string): string {
  const bytes = bytesOf(file);
  if (bytes.length > MOST_BYTES) {
    const size = (bytes.length / 2 ** 20).toFixed(0);
    throw new ProblemError(
      '',
      `is ${size} MB long; ${MOST_BYTES / 2 ** 20} MB is the most, so shorten its longest texts`,
    );
  }
  const [first, second] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff))
    throw new ProblemError('', 'is UTF-16, as its byte-order mark says; save it as UTF-8');
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new ProblemError('', 'is not UTF-8 text; save it as UTF-8');
  }
}

function bytesOf(file: string): Buffer {
  try {
    return readFileSync(file === '-' ? 0 : file);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    const why = code === 'ENOENT' ? 'there is no such file' : `it cannot be read (${code})`;
    throw new ProblemError(
      '',
      `"${file}": ${why}; give a path to a problem.json, or - to read standard input`,
    );
  }
}
