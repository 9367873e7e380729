/** The source behind a food that its keeper typed or pasted from a label. */

import { onCrudeProtein } from '../../../foods/crude-protein.ts';
import { lenders } from '../../../foods/evidence.ts';
import { countOf, factorOf, sameFigures } from '../../../foods/figures.ts';
import type { Composition, Figures } from '../../../foods/food.ts';
import type { FoodSource } from '../../../foods/sources/source.ts';
import { words } from '../../../words/words.ts';
import type { OwnFood } from '../../model.ts';

/** Figures as read from a label or typed in fields. */
export interface GivenFigures {
  readonly figures: Figures;
  readonly basis: 'as fed' | 'dry matter';
  /** The label as pasted. */
  readonly printed?: string;
}

/** Name of a source to which the keeper gives none. */
const unnamed = () => words().foods.form.label;

/**
 * The source that the form of a food edits: its only one, or for a food without evidence its figures as typed, less
 * what it borrowed; protein as crude protein, as labels mean it. Undefined for a food without figures, and where there are several sources.
 */
export function soleSource(food: OwnFood): FoodSource | undefined {
  const sources = food.evidence?.sources ?? [];
  const [first, ...others] = sources;
  if (first) return others.length === 0 ? onCrudeProtein(first) : undefined;
  const lent = lenders(food);
  const own = (amounts: Composition): Composition =>
    Object.fromEntries(Object.entries(amounts).filter(([tag]) => !(tag in lent)));
  const { low, high } = food;
  const typed = { composition: own(food.composition), sd: own(food.sd), low, high };
  if (countOf(typed) === 0) return undefined;
  return { id: 'typed', name: food.source.trim() || unnamed(), basis: 'as fed', ...typed };
}

/**
 * A source for these figures. While they stay as they were, so does what is known of them (date, samples, nitrogen
 * factor, row of a table); other figures are as of today.
 * @param id for a source that is new
 * @param today ISO 8601 date
 */
export function sourceWith(
  { figures, basis, printed }: GivenFigures,
  { id, name, today, before }: { id: string; name: string; today: string; before?: FoodSource },
): FoodSource {
  const known = before && sameFigures(before, figures) ? before : undefined;
  const { ref, n, date = today } = known ?? {};
  return {
    id: before?.id ?? id,
    name: name.trim() || unnamed(),
    ...(ref !== undefined && { ref }),
    date,
    ...(n !== undefined && { n }),
    ...(known && factorOf(known)),
    basis,
    ...figures,
    ...(printed && { printed }),
  };
}
