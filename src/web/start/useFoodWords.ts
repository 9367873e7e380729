/** Foods by their names: what is typed or pasted becomes foods of the mix, and what is not sure waits for the keeper. */
import { useQuery } from '@tanstack/react-query';
import { useMemo, useState } from 'react';
import type { NameMatch } from '../../foods/best-match.ts';
import type { Ingredient } from '../../formulation/problem/problem.ts';
import type { TableAnswers, TableQuestion } from '../../household/exchange/table/asked.ts';
import { proposalOf } from '../../household/exchange/table/table-proposal.ts';
import type { Mix, OwnFood } from '../../household/model.ts';
import {
  addFood,
  ingredientFromOwn,
  ingredientFromReference,
  patchFood,
} from '../../household/reckon/mix/mix-edits.ts';
import { PROFILES } from '../../targets/profiles.ts';
import { words } from '../../words/words.ts';
import { today } from '../shared/today.ts';
import { useSave } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { newId } from '../store/new-id.ts';
import { engine } from '../worker/engine.ts';
import { gridIn, readPasted } from './pasted-table.ts';
import { readTyped, type TypedFood, wantedOf } from './typed-lines.ts';
import type { OwnMix } from './useOwnMix.ts';

/** A name that may mean several foods, or none. */
export interface OpenName {
  readonly name: string;
  readonly want: number | undefined;
  readonly match: NameMatch;
}

/** What became of the last that was added. */
interface Told {
  readonly added: number;
  /** Names of foods that were in the mix already. */
  readonly there: readonly string[];
  /** Lines that stayed in the box, each with why. */
  readonly left: readonly string[];
}

interface Taken {
  readonly food: Ingredient;
  readonly want: number | undefined;
  readonly typed: string;
}

const BATCH = 300;

