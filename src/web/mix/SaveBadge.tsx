/** Whether the mix is kept; a failed save stays in sight until it succeeds. */
import { Button } from 'react-aria-components';
import type { SaveState } from '../store/save-state.ts';

export function SaveBadge({ state, retry }: { state: SaveState; retry(): void }) {
  if (state.is === 'failed') {
    return (
      <div className="save failed" role="alert">
        Not saved: {state.message} Trying again.
        <Button className="quiet-button small" onPress={retry}>
          Try now
        </Button>
      </div>
    );
  }
  if (state.is === 'refused') {
    return (
      <div className="save failed" role="alert">
        Not saved, and taken back: {state.message}
      </div>
    );
  }
  return <span className="save">{state.is === 'saved' ? 'Saved' : 'Saving…'}</span>;
}
