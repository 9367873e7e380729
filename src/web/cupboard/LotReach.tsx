/** Every batch and animal that a lot reached, and what to mind when it is barred. */
import { Button } from 'react-aria-components';
import type { Animal } from '../../household/model.ts';
import { asOneFood } from '../../household/reckon/cupboard/as-named.ts';
import { contentsOf } from '../../household/reckon/cupboard/contents.ts';
import { reachOf } from '../../kitchen/batch/trace.ts';
import { barAdvice } from '../../kitchen/cupboard/barred.ts';
import { dayInWords } from '../../kitchen/days.ts';
import type { Batch, Lot } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { Failed } from '../shared/Failed.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { useParts } from '../shared/parts.tsx';
import { linkTo } from '../shared/route.ts';
import { dayAt } from '../shared/today.ts';
import { useSave } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import '../shared/lots/lots.css';

/** Batches shown at once. */
const PART = 50;

export function LotReach({ lot }: { lot: Lot }) {
  const { house } = useMixDraft();
  const save = useSave('lots');
  const reach = reachOf(lot.id, contentsOf(asOneFood(house)), dayAt);
  const advice = lot.barred && barAdvice(lot.barred.why);
  const batches = useParts(reach.batches, { part: PART, of: 'batches' });
  const maybe = useParts(reach.maybe, { part: PART, of: 'batches that may hold some' });
  const nowhere = reach.batches.length + reach.runs.length + reach.maybe.length === 0;

  return (
    <section className={`reach ${lot.barred ? 'barred' : ''}`} aria-label="Where it went">
      <h3 tabIndex={-1}>{lot.barred ? 'What it reached' : 'What it went into'}</h3>
      {nowhere && <p>Nothing: no batch and no drying run took from it.</p>}
      {reach.batches.length > 0 && (
        <>
          <h4>Batches with some of it</h4>
          <ul className="reach-list">
            {batches.shown.map(({ batch, grams }) => (
              <li key={batch.id}>
                <a href={linkTo('weigh', batch.id)}>{batch.name}</a>, {whenOf(batch)}:{' '}
                {sayGrams(Math.max(0, grams))} of it
              </li>
            ))}
          </ul>
          {batches.more}
        </>
      )}
      {reach.driedLots.length + reach.runs.length > 0 && (
        <>
          <h4>Dried from it</h4>
          <ul className="reach-list">
            {reach.driedLots.map((l) => (
              <li key={l.id}>
                <a href={linkTo('cupboard', l.id)}>{l.name}</a>
                {lot.barred && !l.barred && ' — not barred itself; open it to bar it too'}
              </li>
            ))}
            {reach.driedLots.length === 0 && (
              <li>{reach.runs.length === 1 ? 'One drying run' : `${reach.runs.length} drying runs`}</li>
            )}
          </ul>
        </>
      )}
      {reach.maybe.length > 0 && (
        <>
          <h4>Batches that may hold some</h4>
          <p className="hint">The same food was poured into them without naming its lot.</p>
          <ul className="reach-list">
            {maybe.shown.map((batch) => (
              <li key={batch.id}>
                <a href={linkTo('weigh', batch.id)}>{batch.name}</a>, {whenOf(batch)}
              </li>
            ))}
          </ul>
          {maybe.more}
        </>
      )}
      {!nowhere && (
        <>
          <h4>Animals those batches are for</h4>
          {reach.animalIds.length + reach.maybeAnimalIds.length === 0 && (
            <p>None is named in those batches.</p>
          )}
          <ul className="reach-list">
            {reach.animalIds.map((id) => (
              <li key={id}>
                <AnimalName id={id} animals={house.animals} />
              </li>
            ))}
            {reach.maybeAnimalIds.map((id) => (
              <li key={id}>
                <AnimalName id={id} animals={house.animals} /> <span className="tag">perhaps</span>
              </li>
            ))}
          </ul>
        </>
      )}
      {advice && (
        <p className="notice-line">
          {advice.words} <span className="source">Source: {advice.source}.</span>
        </p>
      )}
      {lot.barred && (
        <>
          <p className="notice-line">
            Do not feed what is left of it{reach.batches.length > 0 && ', nor of those batches'}. See a vet
            when an animal that ate of it eats less, has loose droppings, breathes hard or seems ill. This is
            no veterinary advice.
          </p>
          <Failed error={save.error} />
          <p className="hint">
            Barred on {dayInWords(lot.barred.on)}.{' '}
            <Button
              className="quiet-button"
              onPress={() => {
                save.mutate({ ...lot, barred: undefined }, lot);
                focusWhenThere('.lot-page h2');
              }}
            >
              It was a mistake: use it again
            </Button>
          </p>
        </>
      )}
    </section>
  );
}

/** An animal by its name, also where it is gone from the household. */
function AnimalName({ id, animals }: { id: string; animals: readonly Animal[] }) {
  const animal = animals.find((a) => a.id === id);
  return animal ? (
    <a href={linkTo('animals', id)}>{animal.name}</a>
  ) : (
    <span>an animal that is not kept here any more ({id})</span>
  );
}

function whenOf(batch: Batch): string {
  const began = dayInWords(dayAt(batch.startedAt));
  if (batch.givenUp) return `begun on ${began}, given up and not fed`;
  return batch.finishedAt === undefined ? `begun on ${began}, not finished` : `weighed on ${began}`;
}
