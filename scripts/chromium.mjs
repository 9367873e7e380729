// A Chromium for the browser tests: the one there is, or Debian's.
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { installByApt } from './apt.mjs';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];

/** Path of a Chromium, installed when that can be done here; undefined when there is none. */
export function ensureChromium() {
  const there = findChromium();
  if (there) return there;
  installByApt('chromium', 'Installing Chromium for the browser tests ...');
  const found = findChromium();
  if (!found) {
    console.error('No Chromium was found, so the browser tests will fail. Install one');
    console.error('(Debian: apt-get install chromium) or name one: CHROMIUM=/path/to/chromium npm test');
  }
  return found;
}

function findChromium() {
  if (process.env.CHROMIUM) return existsSync(process.env.CHROMIUM) ? process.env.CHROMIUM : undefined;
  const folders = ['/usr/bin', ...(process.env.PATH ?? '').split(delimiter)];
  return folders
    .flatMap((folder) => NAMES.map((name) => join(folder, name)))
    .find((path) => existsSync(path));
}
