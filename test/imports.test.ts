/** The house plan: a folder imports only from folders above it, and the folders of the domain touch nothing outside. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const SRC = fileURLToPath(new URL('../src', import.meta.url));
const ORDER = [
  'nutrition',
  'foods',
  'targets',
  'formulation',
  'kitchen',
  'care',
  'household',
  'server',
  'cli',
  'web',
];
const PURE = ORDER.slice(0, ORDER.indexOf('household'));
/** The build step that makes the reference file runs in Node, never in the browser. */
const BUILD_STEP = join('foods', 'build');

interface Import {
  readonly file: string;
  readonly folder: string;
  readonly target: string;
  readonly typeOnly: boolean;
}

/** Every import, export-from and import() of a text. */
function importsOf(text: string): { target: string; typeOnly: boolean }[] {
  const code = text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/^\s*\/\/.*$/gm, '');
  const statements = code.matchAll(
    /^\s*(?:import|export)\s+(type\s)?(?:[\w*{}\s,$]+?\sfrom\s*)?['"]([^'"]+)['"]/gm,
  );
  const calls = code.matchAll(/\bimport\(\s*['"]([^'"]+)['"]/g);
  const urls = code.matchAll(/\bnew URL\(\s*['"](\.[^'"]+\.tsx?)['"]/g);
  return [
    ...[...statements].map((m) => ({ target: m[2]!, typeOnly: m[1] !== undefined })),
    ...[...calls, ...urls].map((m) => ({ target: m[1]!, typeOnly: false })),
  ];
}

const files = readdirSync(SRC, { recursive: true, encoding: 'utf8' }).filter((f) => /\.tsx?$/.test(f));
const imports: Import[] = files
  .filter((file) => !/\.test\.tsx?$/.test(file))
  .flatMap((file) =>
    importsOf(readFileSync(join(SRC, file), 'utf8')).map((i) => ({
      file,
      folder: file.split(sep)[0]!,
      ...i,
    })),
  );

/** Path inside src of what is imported, or undefined for a package. */
function inside({ file, target }: Import): string | undefined {
  return target.startsWith('.') ? relative(SRC, resolve(SRC, dirname(file), target)) : undefined;
}

const say = ({ file, target }: Import) => `${file} imports ${target}`;

describe('the house plan', () => {
  it('finds imports to check', () => {
    expect(imports.length).toBeGreaterThan(20);
    expect(
      importsOf("import {\n  a,\n  type B,\n} from './a.ts';\nexport * from \"./b.ts\";\nimport './c.css';"),
    ).toEqual([
      { target: './a.ts', typeOnly: false },
      { target: './b.ts', typeOnly: false },
      { target: './c.css', typeOnly: false },
    ]);
    expect(importsOf("import type { A } from './a.ts';\nawait import('./d.ts')")).toEqual([
      { target: './a.ts', typeOnly: true },
      { target: './d.ts', typeOnly: false },
    ]);
  });

  it('has no folder outside the plan', () => {
    expect([...new Set(files.map((f) => f.split(sep)[0]))].filter((f) => !ORDER.includes(f!))).toEqual([]);
  });

  it('imports only from folders above', () => {
    const wrong = imports.filter((i) => {
      const path = inside(i);
      if (path === undefined || path.startsWith('..')) return false;
      return ORDER.indexOf(path.split(sep)[0]!) > ORDER.indexOf(i.folder);
    });
    expect(wrong.map(say)).toEqual([]);
  });

  it('keeps Node out of the domain', () => {
    const wrong = imports.filter(
      (i) => PURE.includes(i.folder) && !i.file.startsWith(BUILD_STEP + sep) && i.target.startsWith('node:'),
    );
    expect(wrong.map(say)).toEqual([]);
  });

  it('keeps server, command line and disk out of the browser client', () => {
    const wrong = imports.filter((i) => {
      const path = inside(i);
      if (i.folder !== 'web' || path === undefined) return false;
      if (path === join('household', 'model.ts')) return !i.typeOnly;
      return ['household', 'server', 'cli'].includes(path.split(sep)[0]!);
    });
    expect(wrong.map(say)).toEqual([]);
  });
});
