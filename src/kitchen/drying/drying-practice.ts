/**
 * Temperatures, times and tray loads for drying at home, as the trade does it and as it is published, side by side
 * (`drying.json`, each with its source).
 */

import { madeWhenAsked, type Phrase, phraseFinder } from '../../foods/cautions/phrases.ts';
import { type Language, tokensOf } from '../../foods/cautions/words.ts';
import type { FoodGroup } from '../../foods/food.ts';
import type { DryingRun } from '../model.ts';
import data from './drying.json' with { type: 'json' };

/** How a food behaves on the tray. */
export type DryKind = 'vegetable' | 'leaf' | 'herb' | 'fruit';

export type Device = DryingRun['device'];

/** Whether a figure is what the trade does or what a publication says. */
type HowKnown = 'common practice' | 'published';

/** How hot, how long and till when. */
export interface DryingWay {
  readonly kind: DryKind;
  readonly known: HowKnown;
  /** Only for this device; absent where it holds for both. */
  readonly device?: Device;
  /** Least and most. */
  readonly celsius: readonly [number, number];
  readonly hours: readonly [number, number];
  /** How to tell that it is done. */
  readonly dry: string;
  readonly source: string;
}

/** How much fresh food goes on a tray. */
export interface TrayLoad {
  readonly kind: DryKind;
  readonly known: HowKnown;
  readonly gramsPerDm2: number;
  readonly source: string;
}

interface Keeps {
  readonly kind: DryKind;
  /** g of water per 100 g. */
  readonly most: number;
  readonly source: string;
}

export interface DryingCaution {
  readonly device: Device | 'any';
  /** `first`: said wherever a run is planned or goes on; `more`: for who wants to know more. */
  readonly heed: 'first' | 'more';
  readonly sentence: string;
  readonly source: string;
}

const WAYS = data.ways as unknown as readonly DryingWay[];

/** Tray loads listed, each with its source. */
export const LOADS = data.loads as readonly TrayLoad[];

/** Most moisture at which each kind keeps. */
export const KEEPS = data.keeps as readonly Keeps[];

const CAUTIONS = data.cautions as readonly DryingCaution[];

/** What a name may say; `neither` takes back a word of the others within it ("chou-fleur" is no flower). */
type Named = 'leaf' | 'herb' | 'neither';

const findNamed = madeWhenAsked(() =>
  phraseFinder<Named>(
    Object.entries(data.names).flatMap(([value, byLanguage]) =>
      Object.entries(byLanguage).flatMap(([language, texts]) =>
        texts.map((text): Phrase<Named> => ({ text, language: language as Language, value: value as Named })),
      ),
    ),
  ),
);

/**
 * What a food is on the tray, unless the keeper says otherwise: by its group, and for vegetables and foods without a
 * group by its name too, in five languages. A leaf or herb in doubt is one: it is then dried gently.
 */
export function dryKindOf(group: FoodGroup | undefined, name = ''): DryKind {
  if (group === 'herb' || group === 'fruit') return group;
  if (group !== undefined && group !== 'vegetable') return 'vegetable';
  const hits = findNamed(tokensOf(name));
  const neither = hits.filter((hit) => hit.value === 'neither');
  const said = hits.filter((hit) => !neither.some((n) => hit.at.every((place) => n.at.includes(place))));
  if (said.some((hit) => hit.value === 'herb')) return 'herb';
  return said.length > 0 ? 'leaf' : 'vegetable';
}

/**
 * Ways to dry that kind with that device: common practice and published, in this order. Common practice (90 °C for
 * 6 h) is said of chopped vegetables, and is offered for nothing else.
 */
export function waysToDry(kind: DryKind, device: Device): DryingWay[] {
  return WAYS.filter((way) => way.kind === kind && (way.device ?? device) === device);
}

/** What to heed with that device, in the order of the list. */
export function dryingCautions(device: Device): DryingCaution[] {
  return CAUTIONS.filter((c) => c.device === device || c.device === 'any');
}
