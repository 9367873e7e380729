/** Why a lot is not used any more, and what to mind with it then. */
import { words } from '../../words/words.ts';

/** Reasons as they stand at the head of what is kept, whatever language is spoken. */
export const BAR_REASONS = ['recalled', 'infested', 'spoiled'] as const;

export type BarReason = (typeof BAR_REASONS)[number];

/** "infested: moths in the bag", as it is kept. */
export function barWords(reason: BarReason, note: string): string {
  return note.trim() ? `${reason}: ${note.trim()}` : reason;
}

/** The same as it is read, in the language spoken; a reason of another kind as it was written. */
export function sayBarred(why: string): string {
  const reason = reasonOf(why);
  if (reason === undefined) return why;
  const t = words().supply;
  const note = why
    .slice(reason.length)
    .replace(/^\s*:\s*/, '')
    .trim();
  return note ? t.withNote(t.reasons[reason], note) : t.reasons[reason];
}

/** Which of the three reasons a bar was kept for; undefined for any other words. */
export function reasonOf(why: string): BarReason | undefined {
  return BAR_REASONS.find((r) => why === r || why.startsWith(`${r}:`) || why.startsWith(`${r} `));
}
