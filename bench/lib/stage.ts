/** What every question about mixes needs: the table, the solvers, problems of a size, and answers compared. */
import type { Reference, ReferenceFood } from '../../src/foods/reference.ts';
import { Formulation } from '../../src/formulation/formulation.ts';
import type { Problem } from '../../src/formulation/problem/problem.ts';
import { type Highs, loadHighs } from '../../src/formulation/solve/highs.ts';
import { loadReference } from '../../src/household/reference-file.ts';
import { type Glpk, loadGlpk } from '../solvers/glpk.ts';
import { type Asked, drawn, poolOf } from './problems.ts';

export interface Stage {
  readonly reference: Reference;
  readonly highs: Highs;
  readonly glpk: Glpk;
  readonly pool: readonly ReferenceFood[];
}

export async function stage(): Promise<Stage> {
  const reference = loadReference();
  return { reference, highs: await loadHighs(), glpk: await loadGlpk(), pool: poolOf(reference) };
}

export const formulate = (problem: Problem, { reference, highs }: Stage) =>
  new Formulation(problem, { reference, highs });

/** So many problems, another one for each round. */
export function problems(count: number, asked: Omit<Asked, 'seed'>, at: Stage): Problem[] {
  const found: Problem[] = [];
  for (let seed = 1; found.length < count; seed++) {
    const problem = drawn(at.pool, { ...asked, seed }, at.reference);
    // A confidence asks more than the mix that a problem is drawn around may have.
    if (asked.confidence === undefined || isFeasible(problem, at)) found.push(problem);
  }
  return found;
}

export function isFeasible(problem: Problem, at: Stage): boolean {
  const asked = formulate(problem, at);
  try {
    return asked.feasible();
  } finally {
    asked.dispose();
  }
}

/** The nth of a list that is gone through again and again; round -1, which warms up, is the first. */
export function inTurn<T>(list: readonly T[], round: number): T {
  const found = list[Math.max(0, round) % list.length];
  if (found === undefined) throw new RangeError('nothing to take in turn');
  return found;
}

/** Answers of several sides to the same questions, and how far they are apart. */
export class Agreement {
  private readonly first = new Map<number, { side: string; value: number }>();
  private apart = 0;
  private compared = 0;
  private readonly silent = new Map<string, number>();

  /** @param value undefined, or not a number, where a side came to no answer, which is counted */
  meet(side: string, value: number | undefined, round: number): void {
    if (value === undefined || Number.isNaN(value)) {
      this.silent.set(side, (this.silent.get(side) ?? 0) + 1);
      return;
    }
    const known = this.first.get(round);
    if (!known) {
      this.first.set(round, { side, value });
      return;
    }
    this.compared++;
    const scale = Math.max(1, Math.abs(known.value));
    this.apart = Math.max(this.apart, Math.abs(known.value - value) / scale);
  }

  /** @throws Error where two sides answered differently: then neither time means anything */
  settled(what: string, tolerance: number): string {
    if (this.apart > tolerance)
      throw new Error(`${what}: the answers are ${this.apart} apart, more than ${tolerance}`);
    if (this.compared === 0) return 'nothing to compare';
    const silent = [...this.silent].map(([side, times]) => `; ${side} gave none ${times} times`);
    return `${this.compared} answers compared, ${this.apart.toExponential(0)} apart at most${silent.join('')}`;
  }
}
