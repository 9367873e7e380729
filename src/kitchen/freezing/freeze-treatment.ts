/**
 * The freeze treatment against insects, for one lot: whether it needs one, its steps ticked off, and whether it may be weighed out.
 * Common practice for dry goods on arrival: freeze 3 to 4 days, thaw 3 to 4 days, and the same again (no source).
 * The thaw wakes what lived through the first frost, and the second takes it.
 */
import type { FoodGroup } from '../../foods/food.ts';
import { dayInWords, dayNumber, daysBetween, plusDays } from '../days.ts';
import type { Day, FreezeStep, Lot } from '../model.ts';

/** Whether a lot needs the freeze treatment, with a sentence that says why. */
interface TreatmentNeed {
  readonly needs: boolean;
  readonly why: string;
}

/**
 * Grains, seeds, legumes, nuts, herbs, vegetables and fruit bought dry need it. A dry lot whose group is not
 * known counts as needing it. Dried animal food does not: common practice speaks of plant goods only (no source).
 */
export function needsTreatment(lot: Pick<Lot, 'form'>, group?: FoodGroup): TreatmentNeed {
  if (lot.form === 'fresh')
    return { needs: false, why: 'Bought fresh: insects of the store room live in dry goods.' };
  if (lot.form === 'dried')
    return {
      needs: false,
      // 50 to 55 °C for about 15 minutes: Canadian Grain Commission, physical control of grain insect pests.
      why: 'Dried at home: grain insects die within about 15 minutes at 50 to 55 °C. Freeze it if it was dried cooler.',
    };
  if (group === 'animal')
    return {
      needs: false,
      why: 'Dried animal food: the cold is common practice for plant goods. Freeze it if you see insects.',
    };
  return {
    needs: true,
    why: group
      ? 'Bought dry: insects may lie in it as eggs or grubs, some of them inside the kernels.'
      : 'Bought dry, of no known group: insects may lie in it, so it goes through the cold.',
  };
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
  for (const [i, { kind, doneOn }] of lot.cold.slice(0, index).entries()) {
    if (doneOn === undefined)
      throw new RangeError(
        `${lot.name}: step ${index + 1} (${step.kind}) cannot be ticked off before step ${i + 1} (${kind}): tick off step ${i + 1} first, or overrule with a note.`,
      );
  }
  const over = daysBetween(step.to, day);
  if (over < 0) {
    const needed = daysBetween(step.from, step.to);
    const lasted = Math.max(0, needed + over);
    throw new RangeError(
      `${lot.name}: step ${index + 1} (${step.kind}) will have lasted ${lasted} of ${needed} days on ${dayInWords(day)}: tick it off on ${dayInWords(step.to)} or later, or overrule with a note.`,
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
  if (before && daysBetween(before.to, from) < 0)
    throw new RangeError(
      `${lot.name}: step ${index + 1} (${step.kind}) cannot begin on ${dayInWords(from)}: step ${index} (${before.kind}) ends on ${dayInWords(before.to)}. Begin then or later.`,
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
  if (!note.trim())
    throw new RangeError(
      `${lot.name}: write a note that says why it is weighed out before the cold is done.`,
    );
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
export function mayBeWeighed(lot: Lot, day: Day, group?: FoodGroup): MayBeWeighed {
  dayNumber(day);
  if (lot.barred)
    return {
      ok: false,
      why: `${lot.name} is barred since ${dayInWords(lot.barred.on)}: ${lot.barred.why}.`,
      wayOut: 'Take another lot, or leave the food out of this batch.',
    };
  const overruled = lot.overruled && lot.overruled.on <= day ? lot.overruled : undefined;
  const waits = (lot.cold.length > 0 || needsTreatment(lot, group).needs) && !treatmentDone(lot, day);
  if (waits && !overruled) return notTreated(lot, day);
  const warnings: string[] = [];
  if (waits && overruled)
    warnings.push(`The cold is not done; overruled on ${dayInWords(overruled.on)}: ${overruled.note}`);
  if (lot.bestBefore !== undefined && lot.bestBefore < day)
    warnings.push(`Best before ${dayInWords(lot.bestBefore)}: look at it and smell it before you use it.`);
  return warnings.length > 0 ? { ok: true, warning: warnings.join(' ') } : { ok: true };
}

function notTreated(lot: Lot, day: Day): MayBeWeighed {
  const open = lot.cold.filter((step) => step.doneOn === undefined);
  const next = open[0];
  if (lot.cold.length === 0)
    return {
      ok: false,
      why: `${lot.name} was bought dry and has not been through the cold.`,
      wayOut: 'Plan its freezing, or overrule with a note.',
    };
  if (!next)
    return {
      ok: false,
      why: `${lot.name} is through the cold on ${dayInWords(readyOn(lot)!)}, not yet on ${dayInWords(day)}.`,
      wayOut: `Weigh it out on ${dayInWords(readyOn(lot)!)} or later, or overrule with a note.`,
    };
  const count = open.length === 1 ? 'one step is' : `${open.length} steps are`;
  return {
    ok: false,
    why: `${lot.name} is not through the cold: ${count} not ticked off.`,
    wayOut: `Tick off the ${next.kind} that ends on ${dayInWords(next.to)}; it is ready on ${dayInWords(readyOn(lot)!)}. Or overrule with a note.`,
  };
}

function stepAt(lot: Pick<Lot, 'cold' | 'name'>, index: number): FreezeStep {
  const step = lot.cold[index];
  if (!step)
    throw new RangeError(
      `${lot.name} has no step ${index + 1} in the cold; it has ${lot.cold.length}. Plan its freezing first.`,
    );
  if (step.doneOn !== undefined)
    throw new RangeError(
      `${lot.name}: step ${index + 1} (${step.kind}) was ticked off on ${dayInWords(step.doneOn)} and is not changed any more.`,
    );
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
