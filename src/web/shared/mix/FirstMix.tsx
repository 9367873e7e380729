/** Where no mix is kept yet. */

import { Button } from 'react-aria-components';
import { words } from '../../../words/words.ts';
import { useFirstMix } from './useFirstMix.ts';

export function FirstMix() {
  const t = words().shared.firstMix;
  const start = useFirstMix();
  return (
    <main id="main" className="page">
      <h1>{t.title}</h1>
      <p>{t.text}</p>
      <Button className="big-button" onPress={start}>
        {t.start}
      </Button>
    </main>
  );
}
