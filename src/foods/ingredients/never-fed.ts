/** What must not be fed and stands on the lists of ingredients of a bought food. */
import { CAUTIONS, type Caution } from '../cautions/caution.ts';
import { cautionsListed } from './read-ingredients.ts';

interface NeverFed {
  readonly caution: Caution;
  /** The words of the lists, each once, with commas between them. */
  readonly found: string;
}

/** What was read of some lists, by species; the texts of a food stay the same list while nothing is changed. */
const read = new WeakMap<readonly string[], Map<string, readonly NeverFed[]>>();

/**
 * The cautions of severity `never` that some printed texts run into, one entry each, in the order of the caution list.
 * What a text denies ("no onion") does not count. Never throws.
 * @param texts lists of ingredients, or labels with such a list, as pasted
 */
export function neverFedIn(texts: readonly string[], species?: string): readonly NeverFed[] {
  const known = read.get(texts) ?? new Map<string, readonly NeverFed[]>();
  read.set(texts, known);
  const at = species ?? '';
  const before = known.get(at);
  if (before) return before;
  const words = new Map<Caution, string[]>();
  for (const text of texts)
    for (const { caution, found } of cautionsListed(text, species)) {
      if (caution.severity !== 'never') continue;
      const said = words.get(caution) ?? [];
      words.set(caution, said);
      if (!said.some((word) => word.toLowerCase() === found.toLowerCase())) said.push(found);
    }
  const never = CAUTIONS.flatMap((caution) => {
    const found = words.get(caution);
    return found ? [{ caution, found: found.join(', ') }] : [];
  });
  known.set(at, never);
  return never;
}
