/** `npm run reference`, from the project root: makes `src/foods/data/reference.bin` from the source tables. */
import { writeFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { buildReference } from './sources.ts';

const target = 'src/foods/data/reference.bin';
const bytes = buildReference(process.cwd());
writeFileSync(target, bytes);
const kB = (n: number) => `${Math.round(n / 1000)} kB`;
console.log(`${target}: ${kB(bytes.length)}, ${kB(gzipSync(bytes).length)} gzipped`);
