/** A part of a page that can fail by itself: what cannot be shown says so in its place, and the rest stays. */
import type { ReactNode } from 'react';
import { ErrorBoundary } from 'react-error-boundary';
import { linkTo } from '../route.ts';

/** @param what it is in a sentence: "This lot" @param of what it shows; another one is tried anew */
export function Contained({ what, of, children }: { what: string; of: unknown; children: ReactNode }) {
  return (
    <ErrorBoundary
      resetKeys={[of]}
      fallbackRender={({ error }) => (
        <p role="alert" className="field-error">
          {what} cannot be shown ({error instanceof Error ? error.message : String(error)}). What changed it
          last stands in the <a href={linkTo('household', 'changes')}>history</a>.
        </p>
      )}
    >
      {children}
    </ErrorBoundary>
  );
}
