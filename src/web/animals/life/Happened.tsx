/** What happened as a list of days: the picture in words. Notes are changed and deleted here. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { WeightStory } from '../../../care/weight/model.ts';
import type { LifeEvent, Lifeline } from '../../../household/reckon/care/lifeline.ts';
import type { Day } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import { focusWhenThere } from '../../shared/focus.ts';
import { useParts } from '../../shared/parts.tsx';
import { SaidLine } from '../timeline/SaidLine.tsx';
import type { TimeWindow } from '../timeline/time-window.ts';
import { useTold } from '../timeline/useTold.ts';
import { daysIn } from './life-view.ts';
import { eventWords, quietWords, type Told } from './life-words.ts';
import { NoteForm } from './NoteForm.tsx';

/** Days shown at once. */
const PART = 31;

export function Happened(props: {
  life: Lifeline;
  story: WeightStory;
  window: TimeWindow;
  day: Day;
  chosen: string | undefined;
  look(id: string): void;
  told: Told;
}) {
  const { life, story, window, day, told } = props;
  const { lifeline: t, figures: f } = words();
  const { said, error, change, remove } = useTold('notes');
  const [editing, edit] = useState<string>();
  const days = daysIn(life, story, window);
  const parts = useParts(days, { part: PART, from: `${window.span} ${window.last}` });
  const focusHere = () => focusWhenThere('.happened h3');

  function itemOf(event: LifeEvent) {
    const sentence = eventWords(event, told);
    const note = event.what.is === 'note' ? event.what.note : undefined;
    if (note && editing === note.id) {
      return (
        <NoteForm
          note={note}
          day={day}
          onLeave={() => {
            edit(undefined);
            focusHere();
          }}
          onKeep={(next) => {
            change(next, note, t.note.changed);
            edit(undefined);
            focusHere();
          }}
        />
      );
    }
    return (
      <>
        <Button
          className="happened-event"
          aria-pressed={event.id === props.chosen}
          onPress={() => {
            props.look(event.id);
            focusWhenThere('.pointed');
          }}
        >
          {sentence}
        </Button>
        {note && (
          <span>
            <Button
              className="quiet-button small"
              aria-label={t.list.editNote(note.text)}
              onPress={() => edit(note.id)}
            >
              {t.list.edit}
            </Button>
            <Button
              className="quiet-button small"
              aria-label={t.list.deleteNote(note.text)}
              onPress={() => {
                remove(note, t.note.deleted);
                focusHere();
              }}
            >
              {words().common.delete}
            </Button>
          </span>
        )}
      </>
    );
  }

  return (
    <section className="happened" aria-label={t.list.title}>
      <h3 tabIndex={-1}>{t.list.title}</h3>
      {window.span === 'year' && <p className="hint">{t.list.yearly}</p>}
      <SaidLine said={said} error={error} />
      {days.length === 0 && <p className="empty">{t.list.none}</p>}
      <ul>
        {parts.shown.map((one) => (
          <li key={one.day}>
            <strong>{f.day(one.day, day)}</strong>
            <ul>
              {one.events.map((event) => (
                <li key={event.id}>{itemOf(event)}</li>
              ))}
              {quietWords(one, told).map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
            </ul>
          </li>
        ))}
      </ul>
      {parts.more}
    </section>
  );
}
