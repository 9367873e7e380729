/**
 * Formulation and food search off the page's thread. Reference foods and solver are loaded once;
 * a live Formulation is kept for each of the last few problems.
 */
import { expose } from 'comlink';
import wasmUrl from 'highs/runtime?url';
import { matchName, type NameMatch } from '../../foods/best-match.ts';
import { cautionsFor } from '../../foods/cautions/find.ts';
import type { Figures } from '../../foods/food.ts';
import { spokenFood } from '../../foods/food-name.ts';
import { decodeReference, type Reference, type ReferenceFood } from '../../foods/reference.ts';
import { createFoodSearch } from '../../foods/search.ts';
import { borrow, similarFoods } from '../../foods/similar.ts';
import type { Goal } from '../../formulation/advice/frontier.ts';
import { type NotShared, type SharedMix, shareMix } from '../../formulation/advice/shared-base.ts';
import type { SubstituteQuestion } from '../../formulation/advice/substitutes.ts';
import { Formulation } from '../../formulation/formulation.ts';
import type { Eater } from '../../formulation/problem/for-animals.ts';
import { parseProblem } from '../../formulation/problem/parse.ts';
import type { Shares } from '../../formulation/problem/problem.ts';
import { type Ingredient, type Problem, ProblemError } from '../../formulation/problem/problem.ts';
import type { Evaluation, MoveResult, Result } from '../../formulation/problem/result.ts';
import type { FormulationOptions } from '../../formulation/solve/build-ration.ts';
import { loadHighs } from '../../formulation/solve/highs.ts';
import { papersOf } from '../../household/reckon/batch/batch-papers.ts';
import { planOf } from '../../household/reckon/batch/batch-plan.ts';
import { sheetOf } from '../../household/reckon/batch/weigh-paper.ts';
import { type Intake, intakeOf } from '../../household/reckon/care/intake.ts';
import type { IntakeQuestion } from '../../household/reckon/care/intake-question.ts';
import { type ShoppingTold, shoppingOf } from '../../household/reckon/shopping/shopping-answer.ts';
import type { ShoppingAsked } from '../../household/reckon/shopping/shopping-question.ts';
import type { CupboardContents } from '../../kitchen/cupboard/cupboard.ts';
import { type ChangeOverPlan, changeOverTo } from '../../kitchen/feeding/change-over.ts';
import { chosenShares } from '../../kitchen/feeding/chosen-shares.ts';
import type { FedAnimal } from '../../kitchen/feeding/runs-out.ts';
import type { Batch, Day } from '../../kitchen/model.ts';
import type { Tag } from '../../nutrition/nutrients.ts';
import { type Manner, PLAIN_MANNER, readManner } from '../../words/manner.ts';
import { PARTS, wordsInParts } from '../../words/parts.ts';
import { speak, words } from '../../words/words.ts';
import { dayAt } from '../shared/today.ts';
import { loadError, loadedOnce } from './loaded.ts';
import { standingOf } from './weighing.ts';
import { LOAD_ERROR } from './worker-line.ts';

/** A value, or what was wrong with the problem: errors lose their fields on the way out of a worker. */
export type Answer<T> = { ok: true; value: T } | { ok: false; field: string; message: string };

const KEPT = 4;
const live = new Map<string, Formulation>();

const reference = loadedOnce(
  () => words().store.worker.foods,
  async (): Promise<Reference> => {
    const response = await fetch('/reference.bin');
    if (!response.ok) throw new Error(words().store.worker.answered(response.status));
    return decodeReference(new Uint8Array(await response.arrayBuffer()));
  },
);
const highs = loadedOnce(
  () => words().store.worker.solver,
  () => loadHighs({ wasmUrl }),
);
// Begun at once; a failure is told to who asks.
reference().catch(() => {});
highs().catch(() => {});
// Meanwhile the lists of words are made ready, which every first question about a mix would wait for.
cautionsFor({ name: 'oats' });

