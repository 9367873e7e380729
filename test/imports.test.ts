/**
 * The house plan: a folder imports only from folders above it, a screen only from its own, nothing goes round in a
 * circle, and the folders of the domain touch nothing outside.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const SRC = fileURLToPath(new URL('../src', import.meta.url));
const ORDER = [
  'words',
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
/** What the household holds and what is reckoned over all of it: pure too, so the browser may have it. */
const HOUSEHOLD_FOR_WEB = [
  join('household', 'model.ts'),
  join('household', 'records.ts'),
  join('household', 'demo.ts'),
  join('household', 'merge') + sep,
  join('household', 'reckon') + sep,
  join('household', 'exchange', 'table') + sep,
  join('household', 'exchange', 'format.ts'),
  join('household', 'exchange', 'wire.ts'),
];
/** The rooms of the formulation, in the order in which a problem goes through them. */
const FORMULATION_ROOMS = ['problem', 'amounts', 'solve', 'explain', 'advice'];
const KITCHEN_ROOMS = [
  'freezing',
  'drying',
  'feeding',
  'cupboard',
  'shopping',
  'calendar',
  'batch',
  'weighing',
];
const SCREENS = [
  'today',
  'start',
  'foods',
  'targets',
  'mix',
  'calendar',
  'shopping',
  'cupboard',
  'drying',
  'weigh-out',
  'animals',
  'keeping',
  'pairing',
];
/**
 * Files whose inner loops over shares, grams and rows of the solver may write `xs[i]!`: the loop's own bound proves the
 * index, and a check would be paid in every round. Paths under src.
 */
const INNER_LOOPS = [
  'foods/forms/fit.ts',
  'foods/reference.ts',
  'foods/sources/combine.ts',
  'foods/sources/random-effects.ts',
  'foods/word-index.ts',
  'formulation/advice/price-foods.ts',
  'formulation/advice/swap-span.ts',
  'formulation/explain/hitting-set.ts',
  'formulation/solve/bounds.ts',
  'formulation/solve/cholesky.ts',
  'formulation/solve/cone-algebra.ts',
  'formulation/solve/cone-program.ts',
  'formulation/solve/heap.ts',
  'formulation/solve/master-problem.ts',
  'formulation/solve/min-norm.ts',
  'formulation/solve/nearest-shares.ts',
  'formulation/solve/nearest-steps.ts',
  'formulation/solve/outer-approximation.ts',
  'formulation/solve/polytope.ts',
  'formulation/solve/projection.ts',
  'formulation/solve/step-swaps.ts',
  'formulation/solve/steps-box.ts',
  'formulation/solve/steps-proof.ts',
  'formulation/solve/steps-relaxation.ts',
  'formulation/solve/vectors.ts',
  'kitchen/weighing/batch-rules.ts',
  'kitchen/weighing/whole-steps.ts',
  'web/mix/advice/trade-off/trade-off.ts',
];
/** What every screen may use. */
const WEB_COMMON = ['shared', 'store', 'worker'];
/** The build step that makes the reference file runs in Node, never in the browser. */
const BUILD_STEP = join('foods', 'build');
const MOST_FILES_IN_A_WEB_FOLDER = 30;
const MOST_LINES_IN_A_WEB_FILE = 300;

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
const shipped = files.filter((file) => !/\.test\.tsx?$/.test(file));
const imports: Import[] = shipped.flatMap((file) =>
  importsOf(readFileSync(join(SRC, file), 'utf8')).map((i) => ({
    file,
    folder: file.split(sep)[0]!,
    ...i,
  })),
);

/** Path inside src of what is imported, or undefined for a package. */
function inside({ file, target }: Pick<Import, 'file' | 'target'>): string | undefined {
  return target.startsWith('.') ? relative(SRC, resolve(SRC, dirname(file), target)) : undefined;
}

const say = ({ file, target }: Import) => `${file} imports ${target}`;

/** The room of a path in one of the two big folders of the domain; undefined for a file that lies beside the rooms. */
function roomOf(path: string, folder: string): string | undefined {
  const parts = path.split(sep);
  return parts[0] === folder && parts.length > 2 ? parts[1] : undefined;
}

/** Imports from one room of a folder into a room that comes later. */
function againstTheOrder(folder: string, rooms: readonly string[]): string[] {
  const wrong = imports.filter((i) => {
    const path = inside(i);
    const from = roomOf(i.file, folder);
    const to = path === undefined ? undefined : roomOf(path, folder);
    return from !== undefined && to !== undefined && rooms.indexOf(to) > rooms.indexOf(from);
  });
  return wrong.map(say);
}

