// Writes each file that browsers get beside itself as brotli and as gzip, so that the server compresses nothing.
import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync, constants, gzipSync } from 'node:zlib';

/** Below this a compressed answer saves less than its headers cost, bytes. */
const LEAST = 1000;
const TEXT = /\.(js|css|html|svg|txt|json|wasm)$/;

/** @param folder with all below it */
export function compressIn(folder) {
  for (const name of readdirSync(folder)) {
    const path = join(folder, name);
    if (statSync(path).isDirectory()) compressIn(path);
    else if (TEXT.test(name)) compressed(path);
  }
}

/** @param path of one file */
export function compressed(path) {
  const plain = readFileSync(path);
  if (plain.length < LEAST) return;
  const params = {
    [constants.BROTLI_PARAM_QUALITY]: 11,
    [constants.BROTLI_PARAM_SIZE_HINT]: plain.length,
    [constants.BROTLI_PARAM_LGWIN]: 24,
  };
  const [brotli, gzip] = [brotliCompressSync(plain, { params }), gzipSync(plain, { level: 9 })];
  if (brotli.length < plain.length) writeFileSync(`${path}.br`, brotli);
  if (gzip.length < plain.length) writeFileSync(`${path}.gz`, gzip);
}
