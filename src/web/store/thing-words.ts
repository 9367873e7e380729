/** What a message calls a thing of the household. */
import type { Kind } from '../../household/model.ts';
import { words } from '../../words/words.ts';
import type { Body } from './sync/change.ts';

/** @param states of the thing; the first that has a name gives it */
export function thingOf(kind: Kind, states: readonly (Body | undefined)[]): string {
  const { things, unnamed } = words().household;
  for (const state of states) if (state && 'name' in state) return things[kind](state.name);
  return unnamed[kind];
}
