/** How a lot stands, in a few words that stand for themselves. */
import type { LotState } from '../../../household/reckon/cupboard/lot-state.ts';
import { sayBarred } from '../../../kitchen/cupboard/barred.ts';
import { dayInWords } from '../../../kitchen/days.ts';
import type { Day, Lot } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';

/** @param state of the lot on `day` */
export function lotWords(lot: Lot, state: LotState, day: Day): string {
  const t = words().cupboard.state;
  if (lot.barred) return t.stopped(sayBarred(lot.barred.why));
  if (state.kind === 'empty') return t.empty;
  if (state.kind === 'fresh') return t.fresh;
  const best = state.pastBest && lot.bestBefore !== undefined ? dayInWords(lot.bestBefore, day) : undefined;
  if (state.kind === 'ready' || state.kind === 'past') {
    if (state.overruled) return best === undefined ? t.chosen : t.chosenPast(best);
    return best === undefined ? t.ready : t.readyPast(best);
  }
  const stands = treatmentWords(state, day);
  return best === undefined ? stands : t.also(stands, best);
}

function treatmentWords({ kind, step, readyOn }: LotState, day: Day): string {
  const t = words().cupboard.state;
  const ready = readyOn === undefined ? '' : dayInWords(readyOn, day);
  if (!step) return readyOn === undefined ? t.noDays : t.until(ready);
  const freezes = step.kind === 'freeze';
  if (kind === 'waits') {
    const from = dayInWords(step.from, day);
    return freezes ? t.goesIn(from) : t.comesOut(from);
  }
  if (kind === 'due') return freezes ? t.inFreezerDone : t.thawingDone;
  const to = dayInWords(step.to, day);
  if (readyOn === step.to) return freezes ? t.inFreezer(to) : t.thawing(to);
  return freezes ? t.inFreezerReady(to, ready) : t.thawingReady(to, ready);
}
