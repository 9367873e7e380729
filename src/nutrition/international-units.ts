/**
 * International units of vitamins A, D and E as masses. Vitamin A in carotenes has no such factor: how much of them
 * becomes retinol depends on the animal.
 */
import type { Tag } from './nutrients.ts';

/**
 * ug in one IU: 0.3 of retinol (the international standard, from memory); 0.025 of cholecalciferol (0.125 mg is
 * 5,000 IU: Commission Regulation (EC) No 887/2009, annex).
 */
const UG_PER_IU = { RETOL: 0.3, VITD: 0.025 } as const;

/** A vitamin whose IU are a mass. */
export type UnitVitamin = keyof typeof UG_PER_IU;

/** IU in one mg of natural vitamin E, RRR-alpha-tocopherol (the international standard, from memory). */
const VITAMIN_E_IU_PER_MG = 1.49;

export function isUnitVitamin(tag: string): tag is UnitVitamin {
  return tag in UG_PER_IU;
}

/** Retinol or vitamin D in ug, from IU. */
export function microgramsOf(iu: number, tag: UnitVitamin): number {
  return iu * UG_PER_IU[tag];
}

/** Retinol or vitamin D in IU, from ug. */
export function iuOf(micrograms: number, tag: UnitVitamin): number {
  return micrograms / UG_PER_IU[tag];
}

/** Natural vitamin E in IU, from mg of alpha-tocopherol. */
export function vitaminEIu(milligrams: number): number {
  return milligrams * VITAMIN_E_IU_PER_MG;
}

/**
 * Vitamin D in the one unit from the other, where only that is known; undefined for anything else. 40 IU are 1 ug.
 * @param known amounts as they are known, each in the unit of its tagname
 */
export function inOtherUnit(tag: Tag, known: (tag: Tag) => number | undefined): number | undefined {
  if (tag === 'VITD') {
    const iu = known('VITD_IU');
    return iu === undefined ? undefined : microgramsOf(iu, 'VITD');
  }
  const micrograms = tag === 'VITD_IU' ? known('VITD') : undefined;
  return micrograms === undefined ? undefined : iuOf(micrograms, 'VITD');
}
