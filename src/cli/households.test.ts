/** Households of a hosted Pouchful, made on the command line while the server runs. */
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { hasPostgres, startPostgres, type TestPostgres } from '../../test/household/postgres.ts';
import { start } from '../server/main.ts';
import { run } from './main.ts';

let out = '';
let err = '';
beforeEach(() => {
  [out, err] = ['', ''];
  vi.spyOn(console, 'log').mockImplementation(() => {});
  vi.spyOn(console, 'error').mockImplementation((text) => {
    err += `${text}\n`;
  });
  vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    out += String(text);
    return true;
  });
  vi.stubEnv('POUCHFUL_DATABASE', '');
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllEnvs();
});

it.each([
  [['household', 'add', 'Anna'], 'no database is named'],
  [['household', 'list', '--database', 'postgres://x@127.0.0.1:1/x'], 'the database cannot be opened'],
  [['household', 'add', 'Anna', '--at', 'shelter.example', '--database', 'x'], '--at is "shelter.example"'],
])('%j complains in one line', async (args, words) => {
  expect(await run(args)).toBe(2);
  expect(err).toContain(words);
  expect(err.trim().split('\n')).toHaveLength(1);
});

describe.runIf(hasPostgres)('in PostgreSQL', () => {
  let postgres: TestPostgres | undefined;
  beforeAll(async () => {
    postgres = await startPostgres();
  });
  afterAll(() => postgres?.stop());

  it('a household is made, its first device comes in by the link, another is invited', async () => {
    const database = (await postgres?.database()) ?? '';
    const { url, stop } = await start({ database, port: 0 });
    const at = ['--at', url];
    const pair = (name: string) =>
      fetch(`${url}/api/pair`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ code: /#pair=(\S+)/.exec(out)?.[1], name, bearer: true }),
      });
    try {
      expect((await fetch(`${url}/api/records`)).status).toBe(401);
      vi.stubEnv('POUCHFUL_DATABASE', database);
      expect(await run(['household', 'list'])).toBe(0);
      expect(out).toContain('There is no household yet');
      expect(await run(['household', 'add', ' Anna ', ...at])).toBe(0);
      expect(out).toContain('The household "Anna" is made.');
      expect(out).toContain(`${url}/#pair=`);
      const answer = await pair('Phone');
      const { token } = (await answer.json()) as { token: string };
      const headers = { authorization: `Bearer ${token}` };
      expect((await fetch(`${url}/api/records`, { headers })).status).toBe(200);
      expect((await pair('Thief')).status).toBe(403);

      for (const [name, words] of [
        ['Anna', 'there is a household "Anna" already'],
        ['', 'give the household a name'],
        ['a\nb', 'give the household a name'],
      ] as const) {
        expect(await run(['household', 'add', name])).toBe(2);
        expect(err).toContain(words);
      }
      expect(await run(['household', 'invite', 'Ben'])).toBe(2);
      expect(err).toContain('there is no household "Ben"; there are: Anna');
      out = '';
      expect(await run(['household', 'invite', 'Anna', ...at])).toBe(0);
      expect((await pair('Tablet')).status).toBe(200);
      out = '';
      expect(await run(['household', 'list'])).toBe(0);
      expect(out).toBe('Anna  2  devices\n');
      await expect(start({ database, port: 0 })).rejects.toThrow(
        'another Pouchful server works on this database',
      );
    } finally {
      await stop();
    }
  });
});
