/**
 * What is to be said of a mix, in three states that every screen and paper tells alike: surely in range; in range if what
 * is not known turns out well; out of range. The mix, each pour, the end of a batch, its label and its record ask here.
 */
import { countedName, countedWord, type Tag } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import type { Collision, Evaluation, OpenFigure, Unproven } from '../problem/result.ts';
import { unitWords } from '../solve/bounds.ts';
import { isWhole } from './in-range.ts';
import { capital } from './sentences.ts';

export type VerdictState = 'sure' | 'if' | 'out';

/** One reason for a state, in a sentence of its own. */
export type Because = { readonly sentence: string } & (
  | { readonly kind: 'partial'; readonly total: number }
  | { readonly kind: 'broken'; readonly pointer: string }
  | ({ readonly kind: 'unproven' } & Unproven)
  | { readonly kind: 'chance'; readonly chance: number }
  | { readonly kind: 'spreadless' }
);

/** The one figure that would settle most of what is open. */
export interface Settle extends OpenFigure {
  /** What to write where. */
  readonly sentence: string;
}

export interface Verdict {
  readonly state: VerdictState;
  /** The state in words: "Surely in range". */
  readonly head: string;
  /** All in one text, the head first. */
  readonly sentence: string;
  /** What is said after the head. */
  readonly rest: string;
  /** Why it is not surely in range; empty where it is. */
  readonly because: readonly Because[];
  /** Only where something is not proven. */
  readonly settle?: Settle;
}

/** How an evaluated mix stands. */
export function verdictOf(
  evaluation: Pick<Evaluation, 'total' | 'in_range' | 'reservations' | 'ruled' | 'breaches'>,
): Verdict {
  const state = stateOf(evaluation);
  const because = state === 'out' ? whyOut(evaluation) : whyNotSure(evaluation);
  const head = headOf(state, because);
  const rest = restOf(evaluation, because, state);
  const settle = settleOf(evaluation);
  return {
    state,
    head,
    sentence: words().verdict.told(head, rest),
    rest,
    because,
    ...(settle && { settle }),
  };
}

/** Why no mix can keep the rules: what collides, sentence by sentence. */
export function whyNone({ conflict, verdict }: Pick<Collision, 'conflict' | 'verdict'>): string {
  return conflict.length > 0 ? conflict.map(({ sentence }) => sentence).join(' ') : verdict;
}

/** Whether no rule is broken, however sure that is. */
export function isFit(evaluation: Pick<Evaluation, 'in_range'>): boolean {
  return stateOf(evaluation) !== 'out';
}

function stateOf({ in_range }: Pick<Evaluation, 'in_range'>): VerdictState {
  return in_range === 'surely' ? 'sure' : in_range === 'not surely' ? 'if' : 'out';
}

/** Broken rules that are told one by one; of further ones only how many there are. */
const TOLD = 3;

function whyOut({ total, breaches }: Pick<Evaluation, 'total' | 'breaches'>): Because[] {
  const t = words().verdict;
  return [
    ...(isWhole(total) ? [] : [{ kind: 'partial' as const, total, sentence: t.notWhole(total) }]),
    ...breaches.map(({ pointer, sentence }) => ({ kind: 'broken' as const, pointer, sentence })),
  ];
}

function whyNotSure({ reservations }: Pick<Evaluation, 'reservations'>): Because[] {
  if (!reservations) return [];
  const t = words().verdict;
  const { unproven, no_spread, chance } = reservations;
  return [
    ...unproven.map((u) => ({ kind: 'unproven' as const, ...u, sentence: unprovenSentence(u) })),
    ...(no_spread ? [{ kind: 'spreadless' as const, sentence: t.noSpread }] : []),
    ...(chance === undefined ? [] : [{ kind: 'chance' as const, chance, sentence: t.chance(chance) }]),
  ];
}

function headOf(state: VerdictState, because: readonly Because[]): string {
  const t = words().verdict.head;
  if (state === 'sure') return t.sure;
  if (state === 'out') return t.out;
  const kinds = new Set(because.map((b) => b.kind));
  if (kinds.has('unproven')) return t.ifKnown;
  return kinds.has('spreadless') ? t.ifFigures : t.ifAverage;
}

