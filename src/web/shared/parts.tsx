/** Long lists, shown in parts: what comes first, how many there are, and a button for more. */
import { type ReactNode, useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import './parts.css';

interface Parts<T> {
  readonly shown: readonly T[];
  /** Stands behind the list: the count and the button; null where all of it fits in one part. */
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
  const parts = asked.from === from ? asked.parts : 1;
  const most = parts * part;
  if (all.length <= part) return { shown: all, more: null };
  const first = all.slice(0, most);
  const apart = always && !first.some(always) ? all.slice(most).filter(always) : [];
  const left = all.length - first.length;
  return {
    shown: [...first, ...apart],
    more: (
      <div className="parts">
        <p ref={count} tabIndex={-1} className="hint" role="status">
          {left > 0
            ? `Showing ${counted(first.length)} of ${counted(all.length)} ${of}`
            : `All ${counted(all.length)} ${of} are shown`}
        </p>
        {left > 0 && (
          <Button
            className="button small"
            onPress={() => {
              ask({ from, parts: parts + 1 });
              // The button goes with the last part; the keyboard stays here.
              if (left <= part) count.current?.focus();
            }}
          >
            Show {counted(Math.min(part, left))} more {of}
          </Button>
        )}
      </div>
    ),
  };
}

/** "1,900". */
const counted = (n: number) => n.toLocaleString('en');
