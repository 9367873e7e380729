/** How many days at a temperature kill the insects of the store room. */

/** Temperature of the insects, °C, and days there. */
type LethalPoint = readonly [celsius: number, days: number];

/** Days at a temperature that no insect was found to survive; who found it stands in the catalogue, `freezing.lethal`. */
interface LethalTimes {
  /** Warmest first. */
  readonly points: readonly [LethalPoint, ...LethalPoint[]];
}

/**
 * "laboratory": moth larvae in diapause, slowly cooled, the hardiest stage tried; eggs died within hours. "bins":
 * what a grain authority asks for grain that wintered in a bin, where insects are used to the cold. Fields 1992
 * (J. Stored Prod. Res. 28:89-118) puts death "in a few minutes" at -20 °C for insects that are not.
 */
export const LETHAL_TIMES = {
  laboratory: {
    points: [
      [-10, 22],
      [-15, 3],
      [-20, 1],
    ],
    // Collins, Conyers, Cardwell: all larvae of Ephestia elutella in diapause dead after these days.
  },
  bins: {
    points: [
      [-5, 84],
      [-10, 56],
      [-15, 28],
      [-20, 7],
    ],
    // Canadian Grain Commission: grain for 12, 8, 4 and 1 weeks.
  },
} as const satisfies Record<string, LethalTimes>;

/**
 * Days that kill at `celsius`; between two published temperatures along a straight line of their logarithm. Colder
 * than the coldest published one counts as that one. Undefined where it is warmer than any: no figure was found.
 */
export function holdingDays(
  celsius: number,
  kind: keyof typeof LETHAL_TIMES = 'laboratory',
): number | undefined {
  const [first, ...colder]: LethalTimes['points'] = LETHAL_TIMES[kind].points;
  let [warm, long] = first;
  if (celsius > warm) return undefined;
  for (const [cold, short] of colder) {
    if (celsius >= cold) return long * (short / long) ** ((warm - celsius) / (warm - cold));
    [warm, long] = [cold, short];
  }
  return long;
}
