/**
 * kill -9 at any moment: no acknowledged write is lost, the file is whole, and what was under way is wholly there or
 * wholly not. A real server process is killed; then the file is opened as a later start would open it.
 */
import { mkdirSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { backupsOf } from '../../src/household/backup/backups.ts';
import { checkCopy } from '../../src/household/backup/check-copy.ts';
import { openFile } from '../../src/household/file/open-file.ts';
import { backupFolder } from '../../src/household/file/side-files.ts';
import { migrate, SCHEMA_VERSION } from '../../src/household/migrations.ts';
import type { OwnFood } from '../../src/household/model.ts';
import { openStore } from '../../src/household/store.ts';
import { LONG } from '../draws.ts';
import { demo } from './demo-version.ts';
import { EMPTY } from './empty-household.ts';
import { folderForEachTest } from './folder-for-each-test.ts';
import { ended, type ServerProcess, spawnServer, startServer } from './server-process.ts';

const folder = folderForEachTest();
/** Each costs a start of the server, so the short run takes few. */
const KILLS = LONG ? 500 : 8;
const MIGRATION_KILLS = LONG ? 60 : 3;
const BACK_KILLS = LONG ? 60 : 3;
const WRITERS = 4;
/** So many writes at most are answered before the server is killed. */
const MOST_ANSWERED = 25;
/** So many rounds go on with the same file. */
const ROUNDS_OF_ONE = 20;

/** What writers know of their records: the last state that was acknowledged, and the one that was on its way. */
interface Known {
  acknowledged: { version: number; mark: string } | undefined;
  sent: string | undefined;
}

const foodOf = (id: string, source: string): OwnFood => ({ ...(demo.foods[0] as OwnFood), id, source });
/** A steady stream of numbers from 0 to 1, so that a failure comes again. */
function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1_103_515_245 + 12_345) % 2 ** 31;
    return state / 2 ** 31;
  };
}
const next = chance(13);

/** Writes one record after the other until the server no longer answers. */
async function writeOn(
  server: ServerProcess,
  name: string,
  known: Map<string, Known>,
  answered: () => void,
): Promise<void> {
  for (let n = 0; ; n++) {
    const id = `${name}-${Math.floor(n / 3)}`;
    const record: Known = known.get(id) ?? { acknowledged: undefined, sent: undefined };
    known.set(id, record);
    const mark = `mark ${name} ${n}`;
    record.sent = mark;
    const version = record.acknowledged?.version ?? 0;
    const sent = await fetch(`${server.url}/api/foods/${id}`, {
      method: 'PUT',
      headers: {
        'content-type': 'application/json',
        ...(version > 0 ? { 'if-match': `"${version}"` } : { 'if-none-match': '*' }),
      },
      body: JSON.stringify(foodOf(id, mark)),
    }).catch(() => undefined);
    if (!sent) return;
    if (sent.status !== 200) throw new Error(`answered ${sent.status}: ${await sent.text()}`);
    record.acknowledged = { version: version + 1, mark };
    record.sent = undefined;
    answered();
  }
}

/** The foods of a file by their id, as a start after the kill finds them. */
function foodsIn(path: string): Map<string, { version: number; mark: string }> {
  const opened = openFile(path);
  try {
    expect(opened.file.pragma('integrity_check', { simple: true })).toBe('ok');
    expect(opened.file.pragma('foreign_key_check')).toEqual([]);
    const rows = opened.file
      .prepare("SELECT id, version, body ->> '$.source' AS mark FROM records WHERE kind = 'foods'")
      .all() as { id: string; version: number; mark: string }[];
    return new Map(rows.map(({ id, ...rest }) => [id, rest]));
  } finally {
    opened.close();
  }
}

function nothingLost(known: ReadonlyMap<string, Known>, path: string): void {
  const kept = foodsIn(path);
  for (const [id, { acknowledged, sent }] of known) {
    const stands = kept.get(id);
    const states = [acknowledged, sent && { version: (acknowledged?.version ?? 0) + 1, mark: sent }];
    expect(states, id).toContainEqual(stands);
  }
}

