/**
 * Formulation and food search off the page's thread. Reference foods and solver are loaded once. What is asked comes in
 * parts (`rooms`), each fetched when it is first asked: where only foods are named, nothing that judges a mix is fetched.
 */
import { expose } from 'comlink';
import wasmUrl from 'highs/runtime?url';
import type { NameMatch } from '../../foods/best-match.ts';
import type { Figures } from '../../foods/food.ts';
import { spokenFood } from '../../foods/food-name.ts';
import { decodeReference, type Reference, type ReferenceFood } from '../../foods/reference.ts';
import type { Goal } from '../../formulation/advice/frontier.ts';
import type { NotShared, SharedMix } from '../../formulation/advice/shared-base.ts';
import type { SubstituteQuestion } from '../../formulation/advice/substitutes.ts';
import type { Formulation, GoalPoint } from '../../formulation/formulation.ts';
import type { Eater } from '../../formulation/problem/for-animals.ts';
import type { Shares } from '../../formulation/problem/problem.ts';
import { type Ingredient, type Problem, ProblemError } from '../../formulation/problem/problem.ts';
import type { SolvedSoFar, Tell } from '../../formulation/problem/progress.ts';
import type { Dragged, Evaluation, Result } from '../../formulation/problem/result.ts';
import type { FormulationOptions } from '../../formulation/solve/build-ration.ts';
import { loadHighs } from '../../formulation/solve/highs.ts';
import type { Intake } from '../../household/reckon/care/intake.ts';
import type { IntakeQuestion } from '../../household/reckon/care/intake-question.ts';
import type { ShoppingTold } from '../../household/reckon/shopping/shopping-answer.ts';
import type { ShoppingAsked } from '../../household/reckon/shopping/shopping-question.ts';
import type { CupboardContents } from '../../kitchen/cupboard/cupboard.ts';
import type { ChangeOverPlan } from '../../kitchen/feeding/change-over.ts';
import type { FedAnimal } from '../../kitchen/feeding/runs-out.ts';
import type { Batch, Day } from '../../kitchen/model.ts';
import type { Tag } from '../../nutrition/nutrients.ts';
import { PLAIN_MANNER, readManner } from '../../words/manner.ts';
import { PARTS, wordsInParts } from '../../words/parts.ts';
import { speak, words } from '../../words/words.ts';
import { dayAt } from '../shared/today.ts';
import { atEveryLook, givingWay } from './giving-way.ts';
import { loadError, loadedOnce } from './loaded.ts';
import { ROOM_TEXTS, type Room } from './room-texts.ts';
import { LOAD_ERROR } from './worker-line.ts';

/** A value, or what was wrong with the problem: errors lose their fields on the way out of a worker. */
export type Answer<T> = { ok: true; value: T } | { ok: false; field: string; message: string };

const reference = loadedOnce(
  () => words().store.worker.foods,
  async (): Promise<Reference> => {
    const response = await fetch('/reference.bin');
    if (!response.ok) throw new Error(words().store.worker.answered(response.status));
    return decodeReference(new Uint8Array(await response.arrayBuffer()));
  },
);
/** Waits while a hand moves a slider; undefined where this worker gives way to none. */
let pause: (() => void) | undefined;
const highs = loadedOnce(
  () => words().store.worker.solver,
  () => loadHighs({ wasmUrl }),
);
/** Tells, and is a place to pause: there is work that asks nothing of the solver. */
const pausing = <T>(tell: Tell<T> | undefined): Tell<T> | undefined =>
  tell &&
  ((told) => {
    tell(told);
    pause?.();
  });
/** Answers speak the language of the page, whose name for this worker says which; without its texts they are English. */
const manner = readManner(JSON.parse(self.name || '{}'), PLAIN_MANNER);
let texts = wordsInParts(manner);
speak(() => texts.words);
const spoken = texts.fetch('first').catch(() => {
  texts = wordsInParts({ ...manner, language: 'en' });
  return texts.fetch('first');
});

/** A part that is loaded when it is first asked, or made ready; with all that it may say. */
function room<T>(name: Room, load: () => Promise<T>): () => Promise<T> {
  return loadedOnce(
    () => words().store.worker.solver,
    async () => {
      const said = Promise.all(ROOM_TEXTS[name].map((part) => texts.fetch(part)));
      const [loaded] = await Promise.all([load(), said]);
      return loaded;
    },
  );
}

