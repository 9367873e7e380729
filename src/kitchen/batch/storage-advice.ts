/** How to keep a mix. */
import { words } from '../../words/words.ts';
import { type Place, type StoredFood, shelfKindOf } from './shelf-kind.ts';
import data from './shelf-life.json' with { type: 'json' };

/** One piece of advice on keeping, and its source. */
export interface StorageAdvice {
  readonly sentence: string;
  readonly source: string;
}

/** How to keep a mix. */
export function storageAdvice(mix: readonly StoredFood[], place: Place = 'cupboard'): StorageAdvice[] {
  const t = words().batch.keep;
  const fatty = mix.some((i) => i.share > 0 && /nut|oil/.test(shelfKindOf(i)));
  return data.advice
    .filter(({ store }) => store === 'any' || (store === 'fatty' && fatty) || store === place)
    .map(({ id, source }) => ({ sentence: t[id as keyof typeof t], source }));
}
