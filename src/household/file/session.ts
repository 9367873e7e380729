/**
 * What a server that has the file open writes beside it: its address, and a fingerprint of the file over which the log
 * is being written. A log is worth something only together with the very file it was written over. A copy put back
 * beside the log of another state would be undone by it, silently; the fingerprint tells.
 */
import { createHash, type Hash } from 'node:crypto';
import { closeSync, existsSync, openSync, readFileSync, readSync, rmSync } from 'node:fs';
import { hasLog } from './image.ts';
import { sessionPath, writeWhole } from './side-files.ts';

const CHUNK = 1 << 20;

interface Session {
  /** Where the server is found. */
  readonly address?: string;
  /** SHA-256 of the file without its log; absent while the log is being written into it. */
  readonly file?: string;
}

/** Whether the log beside a file is known to have been written over another one. */
export function strayLog(path: string): boolean {
  if (!hasLog(path)) return false;
  const before = readSession(path)?.file;
  if (before === undefined) return false;
  const fd = openSync(path, 'r');
  try {
    return fingerprint(fd) !== before;
  } finally {
    closeSync(fd);
  }
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
  #file: string | undefined;

  constructor(path: string) {
    this.#path = path;
    this.#fd = openSync(path, 'r');
  }

  /** Says that the file as it lies is the one the log goes with. */
  settled(): void {
    this.#file = fingerprint(this.#fd);
    this.#write();
  }

  /** Says that the file is about to change, until it is settled again. */
  moving(): void {
    this.#file = undefined;
    this.#write();
  }

  announce(address: string): void {
    this.#address = address;
    this.#write();
  }

  /** @param whole whether the file holds everything, so that no log is left */
  end(whole: boolean): void {
    closeSync(this.#fd);
    if (whole) rmSync(sessionPath(this.#path), { force: true });
  }

  #write(): void {
    const session: Session = { address: this.#address, file: this.#file };
    writeWhole(sessionPath(this.#path), `${JSON.stringify(session)}\n`);
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
