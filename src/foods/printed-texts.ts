/** What stands printed on the packs of a food. */
import type { Evidence } from './evidence.ts';

/** What the packs of a food print: its list of ingredients, and every label as pasted. */
export function printedTexts(evidence: Evidence | undefined): string[] {
  const texts = [evidence?.ingredients ?? '', ...(evidence?.sources ?? []).map((s) => s.printed ?? '')];
  return [...new Set(texts.filter((text) => text.trim() !== ''))];
}
