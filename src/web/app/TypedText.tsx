/** What was typed and may be lost, to be read and copied. */

import { useState } from 'react';
import { words } from '../../words/words.ts';
import { Button } from '../shared/plain/Button.tsx';
import { forgetTypedBefore, type Typed, typedBefore } from '../shared/typing/typed-text.ts';

export function TypedList({ typed }: { typed: readonly Typed[] }) {
  return (
    <dl className="typed">
      {typed.map(({ label, text }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the list never changes.
        <div key={i}>
          <dt>{label}</dt>
          <dd>{text}</dd>
        </div>
      ))}
    </dl>
  );
}

/** After the page was loaded anew: what was typed before, until the keeper has seen it. */
export function TypedBefore() {
  const t = words().frame.typed;
  const [typed, setTyped] = useState(typedBefore);
  if (typed.length === 0) return null;
  return (
    <section className="trouble" aria-label={t.title}>
      <p>{t.text}</p>
      <TypedList typed={typed} />
      <Button
        className="button"
        onPress={() => {
          forgetTypedBefore();
          setTyped([]);
        }}
      >
        {t.done}
      </Button>
    </section>
  );
}