let search: ReturnType<typeof createFoodSearch> | undefined;

async function formulation(problem: Problem): Promise<Formulation> {
  const key = JSON.stringify(problem);
  const known = live.get(key);
  if (known) {
    live.delete(key);
    live.set(key, known);
    return known;
  }
  const parts = { reference: await reference(), highs: await highs() };
  const parsed = parseProblem(JSON.parse(key), parts.reference);
  const made = new Formulation(parsed.problem, parts, parsed.ignored);
  live.set(key, made);
  for (const [oldest, old] of live) {
    if (live.size <= KEPT) break;
    old.dispose();
    live.delete(oldest);
  }
  return made;
}

async function answer<T>(problem: Problem, ask: (f: Formulation) => T): Promise<Answer<T>> {
  return answered(async () => ask(await formulation(problem)));
}

/** As {@link answer}, for what needs the reference foods and the solver alone. */
async function answerWith<T>(ask: (parts: FormulationOptions) => T): Promise<Answer<T>> {
  return answered(async () => ask({ reference: await reference(), highs: await highs() }));
}

async function answered<T>(ask: () => Promise<T>): Promise<Answer<T>> {
  try {
    return { ok: true, value: await ask() };
  } catch (error) {
    if (error instanceof Error && error.name === LOAD_ERROR) throw error;
    // Its memory is in no state to be asked again: only a new worker has a whole one.
    if (error instanceof WebAssembly.RuntimeError) throw loadError(words().store.worker.broke(error.message));
    const field = error instanceof ProblemError ? error.field : '';
    return { ok: false, field, message: error instanceof Error ? error.message : String(error) };
  }
}

