/**
 * Crude protein is nitrogen x 6.25: what labels print and targets mean. Tables print nitrogen x the food's own factor
 * (Jones 1931, USDA Circular 183). The printed amount is kept with its factor; whatever compares protein compares
 * crude with crude.
 */
import { rescaleProtein } from '../nutrition/energy.ts';
import type { Figures } from './food.ts';

/** Nitrogen factor of crude protein. */
export const CRUDE_FACTOR = 6.25;

/** Least and greatest of the published factors: almond 5.18, milk 6.38 (Jones 1931). */
const PUBLISHED_FACTORS = [5.18, 6.38] as const;

/** Crude protein, g per 100 g as fed. */
interface CrudeProtein {
  readonly value: number;
  /** Apart only where nobody says with which factor the amount was counted: then it stands as printed. */
  readonly low: number;
  readonly high: number;
  readonly sd?: number;
}

/** What an amount of protein is multiplied by to be crude protein. @param factor that it was counted with, above 0 */
export function crudePerPrinted(factor: number): number {
  return rescaleProtein(1, factor, CRUDE_FACTOR);
}

/** Least and most crude protein in one gram printed with a factor that nobody says. */
export function crudeOfUnsaid(): readonly [least: number, most: number] {
  const [least, greatest] = PUBLISHED_FACTORS;
  return [crudePerPrinted(greatest), crudePerPrinted(least)];
}

/** Crude protein of figures per 100 g as fed; undefined where they give no protein. */
export function crudeProtein({ composition, sd, proteinFactor }: Figures): CrudeProtein | undefined {
  const printed = composition.PROCNT;
  if (printed === undefined) return undefined;
  const factor = crudePerPrinted(proteinFactor ?? CRUDE_FACTOR);
  const value = printed * factor;
  const [least, most] = proteinFactor === undefined ? crudeOfUnsaid() : [factor, factor];
  return {
    value,
    low: printed * least,
    high: printed * most,
    ...(sd.PROCNT !== undefined && { sd: sd.PROCNT * factor }),
  };
}

/**
 * The same figures with their protein counted as crude protein, and the factor 6.25. Figures that do not say their
 * factor stay as they are: nobody knows by how much they are off.
 */
export function onCrudeProtein<F extends Figures>(figures: F): F {
  const { proteinFactor } = figures;
  if (proteinFactor === undefined || proteinFactor === CRUDE_FACTOR) return figures;
  const factor = crudePerPrinted(proteinFactor);
  const crude = <A extends Figures['composition'] | undefined>(amounts: A): A =>
    amounts?.PROCNT === undefined ? amounts : { ...amounts, PROCNT: amounts.PROCNT * factor };
  return {
    ...figures,
    composition: crude(figures.composition),
    sd: crude(figures.sd),
    ...(figures.low && { low: crude(figures.low) }),
    ...(figures.high && { high: crude(figures.high) }),
    proteinFactor: CRUDE_FACTOR,
  };
}
