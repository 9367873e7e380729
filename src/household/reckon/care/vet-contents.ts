/** What the food of one animal is made of, as a page for a vet shows it: key figures, foods by share, and where figures come from. */
import type { Problem } from '../../../formulation/problem/problem.ts';
import type { Evaluation } from '../../../formulation/problem/result.ts';
import type { BatchRecord } from '../../../kitchen/batch/batch.ts';
import { COMPLETE } from '../../../kitchen/tolerances.ts';
import type { Tag } from '../../../nutrition/nutrients.ts';

/** What a vet asks for first, in this order. */
const VET_TAGS = [
  'PROCNT',
  'FAT',
  'FIBC',
  'FIBTG',
  'SUGAR',
  'CA',
  'P',
  'ENERC_KCAL',
  'WATER',
] as const satisfies readonly Tag[];

/** Foods that one printed page has room for. */
const ROOM = 12;

/** One content per 100 g as fed, in the unit of the tagname. */
export interface VetContent {
  /** Least and most it can be, unknown figures taken at both ends. */
  readonly low: number;
  readonly high: number;
  /** Absent where some of it is not known: then there is at least `low`. */
  readonly value?: number;
  /** Percent of the food, by weight, of which the amount is known or estimated. */
  readonly coverage: number;
  /** Some of it is an estimate from another figure. */
  readonly estimated: boolean;
}

export interface VetContents {
  /** Of all that is offered: the batch as it was weighed, with what is fed beside it by its planned share. */
  readonly lines: readonly { readonly tag: Tag; readonly offered?: VetContent }[];
  /** Calcium over phosphorus; absent where one of them is not known of all of it. */
  readonly ratio?: number;
  /** Percent of the mix as weighed, the largest first. */
  readonly foods: {
    readonly shown: readonly { readonly name: string; readonly share: number }[];
    readonly more: number;
  };
  /** Percent of the mix by weight whose figures come from food tables, and from labels or the keeper. */
  readonly sources: { readonly tables: number; readonly own: number };
}

export function vetContents({ evaluation, problem, foods }: BatchRecord): VetContents {
  const lines = VET_TAGS.map((tag) => {
    const offered = offeredOf(evaluation, tag);
    return { tag, ...(offered && { offered }) };
  });
  const of = (tag: Tag) => lines.find((l) => l.tag === tag)?.offered?.value;
  const [ca, p] = [of('CA'), of('P')];
  const byTable = new Set(problem.foods.flatMap((f) => (isOfTables(f) ? [f.id] : [])));
  const tables = foods.reduce((sum, f) => sum + (byTable.has(f.food) ? f.share : 0), 0);
  return {
    lines,
    ...(ca !== undefined && p !== undefined && p > 0 && { ratio: ca / p }),
    foods: {
      shown: foods.slice(0, ROOM).map(({ name, share }) => ({ name, share })),
      more: Math.max(0, foods.length - ROOM),
    },
    sources: { tables, own: Math.max(0, 100 - tables) },
  };
}

/** Undefined where nobody knows it of any of the food. */
function offeredOf(evaluation: Evaluation, tag: Tag): VetContent | undefined {
  const line = evaluation.nutrients[tag];
  if (!line || !(line.coverage > 0)) return undefined;
  const { ration, low, high, coverage } = line;
  return {
    low,
    high,
    coverage,
    ...(coverage >= 100 - COMPLETE && { value: ration }),
    estimated: evaluation.estimated.some((d) => d.nutrient === tag),
  };
}

function isOfTables({ ref, composition }: Problem['foods'][number]): boolean {
  return ref !== undefined && Object.keys(composition ?? {}).length === 0;
}
