/** Long lists, shown in parts: what comes first, how many there are, and a button for more. */
import { type ReactNode, useRef, useState } from 'react';
import { Button } from 'react-aria-components';
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
 * @param p.part how many at first, and how many more at each press @param p.of what they are: "lots"
 * @param p.from what the list is made for, a search say: for another one it begins with its first part again
 * @param p.always one that is shown wherever it stands, since its page is open beside the list
 */
export function useParts<T>(
  all: readonly T[],
  p: { readonly part: number; readonly of: string; readonly from?: string; always?(one: T): boolean },
): Parts<T> {
  const { part, of, from = '', always } = p;
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
          {start === 0 && left > 0
            ? `Showing ${counted(end)} of ${counted(all.length)} ${of}`
            : start > 0
              ? `Showing ${counted(start + 1)} to ${counted(end)} of ${counted(all.length)} ${of}`
              : `All ${counted(all.length)} ${of} are shown`}
        </p>
        {left > 0 && (
          <Button className="button small" onPress={() => go(parts + 1, left <= part)}>
            Show {counted(Math.min(part, left))} more {of}
          </Button>
        )}
        {start > 0 && (
          <Button className="button small" onPress={() => go(1, true)}>
            Back to the first {counted(part)}
          </Button>
        )}
      </div>
    ),
  };
}

/** "1,900". */
const counted = (n: number) => n.toLocaleString('en');
