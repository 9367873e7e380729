/** Mixes and batches by what their foods are called alone. */
import type { Household } from '../../model.ts';

type Kept = Pick<Household, 'mixes' | 'batches'>;

/** The list as it was asked about before, found by the problem of its first. */
function asBefore<One extends { readonly problem: object }>(): (list: readonly One[]) => readonly One[] {
  const before = new WeakMap<object, readonly One[]>();
  return (list) => {
    const [first] = list;
    if (first === undefined) return list;
    const was = before.get(first.problem);
    if (was?.length === list.length && was.every((one, i) => one.problem === list[i]?.problem)) return was;
    before.set(first.problem, list);
    return list;
  };
}

const mixesBefore = asBefore<Kept['mixes'][number]>();
const batchesBefore = asBefore<Kept['batches'][number]>();

/**
 * Lists of which no more than the problems may be read: the very ones that were asked about before, where nothing but
 * shares and pours has changed since. What foods are called need not be gathered anew with every move of a slider and
 * every pour.
 */
export function sameProblems({ mixes, batches }: Kept): Kept {
  return { mixes: mixesBefore(mixes), batches: batchesBefore(batches) };
}