const rooms = {
  mixes: room('mixes', () => import('./mixes.ts')),
  changing: room('changing', () => import('../../kitchen/feeding/change-over.ts')),
  sharing: room('sharing', () => import('../../formulation/advice/shared-base.ts')),
  weighing: room('weighing', () => import('./weighing.ts')),
  papers: room('papers', () => import('./papers.ts')),
  search: room('search', async () => {
    const { createFoodSearch } = await import('../../foods/search.ts');
    return createFoodSearch(await reference());
  }),
  names: room('names', () => import('../../foods/best-match.ts')),
  similar: room('similar', () => import('../../foods/similar.ts')),
  shopping: room('shopping', () => import('../../household/reckon/shopping/shopping-answer.ts')),
  intake: room('intake', () => import('../../household/reckon/care/intake.ts')),
};

// The table is begun at once, since foods are named wherever one looks; a failure is told to who asks.
reference().catch(() => {});

async function answer<T>(problem: Problem, ask: (f: Formulation) => T): Promise<Answer<T>> {
  return answerWith(rooms.mixes, ({ formulationOf }, parts) => ask(formulationOf(problem, parts)));
}

/** As {@link answer}, for what needs the reference foods, the solver and one of the parts. */
async function answerWith<R, T>(
  load: () => Promise<R>,
  ask: (room: R, parts: FormulationOptions) => T,
): Promise<Answer<T>> {
  return answered(async () => {
    const [room, ...parts] = await Promise.all([load(), reference(), highs()]);
    return ask(room, { reference: parts[0], highs: parts[1] });
  });
}

