/** Before a run: how much of a fresh lot, in how many loads, how hot and how long, as practised and as published. */
import { type FormEvent, useState } from 'react';
import { Button, Form } from 'react-aria-components';
import type { LotStock } from '../../kitchen/cupboard/cupboard.ts';
import { CHECK_EVERY } from '../../kitchen/drying/check-times.ts';
import type { DryKind } from '../../kitchen/drying/drying-practice.ts';
import { planDrying } from '../../kitchen/drying/tray-runs.ts';
import { trimOf } from '../../kitchen/drying/yields.ts';
import type { DryingRun } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { cupboardFoods } from '../cupboard/view-model.ts';
import { Choice } from '../shared/Choice.tsx';
import { Failed } from '../shared/Failed.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { go } from '../shared/route.ts';
import { useSave } from '../store/household.ts';
import { useKitchen } from '../store/kitchen.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { newId } from '../store/new-id.ts';
import { DryerSettings } from './DryerSettings.tsx';
import { DryingCautions } from './DryingCautions.tsx';
import { FreshChoice } from './FreshChoice.tsx';
import { asText, focusFault, LabelledNumber, readAbove0 } from './LabelledNumber.tsx';
import { useFreshFood } from './useFreshFood.ts';
import { kindOf, nextLoadOf, presetCelsius, presetWay, span } from './view-model.ts';

const KINDS = [
  ['vegetable', 'Vegetable, in pieces'],
  ['leaf', 'Leafy vegetable'],
  ['herb', 'Herb or flower'],
  ['fruit', 'Fruit'],
] as const;

export function PlanRun({ left }: { left: LotStock }) {
  const { lot, grams } = left;
  const { house } = useMixDraft();
  const { kitchen } = useKitchen();
  const { said, fresh } = useFreshFood(lot.food);
  const food = cupboardFoods(house).find((f) => f.id === lot.food);
  return (
    <article className="dry-plan">
      <h2 tabIndex={-1}>Dry {lot.name}</h2>
      <p className="hint">
        {sayGrams(grams)} in the {lot.frozen ? 'freezer' : 'cupboard'}
        {lot.moisture !== undefined && `, half dried: ${asText(lot.moisture)} % water`}
        {fresh && `. Fresh food: ${fresh.name}`}
        {fresh?.composition.WATER !== undefined &&
          `, ${asText(fresh.composition.WATER)} % water (${fresh.source})`}
        .
      </p>
      {!said && <FreshChoice food={lot.food} name={food?.name ?? lot.name} />}
      {kitchen.dryer ? (
        <PlanForm key={`${lot.id} ${fresh?.ref} ${JSON.stringify(kitchen.dryer)}`} left={left} />
      ) : (
        <>
          <h3>Your dryer</h3>
          <p>How many loads it takes follows from the trays.</p>
          <DryerSettings />
        </>
      )}
    </article>
  );
}

