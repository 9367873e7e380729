// Gathers the licence texts of every package that is shipped or bundled: what package-lock.json holds apart from tools.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { at } from './shared.mjs';

const LICENCE_FILE = /^(licen[cs]e|copying|notice)([.-]|$)/i;

/** The text of the MIT licence, for the few packages that name it and carry no copy. */
const MIT = readFileSync(at('LICENSE'), 'utf8').split('\n').slice(4).join('\n').trim();

/**
 * Every package of the production tree that is installed: name, version, licence and its texts.
 * @throws Error for a package that is not installed, or has no licence text and is not under the MIT licence
 */
export function shippedPackages() {
  const { packages } = JSON.parse(readFileSync(at('package-lock.json'), 'utf8'));
  return Object.entries(packages)
    .filter(([path, { dev, devOptional, link }]) => path !== '' && !dev && !devOptional && !link)
    .filter(([path, { optional }]) => !optional || existsSync(at(path)))
    .map(([path, { version, license }]) => {
      const name = path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);
      return { name, version, license, texts: textsOf(path, name, license) };
    })
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}

function textsOf(path, name, license) {
  const folder = at(path);
  if (!existsSync(folder)) throw new Error(`${name} is not installed; run: npm ci`);
  const texts = readdirSync(folder)
    .filter((file) => LICENCE_FILE.test(file))
    .map((file) => readFileSync(join(folder, file), 'utf8').trim());
  if (texts.length > 0) return texts;
  if (license !== 'MIT') throw new Error(`${name} (${license}) carries no licence text; add it by hand`);
  return [`Copyright (c) the authors of ${name}\n\n${MIT}`];
}

/** NOTICE, and after it one entry a package with its licence texts. */
export function thirdPartyNotices() {
  const line = '-'.repeat(80);
  const entries = shippedPackages().map(
    ({ name, version, license, texts }) =>
      `${line}\n${name} ${version} (${license})\n${line}\n\n${texts.join('\n\n')}\n`,
  );
  return `${readFileSync(at('NOTICE'), 'utf8')}\n${entries.join('\n')}`;
}
