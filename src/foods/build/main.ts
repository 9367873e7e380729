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

const reference = 'src/foods/data/reference.bin';
const bytes = buildReference(process.cwd(), options.ifct ? readIndian(process.cwd()) : []);
writeFileSync(reference, bytes);
console.log(`${reference}: ${kB(bytes.length)}, ${kB(gzipSync(bytes).length)} gzipped`);
if (options.ifct) console.log('With the Indian tables: for your own use, not to be passed on or committed.');
