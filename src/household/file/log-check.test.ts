/** A log that is damaged in its middle is found out; one that a power cut tore at its end is not taken for that. */
import { copyFileSync, readFileSync, statSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { beforeEach, describe, expect, it } from 'vitest';
import { draws } from '../../../test/draws.ts';
import { folderForEachTest } from '../../../test/household/folder-for-each-test.ts';
import { lostInLog } from './log-check.ts';
import { openFile } from './open-file.ts';
import { salvage } from './salvage/salvage.ts';

const WRITES = 30;
const folder = folderForEachTest();
let path: string;

/** A file left with a log of thirty writes, as a crash leaves it. */
beforeEach(() => {
  path = join(folder(), 'copy.sqlite');
  const live = join(folder(), 'household.sqlite');
  const opened = openFile(live);
  const add = opened.file.prepare("INSERT INTO records VALUES ('home', 'lots', ?, 1, ?, ?, ?)");
  for (let i = 1; i <= WRITES; i++) add.run(`l${i}`, i, i, JSON.stringify({ id: `l${i}` }));
  for (const end of ['', '-wal']) copyFileSync(live + end, path + end);
  opened.close();
});

const damage = (at: number) => {
  const log = readFileSync(`${path}-wal`);
  log.writeUInt8(log.readUInt8(at) ^ 0x10, at);
  writeFileSync(`${path}-wal`, log);
};

describe('a log', () => {
  it('that is whole has lost nothing', () => {
    expect(lostInLog(path)).toBe(0);
    const opened = openFile(path);
    expect(opened.file.prepare('SELECT count(*) FROM records').pluck().get()).toBe(WRITES);
    opened.close();
  });

  it('that was cut short anywhere, or torn in its last write, has lost nothing that was answered', () => {
    const whole = readFileSync(`${path}-wal`);
    for (const length of [0, 10, 32, 5000, whole.length - 1, whole.length - 4000]) {
      writeFileSync(`${path}-wal`, whole);
      truncateSync(`${path}-wal`, length);
      expect(lostInLog(path), `${length}`).toBe(0);
    }
    writeFileSync(`${path}-wal`, whole);
    damage(whole.length - 100);
    expect(lostInLog(path)).toBe(0);
  });

  it('with a flip anywhere before its last writes is found out, and all the other writes are saved', () => {
    const whole = readFileSync(`${path}-wal`);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: Math.floor(statSync(`${path}-wal`).size / 2) }), (at) => {
        writeFileSync(`${path}-wal`, whole);
        damage(at);
        expect(lostInLog(path)).toBeGreaterThan(0);
      }),
      { numRuns: draws(400, 40) },
    );
    expect(() => openFile(path)).toThrow('its log is broken in the middle');
    const saved = salvage(path, join(folder(), 'saved.sqlite'));
    expect(saved?.records.lots).toBeGreaterThanOrEqual(WRITES - 1);
  });
});
