/** What the server keeps households in: a file with one, or a PostgreSQL with several. */
import type { Server } from 'node:http';
import { fileURLToPath } from 'node:url';
import { type Devices, devicesIn } from '../household/access/devices.ts';
import type { Backups } from '../household/backup/backups.ts';
import { seedOnFirstRun } from '../household/seed.ts';
import type { Store, StoreOptions } from '../household/store.ts';
import { devicesOf } from './access/access.ts';
import { openHousehold } from './household-file.ts';
import { householdPath } from './household-path.ts';
import { PROGRAM } from './program.ts';
import { openOrRescue } from './rescue.ts';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/**
 * A page that opens asks again and again; between two of its questions, and from the start to the first, passes less time than
 * this (our own choice).
 */
const OPTIONS: StoreOptions = { program: PROGRAM, rest: 1000 };

export interface Kept {
  readonly devices: Devices;
  storeOf(household: string): Store;
  /** Whether there are several, each with devices of its own. */
  readonly hosted: boolean;
  /** Backups of its file; a database has its own. */
  readonly backups?: Backups;
  /** Says where the server is found, to who tries to start a second one. */
  announce(url: string): void;
  close(): Promise<void>;
}

/**
 * Opens the household's file and fills it on the first run; where it cannot be opened, asks on a page first.
 * @param data what `--data` says
 * @param listen listens on this machine alone
 */
export async function openKeptFile(
  data: string | undefined,
  listen: (server: Server) => Promise<number>,
): Promise<Kept> {
  const open = async () =>
    openHousehold(await householdPath(data, ROOT, console.log), console.log, { store: OPTIONS });
  const { store, backups, close } = await openOrRescue(open, {
    tell: console.error,
    clock: () => new Date(),
    listen,
  });
  try {
    if (await seedOnFirstRun(store))
      console.log('First run: an invented household was put in, marked as invented.');
  } catch (error) {
    await close();
    throw error;
  }
  lookThrough(store);
  return {
    devices: devicesOf(store),
    storeOf: () => store,
    hosted: false,
    backups,
    announce: (url) => store.opened.announce(url),
    close,
  };
}

/** @param url of the database */
export async function openKeptDatabase(url: string): Promise<Kept> {
  // The driver of PostgreSQL is fetched only where there is one.
  const { openHosted } = await import('../household/hosted.ts');
  const hosted = await openHosted(url, { serves: true, ...OPTIONS });
  // History that is too old is let go of when the server starts: a service starts anew at every upgrade.
  for (const { id } of await hosted.list()) await hosted.store(id).forgetOld(new Date().toISOString());
  const lookedThrough = new Set<string>();
  return {
    devices: devicesIn(hosted.db, Date.now, hosted.fault),
    storeOf(household) {
      const store = hosted.store(household);
      // Not all of them at the start: each when somebody comes to it.
      if (!lookedThrough.has(household)) lookThrough(store);
      lookedThrough.add(household);
      return store;
    },
    hosted: true,
    announce: () => {},
    close: hosted.close,
  };
}

/** What fails here fails again, and is told, where it is asked for. */
function lookThrough(store: Store): void {
  store.lookThrough().catch(() => {});
}
