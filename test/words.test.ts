/**
 * One catalogue of all texts: what a keeper reads stands in `src/words/`, in three languages, and nowhere else.
 * TEXTS_IN=src/web/drying looks at one folder only.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { wordsIn } from '../src/words/languages.ts';
import { LANGUAGES, PLAIN_MANNER } from '../src/words/manner.ts';
import { textsOutside } from './texts-outside.ts';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
/** Files that speak to no keeper, or in a language of their own, each with the reason. */
const ELSEWHERE: readonly (readonly [path: string, why: string])[] = [
  ['src/words/', 'the catalogue itself'],
  ['src/cli/', 'the command line speaks English'],
  ['src/server/', 'the terminal and the machine interface speak English'],
  ['src/foods/build/', 'a build step'],
  ['src/web/app/failure-report.ts', 'a report to pass on to who keeps the program'],
  ['src/formulation/problem/', 'faults of problem.json name fields of that file'],
];

const files = readdirSync(join(ROOT, 'src'), { recursive: true, encoding: 'utf8' })
  .map((f) => `src/${f.replaceAll('\\', '/')}`)
  .filter((f) => /\.tsx?$/.test(f) && !/\.test\.tsx?$|\.d\.ts$/.test(f))
  .filter((f) => !ELSEWHERE.some(([path]) => f.startsWith(path)))
  .filter((f) => f.startsWith(process.env.TEXTS_IN ?? ''));

it('no text for people stands outside the catalogue', async () => {
  const outside = files.flatMap((file) =>
    textsOutside(join(ROOT, file), file.startsWith('src/web/')).map((t) => `${file}:${t.line} ${t.text}`),
  );
  if (process.env.TEXTS_TO) (await import('node:fs')).writeFileSync(process.env.TEXTS_TO, outside.join('\n'));
  expect(outside).toEqual([]);
});

/** Every text by its path: a sentence, or how many things it takes. */
function pathsOf(room: object, path = ''): [string, string][] {
  return Object.entries(room).flatMap(([name, text]): [string, string][] => {
    const at = path ? `${path}.${name}` : name;
    if (typeof text === 'string') return [[at, 'text']];
    if (typeof text === 'function') return [[at, 'function']];
    return typeof text === 'object' && text !== null ? pathsOf(text, at) : [];
  });
}

describe.each(LANGUAGES)('%s', (language) => {
  it('has every text, none empty, and none that English does not have', async () => {
    const { figures: _, ...own } = await wordsIn({ ...PLAIN_MANNER, language });
    const { figures: __, ...english } = await wordsIn(PLAIN_MANNER);
    expect(pathsOf(own)).toEqual(pathsOf(english));
    const texts = (room: object): string[] =>
      Object.values(room).flatMap((t) =>
        typeof t === 'string' ? [t] : typeof t === 'object' && t ? texts(t) : [],
      );
    expect(texts(own).filter((t) => t.trim() === '')).toEqual([]);
  });
});

it('no file asks for a text before the language is known', () => {
  const early = files.filter((file) =>
    /^(export )?(const|let) [^=]*= (?!.*=>)[^;]*\bwords\(\)/m.test(readFileSync(join(ROOT, file), 'utf8')),
  );
  expect(early).toEqual([]);
});
