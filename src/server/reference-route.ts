/** Serves the reference foods: one file, compressed once, kept by the browser for as long as it stays the same. */
import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import type { Handler } from 'hono';

interface Prepared {
  readonly plain: Buffer<ArrayBuffer>;
  readonly zipped: Buffer<ArrayBuffer>;
  readonly etag: string;
}

/** A handler for `GET /reference.bin`; the file is read at the first request (some 100 ms, once). */
export function referenceRoute(file: URL | string): Handler {
  let prepared: Prepared | undefined;
  return (c) => {
    if (!prepared) {
      if (!existsSync(file))
        return c.json(
          { field: '', message: 'reference.bin is missing; make it with: npm run reference' },
          404,
        );
      prepared = prepare(readFileSync(file));
    }
    const headers = {
      ETag: prepared.etag,
      'Cache-Control': 'public, max-age=0, must-revalidate',
      Vary: 'Accept-Encoding',
    };
    if (c.req.header('if-none-match')?.includes(prepared.etag)) return c.body(null, 304, headers);
    const zip = /\bgzip\b/.test(c.req.header('accept-encoding') ?? '');
    const body = zip ? prepared.zipped : prepared.plain;
    return c.body(body, 200, {
      ...headers,
      'Content-Type': 'application/octet-stream',
      'Content-Length': String(body.length),
      ...(zip ? { 'Content-Encoding': 'gzip' } : {}),
    });
  };
}

function prepare(plain: Buffer<ArrayBuffer>): Prepared {
  const etag = `"${createHash('sha256').update(plain).digest('base64url').slice(0, 22)}"`;
  return { plain, zipped: gzipSync(plain, { level: 9 }), etag };
}
