/** In the place of a screen that failed: what failed, what was typed on it, and every way on. */

import { useEffect, useRef, useState } from 'react';
import { words } from '../../words/words.ts';
import { Button } from '../shared/plain/Button.tsx';
import { linkTo } from '../shared/route.ts';
import { reloadKeepingTyped, typedHere } from '../shared/typing/typed-text.ts';
import { Sentence } from '../shared/words/Sentence.tsx';
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
  const t = words().frame.failed;
  const [typed] = useState(typedHere);
  const [told, tell] = useState('');
  const head = useRef<HTMLHeadingElement>(null);
  const report = failureReport(error, place);
  // Who cannot see the page hears that it is another one now.
  useEffect(() => head.current?.focus(), []);

  return (
    <main id="main" className="page" data-failed>
      <h1 ref={head} tabIndex={-1}>
        {t.screen}
      </h1>
      <p role="alert">{t.inScreen(error instanceof Error ? error.message : String(error))}</p>
      <div className="button-row">
        <Button className="button strong" onPress={again}>
          {words().common.tryAgain}
        </Button>
        <Button className="button" onPress={reloadKeepingTyped}>
          {t.reload}
        </Button>
        <Button
          className="button"
          onPress={async () => tell((await copied(report)) ? t.copied : t.notCopied)}
        >
          {t.copy}
        </Button>
      </div>
      <p role="status">{told}</p>
      <p>
        <Sentence
          of={t.lately}
          with={{ changes: (text) => <a href={linkTo('household', 'changes')}>{text}</a> }}
        />
      </p>
      {typed.length > 0 && (
        <section aria-label={words().frame.typed.here}>
          <h2>{words().frame.typed.here}</h2>
          <TypedList typed={typed} />
        </section>
      )}
      <h2>{t.others}</h2>
      <ul className="ways-on">
        {PLACES.filter((p) => p !== place).map((p) => (
          <li key={p}>
            <a href={linkTo(p)}>{words().frame.places[p].long}</a>
          </li>
        ))}
      </ul>
      <details>
        <summary>{t.report}</summary>
        <pre className="report">{report}</pre>
      </details>
    </main>
  );
}
