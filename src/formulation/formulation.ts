/**
 * A live formulation: one problem, its solver kept warm. Every answer is a mix that keeps all rules, or the reason
 * why none does and what would mend it.
 */
import { applyRemedy } from './advice/apply-remedy.ts';
import { type AskAnswer, answerToAsk } from './advice/ask.ts';
import { type Collided, collided, colliders } from './advice/collision.ts';
import { type FrontierPoint, frontier, type Goal } from './advice/frontier.ts';
import { type Substitutable, type SubstituteQuestion, substitutes } from './advice/substitutes.ts';
import { cautionNotes } from './amounts/apply-cautions.ts';
import { type FoodAmounts, foodAmounts } from './amounts/food-amounts.ts';
import {
  bestOf,
  chosenBeside,
  colliding,
  following,
  heldTooTight,
  mixed,
  type Notes,
} from './explain/answers.ts';
import { type DropOne, dropOne } from './explain/drop-one.ts';
import { evaluate } from './explain/evaluate.ts';
import { type Moved, moved, QuickMoves } from './explain/moved.ts';
import { reasons } from './explain/why.ts';
import { setAtPointer } from './problem/json-pointer.ts';
import type { Ingredient, Problem, Shares } from './problem/problem.ts';
import { retold, type SolvedSoFar, type Tell } from './problem/progress.ts';
import { questionsOn } from './problem/questions.ts';
import type {
  Best,
  Collision,
  Dragged,
  Evaluation,
  Mixed,
  MoveResult,
  Reason,
  Result,
  WholeGrams,
} from './problem/result.ts';
import type { Bound, Ration } from './solve/bounds.ts';
import type { FormulationOptions } from './solve/build-ration.ts';
import { answered } from './solve/highs.ts';
import { fixedBeside, withMargin } from './solve/margin.ts';
import {
  allBounds,
  byColumn,
  byFood,
  countsFoods,
  type MixModel,
  mixModelOf,
  solverFor,
} from './solve/mix-model.ts';
import type { Found, MixSolver } from './solve/mix-solver.ts';
import { elementAt } from './solve/vectors.ts';
import { weighMix } from './solve/weigh-mix.ts';

/** A mix that is best in one goal for what it is in another; each goal's own number. */
export interface GoalPoint {
  readonly a: number;
  readonly b: number;
  readonly shares: Shares;
}

export class Formulation {
  readonly problem: Problem;
  private readonly options: FormulationOptions;
  private readonly ignored: readonly string[];
  private readonly model: MixModel;
  private readonly solver: MixSolver;
  private saferFound: { readonly problem: Problem | undefined } | undefined;
  private bestFound: { readonly found: Found | undefined } | undefined;
  private withinMargin: readonly Bound[] | undefined;
  private result: Result | undefined;
  private notesMade: Notes | undefined;
  private quickMoves: QuickMoves | undefined;

  /**
   * @param problem as {@link parseProblem} returns it
   * @throws ProblemError where the caution list leaves no food, or too little room, for a mix
   */
  constructor(problem: Problem, options: FormulationOptions, ignored: readonly string[] = []) {
    this.problem = problem;
    this.options = options;
    this.ignored = ignored;
    this.model = mixModelOf(problem, options);
    this.solver = solverFor(this.model.question);
  }

  /** What is fed: the foods that may be used, and what is fed beside them. */
  get ration(): Ration {
    return this.model.ration;
  }

  /**
   * The whole answer: shares, grams, spans and contents; or the conflict and its remedies.
   * @param tell told how far it is: see progress.ts
   */
  solve(tell?: Tell<SolvedSoFar>): Result {
    this.result ??= this.solveAfresh(tell);
    return this.result;
  }

  private solveAfresh(tell?: Tell<SolvedSoFar>): Result {
    const { model } = this;
    const soFar = (found: Found) => ({ status: 'optimal' as const, ...bestOf(model, found) });
    const found = this.found(retold(tell, soFar));
    if (!found) return this.collision(tell);
    const best = soFar(found);
    const spans = this.solver.spans(new Map(), tell && ((steps) => tell({ ...steps, found: best })));
    return { ...following(model, found, spans, this.notes()), ...weighMix(model, found.x) };
  }

  /** The best mix and how it stands, without spans and grams; or the conflict and its remedies. */
  mix(): Mixed | Collision {
    const found = this.found();
    return found ? mixed(this.model, found, this.notes()) : this.collision();
  }

