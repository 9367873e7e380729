/**
 * How much food an animal may need in a day, as a range: by the energy it needs and that of its food, by what animals
 * of its kind were seen to eat, and by the common rule. It is a place to start; the animal's own weight decides.
 */
import type { LifeStage } from '../../targets/life-stage.ts';
import { conditionsNow, isIn } from '../animal/conditions.ts';
import type { SpeciesKind } from '../animal/species.ts';
import {
  CARRIED_FROM_GRAMS,
  ENERGY_OF_ITS_OWN,
  ENERGY_PER_KG,
  GERBIL_INTAKE,
  GOLDEN_DRY_PER_100,
  KJ_PER_KCAL,
  NURSING_AT_MOST,
  NURSING_BY_ROOM,
  POWERS,
  type Span,
  STAGE_FACTORS,
  WHEEL,
  WINTER_WHITE_COLD,
} from '../figures/feeding.ts';
import type { Condition } from '../model.ts';
import { type CommonRule, commonRules } from './common-rules.ts';
import type { RationEnergy } from './ration-energy.ts';

export interface AmountQuestion {
  readonly kind: SpeciesKind;
  readonly lifeStage: LifeStage;
  readonly conditions: readonly Condition[];
  /** Body weight, g; absent where nobody knows it. */
  readonly weight?: number;
  /** Of what it is fed; absent where nothing is known of it. */
  readonly energy?: RationEnergy;
  readonly wheel?: boolean;
  /** °C of a cold room. */
  readonly room?: number;
}

/** What an animal is in that changes what it needs; "breeding": pregnant or nursing, nobody has said which. */
export type Stage = 'grown' | 'growing' | 'pregnant' | 'nursing' | 'breeding' | 'old';

export interface DailyAmount {
  readonly stage: Stage;
  /** By energy; absent where `missing` is not empty. */
  readonly equation?: {
    /** kJ of metabolizable energy a day. */
    readonly energy: Span;
    /** g a day as fed, and of dry matter. */
    readonly fed: Span;
    readonly dry: Span;
    /** g a day as fed at the most with what raises it further, such as a running wheel; absent where nothing does. */
    readonly raisedTo?: number;
    /** Carried over from other kinds: an estimate, and wider for it. */
    readonly estimate: boolean;
    readonly sources: readonly string[];
  };
  /** What grown animals of its kind were seen to eat on average; absent where no figure is known. */
  readonly intake?: {
    /** g a day as fed; absent where the water of its food is not known. */
    readonly fed?: Span;
    /** g of dry matter a day, where that is what was measured. */
    readonly dry?: number;
    readonly sources: readonly string[];
  };
  /** Rules of thumb for a grown animal; none where none is known, or it is not grown. */
  readonly common: readonly CommonRule[];
  /** What the equation lacks: body weight, or amounts of its food. */
  readonly missing: readonly ('weight' | 'energy')[];
  /** What raises it further; figures where there are any. */
  readonly raises: readonly Raise[];
}

export interface Raise {
  readonly what: 'wheel' | 'cold' | 'growing' | 'pregnant' | 'nursing';
  /** Times as much as without; absent where there is no figure. */
  readonly times?: Span;
  /** How many young it nurses, where that was said. */
  readonly young?: number;
  /** Of the figures, which were found with this kind of animal or another. */
  readonly sources: readonly string[];
}

/** Bounds of the energy of a food that are further apart than this, as a factor, say too little (common practice, no source). */
const WIDEST = 1.5;

/** @throws RangeError where the weight is none */
export function dailyAmount(q: AmountQuestion): DailyAmount {
  if (q.weight !== undefined && !(q.weight > 0 && Number.isFinite(q.weight)))
    throw new RangeError(`weight: ${q.weight} is no body weight; give grams above 0`);
  const stage = stageOf(q);
  const { weight, energy } = q;
  const told = energy !== undefined && energy.kcal.low > 0 && energy.kcal.high <= WIDEST * energy.kcal.low;
  const missing = [
    ...(weight === undefined ? (['weight'] as const) : []),
    ...(told ? [] : (['energy'] as const)),
  ];
  const grown = stage === 'grown' || stage === 'old';
  const raises = raisesOf(q, stage);
  const equation = weight !== undefined && told ? byEnergy(q.kind, stage, weight, energy, raises) : undefined;
  const intake = weight !== undefined && grown ? byIntake(q.kind, weight, energy) : undefined;
  return {
    stage,
    ...(equation && { equation }),
    ...(intake && { intake }),
    common: grown ? commonRules(q.kind) : [],
    missing,
    raises,
  };
}

/** A condition that holds now tells more than the life stage. */
function stageOf({ lifeStage, conditions }: AmountQuestion): Stage {
  const now = (what: Condition['what']) => isIn({ conditions }, what);
  if (now('nursing')) return 'nursing';
  if (now('pregnant')) return 'pregnant';
  return lifeStage === 'adult' ? (now('old') ? 'old' : 'grown') : lifeStage;
}

