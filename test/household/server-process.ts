/** The server as a process of its own on a household file, killed at any moment. Needs the compiled program. */
import { type ChildProcess, spawn } from 'node:child_process';
import { resolve } from 'node:path';

const MAIN = resolve('dist/server/main.js');

export interface ServerProcess {
  readonly url: string;
  /** SIGKILL: nothing is closed, nothing is written any more. */
  kill(): Promise<void>;
  /** Stops as Ctrl-C does. */
  stop(): Promise<void>;
}

/** Starts one; resolves when it listens. @throws Error with what it said, when it ends before */
export async function startServer(file: string): Promise<ServerProcess> {
  const child = spawnServer(file);
  const url = await new Promise<string>((found, failed) => {
    let said = '';
    const heard = (chunk: Buffer) => {
      said += chunk;
      const at = /Pouchful is at http:\/\/localhost:(\d+)/.exec(said);
      if (at) found(`http://127.0.0.1:${at[1]}`);
    };
    child.stdout?.on('data', heard);
    child.stderr?.on('data', heard);
    child.once('exit', (code) => failed(new Error(`the server ended with ${code}: ${said}`)));
  });
  return { url, kill: () => ended(child, 'SIGKILL'), stop: () => ended(child, 'SIGTERM') };
}

/** Starts one and does not wait for it. */
export function spawnServer(file: string): ChildProcess {
  return spawn(process.execPath, [MAIN, '--port', '0'], {
    env: { ...process.env, POUCHFUL_DATA: file },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
}

export async function ended(child: ChildProcess, signal: NodeJS.Signals): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const gone = new Promise((done) => child.once('exit', done));
  child.kill(signal);
  await gone;
}
