/** Foods of a mix, one row each: what is asked of them, what came of it, and what is to be known of them. */
import type { Figures } from '../figures.ts';

export const rows = (f: Figures) => ({
  otherFoods: 'Other foods',
  notFed: 'not to be fed',
  refused: 'refused',
  offerAgain: 'Offer again',
  takeOut: 'Remove from mix',
  markRefused: 'Mark as refused',
  shareOf: (food: string) => `Share of ${food}`,
  shareInPercent: (food: string) => `Share of ${food} in percent`,
  hold: (food: string) => `Hold ${food} where it is`,
  more: (food: string) => `More about ${food}`,
  tags: {
    limit: (share: number) => `limit ${f.percent(share)}`,
    lifted: 'limit lifted',
    caution: 'caution',
  },
  mayStand: (low: number, high: number) => `May stand from ${f.number(low, 1)} to ${f.percent(high, 1)}`,
  mayStandNamed: (food: string, low: number, high: number) =>
    `With every rule kept, ${food} can have from ${f.number(low, 1)} to ${f.percent(high, 1)}.`,
  about: (grams: string) => `≈ ${grams}`,
  ask: {
    /** What was asked of a food and what it has, with nothing known of why. */
    short: (wanted: number, got: number) => `Wanted ${f.percent(wanted, 1)}, got ${f.percent(got, 1)}`,
    why: (wanted: number, got: number, why: string) =>
      `Wanted ${f.percent(wanted, 1)}, got ${f.percent(got, 1)}: ${why}`,
    pass: (what: string, limit: string) => `${what} would pass ${limit}`,
    fall: (what: string, limit: string) => `${what} would fall below ${limit}`,
    nearPass: (what: string, limit: string) => `${what} would come close to ${limit}`,
    nearFall: (what: string, limit: string) => `${what} would come close to ${limit}`,
    either: (reasons: readonly string[]) => f.either(reasons),
    ownMost: (share: number) => `you set ${f.percent(share)} at most`,
    ownLeast: (share: number) => `you set ${f.percent(share)} at least`,
    /** A caution about one food, or about some that count together. */
    caution: (food: string, share: number) => `${food} may have ${f.percent(share)} at most (its caution)`,
    cautionOfMany: (share: number) => `foods with one caution may have ${f.percent(share)} together`,
    held: 'the foods you hold leave no room',
    counted: 'a rule on how many foods stands in the way',
    dropOne: 'it would not stay in range when a food is left',
    others: 'the other foods need the room',
    empties: (share: number, names: readonly string[]) =>
      names.length <= 2
        ? `${f.percent(share, 1)} here would leave nothing of ${f.list(names)}.`
        : `${f.percent(share, 1)} here would leave nothing of ${f.number(names.length)} foods: ${names.join(' · ')}.`,
    /** Said under that, where not even so the share can be had. */
    notReached: (share: number, why: string) => `It would not come to ${f.percent(share, 1)}: ${why}.`,
    takeIt: 'Take it',
    leaveIt: 'Leave it',
    clash: (what: string) => `This cannot be kept together with: ${what}`,
    close: 'All right',
    ratio: (first: string, second: string) => `${first} to ${second}`,
    shareOfGroup: (group: string) => `the share of ${group}`,
  },
  details: {
    least: 'At least',
    most: 'At most',
    wanted: 'Wanted',
    even: 'even',
    price: 'Price per kg',
    ifUsed: 'If used, at least',
    any: 'any',
    athome: 'At home',
    notSaid: 'not said',
    group: 'Group',
    noGroup: 'None',
    liked: 'Liked',
  },
  group: {
    total: (share: number) => f.percent(share, 1),
    of: (range: string) => `of ${range}`,
    outside: (range: string) => `of ${range}, outside`,
    range: 'Range',
    setRange: 'Set a range',
    rangeOf: (group: string) => `Range of ${group}`,
    setRangeOf: (group: string) => `Set a range for ${group}`,
    least: 'Group at least',
    most: 'Group at most',
  },
  cautions: {
    all: 'Cautions',
    allowed: (day: string, note: string) => `You went ahead on ${day}: “${note}”.`,
    keepLimit: 'Keep the limit after all',
    goAhead: (share: number) => `More than ${f.percent(share)}: go ahead, say why …`,
    why: 'Why more is fed (a vet’s word, say); it is kept with the mix',
    allowMore: 'Go ahead',
    leaveLimit: 'Leave the limit',
  },
});

export type Rows = ReturnType<typeof rows>;
