/** What can no longer be saved, and what can be done now. */
import { useEffect, useRef, useState } from 'react';
import type { Lost } from '../../kitchen/weighing/weigh-state.ts';
import { words } from '../../words/words.ts';
import { Button } from '../shared/plain/Button.tsx';
import { TextInput } from '../shared/plain/TextInput.tsx';
import { Maker, useMaker } from './Maker.tsx';

export function LostBatch(props: {
  lost: Lost;
  /** All is poured, so there is nothing to go on with. */
  done: boolean;
  busy: boolean;
  accept(reason: string, madeBy: string | undefined): void;
  grow: (() => void) | undefined;
  again(): Promise<void>;
  /** Whether the news takes the focus, so that it is in sight. */
  focus: boolean;
}) {
  const { lost, done, busy, accept, grow, again, focus } = props;
  const t = words().weighing.lost;
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (focus) heading.current?.focus();
  }, [focus]);
  const [reason, setReason] = useState('');
  const [asked, setAsked] = useState(false);
  const [sure, setSure] = useState(false);
  const [fault, setFault] = useState('');
  const [maker, setMaker, rememberMaker] = useMaker();
  const missing = asked && reason.trim() === '';
  return (
    <section className="weigh-lost" aria-label={t.region}>
      <h2 ref={heading} tabIndex={-1}>
        <span aria-hidden="true">!</span> {t.heading}
      </h2>
      <p role="alert">{lost.sentence}</p>
      {lost.larger && <p>{lost.larger.sentence}</p>}
      {grow && (
        <Button className="button" isDisabled={busy} onPress={grow}>
          {lost.larger && Object.keys(lost.larger.needed).length === 0
            ? t.grow(lost.larger.total)
            : t.growWithMore}
        </Button>
      )}
      {!done && <p>{t.goOn}</p>}
      <TextInput
        label={t.why}
        value={reason}
        onChange={setReason}
        maxLength={500}
        fault={missing ? t.whyMissing : ''}
      />
      <Maker name={maker} onChange={setMaker} />
      <div className="button-row">
        <Button
          className="button"
          isDisabled={busy}
          onPress={() => {
            if (reason.trim() === '') return setAsked(true);
            rememberMaker();
            accept(reason.trim(), maker.trim() || undefined);
          }}
        >
          {t.accept}
        </Button>
        <Button
          className="button"
          isDisabled={busy}
          onPress={() => (sure ? void again().catch((e: Error) => setFault(e.message)) : setSure(true))}
        >
          {sure ? t.againSure : t.again}
        </Button>
      </div>
      {fault && <p role="alert">{t.againFailed(fault)}</p>}
      {sure && <p role="status">{t.againHelp}</p>}
    </section>
  );
}
