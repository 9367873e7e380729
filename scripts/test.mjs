// npm test: everything that must hold. Ends with one plain line: "N passed, N failed".
// --long takes every random draw of the tests rather than a part; all else is passed on to vitest.
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { buildWeb, compile } from './build.mjs';
import { ensureChromium } from './chromium.mjs';
import { ensurePostgres } from './postgres.mjs';
import { setup } from './setup.mjs';
import { alone, at, runBin } from './shared.mjs';

const LONG = '--long';
const given = process.argv.slice(2);
const REPORT = at('test-results', 'vitest.json');
let passed = 0;
let failed = 0;

/** One check by its name; a thrown error or an exit code other than 0 is a failure. */
function check(name, work) {
  let ok = false;
  try {
    ok = (work() ?? 0) === 0;
  } catch (error) {
    console.error(error.message);
  }
  if (ok) passed++;
  else failed++;
  console.log(`${ok ? 'ok    ' : 'FAILED'} ${name}`);
  return ok;
}

/** Runs the tests and counts them; a run that ends badly without a failed test is a failure too. */
function vitest(chromium) {
  mkdirSync(at('test-results'), { recursive: true });
  rmSync(REPORT, { force: true });
  const args = [
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${REPORT}`,
    ...given.filter((argument) => argument !== LONG),
  ];
  const env = {
    ...process.env,
    ...(chromium && { CHROMIUM: chromium }),
    ...(given.includes(LONG) && { TEST_DRAWS: 'all' }),
  };
  const code = runBin('vitest', args, { env });
  const report = existsSync(REPORT) ? JSON.parse(readFileSync(REPORT, 'utf8')) : undefined;
  const broken =
    report?.testResults.filter((file) => file.status === 'failed' && file.assertionResults.length === 0) ??
    [];
  const bad = (report?.numFailedTests ?? 0) + broken.length;
  passed += report?.numPassedTests ?? 0;
  // Draws that only the long run has, and tests of a story that go on from one that failed.
  if (report?.numPendingTests) console.log(`${report.numPendingTests} skipped`);
  failed += bad === 0 && code !== 0 ? 1 : bad;
}

if (check('packages', () => alone(setup))) {
  const chromium = ensureChromium();
  ensurePostgres();
  check('compile', () => alone(compile));
  check('browser client', () => alone(buildWeb));
  check('types', () => runBin('tsc', ['--noEmit']));
  check('types of the browser client', () => runBin('tsc', ['-p', 'src/web', '--noEmit']));
  check('format and lint', () => runBin('biome', ['check', '.']));
  check('unused files, exports and packages', () => runBin('knip', []));
  vitest(chromium);
}
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
