/**
 * `npm run reference`, from the project root: makes `src/foods/data/reference.bin` and
 * `src/foods/data/variation.json` from the source tables.
 *
 * `npm run reference -- --ifct` adds the rows of the Indian Food Composition Tables 2017, for whoever may use them: the
 * book reserves electronic use in a product to written permission, so a file made this way is not passed on.
 */
import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { gzipSync } from 'node:zlib';
import { buildReference, readIndian } from './sources.ts';

const kB = (n: number) => `${Math.round(n / 1000)} kB`;
const { values: options } = parseArgs({ options: { ifct: { type: 'boolean', default: false } } });

const made = buildReference(process.cwd(), options.ifct ? readIndian(process.cwd()) : []);
for (const [name, contents] of [
  ['reference.bin', made.reference],
  ['variation.json', made.variation],
] as const) {
  const path = `src/foods/data/${name}`;
  writeFileSync(path, contents);
  console.log(`${path}: ${kB(contents.length)}, ${kB(gzipSync(contents).length)} gzipped`);
}
if (options.ifct) console.log('With the Indian tables: for your own use, not to be passed on or committed.');
