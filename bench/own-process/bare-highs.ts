/**
 * The least a process can do for the nearest mix: it loads HiGHS, reads a model's arrays from a file, solves it once and
 * prints the shares. Nothing else is imported. Argument: a JSON file as `arraysOf` makes it.
 */
import { readFileSync } from 'node:fs';
import * as highsModule from 'highs';

const [, , file] = process.argv;
if (!file) throw new Error('which file?');
// The package's types describe its CommonJS build; the ES module's default export is the loader itself.
const load = highsModule.default as unknown as () => Promise<import('highs').Highs>;
const highs = await load();
const model = highs.createModel(JSON.parse(readFileSync(file, 'utf8')));
model.options.set({ output_flag: false });
model.run();
console.log(JSON.stringify(Array.from(model.getSolution().colValue)));
