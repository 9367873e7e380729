/** What was typed and may be lost, to be read and copied. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { forgetTypedBefore, type Typed, typedBefore } from '../shared/typed-text.ts';

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
  const [typed, setTyped] = useState(typedBefore);
  if (typed.length === 0) return null;
  return (
    <section className="trouble" aria-label="Typed before the page was loaded anew">
      <p>Before this page was loaded anew, this was typed and may not be kept:</p>
      <TypedList typed={typed} />
      <Button
        className="button"
        onPress={() => {
          forgetTypedBefore();
          setTyped([]);
        }}
      >
        I do not need it any more
      </Button>
    </section>
  );
}
