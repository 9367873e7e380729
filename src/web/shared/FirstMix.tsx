/** Where no mix is kept yet. */
import { Button } from 'react-aria-components';
import { newMix } from '../../household/reckon/mix-edits.ts';
import { PROFILES } from '../../targets/profiles.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { newId } from '../store/new-id.ts';

export function FirstMix() {
  const { create } = useMixDraft();
  return (
    <main id="main" className="page">
      <h1>No mix yet</h1>
      <p>A mix begins with a target and a few foods; shares and grams are worked out from there.</p>
      <Button className="big-button" onPress={() => create(newMix(newId(), 'My mix', PROFILES[0]!))}>
        Start a mix
      </Button>
    </main>
  );
}
