/** A result with the advice that the command line was asked for. */
import type { Substitutable } from '../formulation/advice/substitutes.ts';
import type { DropOne } from '../formulation/explain/drop-one.ts';
import type { Formulation } from '../formulation/formulation.ts';
import type { Reason, Result } from '../formulation/problem/result.ts';

export interface FormulateOptions {
  readonly pretty?: boolean;
  /** Adds `reasons`: the bounds the mix stands at and what each costs. */
  readonly why?: boolean;
  /** Adds `swaps`: what can take each food's place; and `left_out`: what is eaten when one food is left. */
  readonly swaps?: boolean;
}

/** A result with the advice that was asked for. */
export type Advised = Result & {
  readonly reasons?: readonly Reason[];
  readonly swaps?: readonly Substitutable[];
  readonly left_out?: DropOne;
};

/** Solves, and adds what the options ask for where a mix was found. */
export function advised(formulation: Formulation, { why, swaps }: FormulateOptions): Advised {
  const result = formulation.solve();
  if (result.status !== 'optimal') return result;
  return {
    ...result,
    ...(why ? { reasons: formulation.why() } : {}),
    ...(swaps
      ? { swaps: formulation.substitutes(result.shares), left_out: formulation.dropOne(result.shares) }
      : {}),
  };
}
