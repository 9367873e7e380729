/** Households of a hosted Pouchful: make one, list them, invite a device into one. */
import { Command } from 'commander';
import type { HostedHouseholds } from '../household/hosted.ts';
import { columns, legible, print } from './print.ts';

const AFTER = `
The database is named by --database or, so that its password stands in no list of processes, by
POUCHFUL_DATABASE. See docs/hosting.md.`;

interface Where {
  readonly database?: string;
  readonly at?: string;
}

/** @param exit takes the exit code */
export function householdCommand(exit: (code: number) => void): Command {
  const household = new Command('household')
    .description('the households of a hosted Pouchful (PostgreSQL)')
    .addHelpText('after', AFTER);
  const withDatabase = (name: string) =>
    household.command(name).option('--database <url>', 'PostgreSQL database (default: POUCHFUL_DATABASE)');
  const invites = (command: Command) =>
    command.option('--at <address>', 'where the server is found, such as https://shelter.example');

  invites(withDatabase('add'))
    .description('make an empty household, and print the link for its first device')
    .argument('<name>')
    .action((name: string, where: Where) => opened(where, exit, (hosted) => add(hosted, name, where.at)));
  invites(withDatabase('invite'))
    .description(
      'print a link for one more device of a household, for instance where all of its devices are lost',
    )
    .argument('<name>')
    .action((name: string, where: Where) => opened(where, exit, (hosted) => invite(hosted, name, where.at)));
  withDatabase('list')
    .description('the households and how many devices each has')
    .action((where: Where) => opened(where, exit, list));
  return household;
}

async function opened(
  { database, at }: Where,
  exit: (code: number) => void,
  work: (hosted: HostedHouseholds) => Promise<void>,
): Promise<void> {
  const url = database ?? process.env.POUCHFUL_DATABASE;
  if (!url) throw new Error('no database is named; give --database or POUCHFUL_DATABASE');
  if (at !== undefined && !/^https?:\/\/[^/#?]+$/.test(at))
    throw new Error(`--at is "${at}"; give scheme and name alone, such as https://shelter.example`);
  const { openHosted } = await import('../household/hosted.ts');
  const hosted = await openHosted(url);
  try {
    await work(hosted);
  } finally {
    await hosted.close();
  }
  exit(0);
}

async function add(hosted: HostedHouseholds, given: string, at?: string): Promise<void> {
  const name = given.trim();
  if (name === '' || name.length > 60 || legible(name) !== name || name.includes('\n'))
    throw new Error('give the household a name of 1 to 60 letters, in one line');
  if ((await hosted.list()).some((h) => h.name === name))
    throw new Error(`there is a household "${name}" already; give this one another name`);
  const { id } = await hosted.add(name);
  await say(hosted, id, `The household "${name}" is made.`, at);
}

async function invite(hosted: HostedHouseholds, name: string, at?: string): Promise<void> {
  const there = await hosted.list();
  const household = there.find((h) => h.name === name);
  if (!household)
    throw new Error(
      `there is no household "${name}"; there are: ${there.map((h) => h.name).join(', ') || 'none'}`,
    );
  await say(
    hosted,
    household.id,
    `An invitation into "${name}"; one before it that was not used is void.`,
    at,
  );
}

async function say(hosted: HostedHouseholds, id: string, first: string, at?: string): Promise<void> {
  const { devicesIn } = await import('../household/access/devices.ts');
  const secret = await devicesIn(hosted.db, Date.now).invite(id);
  print(first);
  print('This link lets one device in, within 7 days:');
  print(`${at ?? 'https://<where your server is found>'}/#pair=${secret}`);
}

async function list(hosted: HostedHouseholds): Promise<void> {
  const { devicesIn } = await import('../household/access/devices.ts');
  const devices = devicesIn(hosted.db, Date.now);
  const rows: string[][] = [];
  for (const { id, name } of await hosted.list())
    rows.push([legible(name), String((await devices.list(id)).length), 'devices']);
  print(
    rows.length > 0
      ? columns(rows, [1])
      : 'There is no household yet; make one with: npx pouchful household add NAME',
  );
}
