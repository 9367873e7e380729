/** The example household: that it is one, the press that leaves it, and the way back to it. */

import { EXAMPLE } from '../../household/reckon/example.ts';
import type { FirstSteps } from '../../household/reckon/first-steps.ts';
import { words } from '../../words/words.ts';
import { Failed } from '../shared/Failed.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { Button } from '../shared/plain/Button.tsx';
import { useMixDraft } from '../store/mix-draft.tsx';
import { useExample } from './useExample.ts';

export function ExampleNote({ steps }: { steps: FirstSteps }) {
  const t = words().today.example;
  const { mix } = useMixDraft();
  const example = useExample();
  const leave = () => {
    void example.leave().catch(() => {}); // `error` says why
    focusWhenThere('.start-step.now input, .start-note button');
  };
  const lookingAt = mix?.id === EXAMPLE.mix;

  if (steps.stage === 'example')
    return (
      <section className="start-note notice-line" aria-label={t.title}>
        <p>{t.is}</p>
        <div className="button-row">
          <Button className="big-button" onPress={leave}>
            {t.startOwn}
          </Button>
        </div>
        <p className="hint">{t.startOwnHint}</p>
        <Failed error={example.error} />
      </section>
    );
  if (example.isThere)
    return (
      <section className="start-note notice-line" aria-label={t.title}>
        <p>{lookingAt ? t.lookingAt : t.beside}</p>
        <div className="button-row">
          {lookingAt ? (
            steps.mix && (
              <Button className="button" onPress={() => example.toOwn()}>
                {t.backToOwn(steps.mix.name)}
              </Button>
            )
          ) : (
            <Button className="quiet-button" onPress={() => void example.look()}>
              {t.look}
            </Button>
          )}
          <Button className="quiet-button" onPress={leave}>
            {t.takeAway}
          </Button>
        </div>
        <Failed error={example.error} />
      </section>
    );
  if (steps.stage !== 'start') return null;
  return (
    <p className="start-note hint">
      {example.undo ? t.gone : t.canLook}{' '}
      {example.undo ? (
        <Button className="quiet-button small" onPress={() => void example.undo?.().catch(() => {})}>
          {words().common.undo}
        </Button>
      ) : (
        <Button className="quiet-button small" onPress={() => void example.look().catch(() => {})}>
          {t.look}
        </Button>
      )}
      <Failed error={example.error} />
    </p>
  );
}