function restOf(
  { ruled }: Pick<Evaluation, 'ruled'>,
  because: readonly Because[],
  state: VerdictState,
): string {
  const t = words().verdict;
  if (state === 'out') {
    const told = because.slice(0, TOLD).map(({ sentence }) => sentence);
    const more = because.length - told.length;
    return [...told, ...(more > 0 ? [t.moreBroken(more)] : [])].join(' ');
  }
  // What is not proven comes first; a long list of it would bury the rest.
  const open = because.filter(({ kind }) => kind === 'unproven');
  const others = because.filter(({ kind }) => kind !== 'unproven').map(({ sentence }) => sentence);
  const told = open.slice(0, 1).map(({ sentence }) => sentence);
  const more = open.length - told.length;
  return [
    ...(open.length > 0 ? [] : [inRange(ruled)]),
    ...told,
    ...(more > 0 ? [t.moreUnproven(more)] : []),
    ...others,
  ].join(' ');
}

function inRange(ruled: Evaluation['ruled']): string {
  const t = words().verdict;
  const { list } = words().figures;
  const parts = ruled.map(({ on, nutrients }) =>
    t.of[on](list(nutrients.map((tag, i) => nutrientName(tag, i > 0)))),
  );
  return parts.length === 0 ? t.noRuleBroken : `${capital(list(parts))}.`;
}

/** What of a rule is not proven, and whose figure it is: "Fat is not proven: Pellet says at least 4 %." */
function unprovenSentence({ nutrients, figures }: Unproven): string {
  const t = words().verdict.unproven;
  const [first] = figures;
  const [top = '', bottom] = nutrients.map((tag, i) => nutrientName(tag, i > 0));
  const what = bottom === undefined ? top : t.ratio(top, bottom);
  if (!first) return t.bare(what);
  const foods = new Set(figures.map((f) => f.food)).size;
  const more = foods - 1;
  const { nutrient, guaranteed, end } = first;
  if (guaranteed !== undefined) {
    const says = end === 'most' ? t.saysAtLeast : t.saysAtMost;
    return says(what, first.name, amountWords(guaranteed, nutrient), more);
  }
  return t.nobodySays(what, nutrientName(nutrient, true), first.name, more);
}

function settleOf({
  in_range,
  reservations,
}: Pick<Evaluation, 'in_range' | 'reservations'>): Settle | undefined {
  if (in_range !== 'not surely') return undefined;
  const figure = reservations?.unproven[0]?.figures[0];
  if (!figure) return undefined;
  const t = words().verdict.settle;
  const name = nutrientName(figure.nutrient, true);
  const enough = enoughWords(figure);
  const plain = figure.end === 'most' ? t.most : t.least;
  const exact = figure.end === 'most' ? t.mostEnough : t.leastEnough;
  return {
    ...figure,
    sentence: enough === undefined ? plain(name, figure.name) : exact(name, figure.name, enough),
  };
}

/** The guarantee that would be enough, where it can be told from what the label says already. */
function enoughWords({ enough, guaranteed, end, nutrient }: OpenFigure): string | undefined {
  if (enough === undefined) return undefined;
  // Rounded to the safe side: what is written must be enough.
  const digits = 10 ** (enough >= 10 ? 1 : 2);
  const safe = (end === 'most' ? Math.floor(enough * digits) : Math.ceil(enough * digits)) / digits;
  const other = guaranteed ?? (end === 'most' ? 0 : Number.POSITIVE_INFINITY);
  if (end === 'most' ? safe <= other : safe >= other) return undefined;
  return amountWords(safe, nutrient);
}

function amountWords(value: number, tag: Tag): string {
  return words().verdict.amount(value, unitWords(tag));
}

/** A nutrient's name. @param within whether it stands in the middle of a sentence */
function nutrientName(tag: Tag, within: boolean): string {
  return within ? countedWord(tag) : countedName(tag);
}
