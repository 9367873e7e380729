/** Says when the worker is gone, lacks what it works with, or takes too long; starts it again on request. */

import { useQueryClient } from '@tanstack/react-query';
import { words } from '../../words/words.ts';
import { Button } from '../shared/plain/Button.tsx';
import { useEngineState } from '../worker/engine.ts';
import type { LineState } from '../worker/worker-line.ts';
import './trouble.css';

export function EngineTrouble() {
  const { state, restart } = useEngineState();
  const queries = useQueryClient();
  if (state.is === 'well') return null;

  function again() {
    restart();
    // What failed with the old worker is asked of the new one.
    void queries.refetchQueries({ predicate: (query) => query.state.status === 'error' });
  }

  return (
    <section className="trouble" role="alert" aria-label={words().frame.worker.title}>
      <p>{wordsOf(state)}</p>
      <Button className="button" onPress={again}>
        {state.is === 'slow' ? words().frame.worker.stopAndTry : words().common.tryAgain}
      </Button>
    </section>
  );
}

function wordsOf(state: LineState): string {
  const t = words().frame.worker;
  switch (state.is) {
    case 'gone':
      return t.gone(state.why);
    case 'lacking':
      return t.lacking(state.why);
    case 'slow':
      return t.slow;
    case 'well':
      return '';
  }
}
