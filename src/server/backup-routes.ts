/** The household's backups: what there is, one now, going back to one, one as a file. */
import { readFile } from 'node:fs/promises';
import { createRoute, type OpenAPIHono, z } from '@hono/zod-openapi';
import type { Backups, KeptBackup } from '../household/backup/backups.ts';
import { KEPT } from '../household/backup/rotation.ts';
import { errorSchema } from '../household/shape/schemas.ts';
import type { CallerEnv } from './caller.ts';
import { json } from './json.ts';

const backupSchema = z.object({
  name: z.string(),
  at: z.string().openapi({ description: 'ISO 8601 time, UTC' }),
  why: z.string().openapi({ description: 'auto, pressed, before-going-back or before-upgrade-FROM-TO' }),
  size: z.number().openapi({ description: 'Bytes' }),
});

const backupsSchema = z.object({
  folder: z.string().nullable().openapi({ description: 'Where they lie; null where none are made here' }),
  backups: z.array(backupSchema).openapi({ description: 'Newest first' }),
  fault: z
    .object({ at: z.string(), message: z.string() })
    .optional()
    .openapi({ description: 'Why the last one was not made' }),
  kept: z.object({ hours: z.number(), days: z.number(), weeks: z.number() }),
});

const nameParams = z.object({ name: z.string().max(300) });

const faults = {
  404: json(errorSchema, 'No such backup'),
  503: json(errorSchema, 'File or disk cannot be used now'),
  507: json(errorSchema, 'The disk is full'),
};

/** @param backups absent where the household is kept in a database of others, who make backups of it */
export function backupRoutes(app: OpenAPIHono<CallerEnv>, backups: Backups | undefined): void {
  app.openapi(
    createRoute({
      method: 'get',
      path: '/api/backups',
      responses: { 200: json(backupsSchema, 'What there is, and what is kept') },
    }),
    (c) => {
      const list = {
        folder: backups?.folder ?? null,
        backups: (backups?.list() ?? []).map(sent),
        ...(backups?.fault && { fault: { ...backups.fault } }),
        kept: KEPT,
      };
      return c.json(list, 200);
    },
  );
  if (!backups) return;
  app.openapi(
    createRoute({
      method: 'post',
      path: '/api/backups',
      responses: { 201: json(backupSchema, 'Made and checked'), ...faults },
    }),
    async (c) => c.json(sent(await backups.saveNow()), 201),
  );
  app.openapi(
    createRoute({
      method: 'post',
      path: '/api/backups/{name}/go-back',
      request: { params: nameParams },
      responses: {
        200: json(z.object({ before: backupSchema }), 'Done; what stood there before is kept as a backup'),
        400: json(errorSchema, 'The backup is not whole'),
        ...faults,
      },
    }),
    async (c) => c.json({ before: sent(await backups.goBack(c.req.valid('param').name)) }, 200),
  );
  app.openapi(
    createRoute({
      method: 'get',
      path: '/api/backups/{name}',
      request: { params: nameParams },
      responses: {
        200: { description: 'The backup as one SQLite file', content: { 'application/vnd.sqlite3': {} } },
        404: faults[404],
      },
    }),
    async (c) => {
      const { name } = c.req.valid('param');
      const bytes = await readFile(backups.pathOf(name));
      return c.body(new Uint8Array(bytes), 200, {
        'Content-Type': 'application/vnd.sqlite3',
        'Content-Disposition': `attachment; filename="${name.replace(/[^\w.-]/g, '_')}"`,
        'Cache-Control': 'no-store',
      });
    },
  );
}

function sent({ name, at, why, size }: KeptBackup) {
  return { name, at, why, size };
}
