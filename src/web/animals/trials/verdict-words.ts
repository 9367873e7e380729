/** A verdict in sentences: what it is, how sure, and what would settle it. */
import type { Between, Verdict } from '../../../care/trials/verdict.ts';
import type { TriedFood } from '../../../household/reckon/care/trials-of.ts';
import { words } from '../../../words/words.ts';

/** What holds of the food, in one sentence. */
export function verdictWords(animal: string, { name, judged }: TriedFood): string {
  const t = words().trials.verdict;
  if (judged.is === 'undecided') return t.undecided;
  if (judged.is === 'refused' && judged.verdict.is === 'undecided') return t.stillRefused(animal, name);
  if (judged.is === 'liked' && judged.verdict.is === 'undecided') return t.stillLiked(animal, name);
  return t[judged.is](animal, name);
}

/** How sure that is, one sentence each; nothing before the first look, and nothing after an upset alone. */
export function sureWords({ chance, span, more, evidence, is }: Verdict): string[] {
  const t = words().trials.verdict;
  const looks = evidence.eaten + evidence.left + evidence.unknown;
  if (looks === 0) return evidence.upset ? [] : [t.noLooks];
  const [low, high] = inPercent(chance);
  return [
    Math.round(low) === Math.round(high) ? t.chance(low) : t.chanceBetween(low, high),
    t.span(...inPercent(span)),
    ...(is === 'undecided' ? [t.more(more.eaten, more.left)] : []),
  ];
}

/** Nothing that is found by looking is wholly sure: 0 and 100 are not said. */
export function inPercent([low, high]: Between): [low: number, high: number] {
  return [kept(low), kept(high)];
}

function kept(part: number): number {
  return Math.min(99, Math.max(1, Math.round(100 * part)));
}
