/** Says when another Pouchful than this page runs on the server; the keeper says when to load it. */

import { useEffect, useState } from 'react';
import { words } from '../../words/words.ts';
import { Button } from '../shared/plain/Button.tsx';
import { reloadKeepingTyped } from '../shared/typing/typed-text.ts';
import { useServerBuild } from '../store/household.ts';
import { useEngineState } from '../worker/engine.ts';
import { OWN_BUILD, servedBuild } from './build.ts';
import './trouble.css';

export function NewerBuild() {
  const t = words().frame.newer;
  const told = useServerBuild();
  const asked = useBuildAfterTrouble();
  const served = asked || told;
  if (!served || !OWN_BUILD || served === OWN_BUILD) return null;
  return (
    <section className="trouble" role="status" aria-label={t.title}>
      <p>{t.text}</p>
      <Button className="button" onPress={reloadKeepingTyped}>
        {t.load}
      </Button>
    </section>
  );
}

/** A file of this page that is gone may have gone with an update: then the server is asked what it serves now. */
function useBuildAfterTrouble(): string {
  const [served, setServed] = useState('');
  const gone = useEngineState().state.is === 'gone';
  useEffect(() => {
    const ask = () => void servedBuild().then(setServed);
    if (gone) ask();
    window.addEventListener('vite:preloadError', ask);
    return () => window.removeEventListener('vite:preloadError', ask);
  }, [gone]);
  return served;
}
