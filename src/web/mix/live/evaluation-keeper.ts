/** Keeps at hand how the mix stands; what came with an answer of the worker is not asked for again. */
import type { Problem, Shares } from '../../../formulation/problem/problem.ts';
import type { Evaluation } from '../../../formulation/problem/result.ts';
import type { Answer } from '../../worker/formulation.worker.ts';

/** A problem at given shares, percent by food id. */
interface At {
  readonly problem: Problem;
  readonly shares: Shares;
}

/** What was wrong with the problem; `field` is '' where the worker itself failed. */
export interface Fault {
  readonly field: string;
  readonly message: string;
}

/** What is known of the mix: after a fault the last evaluation stays. */
export interface Known {
  readonly evaluation?: Evaluation;
  readonly fault?: Fault;
}

export class EvaluationKeeper {
  readonly #ask: (problem: Problem, shares: Shares) => Promise<Answer<Evaluation> | undefined>;
  readonly #tell: (standing: Known) => void;
  #known: (At & { readonly evaluation: Evaluation }) | undefined;
  #asked: At | undefined;
  /** The problem that the mix has. */
  #followed: Problem | undefined;
  #shown: Known = {};

  /**
   * @param ask the worker; undefined where a newer question overtook this one
   * @param show called with every change of what is known
   */
  constructor(
    ask: (problem: Problem, shares: Shares) => Promise<Answer<Evaluation> | undefined>,
    show: (standing: Known) => void,
  ) {
    this.#ask = ask;
    this.#tell = show;
  }

  /**
   * Takes an evaluation that came with an answer. Where the mix has this very problem already it is shown at once, together
   * with the shares, which the mix is about to have; else once the mix has this problem and these shares.
   */
  came(problem: Problem, shares: Shares, evaluation: Evaluation): void {
    this.#known = { problem, shares, evaluation };
    if (problem === this.#followed) this.#show({ evaluation });
  }

  /** Shows what was wrong with an answer. */
  fail(fault: Fault): void {
    this.#show({ evaluation: this.#known?.evaluation, fault });
  }

  /** The mix has this problem and these shares from now on: asks how they stand, unless that is known or asked. */
  async follow(problem: Problem, shares: Shares): Promise<void> {
    const at = { problem, shares };
    this.#followed = problem;
    if (isSame(this.#known, at)) {
      this.#asked = undefined;
      this.#show({ evaluation: this.#known?.evaluation });
      return;
    }
    if (isSame(this.#asked, at)) return;
    this.#asked = at;
    const answer = await this.#ask(problem, shares).catch(failed);
    if (!answer || this.#asked !== at) return;
    this.#asked = undefined;
    if (!answer.ok) return this.fail(answer);
    this.#known = { ...at, evaluation: answer.value };
    this.#show({ evaluation: answer.value });
  }

  /** What is shown already is not told twice: all of the screen is drawn with it. */
  #show(known: Known): void {
    if (known.evaluation === this.#shown.evaluation && known.fault === this.#shown.fault) return;
    this.#shown = known;
    this.#tell(known);
  }
}

/** What is said where the worker itself failed. */
export function failed(error: unknown): Answer<never> {
  return { ok: false, field: '', message: error instanceof Error ? error.message : String(error) };
}

/** Whether both are the same problem with equal shares of its foods; what else the shares name counts for nothing. */
function isSame(a: At | undefined, b: At): boolean {
  if (!a || b.problem.foods.some((f) => (a.shares[f.id] ?? 0) !== (b.shares[f.id] ?? 0))) return false;
  return a.problem === b.problem || JSON.stringify(a.problem) === JSON.stringify(b.problem);
}
