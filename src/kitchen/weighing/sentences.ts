/** What is said beside the scale. */
import { joined } from '../../formulation/explain/sentences.ts';
import { NEAR_STEP } from '../tolerances.ts';
import type { ChangedTarget, NextPour, Tolerance, WeighState } from './weigh-state.ts';

const grams = (g: number) => `${Number(g.toFixed(2))} g`;

/** "anything from 14 to 17 g". */
const anything = ({ low, high }: Tolerance) =>
  low === 0 && high > 0
    ? `anything up to ${grams(high)}`
    : low === high
      ? `only ${grams(low)}`
      : `anything from ${Number(low.toFixed(2))} to ${grams(high)}`;

export function next(n: Omit<NextPour, 'sentence'>, planned: number): string {
  const what = `Pour ${grams(n.target)}${n.again ? ' more' : ''} of ${n.name} (${grams(n.reading)} on a scale that is not tared)`;
  const { asPlanned, grown } = n;
  if (!asPlanned && !grown) return `${what}.`;
  const size = (total: number) =>
    total > planned ? `may grow to ${grams(total)}` : `may come to ${grams(total)}`;
  if (!asPlanned)
    return `${what}: ${anything(grown!)} keeps the ration in range, in a batch that ${size(grown!.total)}.`;
  const first = `${what}: ${anything(asPlanned)} keeps the ration in range`;
  if (!grown) return `${first}.`;
  return `${first}; ${anything(grown)} if the batch ${size(grown.total)}.`;
}

export function changed(c: {
  name: string;
  from: number;
  to: number;
  again: boolean;
  inBowl: number;
}): string {
  if (c.again) return `Pour ${grams(c.to - c.inBowl)} more of ${c.name}.`;
  if (c.to === 0) return `Leave out ${c.name}, ${grams(c.from)} until now.`;
  return `${c.name}: ${grams(c.to)} instead of ${grams(c.from)}.`;
}

export function poured(told: {
  food: string;
  grams: number;
  changed: readonly ChangedTarget[];
  state: WeighState;
  planned: number;
}): string {
  const { state } = told;
  const what =
    told.grams < 0
      ? `${grams(-told.grams)} of ${told.food} taken out`
      : told.grams === 0
        ? `${told.food} is left out`
        : `${grams(told.grams)} of ${told.food}`;
  if (state.lost) return `${what}: ${state.lost.sentence}`;
  const again = told.changed.some((c) => c.again) ? ', and more is needed of what was poured' : '';
  const many = told.changed.length;
  const others =
    many === 0 ? 'nothing changes' : `${many} ${many === 1 ? 'target changes' : 'targets change'}${again}`;
  if (state.done) return `${what}: all is poured, ${grams(state.total)} in range.`;
  if (state.status === 'grown')
    return `${what}: ${others}; the batch comes to ${grams(state.total)} instead of ${grams(told.planned)}.`;
  return `${what}: ${others}, and the batch stays in range.`;
}

export function spoonBack(name: string, out: number): string {
  return `Or take ${grams(out)} of ${name} out again: the batch then stays as large as planned.`;
}

export function lost(missed: readonly { sentence: string }[]): string {
  if (missed.length === 0) return 'No whole steps of the scale bring this batch into range.';
  const said = missed.map((m) => m.sentence.charAt(0).toLowerCase() + m.sentence.slice(1).replace(/\.$/, ''));
  return `This batch can no longer be brought into range with what there is. The nearest that can be done: ${joined(said)}.`;
}

export function larger(total: number, needed: readonly { name: string; grams: number }[]): string {
  const size = `A batch of ${grams(Math.ceil(total - NEAR_STEP))} would be in range`;
  if (needed.length === 0) return `${size}.`;
  return `${size}; it takes ${joined(needed.map((n) => `${grams(n.grams)} of ${n.name}`))} beyond what the lots hold.`;
}

export function choices(canGrow: boolean): string[] {
  return [
    'Accept it as it is; that is kept with the batch.',
    ...(canGrow ? ['Let the batch grow beyond what there is.'] : []),
    'Start again with an empty bowl.',
  ];
}