  /**
   * The best mix alone, without spans, contents and grams; undefined where no mix keeps every rule.
   * @param tell told how far it is: see progress.ts
   */
  best(tell?: Tell<Best>): Best | undefined {
    const found = this.found(retold(tell, (f) => bestOf(this.model, f)));
    return found && bestOf(this.model, found);
  }

  /** A problem does not change, so its best mix is sought once. */
  private found(tell?: Tell<Found>): Found | undefined {
    if (this.model.crossed) return undefined;
    this.bestFound ??= {
      found: (this.safer && this.ask(this.safer, (other) => other.found(tell))) ?? this.solver.best(tell),
    };
    return this.bestFound.found;
  }

  /** The problem at the margin that its best mix keeps from the bounds; undefined where it keeps none. */
  private get safer(): Problem | undefined {
    this.saferFound ??= {
      problem:
        this.problem.margin && answered(() => this.feasible())
          ? withMargin(
              fixedBeside(this.model),
              (problem) => answered(() => this.ask(problem, (other) => other.feasible())) === true,
            )
          : undefined,
    };
    return this.saferFound.problem;
  }

  /** Whether any mix keeps every rule. */
  feasible(): boolean {
    return !this.model.crossed && this.solver.feasible();
  }

  /** Least share of one food over all mixes, percent; undefined where no mix keeps every rule. */
  private leastShare(food: string): number | undefined {
    const { model, solver } = this;
    if (model.crossed) return undefined;
    return solver.least(model.ration.foods.findIndex((f) => f.id === food));
  }

  /** How given shares stand against the rules; a food that is not named counts as 0. */
  evaluate(shares: Shares): Evaluation {
    const { problem, model } = this;
    const x = byColumn(model, shares);
    const standing = evaluate(problem, model.ration, allBounds(model), x, this.notes().cautions);
    return { ...standing, ...chosenBeside(model) };
  }

  /**
   * The mix nearest to `from` with the shares in `held` as they are; a share held outside its span is brought to
   * its nearest end. Spans of the result leave `moving` free and keep the other holds.
   * @param moving id of the food whose slider moves; it is held at `held[moving]`
   */
  move(from: Shares, held: Shares, moving?: string): MoveResult {
    const { model, solver } = this;
    if (model.crossed) return this.collision();
    return this.movedTo(moved(model, solver, model.question, { from, held, moving }));
  }

  /**
   * As {@link move}, at once also where foods are counted: for a slider under the thumb. Where the share asked for cannot
   * be had with the foods that are in the mix, rules that count foods may be broken: `breaches` then says which.
   */
  drag(from: Shares, held: Shares, moving?: string): Dragged {
    const { model } = this;
    if (model.crossed || !countsFoods(model.question)) return this.move(from, held, moving);
    const result = this.movedTo(this.quick.moved({ from, held, moving }));
    if (result.status !== 'optimal') return result;
    const { breaches } = this.evaluate(result.shares);
    return breaches.length > 0 ? { ...result, breaches } : result;
  }

  /** As {@link drag}, every rule kept: where foods are counted it is sought which of them are in, which may take long. */
  settle(from: Shares, held: Shares, moving?: string): Dragged {
    const { model, solver } = this;
    if (model.crossed || !countsFoods(model.question)) return this.move(from, held, moving);
    return this.movedTo(this.quick.settled({ from, held, moving }, solver));
  }

  private get quick(): QuickMoves {
    this.quickMoves ??= new QuickMoves(this.model);
    return this.quickMoves;
  }

  private movedTo(to: Moved): MoveResult {
    const { model } = this;
    if ('tight' in to) return heldTooTight(model, to.tight, this.notes());
    return following(model, to.found, to.spans, this.notes());
  }

