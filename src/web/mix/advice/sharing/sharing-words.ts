/** What sharing a base costs an animal, in words. */
import type { SharingCost } from '../../../../formulation/advice/shared-base.ts';
import { words } from '../../../../words/words.ts';

/** Less than this is no other price, per kg. */
const SAME_PRICE = 0.005;

/** What sharing costs an animal, in a sentence. */
export function costWords({ different, dearer = 0 }: SharingCost): string {
  const t = words().sharing.cost;
  const money = Math.abs(dearer);
  if (different < 0.05) {
    if (money < SAME_PRICE) return t.same;
    return dearer > 0 ? t.sameDearer(money) : t.sameCheaper(money);
  }
  if (money < SAME_PRICE) return t.other(different);
  return dearer > 0 ? t.otherDearer(different, money) : t.otherCheaper(different, money);
}
