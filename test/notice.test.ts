/** What is shipped names its sources: tables, licences, and the licence text of every package. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

interface Shipped {
  readonly name: string;
  readonly license: string;
  readonly texts: readonly string[];
}
interface Script {
  shippedPackages(): readonly Shipped[];
  thirdPartyNotices(): string;
}
const script = '../scripts/third-party.mjs';
const { shippedPackages, thirdPartyNotices } = (await import(script)) as Script;

const { dependencies } = JSON.parse(readFileSync('package.json', 'utf8')) as {
  dependencies: Record<string, string>;
};

it('every package that runs or is bundled comes with its licence text', () => {
  const shipped = shippedPackages();
  const names = new Set(shipped.map((p) => p.name));
  for (const name of Object.keys(dependencies)) expect(names.has(name), name).toBe(true);
  for (const { name, license, texts } of shipped) {
    expect(license, name).toMatch(/MIT|ISC|BSD|Apache-2\.0|BlueOak-1\.0\.0/);
    expect(texts.join('\n').length, name).toBeGreaterThan(200);
  }
  const notices = thirdPartyNotices();
  for (const { name, texts } of shipped) {
    expect(notices).toContain(`\n${name} `);
    for (const text of texts) expect(notices).toContain(text);
  }
});

it('nothing under a licence that asks for the source of what uses it is shipped', () => {
  for (const { name, license } of shippedPackages()) expect(license, name).not.toMatch(/GPL|AGPL|MPL/);
});

it('NOTICE names every table that the reference file is made of', () => {
  const notice = readFileSync('NOTICE', 'utf8').replace(/\s+/g, ' ');
  for (const words of ['release 28', 'release 26', 'public domain', 'CC0', 'Indian Food Composition Tables'])
    expect(notice).toContain(words);
});