  /**
   * What stands in the way of a share asked of one food.
   * @param shares as the mix stands, percent by food id @param held shares that stay where they are
   * @throws RangeError where the food is none that the mix may be made of
   */
  askOf(shares: Shares, held: Shares, food: string, wanted: number): AskAnswer {
    const { model, solver, problem } = this;
    const { lower, upper } = model.question;
    // Where foods are counted, or every food may be left, one such search takes seconds.
    const long = countsFoods(model.question) || problem.drop_one === true;
    return answerToAsk({
      model,
      shares,
      held,
      food,
      wanted,
      span: (column) => {
        if (long) return undefined;
        if (model.crossed) return [Number.NaN, Number.NaN];
        const pins = new Map<number, number>();
        model.ration.foods.forEach((f, i) => {
          const share = held[f.id];
          if (share === undefined || i === column) return;
          pins.set(i, Math.min(elementAt(upper, i), Math.max(elementAt(lower, i), share)));
        });
        return elementAt(solver.spans(pins), column);
      },
      collides: () => {
        if (long) return undefined;
        const asked: Shares = { ...held, [food]: wanted };
        const foods = problem.foods.map((f) => {
          const share = asked[f.id];
          return share === undefined ? f : { ...f, min: share, max: share };
        });
        return this.ask({ ...problem, foods }, (other) => colliders(this.options.highs, other.model.asked));
      },
      margin: () => (long ? [] : this.marginBounds()),
    });
  }

  /** The bounds with the margin that the best mix keeps from them; none where it keeps none. */
  private marginBounds(): readonly Bound[] {
    this.withinMargin ??= this.safer ? this.ask(this.safer, (other) => allBounds(other.model)) : [];
    return this.withinMargin;
  }

  /** Whole steps of the scale nearest to given shares, the rules kept whether the shares keep them or not. */
  grams(shares: Shares): WholeGrams {
    return weighMix(this.model, byColumn(this.model, shares));
  }

  /** Why the best mix is as it is: the bounds it stands at and what each costs. Empty where there is no mix. */
  why(): Reason[] {
    if (this.safer) return this.ask(this.safer, (other) => other.why());
    const found = this.found();
    if (!found) return [];
    const { problem, model } = this;
    return reasons({
      model,
      found,
      resolve: (pointer, to) => this.ask(setAtPointer(problem, pointer, to), (moved) => moved.solver.best()),
    });
  }

  /**
   * Two goals against each other: the mixes that are best in one for what they are in the other.
   * @param tell told of the points so far: see progress.ts
   */
  frontier(a: Goal, b: Goal, tell?: Tell<GoalPoint[]>): GoalPoint[] {
    const { model } = this;
    if (model.crossed) return [];
    const points = (found: readonly FrontierPoint[]) =>
      found.map(({ x, ...values }) => ({ ...values, shares: byFood(model, x, 0) }));
    return points(frontier(model, a, b, retold(tell, points)));
  }

  /** What can replace each food, or those asked for, with every rule kept. @param shares must keep every rule */
  substitutes(shares: Shares, question?: SubstituteQuestion): Substitutable[] {
    const { reference } = this.options;
    return substitutes(this.problem, { reference, beside: this.ration.beside }, shares, question);
  }

  /** A food as this problem counts it. @param food per 100 g as fed @throws ProblemError for an unknown `ref` */
  amountsOf(food: Ingredient): FoodAmounts {
    return foodAmounts(food, this.options.reference, this.problem.variation);
  }

  /** What is eaten when the animal leaves any one food. */
  dropOne(shares: Shares): DropOne {
    return dropOne(this.problem, this.ration, this.vector(shares));
  }

  /** Shares by column of `ration.foods`; a food that is not named counts as 0. */
  vector(shares: Shares): Float64Array {
    return byColumn(this.model, shares);
  }

  dispose(): void {
    this.solver.dispose();
    this.quickMoves?.dispose();
  }

  private notes(): Notes {
    this.notesMade ??= {
      cautions: cautionNotes(this.problem, this.options.reference),
      questions: questionsOn(this.problem, this.options.reference),
      ignored: this.ignored,
    };
    return this.notesMade;
  }

  private collision(tell?: Tell<Collision>): Collision {
    const { problem, options, model } = this;
    const told = (found: Collided) => colliding(problem, model.ration, found, this.notes());
    const found = collided({
      problem,
      options,
      asked: model.asked,
      tell: retold(tell, told),
      mends: (remedy) => answered(() => this.ask(applyRemedy(problem, remedy), (m) => m.feasible())) === true,
      leastShare: (added) =>
        answered(() => this.ask(applyRemedy(problem, added), (m) => m.leastShare(added.food.id))),
    });
    return told(found);
  }

  /** Asks something of another problem with the same means. */
  private ask<T>(problem: Problem, question: (other: Formulation) => T): T {
    const other = new Formulation(problem, this.options);
    try {
      return question(other);
    } finally {
      other.dispose();
    }
  }
}
