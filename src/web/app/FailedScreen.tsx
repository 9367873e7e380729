/** In the place of a screen that failed: what failed, what was typed on it, and every way on. */
import { useEffect, useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import { linkTo } from '../shared/route.ts';
import { reloadKeepingTyped, typedHere } from '../shared/typed-text.ts';
import { copied, failureReport } from './failure-report.ts';
import { PLACES } from './navigation.tsx';
import { TypedList } from './TypedText.tsx';
import './trouble.css';

interface Props {
  error: unknown;
  /** Its name in the address. */
  place: string;
  /** Draws the screen anew. */
  again(): void;
}

export function FailedScreen({ error, place, again }: Props) {
  const [typed] = useState(typedHere);
  const [told, tell] = useState('');
  const head = useRef<HTMLHeadingElement>(null);
  const report = failureReport(error, place);
  // Who cannot see the page hears that it is another one now.
  useEffect(() => head.current?.focus(), []);

  return (
    <main id="main" className="page" data-failed>
      <h1 ref={head} tabIndex={-1}>
        This screen could not be shown
      </h1>
      <p role="alert">
        Something in it failed: {error instanceof Error ? error.message : String(error)}. What is kept is not
        touched by this, and the other screens go on.
      </p>
      <div className="button-row">
        <Button className="button strong" onPress={again}>
          Try again
        </Button>
        <Button className="button" onPress={reloadKeepingTyped}>
          Reload the page
        </Button>
        <Button
          className="button"
          onPress={async () =>
            tell((await copied(report)) ? 'The report is copied.' : 'It could not be copied: mark it below.')
          }
        >
          Copy the report
        </Button>
      </div>
      <p role="status">{told}</p>
      <p>
        If it began with something that was changed lately:{' '}
        <a href={linkTo('household', 'changes')}>look at what was changed, and take it back</a>.
      </p>
      {typed.length > 0 && (
        <section aria-label="What was typed here">
          <h2>What was typed here</h2>
          <TypedList typed={typed} />
        </section>
      )}
      <h2>Other screens</h2>
      <ul className="ways-on">
        {PLACES.filter(([p]) => p !== place).map(([p, words]) => (
          <li key={p}>
            <a href={linkTo(p)}>{words}</a>
          </li>
        ))}
      </ul>
      <details>
        <summary>The report</summary>
        <pre className="report">{report}</pre>
      </details>
    </main>
  );
}
