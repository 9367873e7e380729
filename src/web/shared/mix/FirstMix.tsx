/** Where no mix is kept yet. */
import { Button } from 'react-aria-components';
import { useFirstMix } from './useFirstMix.ts';

export function FirstMix() {
  const start = useFirstMix();
  return (
    <main id="main" className="page">
      <h1>No mix yet</h1>
      <p>A mix begins with a target and a few foods; shares and grams are worked out from there.</p>
      <Button className="big-button" onPress={start}>
        Start a mix
      </Button>
    </main>
  );
}
