/** Freezer and freeze treatment: what must go through it, on which days, one press to plan, and a tick for each step. */
import { useMemo, useState } from 'react';
import { Button } from 'react-aria-components';
import { changedByPlan, freezerDays } from '../../household/reckon/cupboard/freezer-days.ts';
import { gramsInFreezer } from '../../household/reckon/cupboard/freezer-load.ts';
import { lotById } from '../../household/reckon/cupboard/lot-index.ts';
import { lotsToFreeze, lotsToTick, tickedNext } from '../../household/reckon/cupboard/lots-to-freeze.ts';
import { dayInWords } from '../../kitchen/days.ts';
import { readyOn } from '../../kitchen/freezing/freeze-treatment.ts';
import type { PlannedTreatment } from '../../kitchen/freezing/freezer-schedule.ts';
import type { Lot } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { words } from '../../words/words.ts';
import { focusWhenThere } from '../shared/focus.ts';
import { useParts } from '../shared/parts.tsx';
import { linkTo } from '../shared/route.ts';
import { today } from '../shared/today.ts';
import { useSave } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { FreezerSettings } from './FreezerSettings.tsx';
import { FreezeSteps } from './FreezeSteps.tsx';

/** Lots shown at once. */
const PART = 25;

export function FreezerPanel() {
  const t = words().cupboard.freezer;
  const { house } = useMixDraft();
  const day = today();
  const freezer = house.kitchen[0]?.freezer;
  const waiting = lotsToFreeze(house, day);
  const dates = useMemo(() => freezer && freezerDays(house, freezer, day), [house, freezer, day]);
  const plan = dates && 'plan' in dates ? dates.plan : undefined;
  const due = lotsToTick(house, day);
  const parts = useParts(dueFirst(waiting, due), { part: PART });

  return (
    <article className="cold-page">
      <h2 tabIndex={-1}>{t.title}</h2>
      <p>
        {words().kitchen.freezeTreatment.sentence}{' '}
        <span className="source">({words().kitchen.freezeTreatment.source})</span>
      </p>
      <FreezerSettings />
      {freezer && (
        <p className="hint">{t.now(sayGrams(gramsInFreezer(house, day)), sayGrams(freezer.grams))}</p>
      )}
      {dates && 'fault' in dates && (
        <p role="alert" className="field-error">
          {dates.fault}
        </p>
      )}
      <h3>{t.packs}</h3>
      {waiting.length === 0 ? (
        <p className="empty">{t.none}</p>
      ) : !freezer ? (
        <p className="hint">{t.sayFirst}</p>
      ) : (
        plan && <Planning plan={plan} changed={changedByPlan(house, plan)} />
      )}
      <TickAll lots={due} />
      <ul className="cold-lots">
        {parts.shown.map((lot) => (
          <LotToFreeze
            key={lot.id}
            lot={lotById(house, lot.id) ?? lot}
            grams={lot.grams}
            planned={plan?.lots.find((p) => p.lot === lot.id)}
            tooBig={plan?.tooBig.find((t) => t.lot === lot.id)}
          />
        ))}
      </ul>
      {parts.more}
      <Usual planned={plan?.lots ?? []} />
    </article>
  );
}

/** Where there are more than are shown at once, those with a step to tick off come first. */
function dueFirst(waiting: readonly Lot[], due: readonly Lot[]): readonly Lot[] {
  if (waiting.length <= PART) return waiting;
  const now = new Set(due.map((l) => l.id));
  return [...waiting.filter((l) => now.has(l.id)), ...waiting.filter((l) => !now.has(l.id))];
}

/** Keeps several lots, and says so once all are kept; of each that is refused it is told. */
function useKeepAll() {
  const { house } = useMixDraft();
  const save = useSave('lots');
  const [said, setSaid] = useState('');
  const [busy, setBusy] = useState(false);

  /** @param focus selector of the place that gets the keyboard */
  async function keep(lots: readonly Lot[], words: string, focus: string) {
    if (busy) return;
    setBusy(true);
    try {
      await Promise.all(
        lots.map((lot) =>
          save.mutateAsync(
            lot,
            house.lots.find((l) => l.id === lot.id),
          ),
        ),
      );
      setSaid(words);
      focusWhenThere(focus);
    } catch {
      setSaid(''); // `save.error` says why
    } finally {
      setBusy(false);
    }
  }

  return { keep, said, error: save.error };
}

