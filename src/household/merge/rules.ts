/** What of a record hangs together, and what tells the items of its lists apart. */
import type { Kind } from '../model.ts';

type Path = readonly (string | number)[];

/**
 * Whether a thing is taken whole from one side: shares of a mix belong together (those of two people mixed would be a mix
 * that nobody chose), and the order of aims is what they mean.
 */
export function isWhole(kind: Kind, path: Path): boolean {
  const last = path.at(-1);
  if (path.length === 1 && last === 'shares') return true;
  if (path.length === 1 && last === 'held') return kind === 'mixes';
  return (
    last === 'aims' ||
    last === 'cold' ||
    last === 'ratio' ||
    last === 'lots' ||
    last === 'days' ||
    last === 'bowl' ||
    last === 'hoard' ||
    last === 'was' ||
    last === 'now'
  );
}

/** Whether the later of two times stands: when a mix was last saved. */
export function laterWins(path: Path): boolean {
  return path.length === 1 && path[0] === 'updatedAt';
}

/** What tells the items of the list at a path apart. */
export function identityAt(path: Path): (item: unknown) => string | undefined {
  switch (path.at(-1)) {
    case 'pours':
      return by('food', 'grams', 'at');
    case 'rules':
    case 'bounds':
      return by('nutrient', 'ratio', 'group', 'food', 'count', 'on', 'basis');
    case 'own_limits':
      return (item) => by('nutrient', 'ratio', 'on', 'basis')((item as { was?: unknown } | null)?.was);
    case 'checks':
      return by('at');
    case 'driedAtHome':
      return by('food');
    case 'sellers':
      return by('seller');
    case 'offerings':
      return by('on');
    case 'conditions':
      return by('what', 'since');
    case 'beside':
      return by('id', 'food', 'lot');
    case 'pins':
      return by('step');
    default:
      return (item) => (typeof item === 'string' ? item : by('id')(item));
  }
}

/** Tells items apart by these fields; undefined for what has none of them. */
function by(...fields: readonly string[]): (item: unknown) => string | undefined {
  return (item) => {
    if (typeof item !== 'object' || item === null) return undefined;
    const values = fields.map((field) => (item as Record<string, unknown>)[field] ?? null);
    return values.some((value) => value !== null) ? JSON.stringify(values) : undefined;
  };
}
