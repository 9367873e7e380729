/** Every batch and animal that a lot reached, and what to mind when it is barred. */
import { Button } from 'react-aria-components';
import type { Animal } from '../../household/model.ts';
import { asOneFood } from '../../household/reckon/cupboard/as-named.ts';
import { contentsOf } from '../../household/reckon/cupboard/contents.ts';
import { isFedBeside } from '../../household/reckon/cupboard/foods-beside.ts';
import { fedFromPack } from '../../household/reckon/cupboard/recall.ts';
import { reachOf } from '../../kitchen/batch/trace.ts';
import { barAdvice } from '../../kitchen/cupboard/bar-advice.ts';
import { dayInWords } from '../../kitchen/days.ts';
import type { Batch, Lot } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { words } from '../../words/words.ts';
import { Failed } from '../shared/Failed.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { useParts } from '../shared/parts.tsx';
import { linkTo } from '../shared/route.ts';
import { dayAt, today } from '../shared/today.ts';
import { Sentence } from '../shared/words/Sentence.tsx';
import { useSave } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import '../shared/lots/lots.css';

/** Batches shown at once. */
const PART = 50;

export function LotReach({ lot }: { lot: Lot }) {
  const { house } = useMixDraft();
  const t = words().cupboard.reach;
  const save = useSave('lots');
  const reach = reachOf(lot.id, contentsOf(asOneFood(house)), dayAt);
  const advice = lot.barred && barAdvice(lot.barred.why);
  const batches = useParts(reach.batches, { part: PART });
  const maybe = useParts(reach.maybe, { part: PART });
  const fromPack = isFedBeside(house, lot.food);
  const nowhere = reach.batches.length + reach.runs.length + reach.maybe.length === 0;

  const link = (batch: Batch) => ({ batch: () => <a href={linkTo('weigh', batch.id)}>{batch.name}</a> });

  return (
    <section className={`reach ${lot.barred ? 'barred' : ''}`} aria-label={t.label}>
      <h3 tabIndex={-1}>{lot.barred ? t.stopped : t.into}</h3>
      {fromPack ? <FedFrom lot={lot} /> : nowhere && <p>{t.nowhere}</p>}
      {reach.batches.length > 0 && (
        <>
          <h4>{t.batches}</h4>
          <ul className="reach-list">
            {batches.shown.map(({ batch, grams }) => (
              <li key={batch.id}>
                <Sentence of={t.batch(whenOf(batch), sayGrams(Math.max(0, grams)))} with={link(batch)} />
              </li>
            ))}
          </ul>
          {batches.more}
        </>
      )}
      {reach.driedLots.length + reach.runs.length > 0 && (
        <>
          <h4>{t.dried}</h4>
          <ul className="reach-list">
            {reach.driedLots.map((l) => (
              <li key={l.id}>
                <Sentence
                  of={lot.barred && !l.barred ? t.stillUsed : '<pack></pack>'}
                  with={{ pack: () => <a href={linkTo('cupboard', l.id)}>{l.name}</a> }}
                />
              </li>
            ))}
            {reach.driedLots.length === 0 && <li>{t.runs(reach.runs.length)}</li>}
          </ul>
        </>
      )}
      {reach.maybe.length > 0 && (
        <>
          <h4>{t.maybe}</h4>
          <p className="hint">{t.maybeHint}</p>
          <ul className="reach-list">
            {maybe.shown.map((batch) => (
              <li key={batch.id}>
                <Sentence of={t.mayBatch(whenOf(batch))} with={link(batch)} />
              </li>
            ))}
          </ul>
          {maybe.more}
        </>
      )}
      {!nowhere && (
        <>
          <h4>{t.animals}</h4>
          {reach.animalIds.length + reach.maybeAnimalIds.length === 0 && <p>{t.noAnimals}</p>}
          <ul className="reach-list">
            {reach.animalIds.map((id) => (
              <li key={id}>
                <AnimalName id={id} animals={house.animals} />
              </li>
            ))}
            {reach.maybeAnimalIds.map((id) => (
              <li key={id}>
                <AnimalName id={id} animals={house.animals} /> <span className="tag">{t.perhaps}</span>
              </li>
            ))}
          </ul>
        </>
      )}
      {advice && (
        <p className="notice-line">
          {advice.words} <span className="source">{t.source(advice.source)}</span>
        </p>
      )}
      {lot.barred && (
        <>
          <p className="notice-line">{reach.batches.length > 0 ? t.doNotFeedBatches : t.doNotFeed}</p>
          <Failed error={save.error} />
          <p className="hint">
            {t.since(dayInWords(lot.barred.on))}{' '}
            <Button
              className="quiet-button"
              onPress={() => {
                save.mutate({ ...lot, barred: undefined }, lot);
                focusWhenThere('.lot-page h2');
              }}
            >
              {t.useAgain}
            </Button>
          </p>
        </>
      )}
    </section>
  );
}

/** Of a pack that is fed as it is: whom it was fed to, and perhaps to whom. */
function FedFrom({ lot }: { lot: Lot }) {
  const { house } = useMixDraft();
  const { pelletStock, figures: f } = words();
  const t = pelletStock.reach;
  const day = today();
  const fed = fedFromPack(house, lot, { today: day, dayAt });
  return (
    <>
      <h4>{t.title}</h4>
      {fed.length === 0 && <p>{t.none}</p>}
      <ul className="reach-list">
        {fed.map(({ animalId, sure, from, to, days, grams = 0 }) => (
          <li key={animalId}>
            <Sentence
              of={
                sure
                  ? t.sure(f.grams(grams, 1), f.day(from, day), f.day(to, day), days)
                  : t.maybe(f.day(from, day), f.day(to, day), days)
              }
              with={{ animal: () => <AnimalName id={animalId} animals={house.animals} /> }}
            />
          </li>
        ))}
      </ul>
      {lot.barred && lot.left?.grams !== 0 && <p className="notice-line">{t.clear}</p>}
    </>
  );
}

/** An animal by its name, also where it is gone from the household. */
function AnimalName({ id, animals }: { id: string; animals: readonly Animal[] }) {
  const animal = animals.find((a) => a.id === id);
  return animal ? (
    <a href={linkTo('animals', id)}>{animal.name}</a>
  ) : (
    <span>{words().cupboard.reach.gone(id)}</span>
  );
}

function whenOf(batch: Batch): string {
  const t = words().cupboard.reach;
  const began = dayInWords(dayAt(batch.startedAt));
  if (batch.givenUp) return t.givenUp(began);
  return batch.finishedAt === undefined ? t.notFinished(began) : t.weighed(began);
}