/** kJ a day of a grown animal of that weight: the figure itself, or carried over by either power of body weight. */
export function grownEnergy(kind: SpeciesKind, weight: number): Span & { readonly estimate: boolean } {
  const { low, high } = ENERGY_PER_KG;
  const estimate = !ENERGY_OF_ITS_OWN.includes(kind);
  const from = CARRIED_FROM_GRAMS;
  const times = (power: number) => (from / 1000) ** POWERS.high * (weight / from) ** power;
  const powers = estimate ? [times(POWERS.low), times(POWERS.high)] : [times(POWERS.high)];
  return { low: low * Math.min(...powers), high: high * Math.max(...powers), estimate };
}

function byEnergy(
  kind: SpeciesKind,
  stage: Stage,
  weight: number,
  { kcal, dry }: RationEnergy,
  raises: readonly Raise[],
): NonNullable<DailyAmount['equation']> {
  const { low, high, estimate } = grownEnergy(kind, weight);
  const factor = stage === 'grown' || stage === 'old' ? undefined : STAGE_FACTORS[stage];
  const energy = { low: low * (factor?.low ?? 1), high: high * (factor?.high ?? 1) };
  const fed = { low: energy.low / KJ_PER_KCAL / kcal.high, high: energy.high / KJ_PER_KCAL / kcal.low };
  // What the stage asks for is in the range already.
  const further = raises.flatMap((r) =>
    r.what === 'wheel' || r.what === 'cold' ? (r.times?.high ?? []) : [],
  );
  return {
    energy,
    fed,
    ...(further.length > 0 && { raisedTo: further.reduce((most, times) => most * times, fed.high) }),
    dry: { low: fed.low * dry.low, high: fed.high * dry.high },
    estimate,
    sources: [
      ...new Set([...ENERGY_PER_KG.sources, ...(factor?.sources ?? []), ...(estimate ? POWERS.sources : [])]),
    ],
  };
}

function byIntake(
  kind: SpeciesKind,
  weight: number,
  energy: RationEnergy | undefined,
): DailyAmount['intake'] {
  if (kind === 'golden') {
    const { grams, sources } = GOLDEN_DRY_PER_100;
    const dry = (grams * weight) / 100;
    const known = energy && energy.dry.low > 0 && !energy.missing.includes('WATER') ? energy.dry : undefined;
    return {
      dry,
      ...(known && { fed: { low: dry / known.high, high: dry / known.low } }),
      sources,
    };
  }
  if (kind === 'gerbil') {
    const { kcalPer100, chowKcalPerGram, sources } = GERBIL_INTAKE;
    const fed = ((kcalPer100 / chowKcalPerGram) * weight) / 100;
    return { fed: { low: fed, high: fed }, sources };
  }
  return undefined;
}

function raisesOf({ kind, wheel, room, conditions }: AmountQuestion, stage: Stage): Raise[] {
  const young = conditionsNow({ conditions }).find((c) => c.what === 'nursing')?.young;
  const ofStage = (what: 'growing' | 'pregnant' | 'nursing', extra: Partial<Raise> = {}): Raise => {
    const { low, high, sources } = STAGE_FACTORS[what];
    return { what, times: { low, high }, sources, ...extra };
  };
  return [
    ...(stage === 'growing' ? [ofStage('growing')] : []),
    ...(stage === 'pregnant' || stage === 'breeding' ? [ofStage('pregnant')] : []),
    ...(stage === 'nursing' || stage === 'breeding'
      ? [
          ofStage('nursing', {
            ...(young !== undefined && { young }),
            ...(kind === 'winter-white' && {
              sources: [...STAGE_FACTORS.nursing.sources, ...NURSING_AT_MOST.sources],
            }),
          }),
        ]
      : []),
    ...(wheel ? [{ what: 'wheel' as const, times: WHEEL, sources: WHEEL.sources }] : []),
    ...(room === undefined
      ? []
      : [
          {
            what: 'cold' as const,
            ...(stage === 'nursing' && {
              times: { low: 1, high: NURSING_BY_ROOM.grams[5] / NURSING_BY_ROOM.grams[30] },
            }),
            sources: [
              ...(stage === 'nursing' ? NURSING_BY_ROOM.sources : []),
              ...(kind === 'winter-white' ? WINTER_WHITE_COLD.sources : []),
            ],
          },
        ]),
  ];
}

/**
 * Where what it is fed lies against the range of the equation, with what raises it further; undefined without one.
 */
export function standingOf(
  grams: number,
  { equation }: Pick<DailyAmount, 'equation'>,
): 'under' | 'within' | 'over' | undefined {
  if (!equation) return undefined;
  if (grams < equation.fed.low) return 'under';
  return grams > (equation.raisedTo ?? equation.fed.high) ? 'over' : 'within';
}
