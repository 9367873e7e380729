// Debian's packages, where this process may install them.
import { spawnSync } from 'node:child_process';
import { run } from './shared.mjs';

/** Installs a package if that can be done here; says so first. */
export function installByApt(name, words) {
  const isRoot = process.getuid?.() === 0;
  if (!isRoot || spawnSync('apt-get', ['--version'], { stdio: 'ignore' }).status !== 0) return;
  console.error(words);
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  run('apt-get', ['update', '-qq'], { quiet: true, env });
  run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', name], { quiet: true, env });
}
