/**
 * Where two sources of one food cannot both be right, and what is likely behind it. Figures are compared on dry
 * matter wherever both moistures are known, so that a food that only dried a little more is no disagreement.
 */
import { NUTRIENTS, nutrient, type Tag } from '../../nutrition/nutrients.ts';
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
  readonly cause: string;
  /** Whether this slip can explain the nutrient between the two; always, where absent. */
  readonly only?: (tag: Tag, a: FoodSource, b: FoodSource) => boolean;
}

/** Factors that usual slips make, and how each comes about. */
const SLIPS: readonly Slip[] = [
  {
    factor: 2.5,
    cause: 'salt may be given as sodium (salt is 2.5 times its sodium)',
    only: (tag) => tag === 'NA',
  },
  { factor: 2.5, cause: 'the larger may be for 250 g, or the smaller for 40 g', only: allBy(2.5) },
  { factor: 4.184, cause: 'kilojoules may stand for kilocalories', only: (tag) => tag === 'ENERC_KCAL' },
  { factor: 10, cause: 'a decimal point may have slipped, or per kg may stand for per 100 g' },
  { factor: 100, cause: 'a decimal point may have slipped two places' },
  { factor: 1000, cause: 'mg may stand for g, or ug for mg' },
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
  const said = (kind: Disagreement['kind'], cause: string): Disagreement => ({
    tag,
    kind,
    between: [a.id, b.id],
    sentence: `${nutrient(tag).name}: ${figure(a, tag, x)}, ${figure(b, tag, y)}${byDryMatter && kind !== 'dried' ? ` (compared on dry matter)` : ''}. ${cause}`,
  });

  if (dried && asFed.z > LIMIT && (!byDryMatter || found.z <= LIMIT)) return said('dried', dried);
  const { less, more, ratio, z } = found;
  if (z > LIMIT && tag === 'FIBTG' && looksCrude(less, more, ratio, group))
    return said(
      'fibre',
      `${less.name} looks like crude fibre written as dietary fibre, which is larger by about that much. Enter it as crude fibre (FIBC), or follow ${more.name}.`,
    );
  if (z > LIMIT && tag === 'FIBC' && near(less.composition.FIBTG, more.composition.FIBC))
    return said(
      'fibre',
      `${more.name} looks like dietary fibre written as crude fibre: ${less.name} gives nearly the same as dietary. Enter it as dietary fibre (FIBTG), or follow ${less.name}.`,
    );
  const slip = SLIPS.find(
    ({ factor, only }) =>
      ratio !== undefined &&
      Math.abs(Math.log(ratio / factor)) < Math.log(NEAR) &&
      (only === undefined || only(tag, a, b)),
  );
  if (slip && z > SLIP_LIMIT)
    return said(
      'slip',
      `${more.name} is about ${slip.factor} times ${less.name}: ${slip.cause}. Check unit and quantity at both, correct the wrong one, or choose the source to follow.`,
    );
  if (z <= LIMIT) return undefined;
  return said(
    'apart',
    `They are more than ${LIMIT} standard deviations apart, which is more than one food usually varies. Check that both mean the same variety, part and preparation, or choose the source to follow.`,
  );
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
  const wayOut = "Keep them as two foods, or bring the moist one's figures to the moisture of the dry.";
  const water = moistures(a, b);
  if (water) {
    const apart = ratios.filter(({ tag }) => differenceOf(tag, a, b, group, 'as fed')!.z > LIMIT);
    const alike = apart.filter(({ tag }) => differenceOf(tag, a, b, group, 'dry matter')!.z <= LIMIT);
    if (apart.length === 0 || alike.length * 2 <= apart.length) return undefined;
    const [fresh, dry] = water[0] > water[1] ? [a, b] : [b, a];
    return `On dry matter they agree: ${fresh.name} looks like the moist food (fresh or cooked), ${dry.name} like the dry. ${wayOut}`;
  }
  if (ratios.length < 3) return undefined;
  const mean = ratios.reduce((sum, { log }) => sum + log, 0) / ratios.length;
  if (Math.abs(mean) < Math.log(1.5) || ratios.some(({ log }) => Math.abs(log - mean) > Math.log(1.2)))
    return undefined;
  // One factor for everything is also what a wrong quantity makes; only the moisture could tell them apart.
  const [fresh, dry] = mean > 0 ? [a, b] : [b, a];
  const factor = rounded(Math.exp(Math.abs(mean)));
  return `All of ${dry.name} is about ${factor} times ${fresh.name}: the first looks like the dry food, the second like the moist (fresh or cooked), or one is for another quantity. Enter both moistures to be sure. ${wayOut}`;
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
        sentence: `Fibre: ${figure(one, 'FIBC', crude)} as crude, ${figure(other, 'FIBTG', dietary)} as dietary. Crude fibre is a part of dietary fibre and cannot be more. ${other.name} may print crude fibre as dietary, or ${one.name} dietary as crude: correct the name of one.`,
      },
    ];
  });
}

function boundsBroken(tag: Tag, a: FoodSource, b: FoodSource): Disagreement[] {
  const name = nutrient(tag).name;
  const unit = nutrient(tag).unit;
  const found: Disagreement[] = [];
  for (const [one, other] of [
    [a, b],
    [b, a],
  ] as const) {
    const [low, high] = [other.low?.[tag], other.high?.[tag]];
    const say = (sentence: string) =>
      found.push({ tag, kind: 'bounds', between: [one.id, other.id], sentence: `${name}: ${sentence}` });
    const value = one.composition[tag];
    if (value !== undefined && low !== undefined && value < low)
      say(
        `${figure(one, tag, value)}, but ${other.name} guarantees at least ${rounded(low)} ${unit}. Check that both are the same product; else follow ${other.name}, or leave its guarantee out.`,
      );
    if (value !== undefined && high !== undefined && value > high)
      say(
        `${figure(one, tag, value)}, but ${other.name} guarantees at most ${rounded(high)} ${unit}. Check that both are the same product; else follow ${other.name}, or leave its guarantee out.`,
      );
    const least = one.low?.[tag];
    if (least !== undefined && high !== undefined && least > high)
      say(
        `${one.name} guarantees at least ${rounded(least)} ${unit}, ${other.name} at most ${rounded(high)} ${unit}. No food keeps both: they are two products, or one is misread.`,
      );
  }
  return found;
}

function near(x: number | undefined, y: number | undefined): boolean {
  return x !== undefined && y !== undefined && x > 0 && y > 0 && Math.abs(Math.log(x / y)) < Math.log(NEAR);
}

/** "Old table 12 g": who says it and what. */
function figure(source: FoodSource, tag: Tag, value: number): string {
  return `${source.name} ${rounded(value)} ${nutrient(tag).unit}`;
}

function rounded(value: number): string {
  return String(Number(value.toPrecision(3)));
}
