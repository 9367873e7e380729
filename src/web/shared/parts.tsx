/** Long lists, shown in parts: what comes first, how many there are, and a button for more. */

import { type ReactNode, useRef, useState } from 'react';
import { words } from '../../words/words.ts';
import { Button } from './plain/Button.tsx';
import './parts.css';

/** Parts that stand on the page at once: beyond that the first ones leave, so that a page never grows without end. */
const AT_ONCE = 2;

interface Parts<T> {
  readonly shown: readonly T[];
  /** Stands behind the list: the count and the buttons; null where all of it fits in one part. */
  readonly more: ReactNode;
}

/**
 * @param all in the order in which they are shown, what the keeper needs now first
 * @param p.part how many at first, and how many more at each press
 * @param p.from what the list is made for, a search say: for another one it begins with its first part again
 * @param p.always one that is shown wherever it stands, since its page is open beside the list
 */
export function useParts<T>(
  all: readonly T[],
  p: {
    readonly part: number;
    readonly from?: string;
    always?(one: T): boolean;
  },
): Parts<T> {
  const { part, from = '', always } = p;
  const t = words().shared.parts;
  const [asked, ask] = useState({ from, parts: 1 });
  const count = useRef<HTMLParagraphElement>(null);
  if (all.length <= part) return { shown: all, more: null };
  const parts = asked.from === from ? asked.parts : 1;
  const end = Math.min(all.length, parts * part);
  const start = Math.max(0, parts - AT_ONCE) * part;
  const within = all.slice(start, end);
  const apart = always && !within.some(always) ? all.filter(always) : [];
  const left = all.length - end;
  /** A button may go with what it shows; the keyboard then stays here. */
  const go = (to: number, goes: boolean) => {
    ask({ from, parts: to });
    if (goes) count.current?.focus();
  };
  return {
    shown: [...within, ...apart],
    more: (
      <div className="parts">
        <p ref={count} tabIndex={-1} className="hint" role="status">
          {start > 0
            ? t.later(start + 1, end, all.length)
            : left > 0
              ? t.first(end, all.length)
              : t.all(all.length)}
        </p>
        {left > 0 && (
          <Button className="button small" onPress={() => go(parts + 1, left <= part)}>
            {t.more(Math.min(part, left))}
          </Button>
        )}
        {start > 0 && (
          <Button className="button small" onPress={() => go(1, true)}>
            {t.back(part)}
          </Button>
        )}
      </div>
    ),
  };
}
