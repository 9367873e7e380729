/** Lots that hold a food and may not be weighed out: why not, and the keeper's choice to do it all the same. */
import { useState } from 'react';
import type { Allocation } from '../../kitchen/cupboard/cupboard.ts';
import { words } from '../../words/words.ts';
import { TreatmentOverride } from '../shared/lots/TreatmentOverride.tsx';
import { Button } from '../shared/plain/Button.tsx';
import { linkTo } from '../shared/route.ts';

export function PassedLots(props: {
  passed: Allocation['passed'];
  /** Once a lot may be weighed out after all; g that it holds. */
  onOverruled?(food: string, grams: number): void;
}) {
  const [asking, setAsking] = useState<string>();
  const t = words().weighing.lots;
  if (props.passed.length === 0) return null;
  return (
    <ul className="weigh-passed" aria-label={t.passed}>
      {props.passed.map(({ lot, grams, why, wayOut }) => (
        <li key={lot.id} data-lot={lot.id}>
          <p>
            <span aria-hidden="true">✕</span> <a href={linkTo('cupboard', lot.id)}>{lot.name}</a>{' '}
            {t.why(grams, why, wayOut ?? '')}
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
                {t.goAhead(lot.name)}
              </Button>
            ))}
        </li>
      ))}
    </ul>
  );
}
