/** What was noted of a night, in one line. */
import type { Feeding } from '../../../care/model.ts';
import { words } from '../../../words/words.ts';
import { gramsOf, gramsOffered, type LeftFood } from './view-model.ts';

/** @param foods that were offered, for their names */
export function nightWords(feeding: Feeding, foods: readonly LeftFood[]): string {
  const { leftovers, figures } = words();
  const t = leftovers.nights;
  const { bowl, hoard, since } = feeding.left ?? {};
  const grams = bowl && gramsOf(bowl);
  const offered = gramsOffered(feeding);
  const names = (bowl?.mostly ?? []).map((id) => foods.find((food) => food.id === id)?.name ?? id);
  const found = hoard && gramsOf(hoard);
  const weight =
    grams === 0 ? t.nothing : since === undefined ? t.leftOf(grams ?? 0, offered) : t.left(grams ?? 0);
  return figures.list([
    ...(bowl === undefined ? [t.onlyHoard] : grams !== undefined ? [weight] : []),
    ...(names.length > 0 ? [t.mostly(names)] : []),
    ...(bowl !== undefined && grams === undefined && names.length === 0 ? [t.notWeighed] : []),
    ...(since !== undefined ? [t.since(since)] : []),
    ...(hoard === undefined
      ? []
      : [found === 0 ? t.noHoard : found === undefined ? t.hoardSeen : t.hoard(found)]),
  ]);
}
