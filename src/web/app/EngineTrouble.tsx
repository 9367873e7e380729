/** Says when the worker is gone, lacks what it works with, or takes too long; starts it again on request. */
import { useQueryClient } from '@tanstack/react-query';
import { Button } from 'react-aria-components';
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
    <section className="trouble" role="alert" aria-label="What works out mixes is in trouble">
      <p>{wordsOf(state)}</p>
      <Button className="button" onPress={again}>
        {state.is === 'slow' ? 'Stop it and try again' : 'Try again'}
      </Button>
    </section>
  );
}

function wordsOf(state: LineState): string {
  switch (state.is) {
    case 'gone':
      return `The part of this page that works out mixes and finds foods has stopped (${state.why}). What is kept is safe; nothing new is worked out until it runs again.`;
    case 'lacking':
      return `${state.why} Without it nothing is worked out.`;
    case 'slow':
      return 'Something takes longer to work out than it should.';
    case 'well':
      return '';
  }
}
