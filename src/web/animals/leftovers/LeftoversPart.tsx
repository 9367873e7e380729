/** What it left, and so what it ate. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Feeding } from '../../../care/model.ts';
import type { Animal } from '../../../household/model.ts';
import { isHere } from '../../../household/reckon/care/here.ts';
import { feedingOn } from '../../../household/reckon/care/records-of.ts';
import { plusDays } from '../../../kitchen/days.ts';
import type { Day } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import { Choice } from '../../shared/Choice.tsx';
import { Failed } from '../../shared/Failed.tsx';
import { focusWhenThere } from '../../shared/focus.ts';
import { useEachMinute } from '../../shared/hooks/each-minute.ts';
import { today } from '../../shared/today.ts';
import { useRemove, useSave } from '../../store/household.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { Eaten } from './Eaten.tsx';
import { NightPanel } from './NightPanel.tsx';
import { NightsNoted } from './NightsNoted.tsx';
import { gramsOf, nightsToChoose, nightToNote, withoutLeft } from './view-model.ts';
import './leftovers.css';

/** What was done last, with what it takes to undo it. */
interface Done {
  readonly said: string;
  readonly on: Day;
  readonly before: Feeding | undefined;
}

export function LeftoversPart({ animal }: { animal: Animal }) {
  useEachMinute();
  const { house } = useMixDraft();
  const t = words().leftovers;
  const save = useSave('feedings');
  const remove = useRemove('feedings');
  const day = today();
  const [chosen, setChosen] = useState<Day>();
  const [correcting, setCorrecting] = useState(false);
  const [done, setDone] = useState<Done>();
  const [undone, setUndone] = useState(false);
  const on = chosen ?? nightToNote(house, animal.id, day);

  function put(after: Feeding | undefined, before: Feeding | undefined) {
    if (after) save.mutate(after, before);
    else if (before) remove.mutate(before);
  }

  function tell(said: string, before: Feeding | undefined, of: Day) {
    setUndone(false);
    setDone({ said, on: of, before });
    focusWhenThere('.left-done');
  }

  function keep(after: Feeding, before: Feeding | undefined) {
    put(after, before);
    setChosen(on);
    setCorrecting(false);
    const grams = after.left?.bowl && gramsOf(after.left.bowl);
    const isBowl = after.left?.bowl !== before?.left?.bowl;
    const said =
      !isBowl || grams === undefined ? t.kept.some : grams === 0 ? t.kept.nothing : t.kept.grams(grams);
    tell(said, before, on);
  }

  function takeBack() {
    if (!done) return;
    put(done.before, feedingOn(house, animal.id, done.on));
    setDone(undefined);
    setUndone(true);
    focusWhenThere('.left-title');
  }

  function show(night: Day, correct: boolean) {
    setChosen(night);
    setCorrecting(correct);
    setDone(undefined);
    setUndone(false);
    if (correct) focusWhenThere('.left-title');
  }

  return (
    <section className="leftovers" aria-label={t.title}>
      {isHere(animal) ? (
        <section className="left-night" aria-label={t.ask.title(animal.name)}>
          <h3 className="left-title" tabIndex={-1}>
            {t.ask.title(animal.name)}
          </h3>
          <Choice
            label={t.ask.night}
            value={on}
            options={nightsToChoose(day).map((night) => [night, nightName(night)] as const)}
            onChange={(night) => show(night, false)}
          />
          {done && (
            <p className="left-done" tabIndex={-1} role="status">
              {done.said}{' '}
              <Button className="button small" onPress={takeBack}>
                {t.kept.undo}
              </Button>
            </p>
          )}
          {undone && (
            <p className="hint" role="status">
              {t.kept.undone}
            </p>
          )}
          <NightPanel
            key={`${animal.id} ${on} ${correcting}`}
            animal={animal}
            on={on}
            today={day}
            correcting={correcting}
            onCorrect={() => show(on, true)}
            onKeep={keep}
          />
          <Failed error={save.error ?? remove.error} />
        </section>
      ) : (
        <p>{t.gone(animal.name)}</p>
      )}
      <Eaten animal={animal} today={day} />
      <NightsNoted
        animal={animal}
        onCorrect={(night) => show(night, true)}
        onRemove={(feeding) => {
          put(withoutLeft(feeding), feeding);
          setChosen(feeding.on);
          setCorrecting(false);
          tell(t.kept.gone, feeding, feeding.on);
        }}
      />
    </section>
  );

  function nightName(night: Day): string {
    const name =
      night === plusDays(day, -1)
        ? t.ask.lastNight(night)
        : night === day
          ? t.ask.tonight(night)
          : t.ask.day(night);
    return feedingOn(house, animal.id, night)?.left?.bowl ? t.ask.noted(name) : name;
  }
}
