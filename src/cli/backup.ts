/** `pouchful backup` and `pouchful restore`: a copy of the household as one file, and back. */
import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Command } from 'commander';
import { print } from './print.ts';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const DATA = ['--data <file>', 'household file (default: POUCHFUL_DATA, or as README says)'] as const;

/** @param exit takes the exit code */
export function backupCommand(exit: (code: number) => void): Command {
  return new Command('backup')
    .description('copy the household into one file, checked; also while Pouchful runs')
    .argument('[file]', 'the copy (default: pouchful-DATE.sqlite here)')
    .option(...DATA)
    .action(async (file: string | undefined, { data }: { data?: string }) => {
      const path = await pathOf(data);
      if (!existsSync(path)) throw new Error(`there is no household at ${path}; name its file with --data`);
      const to = resolve(file ?? `pouchful-${new Date().toISOString().slice(0, 10)}.sqlite`);
      if (existsSync(to)) throw new Error(`${to} is there already; name another file`);
      const { makeBackup } = await import('../household/backup/make-backup.ts');
      const { lookThroughUnused } = await import('../household/file/open-file.ts');
      lookThroughUnused(path);
      await makeBackup(path, to);
      print(`Saved and checked: ${to}`);
      exit(0);
    });
}

/** @param exit takes the exit code */
export function restoreCommand(exit: (code: number) => void): Command {
  return new Command('restore')
    .description(
      'put a copy in the place of the household, which is kept under another name; stop Pouchful first',
    )
    .argument('<file>', 'a backup, or a copy made by the command backup')
    .option(...DATA)
    .action(async (file: string, { data }: { data?: string }) => {
      const from = resolve(file);
      if (!existsSync(from)) throw new Error(`there is no file ${from}`);
      const path = await pathOf(data);
      const { takeFile } = await import('../household/file/lock.ts');
      const { putInPlace } = await import('../household/file/rescue.ts');
      const giveBack = takeFile(path);
      try {
        const { aside, devices } = putInPlace(path, from, new Date().toISOString());
        print(`Put there: ${path}${aside ? `\nWhat lay there is kept as ${aside}` : ''}`);
        if (devices > 0) print('Devices that were paired must be paired anew.');
      } finally {
        giveBack();
      }
      exit(0);
    });
}

async function pathOf(data: string | undefined): Promise<string> {
  const { householdPath } = await import('../server/household-path.ts');
  return householdPath(data, ROOT, (line) => console.error(line));
}
