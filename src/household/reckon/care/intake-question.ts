/** As much of a household as says what an animal was offered and left over some days. */
import type { Remains } from '../../../care/model.ts';
import type { WeighedFood } from '../../../kitchen/batch/weighed-problem.ts';
import type { Day } from '../../../kitchen/model.ts';
import type { Household } from '../../model.ts';
import { type FoodKey, foodKeys } from '../foods/same-food.ts';
import { fedDays, type HoardSpan, hoardSpans, type NotedNight } from './noted-nights.ts';
import { type MixKnown, type OfferedPart, offeredOf } from './offered.ts';

/** What one food of the question is made of, and the packs it came from. */
interface MadeOf {
  readonly name: string;
  readonly made: OfferedPart['made'];
  readonly lots: WeighedFood['lots'];
}

/** So many grams of a food, as one of {@link IntakeQuestion.made}. */
export interface Portion {
  readonly food: string;
  readonly made: string;
  readonly grams: number;
}

interface NightAsked extends Pick<NotedNight, 'since' | 'on' | 'unticked'> {
  readonly offered: readonly Portion[];
  /** Foods by their common key. */
  readonly bowl: Remains;
}

interface SpanAsked extends Pick<HoardSpan, 'others' | 'first'> {
  readonly nights: readonly NightAsked[];
  readonly hoard?: Remains;
}

/** Plain data, so that it can be asked of a worker. */
export interface IntakeQuestion {
  readonly from: Day;
  readonly to: Day;
  /** Days on which food was said to be offered. */
  readonly fed: number;
  readonly spans: readonly SpanAsked[];
  readonly made: Readonly<Record<string, MadeOf>>;
  /** Least that is known of the mix on any of the nights. */
  readonly mix: MixKnown;
}

const KNOWN: readonly MixKnown[] = ['none', 'poured', 'planned', 'unknown'];

/** @param days the first and the last, both included; a night that began before the first is left out */
export function intakeQuestion(
  house: Pick<Household, 'feedings' | 'foods' | 'mixes' | 'batches' | 'lots'>,
  animalId: string,
  days: { readonly from: Day; readonly to: Day },
): IntakeQuestion {
  const keyOf = foodKeys(house);
  const made: Record<string, MadeOf> = {};
  let mix: MixKnown = 'none';
  const night = ({ since, on, unticked, bowl, feedings }: NotedNight): NightAsked => ({
    since,
    on,
    unticked,
    bowl: byKey(bowl, keyOf),
    offered: feedings.flatMap((feeding) => {
      const offered = offeredOf(house, feeding);
      if (KNOWN.indexOf(offered.mix) > KNOWN.indexOf(mix)) mix = offered.mix;
      return offered.foods.map(({ food, grams, name, from, made: own, lots }) => {
        const source = from === 'mix' ? (feeding.mix?.batchId ?? '') : lots.map((l) => l.lot.id).join(' ');
        const id = `${from} ${source} ${own.id}`;
        made[id] ??= { name, made: own, lots };
        return { food, made: id, grams };
      });
    }),
  });
  const spans = hoardSpans(house, animalId, days).map(
    ({ nights, hoard, others, first }): SpanAsked => ({
      nights: nights.map(night),
      ...(hoard && { hoard: byKey(hoard, keyOf) }),
      others,
      first,
    }),
  );
  return { ...days, fed: fedDays(house, animalId, days), spans, made, mix };
}

/** Foods that are one food under two ids lie in the bowl as one. */
function byKey({ parts, mostly, ...rest }: Remains, keyOf: FoodKey): Remains {
  const summed: Record<string, number> = {};
  for (const [id, grams] of Object.entries(parts ?? {})) summed[keyOf(id)] = (summed[keyOf(id)] ?? 0) + grams;
  return {
    ...rest,
    ...(parts && { parts: summed }),
    ...(mostly && { mostly: [...new Set(mostly.map(keyOf))] }),
  };
}
