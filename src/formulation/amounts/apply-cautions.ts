/**
 * What the caution list says of the foods of a problem: blocked, capped, or only to be prepared with care.
 * A cap may be lifted by the keeper's recorded choice; a block may not.
 */
import { cautionsFor, strictestRuling } from '../../foods/cautions/find.ts';
import type { Reference } from '../../foods/reference.ts';
import type { Ingredient, Problem } from '../problem/problem.ts';
import type { CautionNote } from '../problem/result.ts';

/** The most a caution allows of a food, percent of the mix, and why. */
export interface Cap {
  readonly max: number;
  readonly reason: string;
}

/** Several foods that one caution is about: together they may be no more than one of them alone. */
export interface JointCap extends Cap {
  /** Rows in `problem.foods`. */
  readonly rows: readonly number[];
}

export interface Caps {
  /** By row in `problem.foods`. */
  readonly each: ReadonlyMap<number, Cap>;
  readonly together: readonly JointCap[];
}

interface AppliedCautions {
  /** Rows in `problem.foods` that may not go in at all. */
  readonly blocked: ReadonlySet<number>;
  readonly caps: Caps;
}

export const NO_CAPS: Caps = { each: new Map(), together: [] };
export const NO_CAUTIONS: AppliedCautions = { blocked: new Set(), caps: NO_CAPS };

/** Blocks and caps for a problem that asks for them. */
export function applyCautions(problem: Problem, reference: Reference): AppliedCautions {
  if (problem.cautions !== 'apply') return NO_CAUTIONS;
  const blocked = new Set<number>();
  const each = new Map<number, Cap>();
  const shared = new Map<string, JointCap>();
  problem.foods.forEach((food, row) => {
    const open = openHitsOn(food, problem, reference);
    const ruling = strictestRuling(open);
    if (ruling?.kind === 'block') blocked.add(row);
    if (ruling?.kind !== 'cap') return;
    each.set(row, { max: ruling.maxShare, reason: ruling.reason });
    // A food that stays out takes no part of what the others may be.
    if (food.refused) return;
    for (const { caution } of open) {
      if (caution.maxShare === undefined) continue;
      const rows = [...(shared.get(caution.id)?.rows ?? []), row];
      shared.set(caution.id, { rows, max: caution.maxShare, reason: caution.reason });
    }
  });
  const together = [...shared.values()].filter(({ rows }) => rows.length > 1);
  return { blocked, caps: { each, together } };
}

/** Every caution on a food of the problem, and what was made of it. */
export function cautionNotes(problem: Problem, reference: Reference): CautionNote[] {
  const applying = problem.cautions === 'apply';
  return problem.foods.flatMap((food, row) =>
    hitsOn(food, problem, reference).map(({ caution, found }): CautionNote => {
      const lifted = caution.severity === 'limit' && food.override?.caution === caution.id;
      const applied = {
        never: 'blocked',
        limit: lifted ? 'overridden' : 'capped',
        prepare: 'noted',
      } as const;
      return {
        pointer: `/foods/${row}`,
        food: food.id,
        caution: caution.id,
        severity: caution.severity,
        title: caution.title,
        found,
        reason: caution.reason,
        way: caution.way,
        source: caution.source,
        ...(caution.maxShare === undefined ? {} : { max_share: caution.maxShare }),
        applied: applying ? applied[caution.severity] : 'noted',
      };
    }),
  );
}

/** Whether the caution list says anything of a reference food: then it is not brought up as a remedy. */
export function hasCaution(ref: string, problem: Problem, reference: Reference): boolean {
  return hitsOn({ id: ref, ref }, problem, reference).length > 0;
}

/** Whether the caution list blocks or caps a reference food, so that no swap names it. */
export function isCautioned(ref: string, problem: Problem, reference: Reference): boolean {
  return strictestRuling(openHitsOn({ id: ref, ref }, problem, reference)) !== undefined;
}

/** Cautions that the keeper has not lifted. */
function openHitsOn(food: Ingredient, problem: Problem, reference: Reference) {
  return hitsOn(food, problem, reference).filter(
    ({ caution }) => !(caution.severity === 'limit' && food.override?.caution === caution.id),
  );
}

function hitsOn(food: Ingredient, problem: Problem, reference: Reference) {
  const known = food.ref === undefined ? undefined : reference.get(food.ref);
  return cautionsFor(
    { ref: food.ref, name: food.name ?? known?.name ?? food.id, tableName: known?.tableName },
    problem.species,
  );
}
