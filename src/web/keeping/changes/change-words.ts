/** Lines of the history in plain words. */

import type { Difference } from '../../../household/merge/differences.ts';
import type { Change } from '../../../household/records.ts';
import { dayInWords } from '../../../kitchen/days.ts';
import { words } from '../../../words/words.ts';
import { dayAt } from '../../shared/today.ts';
import { fieldWords, itemName, type Names, valueWords } from '../../store/conflict-words.ts';

/** "Changed: the pack “Millet”". */
export function changeWords({ what, kind, name }: Pick<Change, 'what' | 'kind' | 'name'>): string {
  const { keeping, household } = words();
  return keeping.changes.did[what](household.things[kind](name));
}

/** What the press that undoes a change is called. */
export function undoWords({ what, newest }: Pick<Change, 'what' | 'newest'>): string {
  const t = words().keeping.changes;
  return what === 'deleted' && newest ? t.bringBack : t.takeBack;
}

/** "14:30" of the keeper's own day. */
export function timeWords(at: string): string {
  const moment = new Date(at);
  return words().figures.clock(moment.getHours(), moment.getMinutes());
}

/** Changes by the keeper's day, in their order, with the day in words. */
export function byDay<T extends Pick<Change, 'at'>>(changes: readonly T[], today: string): [string, T[]][] {
  const days = new Map<string, T[]>();
  for (const change of changes) {
    const day = dayAt(change.at);
    const said = day === today ? words().keeping.changes.today : dayInWords(day, today);
    days.set(said, [...(days.get(said) ?? []), change]);
  }
  return [...days];
}

export interface DifferenceRow {
  readonly what: string;
  readonly was: string;
  readonly is: string;
}

export function differenceRow({ path, was, is }: Difference, names: Names): DifferenceRow {
  const t = words().keeping.changes;
  const steps = path.map((step) =>
    typeof step === 'string' ? fieldWords(step, names) : itemName(step.item, names),
  );
  return {
    // Of a share only its food need be named: most changes of a mix are shares.
    what:
      path[0] === 'shares' && steps.length > 1 ? t.share(steps.at(-1) ?? '') : steps.join(', ') || t.allOfIt,
    was: valueWords(was, names),
    is: valueWords(is, names),
  };
}
