/** What was just done, or why it could not be, and the way back. */
import { useRef } from 'react';
import { Button } from 'react-aria-components';
import { words } from '../../../words/words.ts';
import type { Said } from './useTold.ts';
import './timeline.css';

export function SaidLine({ said, error }: { said: Said | undefined; error: Error | null }) {
  const line = useRef<HTMLParagraphElement>(null);
  return (
    <div className="said-line">
      <p ref={line} tabIndex={-1} aria-live="polite" className={error ? 'field-error' : undefined}>
        {error ? error.message : said?.words}
      </p>
      {said?.undo && !error && (
        <Button
          className="button small"
          onPress={() => {
            said.undo?.();
            // The button goes; the keyboard stays with what is said.
            line.current?.focus();
          }}
        >
          {words().common.undo}
        </Button>
      )}
    </div>
  );
}
