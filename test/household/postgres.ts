/** A PostgreSQL of its own for a test file, where Debian's package or another is there. */
import { execFileSync, spawnSync } from 'node:child_process';
import { chmodSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import pg from 'pg';
import { freePort } from '../browser/harness.ts';

export interface TestPostgres {
  /** An address of a new empty database. */
  database(): Promise<string>;
  stop(): void;
}

/** Folder of PostgreSQL's programs; undefined where it is not installed. */
function programs(): string | undefined {
  const debian = '/usr/lib/postgresql';
  const versions = existsSync(debian) ? readdirSync(debian).sort((a, b) => Number(b) - Number(a)) : [];
  const folders = [
    ...versions.map((v) => join(debian, v, 'bin')),
    ...(process.env.PATH ?? '').split(delimiter),
  ];
  return folders.find((folder) => existsSync(join(folder, 'initdb')) && existsSync(join(folder, 'pg_ctl')));
}

export const hasPostgres = programs() !== undefined;

/** Starts it on a free port of this machine. PostgreSQL refuses to run as root, so it then runs as "postgres". */
export async function startPostgres(): Promise<TestPostgres> {
  const bin = programs();
  if (!bin) throw new Error('PostgreSQL is not installed (Debian: apt-get install postgresql)');
  const folder = mkdtempSync(join(tmpdir(), 'pouchful-pg-'));
  const data = join(folder, 'data');
  const isRoot = process.getuid?.() === 0;
  if (isRoot) execFileSync('chown', ['postgres', folder]);
  else chmodSync(folder, 0o700);
  const run = (program: string, ...args: string[]) => {
    const command = [join(bin, program), ...args];
    const [first, ...rest] = isRoot ? ['runuser', '-u', 'postgres', '--', ...command] : command;
    const { status, stderr } = spawnSync(first!, rest, { cwd: folder, stdio: ['ignore', 'ignore', 'pipe'] });
    if (status !== 0) throw new Error(`${program} failed: ${stderr}`);
  };
  const port = await freePort();
  run('initdb', '-D', data, '-U', 'keeper', '-A', 'trust', '-E', 'UTF8', '--no-sync');
  const options = `-p ${port} -c listen_addresses=127.0.0.1 -c unix_socket_directories= -c fsync=off`;
  run('pg_ctl', '-D', data, '-w', '-l', join(folder, 'log'), '-o', options, 'start');
  const address = (name: string) => `postgres://keeper@127.0.0.1:${port}/${name}`;
  let made = 0;
  return {
    async database() {
      const name = `test${++made}`;
      const client = new pg.Client({ connectionString: address('postgres') });
      await client.connect();
      await client.query(`CREATE DATABASE ${name}`);
      await client.end();
      return address(name);
    },
    stop() {
      run('pg_ctl', '-D', data, '-m', 'immediate', '-w', 'stop');
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
