/** The naive way to formulate: each question written as LP text and given to a solver of its own. */

import type { Reference } from '../../src/foods/reference.ts';
import { NO_CAPS } from '../../src/formulation/amounts/apply-cautions.ts';
import { foodAmounts } from '../../src/formulation/amounts/food-amounts.ts';
import type { Problem } from '../../src/formulation/problem/problem.ts';
import { type LinearBound, linearBounds, Ration } from '../../src/formulation/solve/bounds.ts';
import type { Highs } from '../../src/formulation/solve/highs.ts';

export interface NaiveWay {
  /** Lowest and highest share of every food. */
  spans(): (readonly [number, number])[];
  /** Shares nearest to `target`, one of them held where `held` names it. */
  nearest(target: readonly number[], held?: { column: number; share: number }): number[];
}

export function naiveWay(solver: Highs, reference: Reference, p: Problem): NaiveWay {
  const foods = p.foods.map((f) => foodAmounts(f, reference));
  const beside = p.beside.map((b) => ({ food: foodAmounts(b, reference), part: b.share_of_ration / 100 }));
  const rows = p.foods.map((_, i) => i);
  const sides = linearBounds(p, new Ration(foods, beside), rows, 0, NO_CAPS).filter((s) =>
    s.pointer.startsWith('/rules/'),
  );
  const rules = rowsText(sides);
  const ask = (objective: string, bounds: string) =>
    solver.solve(`${objective}\nSubject To\n${sum(rows)} = 100\n${rules}\nBounds\n${bounds}\nEnd\n`, {
      output_flag: false,
    });
  const box = (held?: { column: number; share: number }) =>
    p.foods
      .map((f, i) =>
        i === held?.column ? `x${i} = ${held.share}` : `${f.min ?? 0} <= x${i} <= ${f.max ?? 100}`,
      )
      .join('\n');
  return {
    spans: () =>
      rows.map((i) => [
        ask(`Minimize\n x${i}`, box()).ObjectiveValue,
        ask(`Maximize\n x${i}`, box()).ObjectiveValue,
      ]),
    nearest: (target, held) => {
      const squares = rows.map((i) => `2 x${i} ^2`).join('\n + ');
      const linear = signed(rows.map((i) => `${-2 * target[i]!} x${i}`));
      const columns = ask(`Minimize\n ${linear}\n + [ ${squares} ] / 2`, box(held)).Columns as Record<
        string,
        { Primal: number }
      >;
      return rows.map((i) => columns[`x${i}`]!.Primal);
    },
  };
}

/** Rows in short lines, as the solver's reader wants them. */
function rowsText(sides: readonly LinearBound[]): string {
  return sides
    .map((s) => {
      const { g, h } = s.halfSpace(s.bound);
      return `${signed(Array.from(g, (v, i) => `${v} x${i}`))} >= ${h}`;
    })
    .join('\n');
}

function sum(rows: readonly number[]): string {
  return signed(rows.map((i) => `1 x${i}`));
}

/** Terms joined with their signs, one a line. */
function signed(terms: readonly string[]): string {
  return terms.map((t) => (t.startsWith('-') ? `- ${t.slice(1)}` : `+ ${t}`)).join('\n ');
}
