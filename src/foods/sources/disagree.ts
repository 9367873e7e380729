/**
 * Where two sources of one food cannot both be right, and what is likely behind it. Figures are compared on dry
 * matter wherever both moistures are known, so that a food that only dried a little more is no disagreement.
 */

import { NUTRIENTS, nutrient, type Tag, unitWord } from '../../nutrition/nutrients.ts';
import { type Words, words } from '../../words/words.ts';
import { onCrudeProtein } from '../crude-protein.ts';
import { FIBRE_ESTIMATES } from '../fibre-ratio.ts';
import { variationOf } from '../variation.ts';
import { variationBase } from '../variation-class.ts';
import type { FoodSource } from './source.ts';

interface Disagreement {
  readonly tag: Tag;
  /**
   * apart: simply too far apart. slip: by about the factor of a usual slip. dried: one speaks of the moist food
   * (fresh or cooked), the other of the dry. fibre: crude fibre against dietary. bounds: outside what another guarantees.
   */
  readonly kind: 'apart' | 'slip' | 'dried' | 'fibre' | 'bounds';
  /** Ids of the two sources. */
  readonly between: readonly [string, string];
  /** The figures, the likely cause and the way out, in words. */
  readonly sentence: string;
}

/**
 * Standard deviations of the difference, as the middle food of its group varies, beyond which two figures cannot both
 * be right.
 */
const LIMIT = 3.5;

/** The same for two figures that stand in a usual slip's ratio: there the slip is likelier than chance. */
const SLIP_LIMIT = 3;

/** A factor counts as met within a tenth either way. */
const NEAR = 1.1;

interface Slip {
  readonly factor: number;
  readonly cause: keyof Words['foodForms']['slips'];
  /** Whether this slip can explain the nutrient between the two; always, where absent. */
  readonly only?: (tag: Tag, a: FoodSource, b: FoodSource) => boolean;
}

/** Factors that usual slips make, and how each comes about. */
const SLIPS: readonly Slip[] = [
  {
    factor: 2.5,
    cause: 'salt',
    only: (tag) => tag === 'NA',
  },
  { factor: 2.5, cause: 'quantity', only: allBy(2.5) },
  { factor: 4.184, cause: 'energy', only: (tag) => tag === 'ENERC_KCAL' },
  { factor: 10, cause: 'ten' },
  { factor: 100, cause: 'hundred' },
  { factor: 1000, cause: 'thousand' },
];

/** A wrong quantity scales everything: one nutrient alone at that factor is no sign of it. */
function allBy(factor: number): NonNullable<Slip['only']> {
  return (_, a, b) => {
    const ratios = logRatios(
      NUTRIENTS.map((n) => n.tag),
      a,
      b,
    );
    const met = (sign: number) =>
      ratios.filter(({ log }) => Math.abs(log * sign - Math.log(factor)) < Math.log(NEAR)).length;
    return Math.max(met(1), met(-1)) * 2 > ratios.length;
  };
}

/** Natural logarithms of a over b, of the nutrients that both know and have. */
function logRatios(tags: readonly Tag[], a: FoodSource, b: FoodSource): { tag: Tag; log: number }[] {
  return tags.flatMap((tag) => {
    const [x, y] = [a.composition[tag], b.composition[tag]];
    return x !== undefined && y !== undefined && x > 0 && y > 0 ? [{ tag, log: Math.log(x / y) }] : [];
  });
}

/** Nutrients that a drying concentrates together. */
const PROXIMATES: readonly Tag[] = ['PROCNT', 'FAT', 'ASH', 'FIBTG', 'FIBC', 'CHOCDF'];

/**
 * Disagreements on one nutrient, or on all. Sources that are fresh against dried are told once a pair, not once a
 * nutrient.
 * @param group the food's group, for the spread of figures that print none
 */
export function disagreements(
  tag: Tag | 'all',
  sources: readonly FoodSource[],
  group: string | undefined,
): readonly Disagreement[] {
  const tags = tag === 'all' ? NUTRIENTS.map((n) => n.tag) : [tag];
  const found: Disagreement[] = [];
  const crude = sources.map(onCrudeProtein);
  for (const [i, a] of crude.entries()) {
    for (const b of crude.slice(i + 1)) {
      const dried = driedTwin(a, b, group);
      let told = false;
      for (const t of tags) {
        found.push(...boundsBroken(t, a, b));
        const said = valuesApart(t, a, b, group, dried);
        if (!said || (said.kind === 'dried' && told)) continue;
        told ||= said.kind === 'dried';
        found.push(said);
      }
      found.push(...(tags.includes('FIBTG') || tags.includes('FIBC') ? crudeAboveDietary(a, b, group) : []));
    }
  }
  return found;
}