/** Every group of files that import one another in a circle, types included (Tarjan 1972). */
function circles(edges: ReadonlyMap<string, readonly string[]>): string[][] {
  const index = new Map<string, number>();
  const low = new Map<string, number>();
  const stack: string[] = [];
  const found: string[][] = [];
  function visit(file: string): void {
    const at = index.size;
    index.set(file, at);
    low.set(file, at);
    stack.push(file);
    for (const next of edges.get(file) ?? []) {
      if (!index.has(next)) visit(next);
      if (stack.includes(next)) low.set(file, Math.min(low.get(file)!, low.get(next)!));
    }
    if (low.get(file) !== at) return;
    const circle = stack.splice(stack.indexOf(file));
    if (circle.length > 1 || edges.get(file)?.includes(file)) found.push(circle.sort());
  }
  for (const file of edges.keys()) if (!index.has(file)) visit(file);
  return found;
}

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
    const rooms = (folder: string) => [
      ...new Set(files.filter((f) => roomOf(f, folder) !== undefined).map((f) => roomOf(f, folder))),
    ];
    expect(rooms('formulation').sort()).toEqual([...FORMULATION_ROOMS].sort());
    expect(rooms('kitchen').sort()).toEqual([...KITCHEN_ROOMS].sort());
    expect(rooms('web').sort()).toEqual([...SCREENS, ...WEB_COMMON, 'app'].sort());
  });

  it('imports only from folders above', () => {
    const wrong = imports.filter((i) => {
      const path = inside(i);
      if (path === undefined || path.startsWith('..')) return false;
      return ORDER.indexOf(path.split(sep)[0]!) > ORDER.indexOf(i.folder);
    });
    expect(wrong.map(say)).toEqual([]);
  });

  it('goes through the rooms of formulation and kitchen in their order', () => {
    expect(againstTheOrder('formulation', FORMULATION_ROOMS)).toEqual([]);
    expect(againstTheOrder('kitchen', KITCHEN_ROOMS)).toEqual([]);
  });

  it('has no circles', () => {
    expect(
      circles(
        new Map([
          ['a', ['b']],
          ['b', ['c']],
          ['c', ['a', 'd']],
          ['d', []],
        ]),
      ),
    ).toEqual([['a', 'b', 'c']]);
    const edges = new Map(shipped.map((file) => [file, [] as string[]]));
    for (const i of imports) {
      const path = inside(i);
      if (path !== undefined && edges.has(path)) edges.get(i.file)!.push(path);
    }
    expect(circles(edges)).toEqual([]);
  });

  it('keeps Node out of the domain', () => {
    const pure = (i: Import) =>
      PURE.includes(i.folder) || i.file.startsWith(join('household', 'reckon') + sep);
    const wrong = imports.filter(
      (i) => pure(i) && !i.file.startsWith(BUILD_STEP + sep) && i.target.startsWith('node:'),
    );
    expect(wrong.map(say)).toEqual([]);
  });

  it('keeps clock and chance out of the domain', () => {
    const wrong = shipped.filter((file) => {
      const pure = PURE.includes(file.split(sep)[0]!) || file.startsWith(join('household', 'reckon') + sep);
      if (!pure || file.startsWith(BUILD_STEP + sep)) return false;
      const code = readFileSync(join(SRC, file), 'utf8')
        .replace(/\/\*[\s\S]*?\*\//g, '')
        .replace(/\/\/.*$/gm, '');
      return /\bDate\.now\(|\bnew Date\(\)|\bperformance\.now\(|\bMath\.random\(|\bcrypto\./.test(code);
    });
    expect(wrong).toEqual([]);
  });

  it('lets reckoning see what the household holds, never how it is kept', () => {
    const wrong = imports.filter((i) => {
      const path = inside(i);
      if (!i.file.startsWith(join('household', 'reckon') + sep) || path === undefined) return false;
      return path.startsWith('household') && !HOUSEHOLD_FOR_WEB.some((p) => path.startsWith(p));
    });
    expect(wrong.map(say)).toEqual([]);
  });

  it('keeps server, command line and disk out of the browser client', () => {
    const wrong = imports.filter((i) => {
      const path = inside(i);
      if (i.folder !== 'web' || path === undefined) return false;
      if (HOUSEHOLD_FOR_WEB.some((p) => path.startsWith(p))) return false;
      return ['household', 'server', 'cli'].includes(path.split(sep)[0]!);
    });
    expect(wrong.map(say)).toEqual([]);
  });

  it('keeps screens apart: each imports its own folder, what all share, and the domain', () => {
    const wrong = imports.filter((i) => {
      const path = inside(i);
      if (i.folder !== 'web' || path === undefined || !path.startsWith(`web${sep}`)) return false;
      const [, from] = i.file.split(sep);
      const [, to] = path.split(sep);
      if (from === 'app' || from === to) return false;
      return !WEB_COMMON.includes(to!);
    });
    expect(wrong.map(say)).toEqual([]);
  });

  it('keeps folders and files of the client small', () => {
    const inWeb = readdirSync(join(SRC, 'web'), { recursive: true, withFileTypes: true }).filter((e) =>
      e.isFile(),
    );
    const counts = new Map<string, number>();
    for (const e of inWeb) counts.set(e.parentPath, (counts.get(e.parentPath) ?? 0) + 1);
    const full = [...counts].filter(([, n]) => n > MOST_FILES_IN_A_WEB_FOLDER);
    expect(full.map(([folder, n]) => `${relative(SRC, folder)}: ${n} files`)).toEqual([]);
    const long = inWeb.flatMap((e) => {
      const lines = readFileSync(join(e.parentPath, e.name), 'utf8').split('\n').length - 1;
      return lines > MOST_LINES_IN_A_WEB_FILE
        ? [`${relative(SRC, join(e.parentPath, e.name))}: ${lines}`]
        : [];
    });
    expect(long).toEqual([]);
  });

  it('claims that an index is there only in inner loops', () => {
    const claiming = shipped.filter((file) => /\]!(?!=)/.test(readFileSync(join(SRC, file), 'utf8')));
    expect(claiming.map((file) => file.replaceAll(sep, '/')).sort()).toEqual(INNER_LOOPS);
  });
});
