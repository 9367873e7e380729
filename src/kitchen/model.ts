/**
 * What the kitchen deals in: lots in the cupboard, offers of sellers, drying runs, batches and what was poured.
 *
 * These are the records as they stand in the keeper's file. Names of their fields, such as `cold` for the steps of the
 * freeze treatment, stay as files already written have them, whatever the code around them calls the thing.
 */
import type { Problem } from '../formulation/problem/problem.ts';

/** ISO 8601 calendar day: "2026-03-14". */
export type Day = string;
/** ISO 8601 time, UTC. */
export type Moment = string;

/** One step of the freeze treatment against grain insects: in the freezer, or out of it to thaw. */
export interface FreezeStep {
  readonly kind: 'freeze' | 'thaw';
  readonly from: Day;
  /** The day on which it ends and the next may begin. */
  readonly to: Day;
  /** The day on which the keeper ticked it off. */
  readonly doneOn?: Day;
}

/** A choice of the keeper's against the program's advice, on record. */
export interface Overruled {
  readonly note: string;
  readonly on: Day;
}

/** Some of one food, bought or dried at one time, that is kept and used up together. */
export interface Lot {
  readonly id: string;
  /** Id of the food, as mixes name it. */
  readonly food: string;
  readonly name: string;
  /** What came in, g as weighed in its form. */
  readonly grams: number;
  /** "dry": bought dry; "fresh": to be eaten or dried; "dried": dried at home. */
  readonly form: 'dry' | 'fresh' | 'dried';
  readonly boughtOn: Day;
  readonly openedOn?: Day;
  readonly bestBefore?: Day;
  /** Whether it is kept in the freezer. */
  readonly frozen: boolean;
  readonly seller?: string;
  /** For the whole lot, in the keeper's money. */
  readonly price?: number;
  /** Steps of its freeze treatment against insects; empty for what needs none. */
  readonly cold: readonly FreezeStep[];
  /** Weighed out though the freeze treatment is not done. */
  readonly overruled?: Overruled;
  /** Recalled, infested or spoiled: it is not weighed out any more. */
  readonly barred?: { readonly why: string; readonly on: Day };
  /** The drying run it comes from. */
  readonly driedIn?: string;
  /** g of water per 100 g, where it was measured or follows from a drying run. */
  readonly moisture?: number;
  /** g that were left of it when somebody last weighed it, before that day's food was taken; for what is fed from the pack. */
  readonly left?: { readonly grams: number; readonly on: Day };
}

/** A food of the mix that the keeper buys fresh and dries. */
export interface DriedAtHome {
  /** Id of the food, as mixes name it. */
  readonly food: string;
  /** The fresh food: a reference number, or the id of an own food. */
  readonly fresh: string;
  /** Of the dried food, as planned, g water per 100 g. */
  readonly moisture: number;
  /** Percent of the weight as bought, as the keeper weighed it; the table's where absent. */
  readonly trimLoss?: number;
}

/** What a seller asks for beside the price of the packs, in the keeper's money. */
export interface SellerTerms {
  readonly seller: string;
  readonly delivery?: number;
  readonly minimumOrder?: number;
}

/** The batch that is being prepared, and the days that the keeper put steps on. */
export interface NextBatch {
  readonly mixId: string;
  /** g of the mix; absent where days are given, or nobody has said: then the mix's own batch counts. */
  readonly grams?: number;
  /** How long it is to last for the animals of the mix. */
  readonly days?: number;
  /** First day of the plan; today where absent. */
  readonly from?: Day;
  /** The day by which all is to be done: planned backwards from it. */
  readonly until?: Day;
  /** Planned backwards from the day on which the present batch runs out, whichever day that is. */
  readonly untilRunsOut?: true;
  /** Steps put on another day, in the order in which the keeper did it. */
  readonly pins: readonly { readonly step: string; readonly day: Day }[];
}

/** A food ticked off on the shopping list that is no pack in the cupboard yet. */
export interface Ticked {
  readonly on: Day;
  /** It was at home already; bought where absent. */
  readonly home?: true;
  /** g that there are of it, in the form it came in; as much as the list asks for where absent. */
  readonly grams?: number;
}

/** What the keeper has to work with, and works on; absent where nobody has said. */
export interface Kitchen {
  readonly id: 'kitchen';
  readonly driedAtHome?: readonly DriedAtHome[];
  readonly sellers?: readonly SellerTerms[];
  /** What is ticked off on the shopping list, by food id. */
  readonly basket?: Readonly<Record<string, Ticked>>;
  /** Whole days that each kind of step takes, where they differ from the usual. */
  readonly stepDays?: Readonly<
    Partial<Record<'buy' | 'freeze' | 'thaw' | 'dry' | 'weigh' | 'change-over', number>>
  >;
  readonly next?: NextBatch;
  readonly freezer?: { readonly grams: number; readonly celsius: number };
  readonly dryer?: {
    readonly device: 'oven' | 'dehydrator';
    readonly trays: number;
    /** dm2 of one tray. */
    readonly trayArea: number;
    readonly celsius: number;
  };
}

