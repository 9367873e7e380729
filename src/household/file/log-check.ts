/**
 * Whether a write-ahead log is damaged in its middle. SQLite reads a log up to the first frame whose checksum is wrong
 * and says nothing of what follows: right where a power cut tore the last write, and a silent loss where a disk failed.
 * After "Database File Format", section 4 (write-ahead log), https://www.sqlite.org/fileformat2.html
 */
import { existsSync, readFileSync } from 'node:fs';
import { FRAME, FRAME_HEADER, LOG_HEADER, PAGE, saltsAt, saltsOf } from './salvage/pages.ts';
import { WAL } from './side-files.ts';

/** The magic number's last bit says in which order bytes are summed. */
const BIG_ENDIAN = 1;

/**
 * How many transactions stand in the log behind a frame that cannot be read, beyond the one that a torn write may leave:
 * each was on disk before the next began. 0 where nothing was lost.
 */
export function lostInLog(path: string): number {
  return existsSync(path + WAL) ? lostIn(readFileSync(path + WAL)) : 0;
}

function lostIn(log: Buffer): number {
  if (log.length < LOG_HEADER) return 0;
  const big = (log.readUInt32BE(0) & BIG_ENDIAN) === 1;
  const salts = saltsOf(log);
  let sum = summed(log, 0, 24, big, [0, 0]);
  let broken = sum[0] !== log.readUInt32BE(24) || sum[1] !== log.readUInt32BE(28);
  let commits = 0;
  for (let at = LOG_HEADER; at + FRAME <= log.length; at += FRAME) {
    // What an earlier run of the log left behind, or a frame whose salts are broken: those after it tell.
    if (!saltsAt(log, at).equals(salts)) {
      broken = true;
      continue;
    }
    if (!broken) {
      sum = summed(log, at, 8, big, sum);
      sum = summed(log, at + FRAME_HEADER, PAGE, big, sum);
      broken = sum[0] !== log.readUInt32BE(at + 16) || sum[1] !== log.readUInt32BE(at + 20);
    }
    const isCommit = log.readUInt32BE(at + 4) !== 0;
    if (broken && isCommit) commits += 1;
  }
  return Math.max(0, commits - 1);
}

type Sum = readonly [number, number];

/** The format's running checksum over words of four bytes, two at a time. */
function summed(bytes: Buffer, from: number, length: number, big: boolean, [a, b]: Sum): Sum {
  let first = a;
  let second = b;
  const word = (at: number) => (big ? bytes.readUInt32BE(at) : bytes.readUInt32LE(at));
  for (let at = from; at < from + length; at += 8) {
    first = (first + word(at) + second) >>> 0;
    second = (second + word(at + 4) + first) >>> 0;
  }
  return [first, second];
}