function PlanForm({ left: { lot, grams: has } }: { left: LotStock }) {
  const { house } = useMixDraft();
  const { kitchen } = useKitchen();
  const dryer = kitchen.dryer!;
  const save = useSave('dryingRuns');
  const { fresh, trimLoss } = useFreshFood(lot.food);
  const next = nextLoadOf(house, lot);
  const [taken, setTaken] = useState(asText(next?.taken ?? has));
  const [ready, setReady] = useState(asText(next?.ready));
  const [own, setOwn] = useState<string>();
  const [kind, setKind] = useState<DryKind>(() => kindOf(house, lot.food, fresh));
  const [load, setLoad] = useState('0');
  const [perDm2, setPerDm2] = useState('');
  const plan = planDrying({
    grams: 1,
    kind,
    device: dryer.device,
    trays: { count: dryer.trays, dm2: dryer.trayArea },
  });
  const usual = presetWay(plan.ways, kind, dryer.celsius);
  const [chosen, setChosen] = useState<number>();
  const [celsius, setCelsius] = useState<string>();
  const [hours, setHours] = useState<string>();
  const [tried, setTried] = useState(false);

  const wayAt = Math.min(chosen ?? usual, plan.ways.length - 1);
  const way = plan.ways[wayAt]!;
  const typed = {
    celsius: celsius ?? asText(presetCelsius(way, dryer.celsius)),
    hours: hours ?? asText(way.hours[0]),
  };
  const halfDried = lot.moisture !== undefined;
  const trim = fresh && !halfDried ? trimOf(fresh, trimLoss) : undefined;
  const readTaken = readAbove0(taken, 'Taken from the lot');
  const readReady = readAbove0(ready, 'Trimmed and ready');
  const guess =
    readTaken.value !== undefined && trim?.trimLoss !== undefined
      ? readTaken.value * (1 - trim.trimLoss / 100)
      : undefined;
  const about = readReady.value ?? guess ?? readTaken.value;
  const readPer = readAbove0(perDm2, 'Grams on 1 dm²', { max: 1000 });
  const trays = { count: dryer.trays, dm2: dryer.trayArea };
  const listed = planDrying({ grams: about ?? 1, kind, device: dryer.device, trays }).runs;
  const byOwn =
    readPer.value === undefined
      ? undefined
      : planDrying({ grams: about ?? 1, kind, device: dryer.device, trays, gramsPerDm2: readPer.value })
          .runs[0];
  const runs = load === 'own' ? byOwn : listed[Math.min(Number(load), listed.length - 1)];
  const loads = runs?.grams.length ?? 1;
  const each = own ?? asText(readReady.value === undefined ? undefined : readReady.value / loads);
  const readEach = readAbove0(each, 'On the trays now');
  const readCelsius = readAbove0(typed.celsius, 'Temperature', { max: 250 });
  const readHours = readAbove0(typed.hours, 'Time', { max: 1000 });

  const faults = {
    taken:
      readTaken.fault ??
      (readTaken.value! > has + 0.05
        ? `Taken from the lot: ${taken} g is more than the ${sayGrams(has)} that are left.`
        : undefined),
    ready:
      readReady.fault ??
      (readTaken.value !== undefined && readReady.value! > readTaken.value
        ? `Trimmed and ready: ${ready} g is more than the ${taken} g taken from the lot.`
        : undefined),
    each:
      loads === 1
        ? undefined
        : (readEach.fault ??
          (readReady.value !== undefined && readEach.value! > readReady.value
            ? `On the trays now: ${each} g is more than the ${ready} g that are ready.`
            : undefined)),
    per: load === 'own' ? readPer.fault : undefined,
    celsius: readCelsius.fault,
    hours: readHours.fault,
  };
  const shown = (fault: string | undefined) => (tried ? fault : undefined);

  async function start(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    if (save.isPending) return;
    setTried(true);
    if (Object.values(faults).some((f) => f !== undefined)) return focusFault(event.currentTarget);
    const before = loads === 1 ? readReady.value! : readEach.value!;
    const done = next?.done ?? 0;
    const run: DryingRun = {
      id: newId(),
      lot: lot.id,
      device: dryer.device,
      celsius: readCelsius.value!,
      startedAt: new Date().toISOString(),
      trays: dryer.trays,
      gramsBefore: before,
      // Of the trimmings each load takes its part.
      gramsTaken: (readTaken.value! * before) / readReady.value!,
      kind,
      hours: readHours.value!,
      ...(done + loads > 1 && { load: { n: done + 1, of: done + loads } }),
      checks: [],
    };
    await save.mutateAsync(run);
    go('drying', run.id);
    focusWhenThere('.dry-run h2');
  }

  return (
    <Form className="dry-form" onSubmit={(e) => void start(e).catch(() => {})}>
      {next && (
        <p className="notice-line">
          {next.done === 1 ? 'One load is' : `${next.done} loads are`} done. The rest of what was planned is{' '}
          {sayGrams(next.taken)}.
        </p>
      )}
      <h3>How much</h3>
      <div className="fields">
        <LabelledNumber
          label="Taken from the lot"
          unit="g"
          value={taken}
          onChange={setTaken}
          error={shown(faults.taken)}
        />
        <LabelledNumber
          label="Trimmed and ready"
          unit="g"
          value={ready}
          onChange={setReady}
          placeholder={guess === undefined ? '' : `about ${asText(guess, 0)}`}
          hint="As your scale says: how dry it gets is worked out from it."
          error={shown(faults.ready)}
        />
        <Choice
          label="Kind"
          value={kind}
          options={KINDS}
          onChange={(k) => {
            setKind(k);
            setLoad('0');
            setChosen(undefined);
            setCelsius(undefined);
            setHours(undefined);
          }}
        />
      </div>
      {trim && (
        <p className="hint">
          Estimate: {trim.note}
          {guess !== undefined && ` That leaves about ${sayGrams(guess)}.`}
        </p>
      )}

      <fieldset className="dry-options">
        <legend>
          How thick, on {dryer.trays} {dryer.trays === 1 ? 'tray' : 'trays'} of {asText(dryer.trayArea)} dm²
        </legend>
        {listed.map((r, i) => (
          <label key={r.load.known} className="dry-option">
            <input
              type="radio"
              name="load"
              checked={load === String(i)}
              onChange={() => setLoad(String(i))}
            />
            <span>
              <strong>
                {r.load.gramsPerDm2} g on 1 dm²: {loadWords(r.grams.length, about && r.grams[0])}
              </strong>
              <small>{r.load.source}</small>
            </span>
          </label>
        ))}
        <label className="dry-option">
          <input type="radio" name="load" checked={load === 'own'} onChange={() => setLoad('own')} />
          <span>
            <strong>
              As I load them
              {byOwn && load === 'own' && `: ${loadWords(byOwn.grams.length, about && byOwn.grams[0])}`}
            </strong>
          </span>
        </label>
      </fieldset>
      {load === 'own' && (
        <LabelledNumber
          label="Grams on 1 dm²"
          unit="g"
          value={perDm2}
          onChange={setPerDm2}
          error={shown(faults.per)}
        />
      )}
      {loads > 1 && (
        <div className="fields">
          <LabelledNumber
            label="On the trays now"
            unit="g"
            value={each}
            onChange={setOwn}
            hint={`The first of ${loads} loads; keep the rest cold. The next starts when this one ends.`}
            error={shown(faults.each)}
          />
        </div>
      )}

      <fieldset className="dry-options">
        <legend>How hot and how long</legend>
        {plan.ways.map((w, i) => (
          <label key={w.known} className="dry-option">
            <input
              type="radio"
              name="way"
              checked={i === wayAt}
              onChange={() => {
                setChosen(i);
                setCelsius(undefined);
                setHours(undefined);
              }}
            />
            <span>
              <strong>
                {span(w.celsius)} °C, {span(w.hours)} h
              </strong>{' '}
              <span className="tag">{w.known}</span>
              <span className="dry-test">Done when: {w.dry}.</span>
              <small>{w.source}</small>
            </span>
          </label>
        ))}
      </fieldset>
      <div className="fields">
        <LabelledNumber
          label="Temperature"
          unit="°C"
          value={typed.celsius}
          onChange={setCelsius}
          error={shown(faults.celsius)}
        />
        <LabelledNumber
          label="Time"
          unit="h"
          value={typed.hours}
          onChange={setHours}
          hint={
            way.hours[1] > way.hours[0]
              ? `It may take up to ${way.hours[1]} h; a look every ${CHECK_EVERY.hours} h goes on till you weigh it dry.`
              : `A look every ${CHECK_EVERY.hours} h.`
          }
          error={shown(faults.hours)}
        />
      </div>
      <DryingCautions device={dryer.device} kind={kind} />
      <Failed error={save.error} />
      <Button type="submit" className="big-button">
        {loads > 1 ? 'Start this load' : 'Start drying'}
      </Button>
    </Form>
  );
}

/** "one load of 534 g", "3 loads of 178 g". */
function loadWords(count: number, grams: number | undefined): string {
  const of = grams ? ` of ${sayGrams(Math.round(grams))}` : '';
  return count === 1 ? `one load${of}` : `${count} loads${of}`;
}
