/**
 * The freeze treatment against insects, for one lot: whether it needs one, its steps ticked off, and whether it may be weighed out.
 * Common practice for dry goods on arrival: freeze 3 to 4 days, thaw 3 to 4 days, and the same again (no source).
 * The thaw wakes what lived through the first frost, and the second takes it.
 */
import type { FoodGroup } from '../../foods/food.ts';
import { words } from '../../words/words.ts';
import { dayInWords, dayNumber, daysBetween, plusDays } from '../days.ts';
import type { Day, FreezeStep, Lot } from '../model.ts';

/** What a lot is of, as far as insects go: its food's group, or a commercial pellet. */
export type LotGroup = FoodGroup | 'pellet';

/** Whether a lot needs the freeze treatment, with a sentence that says why. */
interface TreatmentNeed {
  readonly needs: boolean;
  readonly why: string;
}

/**
 * Grains, seeds, legumes, nuts, herbs, vegetables and fruit bought dry need it. A dry lot whose group is not
 * known counts as needing it. Dried animal food does not: common practice speaks of plant goods only (no source). Nor
 * does a pellet: it is pressed or baked hot and sold sealed (common practice, no source).
 */
export function needsTreatment(lot: Pick<Lot, 'form'>, group?: LotGroup): TreatmentNeed {
  const { why } = words().freezing;
  if (group === 'pellet') return { needs: false, why: why.pellet };
  if (lot.form === 'fresh') return { needs: false, why: why.fresh };
  // 50 to 55 °C for about 15 minutes: Canadian Grain Commission, physical control of grain insect pests.
  if (lot.form === 'dried') return { needs: false, why: why.dried(50, 55) };
  if (group === 'animal') return { needs: false, why: why.animal };
  return { needs: true, why: group ? why.dry : why.dryOfNoGroup };
}

/** The day on which a lot's freeze treatment ends, as planned or as ticked off; undefined where nothing is planned. */
export function readyOn(lot: Pick<Lot, 'cold'>): Day | undefined {
  const last = lot.cold.at(-1);
  return last && (last.doneOn ?? last.to);
}

/** Whether every step is ticked off, the last no later than `day`. A lot without any step is not treated. */
export function treatmentDone(lot: Pick<Lot, 'cold'>, day: Day): boolean {
  return lot.cold.length > 0 && lot.cold.every((step) => step.doneOn !== undefined && step.doneOn <= day);
}

/**
 * The lot with step `index` ticked off on `day`. A step that ended late pushes those after it as far as it must;
 * those before it stay. Time that a later step spends waiting for room is used up first.
 * @throws RangeError when there is no such step, it is ticked off already, one before it is not, `day` is no calendar
 * day, or the step has not lasted until then
 */
export function tickedStep<L extends Pick<Lot, 'cold' | 'name'>>(lot: L, index: number, day: Day): L {
  const step = stepAt(lot, index);
  const t = words().freezing;
  for (const [i, { kind, doneOn }] of lot.cold.slice(0, index).entries()) {
    if (doneOn === undefined)
      throw new RangeError(t.before(lot.name, index + 1, t.step[step.kind], i + 1, t.step[kind]));
  }
  const over = daysBetween(step.to, day);
  if (over < 0) {
    const needed = daysBetween(step.from, step.to);
    const lasted = Math.max(0, needed + over);
    throw new RangeError(
      t.tooSoon(lot.name, index + 1, t.step[step.kind], lasted, needed, dayInWords(day), dayInWords(step.to)),
    );
  }
  return { ...lot, cold: pushed(lot.cold, index, { ...step, to: day, doneOn: day }) };
}

/**
 * The lot with step `index` begun on `from`, as long as before; those after it are pushed as far as they must. The
 * freezer's room is not looked at: plan anew for that (`planFreezer`).
 * @throws RangeError when there is no such step, it is ticked off already, or `from` is before the step before it ends
 */
export function movedStep<L extends Pick<Lot, 'cold' | 'name'>>(lot: L, index: number, from: Day): L {
  const step = stepAt(lot, index);
  const before = lot.cold[index - 1];
  const t = words().freezing;
  if (before && daysBetween(before.to, from) < 0)
    throw new RangeError(
      t.overlaps(
        lot.name,
        index + 1,
        t.step[step.kind],
        dayInWords(from),
        index,
        t.step[before.kind],
        dayInWords(before.to),
      ),
    );
  const to = plusDays(from, daysBetween(step.from, step.to));
  return { ...lot, cold: pushed(lot.cold, index, { ...step, from, to }) };
}

