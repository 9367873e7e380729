/** The machine that the figures are from, as it is when the bench begins. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { cpus, loadavg, release, type as system, totalmem } from 'node:os';

export interface Machine {
  readonly cpu: string;
  readonly cores: number;
  readonly memoryGb: number;
  readonly system: string;
  readonly node: string;
  readonly chromium: string;
  /** ISO 8601. */
  readonly at: string;
  /** Processes that were running or waiting in the last minute, on average. */
  readonly load: number;
}

export function thisMachine(): Machine {
  const all = cpus();
  return {
    cpu: (all[0]?.model ?? 'unknown').trim(),
    cores: all.length,
    memoryGb: Math.round(totalmem() / 2 ** 30),
    system: `${systemName()}, ${system()} ${release()}`,
    node: process.versions.node,
    chromium: chromiumVersion(),
    at: new Date().toISOString(),
    load: loadavg()[0] ?? 0,
  };
}

/** More than this of each core taken by others is no quiet machine. */
const QUIET = 0.5;

export const isQuiet = ({ load, cores }: Machine): boolean => load <= QUIET * cores;

function systemName(): string {
  try {
    return /^PRETTY_NAME="(.*)"$/m.exec(readFileSync('/etc/os-release', 'utf8'))?.[1] ?? system();
  } catch {
    return system();
  }
}

function chromiumVersion(): string {
  try {
    const said = execFileSync(process.env.CHROMIUM ?? '/usr/bin/chromium', ['--version'], {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    });
    return /\d+(\.\d+)+/.exec(said)?.[0] ?? said.trim();
  } catch {
    return 'none found';
  }
}
