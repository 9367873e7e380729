/**
 * Temperatures, times and tray loads for drying at home, as the trade does it and as it is published, side by side
 * (`drying.json`, each with its source).
 */

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
  readonly sentence: string;
  readonly source: string;
}

const WAYS = data.ways as unknown as readonly DryingWay[];

/** Tray loads listed, each with its source. */
export const LOADS = data.loads as readonly TrayLoad[];

/** Most moisture at which each kind keeps. */
export const KEEPS = data.keeps as readonly Keeps[];

const CAUTIONS = data.cautions as readonly DryingCaution[];

/** What a food of some group is on the tray, unless the keeper says otherwise: a leafy vegetable is a "leaf". */
export function dryKindOf(group: FoodGroup | undefined): DryKind {
  return group === 'herb' || group === 'fruit' ? group : 'vegetable';
}

/** Ways to dry that kind with that device: common practice and published, in this order. */
export function waysToDry(kind: DryKind, device: Device): DryingWay[] {
  return WAYS.filter((way) => way.kind === kind && (way.device ?? device) === device);
}

/** What to heed with that device. */
export function dryingCautions(device: Device): DryingCaution[] {
  return CAUTIONS.filter((c) => c.device === device || c.device === 'any');
}
