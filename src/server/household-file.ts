/** The household that the server serves from a file: its store, and backups made by themselves. */
import { Backups } from '../household/backup/backups.ts';
import { type FileStore, openStore, type StoreOptions } from '../household/store.ts';

/** How often it is asked whether a backup is due, in ms. */
const ASKED_EVERY = 10 * 60_000;
/** How often history that is too old is let go of, in ms. */
const FORGOTTEN_EVERY = 24 * 60 * 60_000;

export interface Timers {
  /** Calls again and again. @returns ends it */
  every(ms: number, call: () => void): () => void;
}

export interface HouseholdFile {
  readonly store: FileStore;
  readonly backups: Backups;
  /** Ends what is made by itself and closes the file. */
  close(): Promise<void>;
}

interface Options {
  readonly clock?: () => Date;
  readonly timers?: Timers;
  readonly store?: StoreOptions;
}

/** Timers of the system that keep no process alive. */
const SYSTEM: Timers = {
  every(ms, call) {
    const timer = setInterval(call, ms);
    timer.unref();
    return () => clearInterval(timer);
  },
};

/**
 * Opens a household's file and begins its backups.
 * @param tell takes lines for the terminal
 * @throws OpeningError when it is not to be opened
 */
export function openHousehold(
  path: string,
  tell: (line: string) => void,
  { clock = () => new Date(), timers = SYSTEM, store: options }: Options = {},
): HouseholdFile {
  const store = openStore(path, options);
  const { copyBefore } = store.opened;
  if (copyBefore)
    tell(`The household was brought to a newer shape; a copy from before lies at ${copyBefore}`);
  let closes = () => {};
  const closing = new Promise<void>((done) => {
    closes = done;
  });
  const backups = new Backups({
    opened: store.opened,
    clock,
    tell,
    onGoneBack: () => store.stirred(),
    quiet: () => Promise.race([store.quiet(), closing]),
  });
  const ask = () => void backups.saveWhereDue();
  // What cannot be let go of now is let go of another day.
  const forget = () => void store.forgetOld(clock().toISOString()).catch(() => {});
  const ends = [timers.every(ASKED_EVERY, ask), timers.every(FORGOTTEN_EVERY, forget)];
  forget();
  // A new household is about to be filled.
  if (!store.isNew) ask();
  return {
    store,
    backups,
    async close() {
      closes();
      for (const end of ends) end();
      await backups.settled();
      await store.close();
    },
  };
}
