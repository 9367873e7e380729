/** Whether what was changed of a kind of things is kept. */
import type { Kind } from '../../household/model.ts';
import type { KeeperView } from './sync/keeper-parts.ts';

export type SaveState =
  | { readonly is: 'saved' }
  | { readonly is: 'saving' }
  /** Tried again by itself. */
  | { readonly is: 'failed'; readonly message: string }
  /** Taken back. */
  | { readonly is: 'refused'; readonly message: string };

/** @param id of the thing at hand: what was refused of another says nothing of it */
export function saveState(
  { waiting, trouble, refusals }: KeeperView,
  kind: Kind,
  id: string | undefined,
): SaveState {
  const refused = refusals.find((r) => r.change.kind === kind && r.change.id === id && !r.isPast);
  if (refused) return { is: 'refused', message: refused.message };
  const waits = waiting.some((change) => change.kind === kind && !change.theirs);
  if (!waits) return { is: 'saved' };
  return trouble === undefined ? { is: 'saving' } : { is: 'failed', message: trouble };
}
