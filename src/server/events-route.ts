/** Tells open pages at once that the household changed (server-sent events, WHATWG HTML 9.2). */
import type { OpenAPIHono } from '@hono/zod-openapi';
import { streamSSE } from 'hono/streaming';
import type { CallerEnv } from './caller.ts';

/** Keeps the connection open through what closes silent ones, ms (common practice, no source). */
const STILL_THERE = 20_000;
/** After a change is told, those that follow within this time are told as one, ms: a page reads them in one go. */
const TOGETHER = 200;

export interface EventParts {
  /** Which build of Pouchful is served now: a page of another one offers to load itself anew. */
  build(): string;
  /** Hears that the stream of a device must end: it was sent away, or the server stops. @returns a function that ends hearing */
  readonly untilEnded?: (deviceId: string | undefined, end: () => void) => () => void;
}

export function eventsRoute(app: OpenAPIHono<CallerEnv>, { build, untilEnded }: EventParts): void {
  app.get('/api/events', (c) => {
    const { store, deviceId } = c.get('caller');
    c.header('Cache-Control', 'no-store');
    c.header('X-Accel-Buffering', 'no');
    return streamSSE(c, async (stream) => {
      let wake: () => void = () => undefined;
      let changed: { seq: number; epoch: string } | undefined;
      let over = false;
      const nudge = (seq: number, epoch: string) => {
        changed = { seq, epoch };
        wake();
      };
      const end = () => {
        over = true;
        wake();
      };
      const unwatch = store.watch(nudge);
      const unheard = untilEnded?.(deviceId, end);
      stream.onAbort(end);
      try {
        await stream.writeSSE({
          event: 'hello',
          data: JSON.stringify({ ...(await store.newest()), build: build() }),
        });
        while (!over) {
          if (!changed) {
            const silence = setTimeout(() => wake(), STILL_THERE);
            await new Promise<void>((woken) => {
              wake = woken;
            });
            clearTimeout(silence);
          }
          if (over) break;
          if (changed) {
            const data = JSON.stringify(changed);
            changed = undefined;
            await stream.writeSSE({ event: 'change', data });
            await stream.sleep(TOGETHER);
          } else await stream.write(': still there\n\n');
        }
      } finally {
        unwatch();
        unheard?.();
      }
    });
  });
}