const api = {
  solve: (problem: Problem): Promise<Answer<Result>> => answer(problem, (f) => f.solve()),
  move: (problem: Problem, from: Shares, held: Shares, moving?: string): Promise<Answer<MoveResult>> =>
    answer(problem, (f) => f.move(from, held, moving)),
  evaluate: (problem: Problem, shares: Shares): Promise<Answer<Evaluation>> =>
    answer(problem, (f) => f.evaluate(shares)),
  grams: (problem: Problem, shares: Shares) => answer(problem, (f) => f.grams(shares)),
  /** What stands in the way of a share asked of one food. */
  askOf: (problem: Problem, shares: Shares, held: Shares, food: string, wanted: number) =>
    answer(problem, (f) => f.askOf(shares, held, food, wanted)),
  /** Bounds at which the best mix stands, and what each costs. */
  why: (problem: Problem) => answer(problem, (f) => f.why()),
  /** Two goals against each other, from the best of one to the best of the other. */
  frontier: (problem: Problem, a: Goal, b: Goal) => answer(problem, (f) => f.frontier(a, b)),
  /** What may take the place of each food; the shares must keep every rule. */
  substitutes: (problem: Problem, shares: Shares, question?: SubstituteQuestion) =>
    answer(problem, (f) => f.substitutes(shares, question)),
  /** What is eaten when one food is left. */
  dropOne: (problem: Problem, shares: Shares) => answer(problem, (f) => f.dropOne(shares)),
  /** From the present food to this mix over days. */
  changeOver: (problem: Problem, shares: Shares, old: Ingredient, plan: ChangeOverPlan) =>
    answer(problem, (f) => changeOverTo(f, shares, old, plan)),
  /** One base mix for several animals and what each gets added; the problem without its animals. */
  async share(problem: Problem, eaters: readonly Eater[]): Promise<Answer<SharedMix | NotShared>> {
    const parts = { reference: await reference(), highs: await highs() };
    return answer(problem, (f) => shareMix(f.problem, eaters, parts));
  },
  /** Whether a mix may be weighed out, in which order, and what there is of its foods. */
  planBatch: (problem: Problem, shares: Shares, kept: CupboardContents, day: Day) =>
    answerWith((parts) => planOf(problem, shares, { kept, day, parts })),
  /** Where a batch stands, and what its last pour did. */
  standing: (batch: Batch, kept: CupboardContents, day: Day) =>
    answerWith((parts) => standingOf(batch, { kept, day, parts })),
  /** Record and label of a batch. */
  batchPapers: (batch: Batch, kept: CupboardContents, animals: readonly FedAnimal[]) =>
    answerWith((parts) => papersOf(batch, { kept, animals, parts, dayAt })),
  /** Shares of what is fed beside the mix, chosen where they are open. */
  chosenShares: (problem: Problem) => answerWith((parts) => chosenShares(problem, parts)),
  /** What an animal was offered, and ate of it. */
  async intake(asked: IntakeQuestion): Promise<Answer<Intake>> {
    const parts = { reference: await reference() };
    return answered(async () => intakeOf(asked, parts));
  },
  /** The sheet to weigh by on paper. */
  weighSheet: (batch: Batch, kept: CupboardContents, day: Day) =>
    answerWith((parts) =>
      sheetOf(batch, { kept, day, parts, standing: standingOf(batch, { kept, day, parts }), dayAt }),
    ),
  /** The shopping list of a batch; blocks while packs are chosen. */
  async shopping(asked: ShoppingAsked): Promise<Answer<ShoppingTold>> {
    const parts = { reference: await reference(), highs: await highs() };
    return answer(asked.problem, (f) =>
      shoppingOf(asked, { ...parts, evaluation: f.evaluate(asked.shares) }),
    );
  },
  async find(query: string, limit: number): Promise<ReferenceFood[]> {
    search ??= createFoodSearch(await reference());
    return search.find(query, limit).map(spokenFood);
  },
  /** What to tell where the tables do not have what was looked for. */
  async findNote(query: string): Promise<string | undefined> {
    search ??= createFoodSearch(await reference());
    return search.note(query);
  },
  /** What each of these names may mean, in their order. */
  async matches(names: readonly string[]): Promise<NameMatch[]> {
    search ??= createFoodSearch(await reference());
    const found = search;
    return names.map((name) => {
      const match = matchName(found, name);
      return { ...match, foods: match.foods.map(spokenFood) };
    });
  },
  async plainFoods(): Promise<ReferenceFood[]> {
    return (await reference()).plainFoods().map(spokenFood);
  },
  /** The reference foods with these numbers; unknown numbers are left out. */
  async byRef(refs: readonly string[]): Promise<ReferenceFood[]> {
    const table = await reference();
    return refs.flatMap((ref) => {
      const food = table.get(ref);
      return food ? [spokenFood(food)] : [];
    });
  },
  /** Foods made up like this one that know an amount it lacks, the likest first, with what each would lend. */
  async lenders(figures: Figures, group: string | undefined, tag: Tag) {
    return similarFoods(figures, group, await reference(), tag).flatMap((similar) => {
      const food = spokenFood(similar.food);
      const lent = borrow(figures, tag, food);
      return lent ? [{ food, lent: { ...lent, from: food.ref, name: food.name } }] : [];
    });
  },
};

export type FormulationWorker = typeof api;

/** Answers speak the language of the page, whose name for this worker says which; without its texts they are English. */
const manner = readManner(JSON.parse(self.name || '{}'), PLAIN_MANNER);
const spoken = said(manner).catch(() => said({ ...manner, language: 'en' }));

async function said(manner: Manner): Promise<void> {
  const texts = wordsInParts(manner);
  await Promise.all(PARTS.map(texts.fetch));
  speak(() => texts.words);
}
const inLanguage = Object.fromEntries(
  Object.entries(api).map(([method, ask]) => [
    method,
    async (...args: never[]) => {
      await spoken;
      return (ask as (...given: never[]) => unknown)(...args);
    },
  ]),
);
expose(inLanguage);
