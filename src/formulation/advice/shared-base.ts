import { words } from '../../words/words.ts';
import { capital } from '../explain/sentences.ts';
import { Formulation } from '../formulation.ts';
import { type Eater, forAnimals, forOneOf } from '../problem/for-animals.ts';
import { type Problem, ProblemError, type Shares } from '../problem/problem.ts';
import { retold, type Tell } from '../problem/progress.ts';
import { linearBounds } from '../solve/bounds.ts';
import { buildRation, type FormulationOptions, wantedShares } from '../solve/build-ration.ts';
import { answered } from '../solve/highs.ts';
import { elementAt } from '../solve/vectors.ts';
import { type FedAnimal, MOST_ADDED, parts, SharedBaseProgram } from './shared-base-program.ts';

/** What one mix costs an animal beside the best mix of its own. */
export interface SharingCost {
  /** Part of the mix that would be other food in the best mix of its own, percent. */
  readonly different: number;
  /**
   * How much further from the wanted shares, percent of the mix. Counted in parts of the mix and not in squares as
   * the nearest mix is, so it can be a trifle below 0.
   */
  readonly further: number;
  /** How much dearer per kg; left out where a food in either mix has no price. */
  readonly dearer?: number;
}

interface SharedAnimal {
  readonly id: string;
  readonly name: string;
  /** Grams added to 100 g of the base, by food id; only what is added. */
  readonly additions: Readonly<Record<string, number>>;
  /** Percent of its mix, base and additions together; adds up to 100. */
  readonly shares: Shares;
  readonly cost: SharingCost;
}

export interface SharedMix {
  readonly status: 'shared';
  /** Percent by food id; adds up to 100. */
  readonly base: Shares;
  readonly animals: readonly SharedAnimal[];
  /** How many additions are weighed, over all animals. */
  readonly weighings: number;
  /** Grams of them on 100 g of base for each animal. */
  readonly weight: number;
  /**
   * The mix that suits all without additions, where there is one: that of {@link forAnimals}. It is the base, unless
   * some animal misses in it the least share of a food that another refuses.
   */
  readonly one_mix: Shares | null;
  /** Rules that a mix does not keep or that were not looked at, in sentences; empty where all were checked and hold. */
  readonly unverified: readonly string[];
  /** Whether fewer, or as many but lighter, additions are known not to do. */
  readonly proved: boolean;
  /** What else is to be known of the answer, in sentences; no rule is in question. */
  readonly notes: readonly string[];
  readonly sentence: string;
}

export interface NotShared {
  readonly status: 'none';
  /** Animals that have no mix even by themselves, and why; empty where only sharing is impossible. */
  readonly without_mix: readonly { readonly id: string; readonly name: string; readonly verdict: string }[];
  readonly sentence: string;
}

/** Rows are written this much larger, so that the solver keeps them finer than a mix is judged. */
const FINER = 10;
/** Costs below this are not worth a word: percent of a mix, and money per kg. */
const WORTH_SAYING = { percent: 0.05, money: 0.005 };

/**
 * Where one mix keeps every animal's rules (see {@link forAnimals}) it is the base and nothing is added; the problem's
 * objective picks it, with its aims. Otherwise base and additions keep every animal's linear rules, with the shares of
 * what is fed beside as written. A confidence, counting rules, least shares and grams of foods used are not sought
 * there; every mix is judged under all rules of its animal, and what does not hold is said in `unverified`.
 *
 * A rule of the problem that is also in the profile of one animal and not of another binds only the first
 * (see {@link forOneOf}).
 * @param tell told of bases with ever fewer and lighter additions: see progress.ts
 * @throws RangeError without eaters
 */
