/**
 * The pages of a damaged database, read without SQLite: the file's own, and over them those of its log.
 * After "Database File Format", sections 1.2 (pages) and 4 (write-ahead log), https://www.sqlite.org/fileformat2.html
 */

/** Bytes of a page: SQLite's own choice since version 3.12, which our files keep. */
export const PAGE = 4096;

export const LOG_HEADER = 32;
export const FRAME_HEADER = 24;
export const FRAME = FRAME_HEADER + PAGE;
/** Where the log's header has the two salts that all its frames carry, and where a frame has them. */
const SALTS = 16;
const FRAME_SALTS = 8;
const SALT_LENGTH = 8;

export interface Pages {
  readonly count: number;
  /** A page by its number, from 1; undefined beyond the end. */
  at(number: number): Buffer | undefined;
}

/** @param log bytes of the log beside it; none where there is no log */
export function pagesOf(file: Buffer, log: Buffer = Buffer.alloc(0)): Pages {
  const newer = pagesOfLog(log);
  let count = Math.ceil(file.length / PAGE);
  for (const number of newer.keys()) count = Math.max(count, number);
  return {
    count,
    at(number) {
      const page = newer.get(number) ?? file.subarray((number - 1) * PAGE, number * PAGE);
      return number >= 1 && page.length === PAGE ? page : undefined;
    },
  };
}

/** The newest committed state of each page that the log has. Frames of an older run of the log carry other salts. */
function pagesOfLog(log: Buffer): Map<number, Buffer> {
  const committed = new Map<number, Buffer>();
  let pending = new Map<number, Buffer>();
  const salts = saltsOf(log);
  for (let at = LOG_HEADER; at + FRAME <= log.length; at += FRAME) {
    if (!saltsAt(log, at).equals(salts)) continue;
    const number = log.readUInt32BE(at);
    const pagesAfterCommit = log.readUInt32BE(at + 4);
    pending.set(number, log.subarray(at + FRAME_HEADER, at + FRAME_HEADER + PAGE));
    if (pagesAfterCommit === 0) continue;
    for (const [n, page] of pending) committed.set(n, page);
    pending = new Map();
  }
  return committed;
}

/** The salts of this run of the log, also where the header or a frame is damaged: two of the first three agree. */
export function saltsOf(log: Buffer): Buffer {
  const inHeader = log.subarray(SALTS, SALTS + SALT_LENGTH);
  const [first, second] = [saltsAt(log, LOG_HEADER), saltsAt(log, LOG_HEADER + FRAME)];
  return first.equals(second) ? first : inHeader;
}

/** The salts of the frame that begins there. */
export function saltsAt(log: Buffer, frame: number): Buffer {
  return log.subarray(frame + FRAME_SALTS, frame + FRAME_SALTS + SALT_LENGTH);
}
