/**
 * How the length of the day moves the weight of hamsters that live by daylight.
 *
 * Djungarian (winter white) hamsters in natural light lost 32 % from August to December, those in long days gained 7 %:
 * Steinlechner, Heldmaier, Becker 1983, "The seasonal cycle of body weight in the Djungarian hamster", Oecologia 60:401-405
 * (abstract). At 48 degrees north they were heaviest in July and August and lightest in December and January, and were
 * back in summer coat in March or early April: Figala, Hoffmann, Goldau 1973, Oecologia 12:89-118 (abstract). Golden
 * hamsters gain in short days: Bartness and Wade 1985, Neurosci. Biobehav. Rev. 9:599-612.
 */

/** One stretch of the northern year, by month and day; it may go over the new year. */
export interface Stretch {
  readonly from: string;
  readonly to: string;
}

type Curve = readonly (readonly [daysSinceFirstOfJuly: number, value: number])[];

/**
 * No source tells the course between the heaviest and the lightest months day by day. 32 % in 140 days is 0.28 % a day on
 * the average, and half as much again at the steepest of a smooth course; the curves leave room for one that begins late.
 */
const LOSING: Curve = [
  [19, 0],
  [31, 0.0025],
  [80, 0.005],
  [150, 0.005],
  [190, 0.001],
  [214, 0],
];
const BEGINNING: Curve = [
  [19, 0],
  [31, 0.0017],
  [100, 0.0017],
  [115, 0.0005],
  [190, 0.0005],
  [214, 0],
];
const OWN: Curve = [
  [150, 1],
  [205, 0.2],
];
/**
 * Until the first of November one that loses slowly may be about to lose fast; from the middle of December on, one that
 * has stopped has come to its winter weight.
 */
const LEAST_OF_SLOW: Curve = [
  [118, 0.12],
  [128, 0.09],
  [190, 0.09],
  [225, 0.05],
];
const LEAST_OF_FLAT: Curve = [
  [118, 0.12],
  [128, 0.09],
  [160, 0.09],
  [166, 0.05],
];

export const WINTER_WHITE = {
  /** Part of its summer weight that it loses in natural autumn light. */
  autumnFall: 0.32,
  /** When it may be losing: the heaviest months are July and August, the lightest December and January. */
  falling: { from: '07-20', to: '01-31' },
  /** When it may be gaining again. */
  rising: { from: '12-15', to: '07-31' },
  /** When that may be beginning. */
  beginsToRise: { from: '12-15', to: '04-20' },
  /** Part of its weight a day that one may lose that is losing already, and one that may be about to. */
  losing: LOSING,
  beginning: BEGINNING,
  /** How much of its slope goes on as the lightest months come. */
  own: OWN,
  /** Part of its weight that one must lose in two weeks before a vet is named: one that loses slowly, and one that has stopped. */
  leastOfSlow: LEAST_OF_SLOW,
  leastOfFlat: LEAST_OF_FLAT,
  source:
    'Steinlechner, Heldmaier, Becker 1983, Oecologia 60:401-405; Figala, Hoffmann, Goldau 1973, Oecologia 12:89-118',
} as const;

export const GOLDEN = {
  /** When the days are short enough for it to gain: under 12.5 hours of light, a threshold from memory. */
  shortDays: { from: '09-10', to: '03-31' },
  source: 'Bartness and Wade 1985, Neurosci. Biobehav. Rev. 9:599-612',
} as const;
