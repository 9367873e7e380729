/**
 * What a server that has the file open writes beside it: its address, and by what the file is known over which the log
 * is being written. A log is worth something only together with the very file it was written over. A copy put back
 * beside the log of another state would be undone by it, silently.
 */
import { createHash, type Hash } from 'node:crypto';
import { closeSync, existsSync, openSync, readFileSync, readSync, rmSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { hasLog } from './image.ts';
import { inodeOf, sessionPath, syncFolder, WAL, writeWhole } from './side-files.ts';

const CHUNK = 1 << 20;

interface Session {
  /** Where the server is found. */
  readonly address?: string | undefined;
  /** The file without its log; absent while the log is being written into it. */
  readonly file?: { readonly sha256: string; readonly identity: string } | undefined;
  /** Number by which the file system knows the log; absent where there was none. */
  readonly log?: string | undefined;
}

/**
 * Whether the log beside a file goes with it.
 * - `other file`: it was written over a file with other bytes
 * - `put back`: the file has the bytes over which it was written, but was put there since, as is done to undo what
 *   followed
 * - `fits`: nothing speaks against it; also where file and log were brought here together
 */
export function logBeside(path: string): 'fits' | 'other file' | 'put back' {
  const session = hasLog(path) ? readSession(path) : undefined;
  if (!session?.file) return 'fits';
  if (fingerprintOf(path) !== session.file.sha256) return 'other file';
  const sameLog = session.log !== undefined && session.log === inodeOf(path + WAL);
  return sameLog && session.file.identity !== identityOf(path) ? 'put back' : 'fits';
}

/**
 * Whether a file is the one that was open here last, as it was left: not a copy that was put in its place, nor changed by
 * another program since.
 */
export function isAsLeft(path: string): boolean {
  return readSession(path)?.file?.identity === identityOf(path);
}

/**
 * Whether bytes of a file are others than those that were left there, though by its number and times nobody wrote to it:
 * then the disk fails.
 */
export function isRotten(path: string): boolean {
  const left = readSession(path)?.file;
  return left?.identity === identityOf(path) && left.sha256 !== fingerprintOf(path);
}

/** Forgets what is known of the log, so that it counts as fitting. */
export function trustLog(path: string): void {
  rmSync(sessionPath(path), { force: true });
}

/** Number of a file and the moment of its last change of any kind: both differ when a copy took its place. */
function identityOf(path: string): string {
  const { ino, ctimeNs } = statSync(path, { bigint: true });
  return `${ino} ${ctimeNs}`;
}

/** Where the server that has the file open is found, as far as it said. */
export function addressOf(path: string): string | undefined {
  return readSession(path)?.address;
}

/** The session of this process with one file. */
export class OwnSession {
  readonly #path: string;
  /**
   * Open from before SQLite opens the file until after it closes it: on POSIX systems closing any handle of a file
   * drops all locks that the process has on it, SQLite's among them.
   */
  readonly #fd: number;
  #address: string | undefined;
  #file: Session['file'];
  #log: string | undefined;
  constructor(path: string) {
    this.#path = path;
    this.#fd = openSync(path, 'r');
  }

  /** Says that the file as it lies is the one the log goes with; without room on the disk nothing is said. */
  settled(): void {
    this.#file = { sha256: fingerprint(this.#fd), identity: identityOf(this.#path) };
    this.#log = inodeOf(this.#path + WAL);
    this.#write();
  }

  /** Says no more of the file, which is about to change, until it is settled again. Needs no room on the disk. */
  moving(): void {
    this.#file = undefined;
    if (!existsSync(sessionPath(this.#path))) return;
    rmSync(sessionPath(this.#path));
    syncFolder(dirname(this.#path));
  }

  announce(address: string): void {
    this.#address = address;
    this.#write();
  }

  /** Once SQLite has closed the file. @param sound whether it may be looked for as it is left now */
  end(sound: boolean): void {
    this.#address = undefined;
    if (sound) this.settled();
    closeSync(this.#fd);
  }

  #write(): void {
    const session: Session = { address: this.#address, file: this.#file, log: this.#log };
    try {
      writeWhole(sessionPath(this.#path), `${JSON.stringify(session)}\n`);
    } catch (error) {
      // A note that is missing says nothing; one that is out of date would be wrong.
      if ((error as NodeJS.ErrnoException).code !== 'ENOSPC') throw error;
      rmSync(sessionPath(this.#path), { force: true });
    }
  }
}

function readSession(path: string): Session | undefined {
  if (!existsSync(sessionPath(path))) return undefined;
  try {
    return JSON.parse(readFileSync(sessionPath(path), 'utf8')) as Session;
  } catch {
    return undefined;
  }
}

function fingerprintOf(path: string): string {
  const fd = openSync(path, 'r');
  try {
    return fingerprint(fd);
  } finally {
    closeSync(fd);
  }
}

function fingerprint(fd: number): string {
  const hash: Hash = createHash('sha256');
  const chunk = Buffer.alloc(CHUNK);
  for (let at = 0; ; ) {
    const read = readSync(fd, chunk, 0, CHUNK, at);
    if (read === 0) return hash.digest('hex');
    hash.update(chunk.subarray(0, read));
    at += read;
  }
}
