// Compiles the server and command line into dist/, the browser client into dist/web; skips what has not changed.
import { cpSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { compressed, compressIn } from './compress.mjs';
import { alone, at, hashOf, isMain, runBin, stamped } from './shared.mjs';
import { thirdPartyNotices } from './third-party.mjs';

const COMMON = [
  at('package-lock.json'),
  at('tsconfig.json'),
  at('tsconfig.build.json'),
  at('scripts', 'program.config.mjs'),
];
const isTest = (path) => /\.test\.tsx?$/.test(path);
const WEB = at('src', 'web');
/** What of the sources is no part of the server and command line. */
export const isElsewhere = (path) => isTest(path) || path === WEB || path.startsWith(WEB + sep);

/** Compiles everything but the browser client. */
export function compile({ quiet = false } = {}) {
  const sum = hashOf([...COMMON, at('src')], isElsewhere);
  step('node', sum, () => {
    console.error('Compiling ...');
    for (const name of [
      'words',
      'nutrition',
      'foods',
      'targets',
      'formulation',
      'kitchen',
      'care',
      'household',
      'server',
      'cli',
      'parts',
    ]) {
      rmSync(at('dist', name), { recursive: true, force: true });
    }
    if (runBin('tsc', ['-p', 'tsconfig.build.json', '--noEmit'], { quiet }) !== 0)
      throw new Error('the program does not compile');
    const env = { ...process.env, POUCHFUL_PROGRAM: sum };
    if (runBin('vite', ['build', '--config', at('scripts', 'program.config.mjs')], { quiet, env }) !== 0)
      throw new Error('the program could not be put together');
    cpSync(at('src', 'foods', 'data'), at('dist', 'foods', 'data'), {
      recursive: true,
      filter: (p) => !isTest(p),
    });
    compressed(at('dist', 'foods', 'data', 'reference.bin'));
  });
}

/** Builds the browser client. */
export function buildWeb({ quiet = false } = {}) {
  if (!existsSync(at('src', 'web', 'index.html'))) {
    console.error('No browser client yet (src/web/index.html is missing); built without it.');
    return;
  }
  step('web', hashOf([...COMMON, at('NOTICE'), at('src')], isTest), () => {
    console.error('Building the browser client ...');
    const args = ['build', 'src/web', '--outDir', at('dist', 'web'), '--emptyOutDir', '--logLevel', 'warn'];
    if (runBin('vite', args, { quiet }) !== 0) throw new Error('the browser client does not build');
    writeBuildName();
    writeNotices();
    compressIn(at('dist', 'web'));
  });
}

/** Names the build in the page, so that an open page finds out when the server has another one. */
function writeBuildName() {
  const page = at('dist', 'web', 'index.html');
  const name = hashOf([at('dist', 'web')]).slice(0, 16);
  const named = readFileSync(page, 'utf8').replace(
    /(<meta name="pouchful-build" content=)"[^"]*"/,
    `$1"${name}"`,
  );
  if (!named.includes(`"${name}"`))
    throw new Error('src/web/index.html has no place for the name of the build');
  writeFileSync(page, named);
}

/** Puts the licences of what is shipped beside it, where the browser client finds them too. */
function writeNotices() {
  const notices = thirdPartyNotices();
  for (const folder of [at('dist'), at('dist', 'web')])
    writeFileSync(join(folder, 'third-party-notices.txt'), notices);
}

/** Does the work unless the stamp of the last time says that nothing has changed. */
function step(name, hash, work) {
  const stamp = at('dist', `.stamp-${name}`);
  if (stamped(stamp) === hash) return;
  rmSync(stamp, { force: true });
  work();
  mkdirSync(at('dist'), { recursive: true });
  writeFileSync(stamp, `${hash}\n`);
}

if (isMain(import.meta.url)) {
  try {
    alone(() => {
      compile();
      buildWeb();
    });
  } catch (error) {
    console.error(`build: ${error.message}`);
    process.exitCode = 1;
  }
}
