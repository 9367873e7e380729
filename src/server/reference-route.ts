/** Serves the reference foods: one file, compressed when it was built, kept by the browser for as long as it stays the same. */
import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import type { Handler } from 'hono';
import { encodingFor } from './compressed.ts';

interface Prepared {
  readonly etag: string;
  readonly plain: Buffer<ArrayBuffer>;
  readonly gzip: Buffer<ArrayBuffer>;
  /** Absent where none lies beside the file. */
  readonly br: Buffer<ArrayBuffer> | undefined;
}

/** A handler for `GET /reference.bin`; the file is read at the first request, while other requests are answered. */
export function referenceRoute(file: URL | string): Handler {
  let begun: Promise<Prepared> | undefined;
  return async (c) => {
    if (!begun) {
      if (!existsSync(file))
        return c.json(
          { field: '', message: 'reference.bin is missing; make it with: npm run reference' },
          404,
        );
      begun = prepare(file);
      begun.catch(() => {
        begun = undefined;
      });
    }
    const prepared = await begun;
    const headers = {
      ETag: prepared.etag,
      'Cache-Control': 'public, max-age=0, must-revalidate',
      Vary: 'Accept-Encoding',
    };
    if (c.req.header('if-none-match')?.includes(prepared.etag)) return c.body(null, 304, headers);
    const takes = encodingFor(c.req.header('accept-encoding'));
    const encoding = takes === 'br' && !prepared.br ? 'gzip' : takes;
    const body = (encoding && prepared[encoding]) ?? prepared.plain;
    return c.body(body, 200, {
      ...headers,
      'Content-Type': 'application/octet-stream',
      'Content-Length': String(body.length),
      ...(encoding && { 'Content-Encoding': encoding }),
    });
  };
}

async function prepare(file: URL | string): Promise<Prepared> {
  const plain = await readFile(file);
  const etag = `"${createHash('sha256').update(plain).digest('base64url').slice(0, 22)}"`;
  const [br, zipped] = await Promise.all([beside(file, '.br'), beside(file, '.gz')]);
  // Not built: the highest level would take five times as long for a hundredth less.
  return { etag, plain, br, gzip: zipped ?? (await promisify(gzip)(plain)) };
}

/** What the build wrote beside a file. */
async function beside(file: URL | string, ending: string): Promise<Buffer<ArrayBuffer> | undefined> {
  const path = typeof file === 'string' ? file + ending : new URL(file.href + ending);
  return existsSync(path) ? readFile(path) : undefined;
}