/** A part that asks of live formulations, with these. */
const withMixes =
  <R>(load: () => Promise<R>) =>
  () =>
    Promise.all([rooms.mixes(), load()]);

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
  /** Has this worker give way to the hand from now on; to be told before anything is asked of it. */
  giveWay(shared: Int32Array): void {
    pause = givingWay(shared);
    atEveryLook(pause);
  },
  solve: (problem: Problem, tell?: Tell<SolvedSoFar>): Promise<Answer<Result>> =>
    answer(problem, (f) => f.solve(pausing(tell))),
  /** For a slider under the thumb: see `drag` of {@link Formulation}. */
  drag: (problem: Problem, from: Shares, held: Shares, moving?: string): Promise<Answer<Dragged>> =>
    answer(problem, (f) => f.drag(from, held, moving)),
  /** Let go of: see `settle` of {@link Formulation}. */
  settle: (problem: Problem, from: Shares, held: Shares, moving?: string): Promise<Answer<Dragged>> =>
    answer(problem, (f) => f.settle(from, held, moving)),
  feasible: (problem: Problem): Promise<Answer<boolean>> => answer(problem, (f) => f.feasible()),
  evaluate: (problem: Problem, shares: Shares): Promise<Answer<Evaluation>> =>
    answer(problem, (f) => f.evaluate(shares)),
  grams: (problem: Problem, shares: Shares) => answer(problem, (f) => f.grams(shares)),
  /** What stands in the way of a share asked of one food. */
  askOf: (problem: Problem, shares: Shares, held: Shares, food: string, wanted: number) =>
    answer(problem, (f) => f.askOf(shares, held, food, wanted)),
  /** Bounds at which the best mix stands, and what each costs. */
  why: (problem: Problem) => answer(problem, (f) => f.why()),
  /** Two goals against each other, from the best of one to the best of the other. */
  frontier: (problem: Problem, a: Goal, b: Goal, tell?: Tell<GoalPoint[]>): Promise<Answer<GoalPoint[]>> =>
    answer(problem, (f) => f.frontier(a, b, pausing(tell))),
  /** What may take the place of each food; the shares must keep every rule. */
  substitutes: (problem: Problem, shares: Shares, question?: SubstituteQuestion) =>
    answer(problem, (f) => f.substitutes(shares, question)),
  /** What is eaten when one food is left. */
  dropOne: (problem: Problem, shares: Shares) => answer(problem, (f) => f.dropOne(shares)),
  /** From the present food to this mix over days. */
  changeOver: (problem: Problem, shares: Shares, old: Ingredient, plan: ChangeOverPlan) =>
    answerWith(withMixes(rooms.changing), ([{ formulationOf }, { changeOverTo }], parts) =>
      changeOverTo(formulationOf(problem, parts), shares, old, plan),
    ),
  /** One base mix for several animals and what each gets added; the problem without its animals. */
  share: (
    problem: Problem,
    eaters: readonly Eater[],
    tell?: Tell<SharedMix>,
  ): Promise<Answer<SharedMix | NotShared>> =>
    answerWith(withMixes(rooms.sharing), ([{ formulationOf }, { shareMix }], parts) =>
      shareMix(formulationOf(problem, parts).problem, eaters, parts, pausing(tell)),
    ),
  /** Whether a mix may be weighed out, in which order, and what there is of its foods. */
  planBatch: (problem: Problem, shares: Shares, kept: CupboardContents, day: Day) =>
    answerWith(rooms.papers, ({ planOf }, parts) => planOf(problem, shares, { kept, day, parts })),
  /** Where a batch stands, and what its last pour did. */
  standing: (batch: Batch, kept: CupboardContents, day: Day) =>
    answerWith(rooms.weighing, ({ standingOf }, parts) => standingOf(batch, { kept, day, parts })),
  /** Record and label of a batch. */
  batchPapers: (batch: Batch, kept: CupboardContents, animals: readonly FedAnimal[]) =>
    answerWith(rooms.papers, ({ papersOf }, parts) => papersOf(batch, { kept, animals, parts, dayAt })),
  /** Shares of what is fed beside the mix, chosen where they are open. */
  chosenShares: (problem: Problem) =>
    answerWith(rooms.mixes, ({ chosenShares }, parts) => chosenShares(problem, parts)),
  /** What an animal was offered, and ate of it. */
  async intake(asked: IntakeQuestion): Promise<Answer<Intake>> {
    const [{ intakeOf }, parts] = [await rooms.intake(), { reference: await reference() }];
    return answered(async () => intakeOf(asked, parts));
  },
  /** The sheet to weigh by on paper. */
  async weighSheet(batch: Batch, kept: CupboardContents, day: Day) {
    const { standingOf } = await rooms.weighing();
    return answerWith(rooms.papers, ({ sheetOf }, parts) =>
      sheetOf(batch, { kept, day, parts, standing: standingOf(batch, { kept, day, parts }), dayAt }),
    );
  },
  /** The shopping list of a batch; blocks while packs are chosen. */
  shopping: (asked: ShoppingAsked): Promise<Answer<ShoppingTold>> =>
    answerWith(withMixes(rooms.shopping), ([{ formulationOf }, { shoppingOf }], parts) =>
      shoppingOf(asked, {
        ...parts,
        evaluation: formulationOf(asked.problem, parts).evaluate(asked.shares),
      }),
    ),
  async find(query: string, limit: number): Promise<ReferenceFood[]> {
    return (await rooms.search()).find(query, limit).map(spokenFood);
  },
  /** What to tell where the tables do not have what was looked for. */
  async findNote(query: string): Promise<string | undefined> {
    return (await rooms.search()).note(query);
  },
  /** What each of these names may mean, in their order. */
  async matches(names: readonly string[]): Promise<NameMatch[]> {
    const [search, { matchName }] = [await rooms.search(), await rooms.names()];
    return names.map((name) => {
      const match = matchName(search, name);
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
  /** Begins to load these parts, with the solver. A failure is told to who asks for it. */
  begin(names: readonly Room[]): void {
    if (names.length > 0) highs().catch(() => {});
    for (const name of names) rooms[name]().catch(() => {});
  },
  /**
   * Loads every part, so that all is answered also when the server goes away afterwards. What could not be loaded is
   * told to who asks for it.
   */
  async prepare(): Promise<void> {
    await Promise.allSettled([reference(), highs()]);
    for (const load of Object.values(rooms)) await load().catch(() => {});
    await Promise.allSettled(PARTS.map((part) => texts.fetch(part)));
  },
  /** Foods made up like this one that know an amount it lacks, the likest first, with what each would lend. */
  async lenders(figures: Figures, group: string | undefined, tag: Tag) {
    const { borrow, similarFoods } = await rooms.similar();
    return similarFoods(figures, group, await reference(), tag).flatMap((similar) => {
      const food = spokenFood(similar.food);
      const lent = borrow(figures, tag, food);
      return lent ? [{ food, lent: { ...lent, from: food.ref, name: food.name } }] : [];
    });
  },
};

export type FormulationWorker = typeof api;

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
