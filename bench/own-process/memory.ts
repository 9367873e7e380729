/** In a process of its own, with --expose-gc: what table, search and formulations take. Prints MB as JSON. */
import '../../src/words/plain-english.ts';
import { createFoodSearch } from '../../src/foods/search.ts';
import { loadReference } from '../../src/household/reference-file.ts';
import { formulate, problems, stage } from '../lib/stage.ts';

const FORMULATIONS = 20;

/** JavaScript's own memory and that of buffers, the WebAssembly's among them, MB. */
function taken(): { js: number; buffers: number } {
  for (let k = 0; k < 3; k++) globalThis.gc?.();
  const { heapUsed, external } = process.memoryUsage();
  return { js: heapUsed / 2 ** 20, buffers: external / 2 ** 20 };
}

const steps: Record<string, { js: number; buffers: number }> = {};
let before = taken();
function step(name: string, count = 1): void {
  const now = taken();
  steps[name] = { js: (now.js - before.js) / count, buffers: (now.buffers - before.buffers) / count };
  before = now;
}

const reference = loadReference();
step('reference table');
const search = createFoodSearch(reference, 'en');
step('search over it, one language');
const at = await stage();
const asked = problems(FORMULATIONS, { foods: 40, rules: 15 }, at);
step('solver, and the problems');
const kept = asked.map((problem) => {
  const formulation = formulate(problem, at);
  const { shares = {} } = formulation.best() ?? {};
  formulation.move(shares, {});
  return formulation;
});
step('one formulation of 40 foods kept open', FORMULATIONS);
console.log(JSON.stringify(steps));
// All that was measured is still in use here.
if (search.find('oats').length + kept.length === 0) throw new Error('nothing was found');
