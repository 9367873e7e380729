/** A part of a page that can fail by itself: what cannot be shown says so in its place, and the rest stays. */

import type { ReactNode } from 'react';
import { ErrorBoundary } from 'react-error-boundary';
import { words } from '../../../words/words.ts';
import { linkTo } from '../route.ts';
import { Sentence } from '../words/Sentence.tsx';

/** @param what it is in a sentence: "This lot" @param of what it shows; another one is tried anew */
export function Contained({ what, of, children }: { what: string; of: unknown; children: ReactNode }) {
  return (
    <ErrorBoundary
      resetKeys={[of]}
      fallbackRender={({ error }) => (
        <p role="alert" className="field-error">
          <Sentence
            of={words().shared.contained(what, error instanceof Error ? error.message : String(error))}
            with={{ changes: (text) => <a href={linkTo('household', 'changes')}>{text}</a> }}
          />
        </p>
      )}
    >
      {children}
    </ErrorBoundary>
  );
}
