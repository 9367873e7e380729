/** The options of the server: what is asked for, and what is refused in one line. */
import { expect, test, vi } from 'vitest';
import { type StartOptions, startCommand } from './start-command.ts';

async function asked(...args: string[]): Promise<StartOptions> {
  let options: StartOptions | undefined;
  const command = startCommand(async (o) => {
    options = o;
  });
  command.exitOverride().configureOutput({ outputError: () => {} });
  await command.parseAsync(args, { from: 'user' });
  return options!;
}

test('every option is taken', async () => {
  expect(
    await asked(
      ...['--lan', '--port', '0', '--data', 'a.sqlite', '--name', 'Shelter', '--name', 'b'],
      ...['--cert', 'c.pem', '--key', 'k.pem'],
    ),
  ).toEqual({ lan: true, port: 0, data: 'a.sqlite', name: ['Shelter', 'b'], cert: 'c.pem', key: 'k.pem' });
});

test('behind a proxy', async () => {
  expect(await asked('--behind-proxy', '--name', 'shelter.example')).toEqual({
    behindProxy: true,
    name: ['shelter.example'],
  });
});

test('POUCHFUL_DATABASE stands for --database, which wins', async () => {
  vi.stubEnv('POUCHFUL_DATABASE', 'postgres://a');
  expect(await asked()).toEqual({ database: 'postgres://a' });
  expect(await asked('--database', 'postgres://b')).toEqual({ database: 'postgres://b' });
  await expect(asked('--data', 'a.sqlite')).rejects.toThrow('name one of them');
  vi.unstubAllEnvs();
});

test('PORT stands for --port, which wins', async () => {
  vi.stubEnv('PORT', '5000');
  expect(await asked()).toEqual({ port: 5000 });
  expect(await asked('--port', '5001')).toEqual({ port: 5001 });
  vi.stubEnv('PORT', '');
  expect(await asked()).toEqual({ port: undefined });
  vi.stubEnv('PORT', '70000');
  await expect(asked()).rejects.toThrow('PORT is "70000"; give a port number from 0 to 65535');
  vi.unstubAllEnvs();
});

test.each([
  [['--host', '0.0.0.0'], '--lan opens to the home network'],
  [['--host'], '--lan opens to the home network'],
  [['--name', 'https://a.example'], '--name is "https://a.example"'],
  [['--name', 'a.example:80'], '--name is "a.example:80"'],
  [['--name', ''], '--name is ""'],
  [['--behind-proxy'], '--behind-proxy needs --name'],
  [['--behind-proxy', '--name', 'a', '--lan'], 'exclude each other'],
  [['--port', '-1'], '--port is "-1"'],
  [['--port', '1e3'], '--port is "1e3"'],
  [['--port'], 'argument missing'],
  [['--prot', '4173'], "unknown option '--prot'"],
  [['elsewhere'], 'too many arguments'],
])('refuses %j', async (args, words) => {
  await expect(asked(...args)).rejects.toThrow(words);
});

test('the help names every option that is taken', () => {
  const command = startCommand(async () => {});
  const help = command.helpInformation();
  for (const { long, hidden } of command.options) expect(help.includes(long ?? ''), long).toBe(!hidden);
});