export function shareMix(
  problem: Problem,
  eaters: readonly Eater[],
  options: FormulationOptions,
  tell?: Tell<SharedMix>,
): SharedMix | NotShared {
  if (eaters.length === 0) throw new RangeError('eaters: there is none; give at least one animal');
  const fed: FedAnimal[] = [];
  const without: { id: string; name: string; verdict: string }[] = [];
  try {
    for (const [done, eater] of eaters.entries()) {
      tell?.({ doing: 'alone', done, of: eaters.length });
      const own = feed(problem, eater, eaters, options);
      if (typeof own === 'string') without.push({ id: eater.id, name: eater.name, verdict: own });
      else fed.push(own);
    }
    if (without.length > 0) return { status: 'none', without_mix: without, sentence: aloneSentence(without) };
    tell?.({ doing: 'together' });
    const oneMix = mixForAll(problem, eaters, options);
    // What one refuses is left out for all, its least share too: for the others that may be a breach.
    const suits = (mix: Shares) => fed.every((f) => f.formulation.evaluate(mix).breaches.length === 0);
    const asOne = (mix: Shares) => ({ base: mix, additions: fed.map(() => ({})), proved: true });
    if (oneMix && suits(oneMix)) return shared(problem, fed, asOne(oneMix), oneMix);
    const program = new SharedBaseProgram(problem, fed, options);
    const withAdditions = ({ x, proved }: { x: readonly number[]; proved: boolean }) =>
      shared(
        problem,
        fed,
        { base: program.base(x), additions: program.additions(x), proved },
        oneMix ?? null,
      );
    const found = program.solve(retold(tell, withAdditions));
    if (found) return withAdditions(found);
    if (oneMix) return shared(problem, fed, asOne(oneMix), oneMix);
    return { status: 'none', without_mix: [], sentence: apartSentence(fed, program.baseRows) };
  } finally {
    for (const { formulation } of fed) formulation.dispose();
  }
}

/** An animal's own problem and best mix, or why it has none. */
function feed(
  problem: Problem,
  eater: Eater,
  eaters: readonly Eater[],
  { reference, highs }: FormulationOptions,
): FedAnimal | string {
  const own = forOneOf(problem, eater, eaters);
  let formulation: Formulation;
  try {
    formulation = new Formulation(own, { reference, highs });
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    return `${capital(error.message.slice(error.field.length + 2))}.`;
  }
  const best = formulation.solve();
  if (best.status !== 'optimal') {
    formulation.dispose();
    return best.verdict;
  }
  const { open, caps, ration } = buildRation(own, { reference, highs });
  const { foods } = ration;
  // No spread: a confidence is judged afterwards.
  const bounds = linearBounds(own, ration, open, 0, caps);
  const rows = bounds.map((bound) => {
    const { g, h } = bound.halfSpace(bound.bound);
    return new Map(open.map((row, column) => [row, FINER * (elementAt(g, column) - h / 100)]));
  });
  const most = new Map(
    open.map((row) => [row, Math.min(elementAt(own.foods, row).max ?? 100, caps.each.get(row)?.max ?? 100)]),
  );
  return { eater, formulation, best, open, foods, most, rows };
}

/** The best mix that suits all without additions. */
function mixForAll(
  problem: Problem,
  eaters: readonly Eater[],
  options: FormulationOptions,
): Shares | undefined {
  let formulation: Formulation;
  try {
    formulation = new Formulation(forAnimals(problem, eaters).problem, options);
  } catch (error) {
    if (error instanceof ProblemError) return undefined;
    throw error;
  }
  try {
    // Whether there is any is asked first: why there is none would take long to answer, and nobody asks.
    if (answered(() => formulation.feasible()) !== true) return undefined;
    const result = formulation.solve();
    return result.status === 'optimal' ? result.shares : undefined;
  } finally {
    formulation.dispose();
  }
}

/** A base, and for each animal what is added. */
interface Way {
  readonly base: Shares;
  readonly additions: readonly Readonly<Record<string, number>>[];
  readonly proved: boolean;
}

