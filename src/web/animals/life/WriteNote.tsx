/** Writing down what was seen, or what a vet said. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Note } from '../../../care/model.ts';
import type { Day } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import { focusWhenThere } from '../../shared/focus.ts';
import { newId } from '../../store/new-id.ts';
import { SaidLine } from '../timeline/SaidLine.tsx';
import { useTold } from '../timeline/useTold.ts';
import { NoteForm } from './NoteForm.tsx';

export function WriteNote({ animalId, day }: { animalId: string; day: Day }) {
  const t = words().lifeline.note;
  const { said, error, add } = useTold('notes');
  const [writing, write] = useState<Note['kind']>();

  function close() {
    write(undefined);
    focusWhenThere('.write-note .button');
  }
  return (
    <section className="write-note" aria-label={t.title}>
      {writing ? (
        <NoteForm
          key={writing}
          note={{ id: newId(), animalId, kind: writing }}
          day={day}
          onLeave={close}
          onKeep={(note) => {
            add(note, t.kept);
            close();
          }}
        />
      ) : (
        <div className="button-row">
          <Button className="button" onPress={() => write('seen')}>
            {t.seen}
          </Button>
          <Button className="button" onPress={() => write('vet')}>
            {t.vet}
          </Button>
        </div>
      )}
      <SaidLine said={said} error={error} />
    </section>
  );
}
