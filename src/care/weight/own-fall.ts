/**
 * A fall of two weeks against the course that the animal itself was on. Where it rises, such a fall hides in the rise, for
 * its weight is soon no less than weeks ago; where the season takes weight, it hides in what the season may take.
 *
 * Figures that name no source here are our own choice (no source), held by `test/care/weight-simulation.test.ts`.
 */
import type { Circumstances } from './circumstances.ts';
import type { Reading } from './level/reading.ts';
import { robustLine } from './level/robust-line.ts';

/** The course is that of the readings so many days back and more, so that the fall is not in it. */
const LAG = 17;
const MEMORY = 10;
const SLOPE_SD = 0.003;
const LEAST_READINGS = 4;
/** So many readings since then must show the fall; where they are fewer than the second, it must be the greater. */
const LEAST_SINCE = 2;
const MANY_SINCE = 9;
const FEW_POWER = 0.3;
/** A course that ended so long ago tells nothing of today. */
const LONGEST_AGO = 28;
/** The fall that is looked for takes so many days, up to today. */
const FALL_DAYS = 14;
/** One reading counts for no more than so many standard deviations off the fall that fits. */
const CUT = 3;
/** A slope from which the animal is rising, a day: in spring, where it may be one of spring, and at any other time. */
const RISING_IN_SPRING = 0.0015;
const RISING_PERHAPS = 0.0022;
const RISING = 0.003;
/** The steepest that is taken to go on. */
const RISE_MOST = 0.0045;
/** It must lack so much of where the rise would have led, and weigh so much less than when the fall began: a rise may end. */
const LEAST_OF_RISE = 0.05;
const LEAST_IN_RISE = 0.029;
/** When it may be about to rise, so much less is enough. */
const LEAST_AT_SPRINGS_BEGIN = 0.037;
/** Slopes a day in the season that takes weight: of one that loses much, and of one that has stopped. */
const STEEP = 0.0024;
const FLAT = 0.001;
const LEAST_OF_STEEP = 0.14;
/** Days on which its course must have been seen to tell one from the other. */
const SEEN_DAYS = 21;

export interface OwnFall {
  /** What has fallen, as a part of what calls for a vet: 1 and more does. */
  readonly part: number;
  /** Level when the fall began, logarithm of g. */
  readonly level: number;
}

/**
 * @param p.plain readings outside pregnancies, by time @param p.sd of a reading
 * @returns undefined where too little is known of the course
 */
export function ownFall(p: {
  plain: readonly Reading[];
  day: number;
  sd: number;
  circumstances: Circumstances;
}): OwnFall | undefined {
  const { plain, day, sd, circumstances: c } = p;
  let to = plain.length;
  while (to > 0 && (plain[to - 1]?.day ?? 0) > day - LAG) to--;
  const last = plain[to - 1];
  if (!last || to < LEAST_READINGS || plain.length - to < LEAST_SINCE || day - last.day > LONGEST_AGO)
    return undefined;
  const { level, slope } = robustLine(plain, {
    to,
    least: LEAST_READINGS,
    day: last.day,
    memory: MEMORY,
    slopeSd: SLOPE_SD,
    sd,
  });
  const since = plain.slice(to);
  const few = Math.max(1, MANY_SINCE / since.length) ** FEW_POWER;
  const fell = (goesOn: number) =>
    fallThatFits(
      since.map((r) => ({ before: r.day - day, lacks: level + goesOn * (r.day - last.day) - r.y })),
      sd,
    ) / few;
  let part = 0;
  const spring = c.springs(day);
  if (slope >= (spring ? RISING_IN_SPRING : c.rising(day) === 'spring' ? RISING_PERHAPS : RISING))
    part = Math.min(fell(Math.min(RISE_MOST, slope)) / LEAST_OF_RISE, fell(0) / LEAST_IN_RISE);
  const autumn = c.autumn(day, LAG);
  if (autumn) {
    if (last.day - (plain[0]?.day ?? 0) >= SEEN_DAYS) {
      const least = slope < -STEEP ? LEAST_OF_STEEP : slope > -FLAT ? autumn.leastOfFlat : autumn.leastOfSlow;
      part = Math.max(part, fell(Math.min(0, slope) * autumn.own) / least);
    }
  } else if (spring === 'begins') part = Math.max(part, fell(0) / LEAST_AT_SPRINGS_BEGIN);
  return { part, level };
}

/**
 * By least squares, the size of an even fall over the last two weeks.
 * @param readings what each lacks of the level before, and how many days before today it is (0 or less)
 */
function fallThatFits(readings: readonly { before: number; lacks: number }[], sd: number): number {
  const fallen = (before: number) => Math.min(1, Math.max(0, (before + FALL_DAYS + 1) / FALL_DAYS));
  const fitted = (lack: (r: { before: number; lacks: number }) => number) => {
    let sum = 0;
    let squares = 0;
    for (const r of readings) {
      const w = fallen(r.before);
      sum += w * lack(r);
      squares += w * w;
    }
    return sum / squares;
  };
  const rough = fitted(({ lacks }) => lacks);
  return fitted(({ before, lacks }) => {
    const whole = rough * fallen(before);
    return whole + Math.max(-CUT * sd, Math.min(CUT * sd, lacks - whole));
  });
}