function valuesApart(
  tag: Tag,
  a: FoodSource,
  b: FoodSource,
  group: string | undefined,
  dried: string | undefined,
): Disagreement | undefined {
  const [x, y] = [a.composition[tag], b.composition[tag]];
  const asFed = differenceOf(tag, a, b, group, 'as fed');
  const byDryMatter = tag !== 'WATER' && moistures(a, b) !== undefined;
  const found = byDryMatter ? differenceOf(tag, a, b, group, 'dry matter') : asFed;
  if (x === undefined || y === undefined || !asFed || !found) return undefined;
  const t = words().foodForms.apart;
  const said = (kind: Disagreement['kind'], cause: string): Disagreement => ({
    tag,
    kind,
    between: [a.id, b.id],
    sentence: (byDryMatter && kind !== 'dried' ? t.saidDry : t.said)(
      nutrient(tag).name,
      figure(a, tag, x),
      figure(b, tag, y),
      cause,
    ),
  });

  if (dried && asFed.z > LIMIT && (!byDryMatter || found.z <= LIMIT)) return said('dried', dried);
  const { less, more, ratio, z } = found;
  if (z > LIMIT && tag === 'FIBTG' && looksCrude(less, more, ratio, group))
    return said('fibre', t.crudeAsDietary(less.name, more.name));
  if (z > LIMIT && tag === 'FIBC' && near(less.composition.FIBTG, more.composition.FIBC))
    return said('fibre', t.dietaryAsCrude(more.name, less.name));
  const slip = SLIPS.find(
    ({ factor, only }) =>
      ratio !== undefined &&
      Math.abs(Math.log(ratio / factor)) < Math.log(NEAR) &&
      (only === undefined || only(tag, a, b)),
  );
  if (slip && z > SLIP_LIMIT)
    return said('slip', t.slip(more.name, slip.factor, less.name, words().foodForms.slips[slip.cause]));
  if (z <= LIMIT) return undefined;
  return said('apart', t.tooFar);
}

interface Difference {
  readonly less: FoodSource;
  readonly more: FoodSource;
  /** Greater over lesser; undefined where the lesser is 0. */
  readonly ratio: number | undefined;
  /** The difference in standard deviations of a difference. */
  readonly z: number;
}

/**
 * How far two figures are apart; undefined where one is unknown. Amounts are compared by their ratio, because their
 * spread goes with their size; moisture, and an amount of 0, by their difference.
 */
function differenceOf(
  tag: Tag,
  a: FoodSource,
  b: FoodSource,
  group: string | undefined,
  basis: 'as fed' | 'dry matter',
): Difference | undefined {
  const [x, y] = [a.composition[tag], b.composition[tag]];
  if (x === undefined || y === undefined) return undefined;
  const [f, g] = basis === 'dry matter' ? dryFactors(a, b) : [1, 1];
  const [less, more] = x * f > y * g ? [b, a] : [a, b];
  const [low, high] = [Math.min(x * f, y * g), Math.max(x * f, y * g)];
  const ratio = low > 0 ? high / low : undefined;
  const gap =
    tag === 'WATER' || ratio === undefined
      ? (high - low) / Math.hypot(sdOf(a, tag, x, group) * f, sdOf(b, tag, y, group) * g)
      : Math.log(ratio) / Math.hypot(cvOf(a, tag, x, group), cvOf(b, tag, y, group));
  return { less, more, ratio, z: high === low ? 0 : gap };
}

function sdOf(source: FoodSource, tag: Tag, value: number, group: string | undefined): number {
  return source.sd[tag] || variationOf(tag, group)!.usual * variationBase(tag, value);
}

function cvOf(source: FoodSource, tag: Tag, value: number, group: string | undefined): number {
  const sd = source.sd[tag];
  return sd ? sd / value : variationOf(tag, group)!.usual;
}

/** Factors that bring as-fed figures of both to dry matter; 1 where a moisture is unknown. */
function dryFactors(a: FoodSource, b: FoodSource): readonly [number, number] {
  const water = moistures(a, b);
  return water ? [100 / (100 - water[0]), 100 / (100 - water[1])] : [1, 1];
}

/** Moistures of both, where both are known and leave dry matter. */
function moistures(a: FoodSource, b: FoodSource): readonly [number, number] | undefined {
  const [x, y] = [a.composition.WATER, b.composition.WATER];
  return x !== undefined && y !== undefined && x < 100 && y < 100 ? [x, y] : undefined;
}

/**
 * A sentence where the two look like the fresh and the dried form of one food: as fed far apart, on dry matter alike;
 * or, where a moisture is unknown, at least three proximates concentrated by nearly one factor.
 */
