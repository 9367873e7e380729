// Small helpers of the scripts. Node built-ins only: they run before anything is installed.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The project's folder. */
export const ROOT = fileURLToPath(new URL('../', import.meta.url));

/** Path inside the project. */
export const at = (...parts) => join(ROOT, ...parts);

/** Whether a script was started by itself and not imported. */
export const isMain = (url) => Boolean(process.argv[1]) && resolve(process.argv[1]) === fileURLToPath(url);

/**
 * Runs a program in the project's folder, its output shown; quiet sends that output to stderr.
 * @returns the exit code
 */
export function run(command, args, { quiet = false, env = process.env } = {}) {
  const stdio = ['ignore', quiet ? 2 : 1, 2];
  const { status, error } = spawnSync(command, args, { cwd: ROOT, env, stdio });
  if (error) throw new Error(`${command} did not start: ${error.message}`);
  return status ?? 1;
}

/** Runs a program that an installed package brings, by its file. */
export function runBin(name, args, options) {
  return run(process.execPath, [binFile(name), ...args], options);
}

/** SHA-256 over the names and contents of files and folders, in a steady order. */
export function hashOf(paths, skip = () => false) {
  const hash = createHash('sha256');
  const add = (path) => {
    if (!existsSync(path) || skip(path)) return;
    if (statSync(path).isDirectory()) {
      for (const name of readdirSync(path).sort()) add(join(path, name));
      return;
    }
    hash
      .update(`${path.slice(ROOT.length)}\0`)
      .update(readFileSync(path))
      .update('\0');
  };
  paths.forEach(add);
  return hash.digest('hex');
}

/**
 * Does work that only one process may do at a time (two commands in one pipe both start at once).
 * Waits for the other; the lock of a process that is gone counts for nothing.
 */
export function alone(work) {
  const lock = at('dist', '.lock');
  mkdirSync(at('dist'), { recursive: true });
  while (!taken(lock)) Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 200);
  try {
    return work();
  } finally {
    rmSync(lock, { force: true });
  }
}

function taken(lock) {
  try {
    writeFileSync(lock, String(process.pid), { flag: 'wx' });
    return true;
  } catch (error) {
    if (error.code !== 'EEXIST') throw error;
    const holder = Number(stamped(lock));
    if (holder > 0 && !isRunning(holder)) rmSync(lock, { force: true });
    return false;
  }
}

function isRunning(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error.code === 'EPERM';
  }
}

/** What a stamp file says, or nothing. */
export const stamped = (file) => (existsSync(file) ? readFileSync(file, 'utf8').trim() : '');

function binFile(name) {
  const packages = {
    tsc: 'typescript',
    vite: 'vite',
    vitest: 'vitest',
    biome: '@biomejs/biome',
    knip: 'knip',
  };
  const folder = at('node_modules', packages[name]);
  const { bin } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  return join(folder, typeof bin === 'string' ? bin : bin[name]);
}
