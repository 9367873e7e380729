// npm run bench: builds what is measured, compiles bench/ (TypeScript) into dist/bench-run and runs it.
// Arguments: names of parts (all of them unless named), --quick.
import { cpSync } from 'node:fs';
import { buildWeb, compile } from './build.mjs';
import { setup } from './setup.mjs';
import { alone, at, run, runBin } from './shared.mjs';

const COMPILED = at('dist', 'bench-run');

try {
  alone(() => {
    setup();
    compile();
    buildWeb();
    if (runBin('tsc', ['--noEmit', 'false', '--outDir', COMPILED]) !== 0)
      throw new Error('the bench does not compile');
    cpSync(at('src', 'foods', 'data'), at('dist', 'bench-run', 'src', 'foods', 'data'), { recursive: true });
  });
  process.exitCode = run(process.execPath, [
    at('dist', 'bench-run', 'bench', 'main.js'),
    ...process.argv.slice(2),
  ]);
} catch (error) {
  console.error(`bench: ${error.message}`);
  process.exitCode = 1;
}
