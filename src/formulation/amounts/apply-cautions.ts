/**
 * What the caution list says of the foods of a problem: blocked, capped, or only to be prepared with care. A food that
 * must not be fed stays blocked; one that only has such a thing on its list of ingredients, or is to be capped, goes in
 * by the keeper's recorded choice.
 */
import type { Caution } from '../../foods/cautions/caution.ts';
import { cautionsFor, strictestRuling } from '../../foods/cautions/find.ts';
import { neverFedIn } from '../../foods/ingredients/never-fed.ts';
import type { Reference } from '../../foods/reference.ts';
import type { Beside, Ingredient, Problem } from '../problem/problem.ts';
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

/** Every caution on a food of the problem, in the mix or beside it, and what was made of it. */
export function cautionNotes(problem: Problem, reference: Reference): CautionNote[] {
  const applying = problem.cautions === 'apply';
  const notes = (food: Ingredient | Beside, pointer: string, applied: (hit: Hit) => CautionNote['applied']) =>
    hitsOn(food, problem, reference).map((hit) =>
      noteOf(food, pointer, hit, applying ? applied(hit) : 'noted'),
    );
  return [
    ...problem.foods.flatMap((food, row) => notes(food, `/foods/${row}`, (hit) => madeOf(hit, food))),
    ...problem.beside.flatMap((food, row) =>
      notes(food, `/beside/${row}`, () => 'noted').filter((note) => note.listed),
    ),
  ];
}

function madeOf(hit: Hit, food: Ingredient): CautionNote['applied'] {
  if (isLifted(hit, food)) return 'overridden';
  return ({ never: 'blocked', limit: 'capped', prepare: 'noted' } as const)[hit.caution.severity];
}

function noteOf(
  food: Ingredient | Beside,
  pointer: string,
  { caution, found, listed }: Hit,
  applied: CautionNote['applied'],
): CautionNote {
  return {
    pointer,
    food: food.id,
    caution: caution.id,
    severity: caution.severity,
    title: caution.title,
    found,
    ...(listed && { listed }),
    reason: caution.reason,
    way: caution.way,
    source: caution.source,
    ...(caution.maxShare === undefined ? {} : { max_share: caution.maxShare }),
    applied,
  };
}

/** Whether the caution list says anything of a reference food: then it is not brought up as a remedy. */
export function hasCaution(ref: string, problem: Problem, reference: Reference): boolean {
  return hitsOn({ id: ref, ref }, problem, reference).length > 0;
}

/** Whether the caution list blocks or caps a reference food, so that no swap names it. */
export function isCautioned(ref: string, problem: Problem, reference: Reference): boolean {
  return strictestRuling(openHitsOn({ id: ref, ref }, problem, reference)) !== undefined;
}

interface Hit {
  readonly caution: Caution;
  readonly found: string;
  /** True where it is not the food itself, but on its list of ingredients. */
  readonly listed?: true;
}

/** Cautions that the keeper has not lifted. */
function openHitsOn(food: Ingredient, problem: Problem, reference: Reference): Hit[] {
  return hitsOn(food, problem, reference).filter((hit) => !isLifted(hit, food));
}

function isLifted({ caution, listed }: Hit, { override }: Ingredient): boolean {
  if (!override || !(listed || caution.severity === 'limit')) return false;
  return override.caution === caution.id || (override.also?.includes(caution.id) ?? false);
}

/** What is said of the food itself comes first, then what is only on its list. */
function hitsOn(food: Ingredient | Beside, problem: Problem, reference: Reference): Hit[] {
  const known = food.ref === undefined ? undefined : reference.get(food.ref);
  const itself = cautionsFor(
    { ref: food.ref, name: food.name ?? known?.name ?? food.id, tableName: known?.tableName },
    problem.species,
  );
  const never = food.ingredients ? neverFedIn(food.ingredients, problem.species) : [];
  const listed = never.filter((hit) => !itself.some((own) => own.caution === hit.caution));
  return [...itself, ...listed.map((hit): Hit => ({ ...hit, listed: true }))];
}
