/** The mark of the program changes with all that a check of a record is made of. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { expect, it } from 'vitest';
import { PROGRAM } from '../../src/server/program.ts';

interface Build {
  /** Whether a file of the sources is left out of the sum over the program. */
  isElsewhere(path: string): boolean;
}
const script = '../../scripts/build.mjs';
const { isElsewhere } = (await import(script)) as Build;

const CHECKS = [
  'src/household/shape/check-record.ts',
  'src/household/store/stored.ts',
  'src/household/store/found-fit.ts',
];

/** All that a file rests on, itself among it; packages by their names. */
function reached(from: readonly string[]): Set<string> {
  const all = new Set<string>();
  const next = [...from];
  for (let file = next.pop(); file !== undefined; file = next.pop()) {
    if (all.has(file)) continue;
    all.add(file);
    if (!/\.tsx?$/.test(file)) continue;
    const text = readFileSync(file, 'utf8');
    for (const [, target = ''] of text.matchAll(/(?:^(?:import|export)\b[^;]*?from |\bimport\()'([^']+)'/gm))
      next.push(target.startsWith('.') ? relative('.', resolve(dirname(file), target)) : target);
  }
  return all;
}

it('every source that a check rests on is in the sum, and every package in the list that is', () => {
  const all = [...reached(CHECKS)];
  const sources = all.filter((file) => file.startsWith('src/'));
  expect(sources).toEqual(
    expect.arrayContaining([
      'src/household/shape/kitchen-schemas.ts',
      'src/household/shape/care-schemas.ts',
      'src/formulation/problem/fields.ts',
    ]),
  );
  expect(sources.filter((file) => isElsewhere(resolve(file)))).toEqual([]);
  const packages = all.filter((name) => !name.startsWith('src/') && !name.startsWith('node:'));
  expect(packages).toContain('@hono/zod-openapi');
  const { packages: locked } = JSON.parse(readFileSync('package-lock.json', 'utf8')) as {
    packages: Record<string, unknown>;
  };
  for (const name of packages) expect(locked).toHaveProperty([`node_modules/${name}`]);
});

it('sources that run without a build have none', () => {
  expect(PROGRAM).toBeUndefined();
});

it('what was built carries the sum over what it was built of', () => {
  const sum = readFileSync('dist/.stamp-node', 'utf8').trim();
  expect(sum).toMatch(/^[0-9a-f]{64}$/);
  const files = ['server', 'parts'].flatMap((name) =>
    readdirSync(join('dist', name)).map((file) => join('dist', name, file)),
  );
  expect(files.filter((file) => readFileSync(file, 'utf8').includes(sum))).toHaveLength(1);
});
