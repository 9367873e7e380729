/** What another device changes in a field while something is being typed into it is not written over unasked. */
import { useRef } from 'react';
import { words } from '../../../words/words.ts';
import { keeper } from '../../store/page-keeper.ts';

export interface Meanwhile {
  /** Something was typed. */
  typed(): void;
  /** Nothing is being typed any more. */
  done(): void;
  /** Whether the field would show something else since typing began, by a change from elsewhere; it then counts as told. */
  tell(): boolean;
}

/** @param shown what the field shows where nothing is being typed */
export function useChangedMeanwhile(shown: string): Meanwhile {
  const began = useRef<{ readonly shown: string; readonly news: number }>(undefined);
  const now = () => ({ shown, news: keeper.news() });
  return {
    typed() {
      began.current ??= now();
    },
    done() {
      began.current = undefined;
    },
    tell() {
      const then = began.current;
      if (!then || then.shown === shown || then.news === keeper.news()) return false;
      began.current = now();
      return true;
    },
  };
}

/** What is asked then. @param next what was typed */
export function meanwhileWords(label: string, shown: string, next: string): string {
  const t = words().shared.meanwhile;
  return shown === '' ? t.emptied(label, next) : t.changed(label, shown, next);
}
