/** All is poured: whether it is in range, who made it, and the end. */

import type { ReactNode } from 'react';
import { words } from '../../words/words.ts';
import { FeedNote } from '../shared/hands/WeighingHands.tsx';
import { Button } from '../shared/plain/Button.tsx';
import { Maker, useMaker } from './Maker.tsx';

export function FinishBatch(props: {
  total: number;
  busy: boolean;
  finish(madeBy: string | undefined): void;
  /** The verdict on what lies in the bowl. */
  children: ReactNode;
}) {
  const t = words().weighing.finish;
  const [maker, setMaker, rememberMaker] = useMaker();
  return (
    <section className="weigh-step" aria-label={t.region}>
      <h2>{t.heading(props.total)}</h2>
      {props.children}
      <FeedNote />
      <Maker name={maker} onChange={setMaker} />
      <Button
        className="big-button weigh-poured"
        isDisabled={props.busy}
        onPress={() => {
          rememberMaker();
          props.finish(maker.trim() || undefined);
        }}
      >
        {t.press}
      </Button>
    </section>
  );
}
