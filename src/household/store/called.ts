/** What a message calls a record. */
import { words } from '../../words/words.ts';
import type { Kept, Kind } from '../model.ts';

/** By its name, where it has one. */
export function called(kind: Kind, body: Kept<Kind> | null): string {
  const { things, unnamed } = words().household;
  return body && 'name' in body ? things[kind](body.name) : unnamed[kind];
}
