/** Which lots the food to pour now comes from; nothing where the keeper keeps no lots of it. */
import type { Kept } from '../../kitchen/cupboard.ts';
import { today } from '../data/today.ts';
import { pourLots } from '../mix/pour-lots.ts';
import { gramWords } from '../mix/weigh-out-view.ts';

export function WeighLots({ kept, food, grams }: { kept: Kept; food: string; grams: number }) {
  const known = kept.lots.filter((l) => l.food === food);
  if (known.length === 0) return null;
  const data = pourLots(kept, food, grams, today());
  const held = data.reduce((sum, l) => sum + l.grams, 0);
  const short = grams - held;
  return (
    <p className="weigh-lots">
      {data.length > 0 &&
        `From ${data
          .map((l) => {
            const lot = known.find((k) => k.id === l.lot);
            return `${lot?.name ?? l.lot} of ${lot?.boughtOn ?? 'an unknown day'} (${gramWords(l.grams)})`;
          })
          .join(', then ')}. `}
      {short > 1e-6 &&
        `No lot that may be weighed out holds the ${data.length > 0 ? 'rest' : 'food'}, ${gramWords(short)}.`}
    </p>
  );
}
