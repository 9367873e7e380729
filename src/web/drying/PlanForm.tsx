/** The form that begins a run: how much of a lot, how thick on the trays, how hot and how long. */
import { type FormEvent, useState } from 'react';
import { Button, Form } from 'react-aria-components';
import { nextLoadOf } from '../../household/reckon/drying/drying-loads.ts';
import { kindOf } from '../../household/reckon/drying/drying-outcome.ts';
import { newRun } from '../../household/reckon/drying/new-run.ts';
import type { LotStock } from '../../kitchen/cupboard/cupboard.ts';
import { CHECK_EVERY } from '../../kitchen/drying/check-times.ts';
import { trimOf } from '../../kitchen/drying/yields.ts';
import type { Kitchen } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { words } from '../../words/words.ts';
import { Choice } from '../shared/Choice.tsx';
import { Failed } from '../shared/Failed.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { go } from '../shared/route.ts';
import { useSave } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { newId } from '../store/new-id.ts';
import { DryingCautions } from './DryingCautions.tsx';
import { asText, focusFault, LabelledNumber } from './LabelledNumber.tsx';
import { type PlanEntries, readPlan } from './plan-entries.ts';
import { TrayLoads } from './TrayLoads.tsx';
import { useFreshFood } from './useFreshFood.ts';
import { WaysToDry } from './WaysToDry.tsx';

const KINDS = ['vegetable', 'leaf', 'herb', 'fruit'] as const;

export function PlanForm({
  left: { lot, grams: has },
  dryer,
}: {
  left: LotStock;
  dryer: NonNullable<Kitchen['dryer']>;
}) {
  const { house } = useMixDraft();
  const save = useSave('dryingRuns');
  const t = words().drying.plan;
  const { fresh, trimLoss } = useFreshFood(lot.food);
  const next = nextLoadOf(house, lot);
  // The fresh food may be known only after something was typed: what it says of the kind counts until one is chosen.
  const [entered, setEntered] = useState<Omit<PlanEntries, 'kind'> & Partial<PlanEntries>>(() => ({
    taken: asText(next?.taken ?? has, 1, 'mass'),
    ready: asText(next?.ready, 1, 'mass'),
    load: 0,
    perDm2: '',
  }));
  const typed: PlanEntries = { ...entered, kind: entered.kind ?? kindOf(house, lot.food, fresh) };
  const [tried, setTried] = useState(false);
  const type = (change: Partial<PlanEntries>) => setEntered((before) => ({ ...before, ...change }));
  const trim = fresh && lot.moisture === undefined ? trimOf(fresh, trimLoss) : undefined;
  const read = readPlan(typed, {
    has,
    dryer,
    ...(trim?.trimLoss !== undefined && { trimLoss: trim.trimLoss }),
  });
  const { loads, guess, way, faults } = read;
  const shown = (fault: string | undefined) => (tried ? fault : undefined);

  async function start(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    if (save.isPending) return;
    setTried(true);
    const { taken, ready, each, celsius, hours } = read.values;
    const wrong = Object.values(faults).some((f) => f !== undefined);
    if (
      wrong ||
      taken === undefined ||
      ready === undefined ||
      each === undefined ||
      celsius === undefined ||
      hours === undefined
    )
      return focusFault(event.currentTarget);
    const run = newRun(dryer, {
      id: newId(),
      lot: lot.id,
      startedAt: new Date().toISOString(),
      taken,
      ready,
      onTrays: each,
      loads,
      done: next?.done ?? 0,
      kind: typed.kind,
      celsius,
      hours,
    });
    await save.mutateAsync(run, undefined);
    go('drying', run.id);
    focusWhenThere('.dry-run h2');
  }

  return (
    <Form className="dry-form" onSubmit={(e) => void start(e).catch(() => {})}>
      {next && <p className="notice-line">{t.restOf(next.done, sayGrams(next.taken))}</p>}
      <h3>{t.howMuch}</h3>
      <div className="fields">
        <LabelledNumber
          label={t.taken}
          measure="mass"
          value={typed.taken}
          onChange={(taken) => type({ taken })}
          error={shown(faults.taken)}
        />
        <LabelledNumber
          label={t.ready}
          measure="mass"
          value={typed.ready}
          onChange={(ready) => type({ ready })}
          placeholder={guess === undefined ? '' : t.about(asText(guess, 0, 'mass'))}
          hint={t.readyHint}
          error={shown(faults.ready)}
        />
        <Choice
          label={t.kind}
          value={typed.kind}
          options={KINDS.map((kind) => [kind, t.kinds[kind]] as const)}
          onChange={(kind) => type({ kind, load: 0, way: undefined, celsius: undefined, hours: undefined })}
        />
      </div>
      {trim && (
        <p className="hint">
          {[t.estimate(trim.note), ...(guess === undefined ? [] : [t.leaves(sayGrams(guess))])].join(' ')}
        </p>
      )}

      <TrayLoads dryer={dryer} load={typed.load} read={read} onChoose={(load) => type({ load })} />
      {typed.load === 'own' && (
        <LabelledNumber
          label={t.perArea}
          measure="mass"
          value={typed.perDm2}
          onChange={(perDm2) => type({ perDm2 })}
          error={shown(faults.per)}
        />
      )}
      {loads > 1 && (
        <div className="fields">
          <LabelledNumber
            label={t.onTrays}
            measure="mass"
            value={read.shown.each}
            onChange={(each) => type({ each })}
            hint={t.firstOf(loads)}
            error={shown(faults.each)}
          />
        </div>
      )}

      <WaysToDry
        ways={read.ways}
        at={read.wayAt}
        onChoose={(chosen) => type({ way: chosen, celsius: undefined, hours: undefined })}
      />
      <div className="fields">
        <LabelledNumber
          label={t.temperature}
          measure="heat"
          value={read.shown.celsius}
          onChange={(celsius) => type({ celsius })}
          error={shown(faults.celsius)}
        />
        <LabelledNumber
          label={t.time}
          unit="h"
          value={read.shown.hours}
          onChange={(hours) => type({ hours })}
          hint={
            way.hours[1] > way.hours[0]
              ? t.mayTake(way.hours[1], CHECK_EVERY.hours)
              : t.checkEvery(CHECK_EVERY.hours)
          }
          error={shown(faults.hours)}
        />
      </div>
      <DryingCautions device={dryer.device} kind={typed.kind} />
      <Failed error={save.error} />
      <Button type="submit" className="big-button">
        {loads > 1 ? t.startLoad : t.start}
      </Button>
    </Form>
  );
}