function shared(problem: Problem, fed: readonly FedAnimal[], way: Way, oneMix: Shares | null): SharedMix {
  const { base, additions, proved } = way;
  const withAdditions = base !== oneMix;
  const animals = fed.map((f, k): SharedAnimal => {
    const added = elementAt(additions, k);
    const shares = parts(
      Object.fromEntries(Object.entries(base).map(([id, share]) => [id, share + (added[id] ?? 0)])),
    );
    const { id, name } = f.eater;
    return { id, name, additions: added, shares, cost: costOf(problem, f, shares) };
  });
  const grams = additions.flatMap((a) => Object.values(a));
  const breaches = fed.flatMap(({ eater, formulation }, k) =>
    formulation
      .evaluate(elementAt(animals, k).shares)
      .breaches.map((b) => words().sharing.found.forOne(eater.name, b.sentence)),
  );
  return {
    status: 'shared',
    base,
    animals,
    weighings: grams.length,
    weight: grams.reduce((sum, v) => sum + v, 0),
    one_mix: oneMix,
    unverified:
      withAdditions && problem.drop_one ? [...breaches, words().sharing.found.notDropped] : breaches,
    proved,
    notes: [
      ...(proved ? [] : [words().sharing.found.notProved]),
      ...(withAdditions && problem.aims?.length ? [words().sharing.found.aimsLeft] : []),
    ],
    sentence: sharedSentence(problem, fed, animals),
  };
}

function costOf({ foods }: Problem, { formulation, best, open }: FedAnimal, shares: Shares): SharingCost {
  // By column: a mix has nothing of a food that the animal may not eat.
  const eaten = open.map((row) => elementAt(foods, row));
  const wants = wantedShares(eaten.map((f) => f.want));
  const mix = formulation.vector(shares);
  const own = formulation.vector(best.shares);
  const apart = (x: Float64Array, y: Float64Array) =>
    x.reduce((sum, share, i) => sum + Math.abs(share - elementAt(y, i)), 0) / 2;
  const priced = eaten.every((f, i) => f.price_per_kg !== undefined || (mix[i] === 0 && own[i] === 0));
  const price = (x: Float64Array) =>
    eaten.reduce((sum, f, i) => sum + ((f.price_per_kg ?? 0) * elementAt(x, i)) / 100, 0);
  return {
    different: apart(mix, own),
    further: apart(mix, wants) - apart(own, wants),
    ...(priced && { dearer: price(mix) - price(own) }),
  };
}

function sharedSentence(
  problem: Problem,
  fed: readonly FedAnimal[],
  animals: readonly SharedAnimal[],
): string {
  const t = words().sharing.found;
  const costs = animals.flatMap(({ name, cost }) => {
    const said = costWords(problem, name, cost);
    return said ? [said] : [];
  });
  const cost = costs.length > 0 ? t.costs(costs) : t.nothing;
  const extras = animals.flatMap(({ name, additions }, k) => {
    const { foods } = elementAt(fed, k);
    const given = Object.entries(additions).map(([id, grams]) =>
      t.addition(grams, foods.find((f) => f.id === id)!.name),
    );
    return given.length > 0 ? [t.gets(name, given)] : [];
  });
  return extras.length === 0 ? t.oneMix(cost) : t.oneBase(cost, extras);
}

function costWords(
  { objective }: Problem,
  animal: string,
  { different, further, dearer }: SharingCost,
): string | undefined {
  const t = words().sharing.found;
  if (objective === 'cheapest' && dearer !== undefined)
    return dearer > WORTH_SAYING.money ? t.money(animal, dearer) : undefined;
  const [percent, say] = objective === 'nearest' ? [further, t.fromWanted] : [different, t.fromOwn];
  return percent > WORTH_SAYING.percent ? say(animal, percent) : undefined;
}

function aloneSentence(without: readonly { readonly name: string; readonly verdict: string }[]): string {
  return without.map(({ name, verdict }) => words().sharing.found.alone(name, verdict)).join(' ');
}

function apartSentence(fed: readonly FedAnimal[], baseRows: readonly number[]): string {
  const t = words().sharing.found;
  const names = fed.map((f) => f.eater.name);
  return baseRows.length === 0 ? t.noFood(names) : t.noBase(names, MOST_ADDED);
}
