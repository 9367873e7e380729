/**
 * `npm run bench`: every part in a process of its own, one after the other, so that none runs on what another left in
 * memory. Each leaves its figures as JSON; a whole run writes the document from them.
 */
import '../src/words/plain-english.ts';
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { documentOf, type Section } from './lib/document.ts';
import { isQuiet, type Machine, thisMachine } from './lib/machine.ts';
import { printed } from './lib/print.ts';
import type { Report } from './lib/report.ts';
import { PARTS } from './parts.ts';

const RESULTS = 'test-results/bench';
const DOCUMENT = 'docs/benchmarks.md';
/** Set in the process of one part: its name. */
const PART = 'POUCHFUL_BENCH_PART';

const { values, positionals } = parseArgs({
  options: { quick: { type: 'boolean' } },
  allowPositionals: true,
});
const quick = values.quick ?? false;
mkdirSync(RESULTS, { recursive: true });
const own = process.env[PART];
if (own) await runPart(own);
else runAll();

function runAll(): void {
  const unknown = positionals.filter((name) => !(name in PARTS));
  if (unknown.length > 0) {
    console.error(`bench: there is no part "${unknown[0]}"; the parts are: ${Object.keys(PARTS).join(', ')}`);
    process.exitCode = 2;
    return;
  }
  const machine = thisMachine();
  if (!isQuiet(machine))
    console.log(`The machine is not quiet: load ${machine.load.toFixed(1)} on ${machine.cores} cores.\n`);
  const names = positionals.length > 0 ? positionals : Object.keys(PARTS);
  const sections: Section[] = [];
  for (const name of names) {
    const start = performance.now();
    const { status } = spawnSync(
      process.execPath,
      ['--expose-gc', fileURLToPath(import.meta.url), ...(quick ? ['--quick'] : [])],
      { stdio: 'inherit', env: { ...process.env, [PART]: name } },
    );
    if (status !== 0) {
      console.error(`bench: ${name} failed`);
      process.exitCode = 1;
      continue;
    }
    const seconds = (performance.now() - start) / 1000;
    console.log(`(${name}: ${seconds.toFixed(0)} s)\n`);
    sections.push({ name, title: PARTS[name]?.title ?? name, seconds, report: kept(name) });
  }
  if (sections.length < Object.keys(PARTS).length || quick) return;
  write(machine, sections);
}

async function runPart(name: string): Promise<void> {
  const part = PARTS[name];
  if (!part) throw new Error(`there is no part ${name}`);
  console.log(`== ${part.title}\n`);
  const { run } = await part.load();
  const report = await run({ quick });
  writeFileSync(join(RESULTS, `${name}.json`), `${JSON.stringify(report, null, 1)}\n`);
  console.log(printed(report));
}

function kept(name: string): Report {
  return JSON.parse(readFileSync(join(RESULTS, `${name}.json`), 'utf8')) as Report;
}

function write(machine: Machine, sections: readonly Section[]): void {
  writeFileSync(DOCUMENT, documentOf(machine, sections));
  console.log(`Written: ${DOCUMENT}`);
}
