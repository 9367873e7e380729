#!/usr/bin/env node
// The command line. Compiles itself on the first run; what that says goes to stderr, so stdout stays clean.
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const stamp = new URL('../dist/.stamp-node', import.meta.url);
const compiled = new URL('../dist/cli/main.js', import.meta.url);
try {
  if (!existsSync(fileURLToPath(stamp))) {
    const { setup } = await import('../scripts/setup.mjs');
    const { compile } = await import('../scripts/build.mjs');
    const { alone } = await import('../scripts/shared.mjs');
    alone(() => {
      setup({ quiet: true });
      compile({ quiet: true });
    });
  }
  const { main } = await import(compiled.href);
  await main();
} catch (error) {
  console.error(`pouchful: ${String(error?.message ?? error).split('\n')[0]}`);
  process.exitCode = 2;
}
