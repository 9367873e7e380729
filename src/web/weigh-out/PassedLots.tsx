/** Lots that hold a food and may not be weighed out: why not, and the keeper's choice to do it all the same. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Allocation } from '../../kitchen/cupboard/cupboard.ts';
import { TreatmentOverride } from '../shared/lots/TreatmentOverride.tsx';
import { linkTo } from '../shared/route.ts';
import { gramWords } from '../shared/words/gram-words.ts';

export function PassedLots(props: {
  passed: Allocation['passed'];
  /** Once a lot may be weighed out after all; g that it holds. */
  onOverruled?(food: string, grams: number): void;
}) {
  const [asking, setAsking] = useState<string>();
  if (props.passed.length === 0) return null;
  return (
    <ul className="weigh-passed" aria-label="Lots that may not be weighed out">
      {props.passed.map(({ lot, grams, why, wayOut }) => (
        <li key={lot.id} data-lot={lot.id}>
          <p>
            <span aria-hidden="true">✕</span> <a href={linkTo('cupboard', lot.id)}>{lot.name}</a>{' '}
            {why.startsWith(`${lot.name} `)
              ? `(${gramWords(grams)}) ${why.slice(lot.name.length + 1)}`
              : `(${gramWords(grams)}): ${why}`}{' '}
            {wayOut}
          </p>
          {!lot.barred &&
            lot.form !== 'fresh' &&
            (asking === lot.id ? (
              <TreatmentOverride
                lot={lot}
                onClose={() => setAsking(undefined)}
                onOverruled={() => props.onOverruled?.(lot.food, grams)}
              />
            ) : (
              <Button className="quiet-button ask-overrule" onPress={() => setAsking(lot.id)}>
                Weigh {lot.name} out without the cold…
              </Button>
            ))}
        </li>
      ))}
    </ul>
  );
}
