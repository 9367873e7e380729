/** What kind of label it is: a nutrition table for food, or the analytical constituents of a feed; American or European. */
import type { CarbohydrateStyle } from './compare.ts';
import type { LineParts } from './part.ts';
import type { Language } from './reading.ts';
import { keyOf } from './tokens.ts';

const CRUDE = /(?:^|\s)(?:crude|raw|roh\w*|brut\w*|ruw\w*|crud\w*)/;

/**
 * What "fibre" alone means. In a nutrition table for food, known by its carbohydrate, it is dietary fibre: Regulation
 * (EU) 1169/2011, Annex I, point 12. Among the analytical constituents of a feed it is the crude fibre that Regulation
 * (EC) 767/2009, Annexes VI and VII, has declared. Undefined where the label is neither or both.
 */
export function fibreOf(lines: readonly LineParts[]): 'FIBTG' | 'FIBC' | undefined {
  const parts = lines.flatMap((l) => l.parts);
  const named = parts.flatMap((p) => (p.kind === 'amount' ? [p] : []));
  const feed = parts.some((p) => p.kind === 'section' && p.section === 'constituents');
  const crude = named.some((p) => CRUDE.test(keyOf(p.heard)));
  const food = named.some((p) => p.name.tags.includes('CHOCDF'));
  if (food === (feed || crude)) return undefined;
  if (food) return 'FIBTG';
  return feed ? 'FIBC' : undefined;
}

/** Marks of a US label and of a European one; both or neither settle nothing. */
export function carbohydrateStyle(text: string, language: Language | undefined): CarbohydrateStyle {
  const american = /daily value|valor diario|%\s?dv\b|serving size|total fat|\bcalories\b\s*:?\s*\d/i.test(
    text,
  );
  const european =
    /\bkJ\b|of which|\bsalt\b|typical values/i.test(text) || (language !== undefined && language !== 'en');
  if (american === european) return undefined;
  return american ? 'with fibre' : 'without fibre';
}

/**
 * A US panel of nutrition facts: without a word on it, its amounts are per serving, 21 CFR 101.9(b)(1) and (c).
 * Known by the size of a serving and the calories.
 */
export function isPerServing(text: string): boolean {
  return /serving size/i.test(text) && /\bcalories\b/i.test(text);
}
