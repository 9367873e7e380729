/** What a food is taken to hold, all nutrients at once, from its sources and the keeper's choices. */
import { NUTRIENTS, type Tag } from '../../nutrition/nutrients.ts';
import type { Composition, Figures } from '../food.ts';
import { type Choice, chosenFrom, combine } from './combine.ts';
import { boundsBy, type FoodSource } from './source.ts';

interface Resolved extends Figures {
  /** By nutrient, which sources the value comes from and how, in words. */
  readonly methods: Partial<Record<Tag, string>>;
}

/**
 * Resolves every nutrient that any source speaks of; where `choices` names none, by the mean.
 * A nutrient of which only bounds are known has bounds and no value.
 * @param choices by nutrient, "mean" or the id of the source to follow
 * @throws RangeError when a choice is none of the sources, or a figure is no amount
 */
export function resolve(
  sources: readonly FoodSource[],
  choices: Partial<Record<Tag, Choice>>,
  group: string | undefined,
): Resolved {
  const composition: Composition = {};
  const sd: Composition = {};
  const low: Composition = {};
  const high: Composition = {};
  const methods: Partial<Record<Tag, string>> = {};
  for (const { tag } of NUTRIENTS) {
    const choice = choices[tag] ?? 'mean';
    const combined = combine(tag, sources, choice, group);
    if (combined) {
      composition[tag] = combined.value;
      if (combined.sd > 0) sd[tag] = combined.sd;
      methods[tag] = combined.source;
    }
    const followed = choice === 'mean' ? sources : [chosenFrom(sources, choice, tag)];
    const bounds = boundsBy(followed, tag);
    if (bounds.low !== undefined) low[tag] = bounds.low;
    if (bounds.high !== undefined) high[tag] = bounds.high;
  }
  return {
    composition,
    sd,
    ...(Object.keys(low).length > 0 && { low }),
    ...(Object.keys(high).length > 0 && { high }),
    methods,
  };
}
