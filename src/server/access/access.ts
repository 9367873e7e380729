/**
 * Who may come in. Where this machine alone is served, nobody is asked; else every route needs the token of a paired
 * device, but for pairing itself and the question whether a token is needed.
 */
import type { OpenAPIHono } from '@hono/zod-openapi';
import type { MiddlewareHandler } from 'hono';
import { type Devices, devicesIn } from '../../household/access/devices.ts';
import type { FileStore } from '../../household/store.ts';
import type { CallerEnv } from '../caller.ts';
import { guard } from '../guard.ts';
import type { AccessOptions } from './access-options.ts';
import { checkCaller } from './check-caller.ts';
import { deviceRoutes } from './device-routes.ts';
import { ownNames } from './own-names.ts';
import { pairRoutes } from './pair-routes.ts';
import { Pairing } from './pairing.ts';
import { OpenStreams } from './streams.ts';

export interface Access {
  /** Before anything else. */
  readonly guard: MiddlewareHandler;
  /** Pairing; to be added before `check`, since nobody who pairs has a token yet. */
  addPublicRoutes(app: OpenAPIHono<CallerEnv>): void;
  /** Before every other route of the API: says whose request it is, or refuses it. */
  readonly check: MiddlewareHandler<CallerEnv>;
  addRoutes(app: OpenAPIHono<CallerEnv>): void;
  readonly pairing: Pairing;
  readonly streams: OpenStreams;
}

export function openAccess(options: AccessOptions): Access {
  const pairing = new Pairing(options.clock ?? Date.now);
  const streams = new OpenStreams();
  return {
    guard: guard(options.served),
    addPublicRoutes: (app) => pairRoutes(app, options, pairing),
    check: checkCaller(options, streams),
    addRoutes: (app) => deviceRoutes(app, options, pairing, streams),
    pairing,
    streams,
  };
}

/** The devices of a household in a file. */
export function devicesOf(store: FileStore, clock: () => number = Date.now): Devices {
  return devicesIn(store.db, clock, (error) => store.opened.fault(error) ?? error);
}

/**
 * Access for this machine alone.
 * @param names further names by which the server may be called
 */
export function onlyThisMachine(store: FileStore, names: readonly string[] = []): Access {
  return openAccess({
    served: { scheme: 'http', isOwn: ownNames(false, names) },
    tokens: false,
    devices: devicesOf(store),
    storeOf: () => store,
    origins: () => [],
  });
}
