/** Changes of an animal's weighings, each told in words and with a way back. */
import { useState } from 'react';
import type { Weighing } from '../../../care/model.ts';
import { words } from '../../../words/words.ts';
import { useRemove, useSave } from '../../store/household.ts';

export interface Said {
  readonly words: string;
  /** Absent once there is nothing to take back. */
  undo?(): void;
}

export function useWeighings() {
  const save = useSave('weighings');
  const remove = useRemove('weighings');
  const [said, say] = useState<Said>();

  function told(after: string, back: () => void): void {
    const undo = () => {
      back();
      say({ words: words().bodyWeight.undone });
    };
    say({ words: after, undo });
  }
  return {
    said,
    error: save.error ?? remove.error,
    /** @param after what is said once it is done */
    add(weighing: Weighing, after: string) {
      save.mutate(weighing, undefined);
      told(after, () => remove.mutate(weighing));
    },
    change(next: Weighing, before: Weighing, after: string) {
      save.mutate(next, before);
      told(after, () => save.mutate(before, next));
    },
    remove(weighing: Weighing, after: string) {
      remove.mutate(weighing);
      told(after, () => save.mutate(weighing, undefined));
    },
  };
}
