// Installs the packages when they are not there or package-lock.json has changed.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { alone, at, hashOf, isMain, run, stamped } from './shared.mjs';

const STAMP = at('node_modules', '.pouchful-stamp');

/** Makes node_modules match package-lock.json; does nothing when it does already. */
export function setup({ quiet = false } = {}) {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    throw new Error(`Node.js ${process.versions.node} is too old; install 20.19 or newer`);
  }
  const wanted = `${hashOf([at('package-lock.json')])} node ${process.versions.modules}`;
  if (stamped(STAMP) === wanted) return;
  if (stamped(STAMP) === '' && isInstalled()) {
    writeFileSync(STAMP, `${wanted}\n`);
    return;
  }
  console.error('Installing packages (once). The database driver, better-sqlite3, compiles for about 75 s');
  console.error('where its prebuilt binary cannot be fetched; that needs python3, make and g++.');
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
  if (run(npm, ['ci', '--no-audit', '--no-fund'], { quiet }) !== 0) {
    throw new Error(
      'the packages could not be installed; see above. Debian: apt-get install python3 make g++',
    );
  }
  writeFileSync(STAMP, `${wanted}\n`);
}

/** Whether npm has already put in place what package-lock.json asks for (somebody ran `npm ci` by hand). */
function isInstalled() {
  const inventory = at('node_modules', '.package-lock.json');
  if (!existsSync(inventory) || !existsSync(at('node_modules', 'better-sqlite3', 'build'))) return false;
  const { packages: there } = JSON.parse(readFileSync(inventory, 'utf8'));
  const { packages: wanted } = JSON.parse(readFileSync(at('package-lock.json'), 'utf8'));
  return Object.entries(wanted).every(
    ([path, { version, optional }]) => path === '' || optional || there[path]?.version === version,
  );
}

if (isMain(import.meta.url)) {
  try {
    alone(setup);
  } catch (error) {
    console.error(`setup: ${error.message}`);
    process.exitCode = 1;
  }
}