/** Ticks off the step of every lot that has lasted long enough, in one press. */
function TickAll({ lots }: { lots: readonly Lot[] }) {
  const t = words().cupboard.freezer;
  const { keep, said, error } = useKeepAll();
  const tick = () =>
    keep(
      lots.map((lot) => tickedNext(lot, today())),
      t.ticked(lots.length),
      '.cold-page h2',
    );

  return (
    <>
      {lots.length > 1 && (
        <Button className="button strong" onPress={() => void tick()}>
          {t.tickAll(lots.length)}
        </Button>
      )}
      <p className={error ? 'field-error' : 'hint'} aria-live="polite">
        {error ? error.message : said}
      </p>
    </>
  );
}

/** Keeps the planned days of every lot whose days are not those of the plan. */
function Planning({
  plan,
  changed,
}: {
  plan: { readonly lots: readonly PlannedTreatment[] };
  changed: readonly Lot[];
}) {
  const t = words().cupboard.freezer;
  const { keep, said, error } = useKeepAll();
  const anew = changed.some((lot) => plan.lots.some((p) => p.lot === lot.id) && lot.cold.length > 0);
  const keepDays = () => keep(changed, t.planned(changed.length), '.cold-lots .next .button');

  return (
    <>
      {changed.length > 0 && (
        <Button className="button strong" onPress={() => void keepDays()}>
          {anew ? t.planAnew : t.plan}
        </Button>
      )}
      <p className="hint" aria-live="polite">
        {error ? error.message : changed.length === 0 ? said || t.allPlanned : ''}
      </p>
    </>
  );
}

function LotToFreeze({
  lot,
  grams,
  planned,
  tooBig,
}: {
  lot: Lot;
  grams: number;
  planned: PlannedTreatment | undefined;
  tooBig: { readonly why: string; readonly wayOut: string } | undefined;
}) {
  const day = today();
  const t = words().cupboard.freezer;
  return (
    <li>
      <h4>
        <a href={linkTo('cupboard', lot.id)}>{lot.name}</a>{' '}
        <small>
          {lot.cold.length > 0
            ? t.ready(sayGrams(grams), dayInWords(readyOn(lot) ?? day, day))
            : planned
              ? t.couldBe(sayGrams(grams), dayInWords(planned.readyOn, day))
              : sayGrams(grams)}
        </small>
      </h4>
      {lot.cold.length > 0 && <FreezeSteps lot={lot} day={day} only="next" />}
      {tooBig && (
        <p className="notice-line">
          {tooBig.why} {tooBig.wayOut}
        </p>
      )}
      {planned?.advice && isBig(planned.advice) && <BigBag advice={planned.advice} />}
    </li>
  );
}

type Advice = NonNullable<PlannedTreatment['advice']>;

/** Whether a bag lies in the freezer longer than is usual. */
const isBig = ({ days, common }: Advice) => days > common;

/** How long a big bag lies in the freezer, and what makes that shorter. */
function BigBag({ advice }: { advice: Advice }) {
  const t = words().cupboard.freezer;
  return (
    <>
      <p className="notice-line">
        <strong>{t.bigBag} </strong>
        {t.bigAdvice(advice.sentence)}
      </p>
      <details>
        <summary>{t.source}</summary>
        <p className="source">{advice.source}</p>
      </details>
    </>
  );
}

/** Why all other bags lie in the freezer as long as they do: said once for all that lie as long. */
function Usual({ planned }: { planned: readonly PlannedTreatment[] }) {
  const t = words().cupboard.freezer;
  const byDays = new Map(
    planned.flatMap(({ advice }) => (advice && !isBig(advice) ? [[advice.days, advice] as const] : [])),
  );
  return [...byDays.values()].map((advice) => (
    <details key={advice.days}>
      <summary>{t.why(advice.days)}</summary>
      <p className="hint">{t.advice(advice.sentence)}</p>
      <p className="source">{advice.source}</p>
    </details>
  ));
}
