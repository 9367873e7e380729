// PostgreSQL for the tests of hosted households: the one there is, or Debian's. Without one they are left out.
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { installByApt } from './apt.mjs';

export function ensurePostgres() {
  if (isThere()) return;
  try {
    installByApt('postgresql', 'Installing PostgreSQL for the tests of hosted households ...');
  } catch (error) {
    console.error(error.message);
  }
  if (!isThere()) console.error('No PostgreSQL was found: the tests of hosted households are left out.');
}

function isThere() {
  const folders = (process.env.PATH ?? '').split(delimiter);
  return existsSync('/usr/lib/postgresql') || folders.some((folder) => existsSync(join(folder, 'initdb')));
}
