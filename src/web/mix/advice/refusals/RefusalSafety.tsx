/** Whether any one food may be left, and the wish that it may. */

import { useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import type { DropOne } from '../../../../formulation/explain/drop-one.ts';
import type { Mix } from '../../../../household/model.ts';
import { withHolds } from '../../../../household/reckon/mix/mix-edits.ts';
import { withDropOne } from '../../../../household/reckon/mix/swaps.ts';
import { words } from '../../../../words/words.ts';
import { focusWhenThere } from '../../../shared/focus.ts';
import { useMixDraft } from '../../../store/mix-draft.tsx';
import { takesLong } from '../../../worker/lane.ts';
import { bestMixOf } from '../../live/useBestMix.ts';
import type { FormulationView } from '../../useFormulation.ts';
import { isFit } from '../../useFormulation.ts';

interface Props {
  mix: Mix;
  view: FormulationView;
  /** Undefined while it is worked out, or where the mix is not in range. */
  leftOut: DropOne | undefined;
  say(said: string): void;
}

export function RefusalSafety({ mix, view, leftOut, say }: Props) {
  const t = words().refusals.safety;
  const { change, current } = useMixDraft();
  const [busy, setBusy] = useState(false);
  const leaving = useRef(new AbortController());
  /** No mix is safe: shown as soon as the worker says so, while the page still works out which rules collide. */
  const [impossible, setImpossible] = useState(false);
  const wanted = mix.problem.drop_one === true;
  const none = view.state === 'none' || (impossible && !isFit(view.state));

  /** Wish and new shares in one step, so that one undo takes back both. */
  async function makeSafe() {
    setBusy(true);
    setImpossible(false);
    say('');
    const before = current();
    leaving.current = new AbortController();
    const sought = withHolds(withDropOne(mix, true));
    const answer = await bestMixOf(sought, leaving.current.signal).catch(() => undefined);
    setBusy(false);
    focusWhenThere('.leaving h2');
    if (!answer?.ok) return say(answer?.message ?? t.noAnswer);
    if (current() !== before) return say(t.changed);
    const result = answer.value;
    if (result.status === 'optimal') {
      change((m) => ({ ...withDropOne(m, true), shares: { ...m.shares, ...result.shares } }));
      say(t.isSafe);
    } else {
      setImpossible(true);
      change((m) => withDropOne(m, true));
    }
  }
  function giveUp() {
    void view.edit((m) => withDropOne(m, false), 'drop');
    setImpossible(false);
    focusWhenThere('.leaving h2');
    say(t.gaveUp);
  }

  return (
    <div className="leaving-safety">
      {leftOut && (
        <p className="leaving-summary" data-safe={leftOut.safe}>
          <span aria-hidden="true">{leftOut.safe ? '✓' : '!'}</span> {leftOut.safe ? t.safe : t.unsafe}
        </p>
      )}
      {wanted && none && <p>{t.impossible}</p>}
      {wanted && !none && <p className="hint">{t.wanted}</p>}
      {wanted ? (
        <Button className="button" onPress={giveUp}>
          {t.giveUp}
        </Button>
      ) : (
        (view.state === 'out' || leftOut?.safe === false) && (
          <Button
            className="button"
            isDisabled={busy || view.state === 'working'}
            onPress={() => void makeSafe()}
          >
            {t.makeSafe}
          </Button>
        )
      )}
      <p className="hint" role="status">
        {busy ? t.looking : ''}
      </p>
      {busy && takesLong(mix.problem) && (
        <Button className="button small" onPress={() => leaving.current.abort()}>
          {words().long.stopHere}
        </Button>
      )}
    </div>
  );
}
