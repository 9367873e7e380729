/** One night: what was offered, what was left, and whether a hoard was found. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Feeding, Remains } from '../../../care/model.ts';
import type { Animal } from '../../../household/model.ts';
import { feedingOn } from '../../../household/reckon/care/records-of.ts';
import { daysBetween } from '../../../kitchen/days.ts';
import type { Day } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import { Choice } from '../../shared/Choice.tsx';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { HoardQuestion } from './HoardQuestion.tsx';
import { nightWords } from './night-words.ts';
import { OfferedLine } from './OfferedLine.tsx';
import { RemainsForm } from './RemainsForm.tsx';
import { useUsualMeal } from './useUsualMeal.ts';
import {
  foodsOf,
  gramsOffered,
  type Offer,
  offerFor,
  sinceChoices,
  withBowl,
  withHoard,
} from './view-model.ts';

/** Keyed by its night: another one begins anew. */
export function NightPanel(props: {
  animal: Animal;
  on: Day;
  today: Day;
  /** What was noted of it is being corrected. */
  correcting: boolean;
  onCorrect(): void;
  onKeep(after: Feeding, before: Feeding | undefined): void;
}) {
  const { animal, on, today, onKeep } = props;
  const { house } = useMixDraft();
  const { leftovers } = words();
  const t = leftovers.ask;
  const usual = useUsualMeal(animal);
  const feeding = feedingOn(house, animal.id, on);
  const [changed, setChanged] = useState<Offer>();
  const [open, setOpen] = useState(false);
  const [since, setSince] = useState<Day | undefined>(feeding?.left?.since);
  const [missing, setMissing] = useState(false);
  const offer = changed ?? offerFor(house, animal, on, usual);
  const { foods, mix } = foodsOf(house, animal.id, offer);
  const noted = { animalId: animal.id, on, today, offer, ...(since !== undefined && { since }) };
  const several = sinceChoices(house, animal.id, on);

  function keepBowl(bowl: Remains) {
    const lacks = !(gramsOffered(offer) > 0);
    setMissing(lacks);
    if (lacks) return setOpen(true);
    onKeep(withBowl(feeding, noted, bowl), feeding);
  }

  const hoardQuestion = (
    <HoardQuestion
      hoard={feeding?.left?.hoard}
      foods={foods}
      onKeep={(hoard) => onKeep(withHoard(feeding, noted, hoard), feeding)}
    />
  );
  if (feeding?.left?.bowl && !props.correcting) {
    return (
      <div className="left-noted" tabIndex={-1}>
        <p>
          {nightWords(feeding, foods)}{' '}
          <Button className="quiet-button" onPress={props.onCorrect}>
            {leftovers.nights.correct}
          </Button>
        </p>
        {hoardQuestion}
      </div>
    );
  }
  return (
    <div className="left-ask">
      <OfferedLine
        house={house}
        offer={offer}
        mix={mix}
        open={open}
        onOpen={setOpen}
        onChange={(next) => {
          setMissing(false);
          setChanged(next);
        }}
      />
      {missing && (
        <p role="alert" className="field-error">
          {t.missing}
        </p>
      )}
      <Button className="big-button left-nothing" onPress={() => keepBowl({ grams: 0 })}>
        {t.nothing}
      </Button>
      <RemainsForm label={t.weight} foods={foods} before={feeding?.left?.bowl} byEye onKeep={keepBowl} />
      <details className="left-more" open={since !== undefined}>
        <summary>{t.more}</summary>
        {several.length > 0 && (
          <Choice
            label={t.since}
            value={since ?? ''}
            options={[
              ['', t.oneNight],
              ...several.map((day) => [day, t.sinceDay(day, daysBetween(day, on) + 1)] as const),
            ]}
            onChange={(day) => setSince(day === '' ? undefined : day)}
          />
        )}
        {hoardQuestion}
      </details>
    </div>
  );
}
