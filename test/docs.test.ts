/** The documents name files that are there. */
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const DOCS = [
  'README.md',
  'CONTRIBUTING.md',
  'docs/architecture.md',
  'docs/glossary.md',
  'docs/hosting.md',
  'docs/faults.md',
  'docs/keeping.md',
  'docs/drying-model.md',
  'docs/problem.md',
  'docs/export.md',
  'docs/benchmarks.md',
  'docs/keeping.md',
];
/** Where a path in a text may begin. */
const FROM = ['', 'src'];
const PATH = /`((?:[\w.-]+\/)+[\w.-]+\.(?:ts|tsx|json|mjs|css|md))`/g;
const LINK = /\]\((?!https?:|#)([^)#]+)(?:#[^)]*)?\)/g;

const matches = (text: string, pattern: RegExp) => [...text.matchAll(pattern)].map((m) => m[1] ?? '');

describe.each(DOCS)('%s', (doc) => {
  const text = readFileSync(join(ROOT, doc), 'utf8');

  it('names only files that are there', () => {
    const missing = matches(text, PATH).filter((path) => !FROM.some((f) => existsSync(join(ROOT, f, path))));
    expect(missing).toEqual([]);
  });

  it('links only to files that are there', () => {
    const missing = matches(text, LINK).filter((path) => !existsSync(join(ROOT, dirname(doc), path)));
    expect(missing).toEqual([]);
  });
});

it('finds paths and links', () => {
  expect(matches('see `src/a.ts` and `b/c-d.json`, `plain.ts`', PATH)).toEqual(['src/a.ts', 'b/c-d.json']);
  expect(matches('[x](docs/a.md) [y](https://example.org) [z](a.md#part)', LINK)).toEqual([
    'docs/a.md',
    'a.md',
  ]);
});