describe('kill -9 of a server', () => {
  it(`under writes, ${KILLS} times, loses no acknowledged write`, async () => {
    const known = new Map<string, Known>();
    for (let round = 0; round < KILLS; round++) {
      // A household takes only so many foods.
      if (round % ROUNDS_OF_ONE === 0) known.clear();
      const path = join(folder(), `${Math.floor(round / ROUNDS_OF_ONE)}.sqlite`);
      const server = await startServer(path);
      const enough = Math.floor(next() * MOST_ANSWERED);
      let answered = 0;
      let reached = () => {};
      const busy = new Promise<void>((done) => {
        reached = done;
      });
      const count = () => {
        answered += 1;
        if (answered >= enough) reached();
      };
      const writers = Array.from({ length: WRITERS }, (_, w) =>
        writeOn(server, `r${round}-${w}`, known, count),
      );
      const all = Promise.all(writers);
      if (enough > 0) await Promise.race([busy, all]);
      await server.kill();
      await all;
      nothingLost(known, path);
    }
  });

  it(`while an older state is put back, ${BACK_KILLS} times, leaves the one state or the other`, async () => {
    const path = join(folder(), 'household.sqlite');
    const store = openStore(path);
    const few = Array.from({ length: 400 }, (_, i) => foodOf(`old-${i}`, 'old'));
    await store.putAll({ ...EMPTY, foods: few });
    await store.close();
    const made = await startServer(path);
    const saved = await (await fetch(`${made.url}/api/backups`, { method: 'POST' })).json();
    const old = (saved as { name: string }).name;
    await made.stop();
    const more = openStore(path);
    const many = Array.from({ length: 400 }, (_, i) => foodOf(`new-${i}`, 'new'));
    await more.putAll({ ...EMPTY, foods: many });
    await more.close();
    const met = new Set<number>();
    for (let round = 0; round < BACK_KILLS; round++) {
      const server = await startServer(path);
      const answer = fetch(`${server.url}/api/backups/${old}/go-back`, { method: 'POST' }).catch(
        () => undefined,
      );
      await new Promise((done) => setTimeout(done, next() * 120));
      await server.kill();
      await answer;
      const count = foodsIn(path).size;
      expect([400, 800]).toContain(count);
      met.add(count);
      for (const { name } of backupsOf(path)) checkCopy(join(backupFolder(path), name));
      if (count === 400) {
        // To the newer state again, for the next round: what stood before going back was kept.
        const again = await startServer(path);
        const before = backupsOf(path).find((b) => b.why === 'before-going-back');
        await fetch(`${again.url}/api/backups/${before?.name}/go-back`, { method: 'POST' });
        await again.stop();
        expect(foodsIn(path).size).toBe(800);
      }
    }
    expect(met.size).toBeGreaterThan(0);
  });

  it(`while an older shape is brought up, ${MIGRATION_KILLS} times, leaves the one shape or the other`, async () => {
    for (let round = 0; round < MIGRATION_KILLS; round++) {
      const path = join(folder(), `${round}`, 'household.sqlite');
      mkdirSync(join(folder(), `${round}`));
      const lots = 3000;
      const old = new Database(path);
      old.pragma('journal_mode = WAL');
      migrate(old, 5);
      const add = old.prepare('INSERT INTO lots VALUES (?, ?)');
      old.transaction(() => {
        for (let i = 0; i < lots; i++)
          add.run(`l${i}`, JSON.stringify({ id: `l${i}`, note: 'x'.repeat(300) }));
      })();
      old.close();
      const child = spawnServer(path);
      // Waits until it has begun with the file, which the lock beside it shows.
      while (
        !readdirSync(join(folder(), `${round}`)).includes('household.sqlite-lock') &&
        child.exitCode === null
      )
        await new Promise((done) => setTimeout(done, 1));
      await new Promise((done) => setTimeout(done, next() * 150));
      await ended(child, 'SIGKILL');
      const found = new Database(path);
      const step = found.pragma('user_version', { simple: true });
      expect(found.pragma('integrity_check', { simple: true })).toBe('ok');
      expect([5, SCHEMA_VERSION]).toContain(step);
      const table = step === 5 ? 'lots' : "records WHERE kind = 'lots'";
      expect(found.prepare(`SELECT count(*) FROM ${table}`).pluck().get()).toBe(lots);
      found.close();
      const opened = openFile(path);
      expect(opened.file.prepare("SELECT count(*) FROM records WHERE kind = 'lots'").pluck().get()).toBe(
        lots,
      );
      opened.close();
    }
  });
});
