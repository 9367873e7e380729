/** What else may be done at the step of a food: no more of it, without it, another one first; and how the scale reads. */
import { useState } from 'react';
import type { NextPour } from '../../kitchen/weighing/weigh-state.ts';
import { words } from '../../words/words.ts';
import { Choice } from '../shared/Choice.tsx';
import { Button } from '../shared/plain/Button.tsx';
import { Radios } from '../shared/Radios.tsx';
import type { ScaleReads } from './view-model.ts';

/** Stands for a food that is none of the batch's. */
const STRANGER = ' ';

export function OtherWays(props: {
  next: NextPour;
  busy: boolean;
  instead: boolean;
  asked: string | undefined;
  others: readonly (readonly [id: string, words: string])[];
  onChoose(food: string | undefined): void;
  onNoMore(): void;
  onLeaveOut(): void;
  reads: ScaleReads;
  onReads(reads: ScaleReads): void;
}) {
  const { next, busy, instead, asked } = props;
  const t = words().weighing.step;
  const [leaving, setLeaving] = useState(false);
  /** Whether a food went in that the mix does not name. */
  const [stranger, setStranger] = useState(false);
  return (
    <>
      <div className="weigh-ways">
        <Button className="button" isDisabled={busy} onPress={props.onNoMore}>
          {t.noMore}
        </Button>
        {instead ? (
          <Button className="button" onPress={() => props.onChoose(undefined)}>
            {t.backTo(asked)}
          </Button>
        ) : (
          <Button
            className="button"
            isDisabled={busy}
            onPress={() => (leaving ? props.onLeaveOut() : setLeaving(true))}
          >
            {leaving ? (next.again ? t.leaveOutMoreSure : t.leaveOutSure)(next.name) : t.leaveOut}
          </Button>
        )}
      </div>
      {leaving && <p role="status">{t.leaveOutHelp}</p>}
      {!instead && (
        <Choice<string>
          label={t.other}
          value={stranger ? STRANGER : ''}
          options={[['', t.choose] as const, ...props.others, [STRANGER, t.stranger] as const]}
          onChange={(food) => {
            setStranger(food === STRANGER);
            if (food !== '' && food !== STRANGER) props.onChoose(food);
          }}
        />
      )}
      {stranger && (
        <p role="status" className="weigh-warn">
          <span aria-hidden="true">!</span> {t.strangerHelp}
        </p>
      )}
      <Radios
        label={t.reads}
        value={props.reads}
        options={[
          ['food', t.readsFood],
          ['bowl', t.readsBowl],
        ]}
        onChange={props.onReads}
      />
    </>
  );
}
