// npm start: installs and builds what is needed, then runs the server with the arguments given.
import { spawn } from 'node:child_process';
import { buildWeb, compile } from './build.mjs';
import { setup } from './setup.mjs';
import { alone, at } from './shared.mjs';

try {
  alone(() => {
    setup();
    compile();
    buildWeb();
  });
  const server = spawn(process.execPath, [at('dist', 'server', 'main.js'), ...process.argv.slice(2)], {
    stdio: 'inherit',
  });
  // A terminal's Ctrl-C reaches the server by itself too; it takes the first and ends once.
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'])
    process.on(signal, () => server.kill(signal === 'SIGHUP' ? 'SIGTERM' : signal));
  server.on('exit', (code, signal) => {
    process.exitCode = code ?? (signal ? 1 : 0);
  });
} catch (error) {
  console.error(`start: ${error.message}`);
  process.exitCode = 1;
}
