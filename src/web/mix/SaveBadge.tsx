/** Whether the mix is kept; a failed save stays in sight until it succeeds. */
import { Button } from 'react-aria-components';
import { words } from '../../words/words.ts';
import type { SaveState } from '../store/save-state.ts';

export function SaveBadge({ state, retry }: { state: SaveState; retry(): void }) {
  const t = words().mix.save;
  if (state.is === 'failed') {
    return (
      <div className="save failed" role="alert">
        {t.notSaved(state.message)}
        <Button className="quiet-button small" onPress={retry}>
          {t.tryNow}
        </Button>
      </div>
    );
  }
  if (state.is === 'refused') {
    return (
      <div className="save failed" role="alert">
        {t.refused(state.message)}
      </div>
    );
  }
  return <span className="save">{state.is === 'saved' ? t.saved : t.saving}</span>;
}
