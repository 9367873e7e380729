/** How thick on the trays: as practised, as published, or as the keeper loads them. */
import type { Kitchen } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { asText } from './LabelledNumber.tsx';
import type { PlanEntries, PlanReading } from './plan-entries.ts';

export function TrayLoads({
  dryer,
  load,
  read: { listed, byOwn, about },
  onChoose,
}: {
  dryer: NonNullable<Kitchen['dryer']>;
  load: PlanEntries['load'];
  read: PlanReading;
  onChoose(load: PlanEntries['load']): void;
}) {
  return (
    <fieldset className="dry-options">
      <legend>
        How thick, on {dryer.trays} {dryer.trays === 1 ? 'tray' : 'trays'} of {asText(dryer.trayArea)} dm²
      </legend>
      {listed.map((r, i) => (
        <label key={r.load.known} className="dry-option">
          <input type="radio" name="load" checked={load === i} onChange={() => onChoose(i)} />
          <span>
            <strong>
              {r.load.gramsPerDm2} g on 1 dm²: {loadWords(r.grams.length, about && r.grams[0])}
            </strong>
            <small>{r.load.source}</small>
          </span>
        </label>
      ))}
      <label className="dry-option">
        <input type="radio" name="load" checked={load === 'own'} onChange={() => onChoose('own')} />
        <span>
          <strong>
            As I load them
            {byOwn && load === 'own' && `: ${loadWords(byOwn.grams.length, about && byOwn.grams[0])}`}
          </strong>
        </span>
      </label>
    </fieldset>
  );
}

/** "one load of 534 g", "3 loads of 178 g". */
function loadWords(count: number, grams: number | undefined): string {
  const of = grams ? ` of ${sayGrams(Math.round(grams))}` : '';
  return count === 1 ? `one load${of}` : `${count} loads${of}`;
}
