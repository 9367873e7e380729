/** Changes of what is written down of an animal, each told in words and with a way back. */
import { useState } from 'react';
import type { Kept } from '../../../household/model.ts';
import { words } from '../../../words/words.ts';
import { useRemove, useSave } from '../../store/household.ts';

export interface Said {
  readonly words: string;
  /** Absent once there is nothing to take back. */
  undo?(): void;
}

/** @param kind of what is changed */
export function useTold<K extends 'weighings' | 'notes'>(kind: K) {
  const save = useSave(kind);
  const erase = useRemove(kind);
  const [said, say] = useState<Said>();

  function told(after: string, back: () => void): void {
    const undo = () => {
      back();
      say({ words: words().lifeline.undone });
    };
    say({ words: after, undo });
  }
  return {
    said,
    error: save.error ?? erase.error,
    /** @param after what is said once it is done */
    add(one: Kept<K>, after: string) {
      save.mutate(one, undefined);
      told(after, () => erase.mutate(one));
    },
    change(next: Kept<K>, before: Kept<K>, after: string) {
      save.mutate(next, before);
      told(after, () => save.mutate(before, next));
    },
    remove(one: Kept<K>, after: string) {
      erase.mutate(one);
      told(after, () => save.mutate(one, undefined));
    },
  };
}
