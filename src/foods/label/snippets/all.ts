/** Every label of the snippet tables: by language, and by what can make a figure wrong in silence. */
import { bounds } from './bounds.ts';
import { columnsBefore } from './columns-before.ts';
import { cookedBasis } from './cooked-basis.ts';
import { denominators } from './denominators.ts';
import { dryMatter } from './dry-matter.ts';
import { dutch } from './dutch.ts';
import { english } from './english.ts';
import { french } from './french.ts';
import { german } from './german.ts';
import { ingredientLists } from './ingredient-lists.ts';
import { layouts } from './layouts.ts';
import { shares } from './shares.ts';
import type { Snippet } from './snippet.ts';
import { spanish } from './spanish.ts';
import { thousands } from './thousands.ts';

/** Labels for each way in which a figure could be wrong and nobody be told. */
export const BY_CAUSE: Readonly<Record<string, readonly Snippet[]>> = {
  'a cooked or made-up basis': cookedBasis,
  'dry matter in other words': dryMatter,
  'a denominator that is no weight': denominators,
  'a quantity before "per 100 g"': columnsBefore,
  'a percentage of something else': shares,
  'least and most as headings': bounds,
  'shares in a list of ingredients': ingredientLists,
  'mixed marks for thousands': thousands,
};

/** Labels as most are, by language. */
export const PLAIN: readonly Snippet[] = [...english, ...german, ...french, ...dutch, ...spanish];

export const SNIPPETS: readonly Snippet[] = [...PLAIN, ...Object.values(BY_CAUSE).flat(), ...layouts];
