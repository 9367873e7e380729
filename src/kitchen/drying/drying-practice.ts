/**
 * Temperatures, times and tray loads for drying at home, as the trade does it and as it is published, side by side
 * (`drying.json`, each with its source).
 */

import { madeWhenAsked, type Phrase, phraseFinder } from '../../foods/cautions/phrases.ts';
import { type Language, tokensOf } from '../../foods/cautions/words.ts';
import type { FoodGroup } from '../../foods/food.ts';
import { type Words, words } from '../../words/words.ts';
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
  /** "own": as the keeper loads them. */
  readonly known: HowKnown | 'own';
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
  readonly id: string;
  readonly device: Device | 'any';
  /** `first`: said wherever a run is planned or goes on; `more`: for who wants to know more. */
  readonly heed: 'first' | 'more';
  readonly sentence: string;
  readonly source: string;
}

type DryWhen = keyof Words['drying']['dryWhen'];
type CautionId = keyof Words['drying']['caution'];

/** As listed: what is said of it stands in the catalogue, under its id; so does where it comes from, of common practice. */
const WAYS = data.ways as unknown as readonly (Omit<DryingWay, 'dry'> & { readonly id: DryWhen })[];

const LISTED_LOADS = data.loads as readonly TrayLoad[];

/** Most moisture at which each kind keeps. */
export const KEEPS = data.keeps as readonly Keeps[];

const CAUTIONS = data.cautions as readonly (Omit<DryingCaution, 'sentence'> & {
  readonly id: CautionId;
  /** Whether it is common practice too. */
  readonly practice?: boolean;
})[];

/** °C that many ovens do not go below (common practice, no source). */
const LOWEST_OVEN = 50;

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
  const { drying, kitchen } = words();
  return WAYS.filter((way) => way.kind === kind && (way.device ?? device) === device).map(
    ({ id, ...way }) => ({
      ...way,
      dry: drying.dryWhen[id],
      source: way.known === 'published' ? way.source : kitchen.practice,
    }),
  );
}

/** Tray loads known for that kind, each with its source. */
export function trayLoads(kind: DryKind): TrayLoad[] {
  const { layer } = words().drying;
  return LISTED_LOADS.filter((load) => load.kind === kind).map((load) => ({
    ...load,
    source: load.known === 'published' ? load.source : layer[kind],
  }));
}

/** What to heed with that device, in the order of the list. */
export function dryingCautions(device: Device): DryingCaution[] {
  const { drying, kitchen } = words();
  return CAUTIONS.filter((c) => c.device === device || c.device === 'any').map(({ practice, ...c }) => ({
    ...c,
    sentence: c.id === 'thermometer' ? drying.caution.thermometer(LOWEST_OVEN) : drying.caution[c.id],
    source: [...(practice ? [kitchen.practice] : []), c.source].join('; '),
  }));
}