function driedTwin(a: FoodSource, b: FoodSource, group: string | undefined): string | undefined {
  const ratios = logRatios(PROXIMATES, b, a);
  const t = words().foodForms.apart;
  const wayOut = t.twoFoods;
  const water = moistures(a, b);
  if (water) {
    const apart = ratios.filter(({ tag }) => differenceOf(tag, a, b, group, 'as fed')!.z > LIMIT);
    const alike = apart.filter(({ tag }) => differenceOf(tag, a, b, group, 'dry matter')!.z <= LIMIT);
    if (apart.length === 0 || alike.length * 2 <= apart.length) return undefined;
    const [fresh, dry] = water[0] > water[1] ? [a, b] : [b, a];
    return t.agreeDry(fresh.name, dry.name, wayOut);
  }
  if (ratios.length < 3) return undefined;
  const mean = ratios.reduce((sum, { log }) => sum + log, 0) / ratios.length;
  if (Math.abs(mean) < Math.log(1.5) || ratios.some(({ log }) => Math.abs(log - mean) > Math.log(1.2)))
    return undefined;
  // One factor for everything is also what a wrong quantity makes; only the moisture could tell them apart.
  const [fresh, dry] = mean > 0 ? [a, b] : [b, a];
  const factor = rounded(Math.exp(Math.abs(mean)));
  return t.allTimes(dry.name, factor, fresh.name, wayOut);
}

/** Whether the lesser "dietary fibre" is rather the crude fibre of the same food. */
function looksCrude(
  less: FoodSource,
  more: FoodSource,
  ratio: number | undefined,
  group: string | undefined,
): boolean {
  if (ratio === undefined) return false;
  if (near(less.composition.FIBTG, more.composition.FIBC)) return true;
  const expected = FIBRE_ESTIMATES[group ?? 'any'] ?? FIBRE_ESTIMATES.any;
  if (!expected) return false;
  // Within a factor of two of the middle, and never outside the pairs known.
  const part = 1 / ratio;
  return (
    part >= Math.max(expected.low, expected.mean / 2) &&
    part <= Math.min(expected.high, 2 * expected.mean, 0.75)
  );
}

/** Crude fibre is a part of dietary fibre, so one source's crude cannot be above another's dietary. */
function crudeAboveDietary(a: FoodSource, b: FoodSource, group: string | undefined): Disagreement[] {
  return (
    [
      [a, b],
      [b, a],
    ] as const
  ).flatMap(([one, other]) => {
    const crude = one.composition.FIBC;
    const dietary = other.composition.FIBTG;
    if (crude === undefined || dietary === undefined) return [];
    const [f, g] = dryFactors(one, other);
    const sd = Math.hypot(sdOf(one, 'FIBC', crude, group) * f, sdOf(other, 'FIBTG', dietary, group) * g);
    if (crude * f - dietary * g <= LIMIT * sd) return [];
    return [
      {
        tag: 'FIBTG' as const,
        kind: 'fibre' as const,
        between: [one.id, other.id] as const,
        sentence: words().foodForms.apart.crudeAbove(
          figure(one, 'FIBC', crude),
          figure(other, 'FIBTG', dietary),
          other.name,
          one.name,
        ),
      },
    ];
  });
}

function boundsBroken(tag: Tag, a: FoodSource, b: FoodSource): Disagreement[] {
  const name = nutrient(tag).name;
  const unit = unitWord(nutrient(tag).unit);
  const t = words().foodForms.apart;
  const amount = (value: number) => `${rounded(value)} ${unit}`;
  const found: Disagreement[] = [];
  for (const [one, other] of [
    [a, b],
    [b, a],
  ] as const) {
    const [low, high] = [other.low?.[tag], other.high?.[tag]];
    const say = (sentence: string) =>
      found.push({ tag, kind: 'bounds', between: [one.id, other.id], sentence });
    const value = one.composition[tag];
    if (value !== undefined && low !== undefined && value < low)
      say(t.belowLeast(name, figure(one, tag, value), other.name, amount(low)));
    if (value !== undefined && high !== undefined && value > high)
      say(t.aboveMost(name, figure(one, tag, value), other.name, amount(high)));
    const least = one.low?.[tag];
    if (least !== undefined && high !== undefined && least > high)
      say(t.crossed(name, one.name, amount(least), other.name, amount(high)));
  }
  return found;
}

function near(x: number | undefined, y: number | undefined): boolean {
  return x !== undefined && y !== undefined && x > 0 && y > 0 && Math.abs(Math.log(x / y)) < Math.log(NEAR);
}

/** "Old table 12 g": who says it and what. */
function figure(source: FoodSource, tag: Tag, value: number): string {
  return words().foodForms.apart.figure(source.name, rounded(value), unitWord(nutrient(tag).unit));
}

function rounded(value: number): string {
  return words().figures.number(Number(value.toPrecision(3)), 12);
}
