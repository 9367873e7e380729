/** The way out of a batch that nobody will finish: an empty one is deleted, another is closed as not to be fed. */
import { useState } from 'react';
import { Button } from 'react-aria-components';

export function WeighGiveUp(props: { empty: boolean; busy: boolean; giveUp(): void }) {
  const [sure, setSure] = useState(false);
  return (
    <>
      <Button
        className="quiet-button"
        isDisabled={props.busy}
        onPress={() => (sure ? props.giveUp() : setSure(true))}
      >
        {sure ? `Yes, ${props.empty ? 'delete it' : 'give it up'}` : 'Give up this batch'}
      </Button>
      {sure && (
        <p role="status">
          {props.empty
            ? 'Nothing is poured yet, so nothing is lost.'
            : 'What was poured stays on record; the batch is closed as not to be fed.'}
        </p>
      )}
    </>
  );
}
