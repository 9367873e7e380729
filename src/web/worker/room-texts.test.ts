/** An answer that is worked out cannot wait for its texts: whatever a part of the worker may say is fetched with it. */
import { readFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseSync } from 'vite';
import { expect, it } from 'vitest';
import { PART_OF, type Part } from '../../words/part-shapes.ts';
import { ROOM_TEXTS, type Room } from './room-texts.ts';

const WORKER = fileURLToPath(new URL('./formulation.worker.ts', import.meta.url));
const CATALOGUE = resolve(dirname(WORKER), '../../words');
const WORDS = resolve(CATALOGUE, 'words.ts');

interface Read {
  /** Files that are read with it. */
  readonly imports: readonly string[];
  /** Rooms of the catalogue that it asks for. */
  readonly says: readonly string[];
}

interface Node {
  readonly type: string;
  readonly [field: string]: unknown;
}

const known = new Map<string, Read>();

function read(file: string): Read {
  const before = known.get(file);
  if (before) return before;
  const code = readFileSync(file, 'utf8');
  const { program, module } = parseSync(file, code);
  const from = [
    ...module.staticImports.map((i) => ({ to: i.moduleRequest.value, names: i.entries })),
    ...module.staticExports.map((e) => ({ to: e.entries[0]?.moduleRequest?.value, names: e.entries })),
  ];
  const imports = from.flatMap(({ to, names }) => {
    const typesOnly = names.length > 0 && names.every((n) => n.isType);
    const target = to?.endsWith('.ts') ? resolve(dirname(file), to) : undefined;
    return target === undefined || typesOnly ? [] : target;
  });
  /** What `words` is called here. */
  const [name] = module.staticImports
    .filter((i) => resolve(dirname(file), i.moduleRequest.value) === WORDS)
    .flatMap((i) => i.entries.flatMap((e) => (e.importName.name === 'words' ? e.localName.value : [])));
  const says: string[] = [];
  const look = (value: unknown, above?: Node): void => {
    if (Array.isArray(value)) for (const item of value) look(item, above);
    if (Array.isArray(value) || typeof value !== 'object' || value === null) return;
    const node = value as Node;
    if (node.type === 'CallExpression' && (node.callee as Node).name === name) {
      const { property, id } = (above ?? {}) as { property?: Node; id?: Node };
      if (above?.type === 'MemberExpression' && !above.computed) says.push(String(property?.name));
      else if (above?.type === 'VariableDeclarator' && id?.type === 'ObjectPattern')
        for (const { key } of id.properties as { key: Node }[]) says.push(String(key.name));
      else throw new Error(`${file}: nobody sees here what of the texts is asked for`);
    }
    for (const part of Object.values(node)) look(part, node);
  };
  if (name !== undefined && !file.startsWith(CATALOGUE)) look(program);
  const made = { imports, says };
  known.set(file, made);
  return made;
}

/** The rooms that a file and all that is read with it ask for. */
function saidBy(file: string): Set<string> {
  const seen = new Set([file]);
  for (const each of seen) for (const next of read(each).imports) seen.add(next);
  return new Set([...seen].flatMap((each) => read(each).says));
}

const partsOf = (rooms: Iterable<string>): Part[] => [
  ...new Set([...rooms].flatMap((room) => (room === 'figures' ? [] : PART_OF[room as keyof typeof PART_OF]))),
];

const code = readFileSync(WORKER, 'utf8');
const entries = [...code.matchAll(/room\('(\w+)',[^']*?import\('([^']+)'\)/g)].map(
  ([, name, path]) => [name as Room, resolve(dirname(WORKER), path!)] as const,
);

it('is asked of every part', () => {
  expect(entries.map(([name]) => name).sort()).toEqual(Object.keys(ROOM_TEXTS).sort());
  expect(saidBy(entries.find(([name]) => name === 'mixes')![1]).size).toBeGreaterThan(5);
});

it.each(entries)('%s has all that it may say', (name, file) => {
  const lacks = partsOf(saidBy(file)).filter((part) => part !== 'first' && !lists(name).includes(part));
  expect(lacks).toEqual([]);
});

it('the worker itself says what is there from the beginning', () => {
  // That the solver has no answer is said where a mix is worked out.
  expect(partsOf(saidBy(WORKER)).filter((part) => part !== 'solving')).toEqual(['first']);
});

function lists(name: Room): readonly Part[] {
  return ROOM_TEXTS[name];
}