export function useFoodWords(own: OwnMix) {
  const { house } = useMixDraft();
  const save = useSave('foods');
  const [box, setBox] = useState('');
  const [answers, setAnswers] = useState<TableAnswers>({});
  const [questions, setQuestions] = useState<readonly TableQuestion[]>([]);
  const [open, setOpen] = useState<readonly OpenName[]>([]);
  const [told, setTold] = useState<Told>();
  const [fault, setFault] = useState<string>();
  const [working, setWorking] = useState(false);
  /** What was typed for a food, by its id. */
  const [typedFor, setTypedFor] = useState<ReadonlyMap<string, string>>(new Map());
  const names = useMemo(() => new Map(house.foods.map((f) => [f.id, f.name])), [house.foods]);

  async function add(given: TableAnswers = answers) {
    if (box.trim() === '' || working) return;
    setWorking(true);
    setFault(undefined);
    try {
      await take(given);
    } catch (error) {
      setFault(error instanceof Error ? error.message : String(error));
    } finally {
      setWorking(false);
    }
  }

  async function take(given: TableAnswers) {
    const t = words().start.foods;
    const grid = gridIn(box);
    if (!grid) {
      const { foods, left } = readTyped(box);
      const { taken, unsure } = await lookedUp(foods, wantedOf(foods, own.mix?.problem.batch_grams ?? BATCH));
      put(
        taken,
        unsure,
        left.map(({ text, fault }) => t.left(text, t.faults[fault])),
      );
      setBox(left.map((l) => l.text).join('\n'));
      return;
    }
    const table = readPasted(grid, given, names);
    setQuestions(table.questions);
    if (table.questions.length > 0 || !table.settled) return;
    const [profile] = PROFILES;
    if (!profile) throw new Error('no target profile comes with the program');
    const { foods: made } = proposalOf(table.settled, {
      tableName: t.tableName,
      today: today(),
      now: new Date().toISOString(),
      newId,
      profile,
      ownFoods: house.foods,
      references: new Map(),
    });
    const { taken, unsure } = await lookedUp(
      table.named,
      table.named.map((f) => f.share),
    );
    for (const food of made) await save.mutateAsync(food, undefined);
    const withFigures = made.map((food, i) => ({
      food: ingredientFromOwn(food),
      want: table.own[i]?.share,
      typed: food.name,
    }));
    put(
      [...taken, ...withFigures],
      unsure,
      table.wrong.map(({ name, why }) => t.left(name, why)),
    );
    setBox('');
    setAnswers({});
  }

  /** The keeper's own foods by their names, then the tables; a line of several names where each is one. */
  async function lookedUp(foods: readonly TypedFood[], wants: readonly (number | undefined)[]) {
    const taken: Taken[] = [];
    const unsure: OpenName[] = [];
    const matches = await engine.matches(foods.map((f) => f.name));
    for (const [i, { name }] of foods.entries()) {
      const want = wants[i];
      const mine = ownNamed(house.foods, name);
      const match = matches[i];
      const [best] = match?.foods ?? [];
      if (mine) taken.push({ food: ingredientFromOwn(mine), want, typed: name });
      else if (match?.sure && best) taken.push({ food: ingredientFromReference(best), want, typed: name });
      else {
        const parts = want === undefined ? await severalIn(name) : undefined;
        if (parts) taken.push(...parts);
        else if (match) unsure.push({ name, want, match });
      }
    }
    return { taken, unsure };
  }

  /** "oats, millet, peas" on one line: every part must be the name of a food. */
  async function severalIn(line: string): Promise<Taken[] | undefined> {
    const parts = line.split(',').map((part) => part.trim());
    if (parts.length < 2 || parts.some((part) => part === '')) return undefined;
    const matches = await engine.matches(parts);
    const taken = parts.flatMap((typed, i): Taken[] => {
      const mine = ownNamed(house.foods, typed);
      const match = matches[i];
      const [best] = match?.foods ?? [];
      if (mine) return [{ food: ingredientFromOwn(mine), want: undefined, typed }];
      return match?.sure && best ? [{ food: ingredientFromReference(best), want: undefined, typed }] : [];
    });
    return taken.length === parts.length ? taken : undefined;
  }

  function put(taken: readonly Taken[], unsure: readonly OpenName[], left: readonly string[]) {
    const before = own.mix?.problem.foods ?? [];
    const isThere = (food: Ingredient) => before.some((f) => f.id === food.id);
    if (taken.length > 0) own.edit((m) => taken.reduce(withWanted, m));
    setTypedFor((all) => new Map([...all, ...taken.map(({ food, typed }) => [food.id, typed] as const)]));
    setOpen((all) => [...all.filter((o) => !unsure.some((u) => u.name === o.name)), ...unsure]);
    setTold({
      added: new Set(taken.filter((one) => !isThere(one.food)).map((one) => one.food.id)).size,
      there: taken.filter((one) => isThere(one.food)).map((one) => one.food.name ?? one.food.id),
      left,
    });
  }

  return {
    box,
    setBox(text: string) {
      setBox(text);
      if (questions.length > 0) setQuestions([]);
    },
    working,
    fault: fault ?? save.error?.message,
    told,
    open,
    questions,
    add: () => void add(),
    answer(id: string, answer: string) {
      const all = { ...answers, [id]: answer };
      setAnswers(all);
      const grid = gridIn(box);
      if (!grid) return;
      const next = readPasted(grid, all, names).questions;
      setQuestions(next);
      if (next.length === 0) void add(all);
    },
    answers,
    /** One of the foods that a name may mean, or a food of the keeper's own. */
    settle(name: OpenName, food: Ingredient | undefined) {
      setOpen((all) => all.filter((o) => o !== name));
      if (!food) return;
      own.edit((m) => withWanted(m, { food, want: name.want }));
      setTypedFor((all) => new Map([...all, [food.id, name.name]]));
    },
    typedFor: (id: string) => typedFor.get(id),
    retyped: (id: string, typed: string) => setTypedFor((all) => new Map([...all, [id, typed]])),
  };
}

/** What each name may mean, by name. */
export function useMatches(names: readonly string[]): ReadonlyMap<string, NameMatch> {
  const wanted = [...new Set(names)].sort();
  const { data } = useQuery({
    queryKey: ['matches', wanted],
    queryFn: () => engine.matches(wanted),
    staleTime: Number.POSITIVE_INFINITY,
    placeholderData: (before) => before,
    enabled: wanted.length > 0,
  });
  // The answer before stands in for this one while it is worked out: its names were others.
  return useMemo(() => {
    const found = new Map<string, NameMatch>();
    if (data?.length === wanted.length)
      for (const [i, name] of wanted.entries()) if (data[i]) found.set(name, data[i]);
    return found;
  }, [data, wanted]);
}

function ownNamed(foods: readonly OwnFood[], name: string): OwnFood | undefined {
  const plain = name.trim().toLowerCase();
  return foods.find((f) => f.kind === 'mix' && f.name.trim().toLowerCase() === plain);
}

function withWanted(mix: Mix, { food, want }: Pick<Taken, 'food' | 'want'>): Mix {
  const added = addFood(mix, food);
  const id =
    added.problem.foods.find((f) => f.id === food.id || (f.ref && f.ref === food.ref))?.id ?? food.id;
  return want === undefined ? added : patchFood(added, id, { want });
}
