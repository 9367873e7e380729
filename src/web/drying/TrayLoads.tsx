/** How thick on the trays: as practised, as published, or as the keeper loads them. */
import type { Kitchen } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { words } from '../../words/words.ts';
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
  const t = words().drying.plan;
  return (
    <fieldset className="dry-options">
      <legend>{t.howThick(dryer.trays, dryer.trayArea)}</legend>
      {listed.map((r, i) => (
        <label key={r.load.known} className="dry-option">
          <input type="radio" name="load" checked={load === i} onChange={() => onChoose(i)} />
          <span>
            <strong>{t.onArea(r.load.gramsPerDm2, loadWords(r.grams.length, about && r.grams[0]))}</strong>
            <small>{r.load.source}</small>
          </span>
        </label>
      ))}
      <label className="dry-option">
        <input type="radio" name="load" checked={load === 'own'} onChange={() => onChoose('own')} />
        <span>
          <strong>
            {byOwn && load === 'own'
              ? t.asILoadThem(loadWords(byOwn.grams.length, about && byOwn.grams[0]))
              : t.asILoad}
          </strong>
        </span>
      </label>
    </fieldset>
  );
}

/** "one load of 534 g", "3 loads of 178 g". */
function loadWords(count: number, grams: number | undefined): string {
  const t = words().drying.plan;
  return grams ? t.loadsOf(count, sayGrams(Math.round(grams))) : t.loads(count);
}
