/** The evaluation that comes with a mix in range, so that nobody needs to ask for it again. */
import type { Breach, Evaluation, Following } from '../problem/result.ts';

/**
 * How a mix stands that a solve or a move answered. Such a mix adds up to 100 % and breaks no rule, so an answer leaves
 * out `total` and `breaches`: they are written in here. What a drag answers may break rules that count foods, and says which. The rest is what `Formulation.evaluate` says of its shares.
 */
export function evaluationOf(answer: Following & { readonly breaches?: readonly Breach[] }): Evaluation {
  const { nutrients, in_range_chance, all_in_range_chance, in_range, reservations, ruled } = answer;
  const { binding, estimated, unsure, cautions, verdict, beside } = answer;
  return {
    total: 100,
    nutrients,
    in_range_chance,
    all_in_range_chance,
    in_range,
    ...(reservations && { reservations }),
    ruled,
    breaches: answer.breaches ?? [],
    binding,
    estimated,
    unsure,
    cautions,
    verdict,
    ...(beside && { beside }),
  };
}
