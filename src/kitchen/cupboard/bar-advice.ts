/** What to mind with a pack that is not used any more. */
import { words } from '../../words/words.ts';
import { reasonOf } from './barred.ts';

/** What to mind with a lot that was barred for a reason like this; undefined where nothing is known. */
export function barAdvice(why: string): { readonly words: string; readonly source: string } | undefined {
  const reason = reasonOf(why);
  const t = words().cupboard.stop;
  return reason && { words: t.advice[reason], source: t.sources[reason] };
}
