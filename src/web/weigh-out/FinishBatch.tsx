/** All is poured and in range: who made it, and the end. */
import { Button } from 'react-aria-components';
import { gramWords } from '../shared/words/gram-words.ts';
import { Maker, useMaker } from './Maker.tsx';

export function FinishBatch(props: {
  total: number;
  busy: boolean;
  finish(madeBy: string | undefined): void;
}) {
  const [maker, setMaker, rememberMaker] = useMaker();
  return (
    <section className="weigh-step" aria-label="All is poured">
      <h2>
        <span aria-hidden="true">✓</span> All is poured: {gramWords(props.total)}, in range
      </h2>
      <Maker name={maker} onChange={setMaker} />
      <Button
        className="big-button weigh-poured"
        isDisabled={props.busy}
        onPress={() => {
          rememberMaker();
          props.finish(maker.trim() || undefined);
        }}
      >
        Finish the batch
      </Button>
    </section>
  );
}
