/** What is next for a household that has bought, dried or weighed something, and keeps no mix any more. */

import { words } from '../../words/words.ts';
import { useFirstMix } from '../shared/mix/useFirstMix.ts';
import { Button } from '../shared/plain/Button.tsx';
import { go } from '../shared/route.ts';
import { today } from '../shared/today.ts';
import { Contained } from '../shared/trouble/Contained.tsx';
import { useMixDraft } from '../store/mix-draft.tsx';
import { Errands } from './Errands.tsx';
import type { AskDue } from './useCareDue.ts';

export function WithoutMix({ care }: { care: AskDue }) {
  const { house } = useMixDraft();
  const start = useFirstMix();
  const t = words().shared.firstMix;
  const { next, due } = words().today;
  return (
    <>
      <section className="today-next" aria-label={next}>
        <h2 className="today-sentence">{t.title}</h2>
        <p>{t.text}</p>
        <Button
          className="big-button today-go"
          onPress={() => {
            start();
            go('mix');
          }}
        >
          {t.start}
        </Button>
      </section>
      <Contained what={due} of={house}>
        <Errands care={care} day={today()} />
      </Contained>
    </>
  );
}