/**
 * The lot with the keeper's choice on record to weigh it out though the freeze treatment is not done.
 * @throws RangeError when the note is empty or `on` is no calendar day
 */
export function overrule<L extends Pick<Lot, 'name' | 'overruled'>>(lot: L, note: string, on: Day): L {
  dayNumber(on);
  if (!note.trim()) throw new RangeError(words().freezing.sayWhy(lot.name));
  return { ...lot, overruled: { note: note.trim(), on } };
}

type MayBeWeighed =
  | { readonly ok: true; readonly warning?: string }
  | { readonly ok: false; readonly why: string; readonly wayOut: string };

/**
 * Whether a lot may be weighed out on `day`. A barred lot never is. One that needs the freeze treatment is not until it is
 * through it or the keeper overruled that, no later than `day`. Past best before is a warning.
 * @param group of its food; see {@link needsTreatment}
 */
export function mayBeWeighed(lot: Lot, day: Day, group?: LotGroup): MayBeWeighed {
  dayNumber(day);
  const t = words().freezing;
  if (lot.barred)
    return {
      ok: false,
      why: t.stopped(lot.name, dayInWords(lot.barred.on), lot.barred.why),
      wayOut: t.stoppedWayOut,
    };
  const overruled = overruledBy(lot, day);
  const waits = stillWaits(lot, day, group);
  if (waits && !overruled) return notTreated(lot, day);
  const warnings: string[] = [];
  if (waits && overruled) warnings.push(t.wentAhead(dayInWords(overruled.on), overruled.note));
  if (lot.bestBefore !== undefined && lot.bestBefore < day)
    warnings.push(t.pastBestBefore(dayInWords(lot.bestBefore)));
  return warnings.length > 0 ? { ok: true, warning: warnings.join(' ') } : { ok: true };
}

/** What {@link mayBeWeighed} answers, without the words: of a whole cupboard they take long. */
export function isWeighable(lot: Lot, day: Day, group?: LotGroup): boolean {
  return !lot.barred && (overruledBy(lot, day) !== undefined || !stillWaits(lot, day, group));
}

const overruledBy = ({ overruled }: Lot, day: Day) =>
  overruled && overruled.on <= day ? overruled : undefined;

const stillWaits = (lot: Lot, day: Day, group: LotGroup | undefined) =>
  (lot.cold.length > 0 || needsTreatment(lot, group).needs) && !treatmentDone(lot, day);

function notTreated(lot: Lot, day: Day): MayBeWeighed {
  const open = lot.cold.filter((step) => step.doneOn === undefined);
  const next = open[0];
  const t = words().freezing;
  if (lot.cold.length === 0) return { ok: false, why: t.notFrozen(lot.name), wayOut: t.planIt };
  const ready = dayInWords(readyOn(lot)!);
  if (!next)
    return { ok: false, why: t.notYet(lot.name, ready, dayInWords(day)), wayOut: t.weighLater(ready) };
  return {
    ok: false,
    why: t.notTicked(lot.name, open.length),
    wayOut: t.tickOff[next.kind](dayInWords(next.to), ready),
  };
}

function stepAt(lot: Pick<Lot, 'cold' | 'name'>, index: number): FreezeStep {
  const step = lot.cold[index];
  const t = words().freezing;
  if (!step) throw new RangeError(t.noStep(lot.name, index + 1, lot.cold.length));
  if (step.doneOn !== undefined)
    throw new RangeError(t.tickedAlready(lot.name, index + 1, t.step[step.kind], dayInWords(step.doneOn)));
  return step;
}

/** The steps with one replaced; each after it begins no earlier than the one before it ends, and lasts as long. */
function pushed(steps: readonly FreezeStep[], index: number, step: FreezeStep): FreezeStep[] {
  let end = step.to;
  return steps.map((each, i) => {
    if (i <= index) return i < index ? each : step;
    const late = Math.max(0, daysBetween(each.from, end));
    const next = late > 0 ? { ...each, from: plusDays(each.from, late), to: plusDays(each.to, late) } : each;
    end = next.to;
    return next;
  });
}
