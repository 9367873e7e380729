/** The second question of a night: was there a hoard? It may be left out. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Remains } from '../../../care/model.ts';
import { words } from '../../../words/words.ts';
import { RemainsForm } from './RemainsForm.tsx';
import type { LeftFood } from './view-model.ts';

export function HoardQuestion(props: {
  /** As it was noted; undefined where nobody looked. */
  hoard: Remains | undefined;
  foods: readonly LeftFood[];
  onKeep(hoard: Remains): void;
}) {
  const t = words().leftovers.hoard;
  const [found, setFound] = useState(false);
  if (props.hoard && !found)
    return (
      <Button className="quiet-button" onPress={() => setFound(true)}>
        {t.correct}
      </Button>
    );
  return (
    <section className="left-hoard" aria-label={t.title}>
      <h4>{t.title}</h4>
      <p className="hint">{t.hint}</p>
      {found ? (
        <>
          <p className="hint">{t.keepSome}</p>
          <RemainsForm
            label={t.taken}
            foods={props.foods}
            before={props.hoard}
            byEye={false}
            onKeep={props.onKeep}
            onCancel={() => setFound(false)}
          />
        </>
      ) : (
        <div className="button-row">
          <Button className="button" onPress={() => props.onKeep({ grams: 0 })}>
            {t.none}
          </Button>
          <Button className="button" onPress={() => setFound(true)}>
            {t.found}
          </Button>
        </div>
      )}
    </section>
  );
}