/** What a seller asks for one pack. */
export interface Offer {
  readonly id: string;
  readonly food: string;
  readonly seller: string;
  /** g in a pack, as sold. */
  readonly packGrams: number;
  readonly price: number;
  /** Sold fresh: its weight as bought, to be trimmed and dried. */
  readonly form: 'dry' | 'fresh';
}

interface DryingCheck {
  readonly at: Moment;
  readonly grams?: number;
  readonly note?: string;
}

/** A little of what dries, dried out till it loses no more weight. */
export interface DryingSample {
  /** g of the sample, and when it loses no more. */
  readonly before: number;
  readonly dry: number;
  /** g that all of the run weighed when the sample was taken of it; absent where it was taken of the fresh food. */
  readonly of?: number;
  /** Step of the scale that weighed the sample, g. */
  readonly step?: number;
}

export interface DryingRun {
  readonly id: string;
  /** Lot of fresh food that is dried. */
  readonly lot: string;
  readonly device: 'oven' | 'dehydrator';
  readonly celsius: number;
  readonly startedAt: Moment;
  readonly trays: number;
  /** g on the trays at the start, trimmed. */
  readonly gramsBefore: number;
  /** g taken from the lot, with what was then trimmed off; `gramsBefore` where nobody weighed it. */
  readonly gramsTaken?: number;
  readonly checks: readonly DryingCheck[];
  /** How it behaves on the tray; by the food's group where absent. */
  readonly kind?: 'vegetable' | 'leaf' | 'herb' | 'fruit';
  /** Hours that it is expected to take. */
  readonly hours?: number;
  /** Which of several loads of one lot it is, from 1. */
  readonly load?: { readonly n: number; readonly of: number };
  readonly sample?: DryingSample;
  /** g at the end; absent while it dries. Without `endedAt`, it was weighed and nobody has said what becomes of it. */
  readonly gramsAfter?: number;
  /** With no `gramsAfter`: thrown away. */
  readonly endedAt?: Moment;
  /** Kept though it may be too damp, with the keeper's reason. */
  readonly accepted?: Overruled;
}

/** One food poured into a batch. */
export interface Pour {
  readonly food: string;
  /** Which lots it came from, g of each, below 0 for what went back to it; empty where the keeper keeps no lots. */
  readonly lots: readonly { readonly lot: string; readonly grams: number }[];
  /** g that were asked for at that moment. */
  readonly target: number;
  /** g on the scale; below 0 for what was taken back out of the food poured last. */
  readonly grams: number;
  readonly at: Moment;
}

/** What a batch may become so that it stays in range. */
export interface Agreed {
  /** g to which it may grow. */
  readonly grams?: number;
  /** Foods that may be left out of it, by id. */
  readonly without?: readonly string[];
  /** It keeps its size and its foods, though it ends out of range. */
  readonly keep?: true;
}

/** A batch of a mix, from the first gram to the last. */
export interface Batch {
  readonly id: string;
  readonly mixId?: string;
  readonly name: string;
  /** The problem as it stood when weighing began: the batch is judged by it. */
  readonly problem: Problem;
  /** Planned shares, percent by food id. */
  readonly shares: Readonly<Record<string, number>>;
  /** Order in which foods are poured. */
  readonly order: readonly string[];
  /** g in all, as planned; a batch may grow while it is corrected. */
  readonly grams: number;
  readonly pours: readonly Pour[];
  readonly animalIds: readonly string[];
  readonly madeBy?: string;
  /** g that the lots held of each food when weighing began: a correction asks for no more. */
  readonly stock?: Readonly<Record<string, number>>;
  /** What the keeper answered when the batch could not stay in range as planned; absent while nobody was asked. */
  readonly agreed?: Agreed;
  /** Finished out of range, with the keeper's reason. */
  readonly accepted?: Overruled;
  /** Closed before it was complete and not fed: no food in hand. */
  readonly givenUp?: Overruled;
  /** g that were left of it when somebody last weighed it, before that day's food was taken; 0: used up. */
  readonly left?: { readonly grams: number; readonly on: Day };
  readonly startedAt: Moment;
  /** Absent while it is being weighed. */
  readonly finishedAt?: Moment;
}
