/** A word of the trade with a small "?" that says what it means, in place. */
import { useId, useState } from 'react';
import { type Words, words } from '../../../words/words.ts';
import './Term.css';

/** @param of the word @param children how it stands here, where that is not the word itself */
export function Term({ of, children }: { of: keyof Words['terms']; children?: string }) {
  const [open, setOpen] = useState(false);
  const id = useId();
  const { word, help } = words().terms[of];
  return (
    <span className="term">
      {children ?? word}
      <button
        type="button"
        className="term-help"
        aria-expanded={open}
        aria-controls={id}
        aria-label={words().shared.whatIs(children ?? word)}
        onClick={() => setOpen(!open)}
        onKeyDown={(e) => e.key === 'Escape' && setOpen(false)}
      >
        <span className="term-mark">?</span>
      </button>
      <span id={id} role="note" hidden={!open}>
        {help}
      </span>
    </span>
  );
}
