/** Lines of the history in plain words. */

import type { Difference } from '../../../household/merge/differences.ts';
import type { Change } from '../../../household/records.ts';
import { dayInWords } from '../../../kitchen/days.ts';
import { dayAt } from '../../shared/today.ts';
import { fieldWords, itemName, KIND_WORDS, type Names, valueWords } from '../../store/conflict-words.ts';

/** "Changed the lot “Millet”". */
export function changeWords({ what, kind, name }: Pick<Change, 'what' | 'kind' | 'name'>): string {
  const thing = KIND_WORDS[kind].replace(/^The /, 'the ').replace(/^What /, 'what ');
  const verb = { made: 'Made', changed: 'Changed', deleted: 'Deleted', 'brought back': 'Brought back' }[what];
  return kind === 'kitchen' ? `${verb} ${thing}` : `${verb} ${thing} “${name}”`;
}

/** What the press that undoes a change is called. */
export function undoWords({ what, newest }: Pick<Change, 'what' | 'newest'>): string {
  return what === 'deleted' && newest ? 'Bring back' : 'Take back';
}

/** "14:30" of the keeper's own day. */
export function timeWords(at: string): string {
  return new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' }).format(new Date(at));
}

/** Changes by the keeper's day, in their order, with the day in words. */
export function byDay<T extends Pick<Change, 'at'>>(changes: readonly T[], today: string): [string, T[]][] {
  const days = new Map<string, T[]>();
  for (const change of changes) {
    const day = dayAt(change.at);
    const words = day === today ? 'Today' : dayInWords(day, today);
    days.set(words, [...(days.get(words) ?? []), change]);
  }
  return [...days];
}

export interface DifferenceRow {
  readonly what: string;
  readonly was: string;
  readonly is: string;
}

export function differenceRow({ path, was, is }: Difference, names: Names): DifferenceRow {
  const steps = path.map((step) =>
    typeof step === 'string' ? fieldWords(step, names) : itemName(step.item, names),
  );
  return {
    // Of a share only its food need be named: most changes of a mix are shares.
    what: path[0] === 'shares' && steps.length > 1 ? `${steps.at(-1)}, %` : steps.join(', ') || 'All of it',
    was: valueWords(was, names),
    is: valueWords(is, names),
  };
}
