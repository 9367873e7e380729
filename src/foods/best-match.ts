/** A name that a keeper wrote down for a dry mix, and the foods of the tables it may mean. */
import { isFedDry } from './fed-dry.ts';
import type { ReferenceFood } from './reference.ts';
import type { FoodSearch } from './search.ts';

export interface NameMatch {
  /** At most three, the best first; none where the tables have nothing like it. */
  readonly foods: readonly ReferenceFood[];
  /** Whether the first may be taken unasked: a food is called so, or a slip of the pen away from it. */
  readonly sure: boolean;
  /** What to tell where it may not, a sentence. */
  readonly note?: string;
}

const OFFERED = 3;
/** So many are looked through for a dried form of the first. */
const LOOKED_THROUGH = 12;
/** Who writes one of these wants the food as it grows; in English, German, Dutch and French. */
const FRESH = /\b(fresh|raw|frische?[rsn]?|rohe?[rsn]?|verse?|rauwe?|frais|fraîche|crue?)\b/i;

/** Foods for one name; of one that is fed both fresh and dried the dried form comes first, since the mix is dry. */
export function matchName(search: FoodSearch, name: string): NameMatch {
  const found = search.find(name, LOOKED_THROUGH);
  const note = search.note(name);
  const [best] = found;
  const dried =
    best && !FRESH.test(name) && !isFedDry(best)
      ? found.find((f) => f.plain && isFedDry(f) && thing(f) === thing(best))
      : undefined;
  const [first, ...others] = new Set(dried ? [dried, ...found] : found);
  // Beside the first only what a keeper may mean: no sweets and no dishes that have the word in their title.
  const foods = first ? [first, ...others.filter((f) => f.plain || isFedDry(f))].slice(0, OFFERED) : [];
  return { foods, sure: foods.length > 0 && note === undefined, ...(note !== undefined && { note }) };
}

/** What a food is, whatever was done to it: "parsley" of "Parsley, dried", "peas" of "Split peas, raw dry". */
function thing({ name }: ReferenceFood): string {
  const [base = name] = name.toLowerCase().split(',');
  return base.trim().split(/\s+/).at(-1) ?? base;
}
