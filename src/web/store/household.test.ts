/** Saving an object of the household: shown at once, taken back when the server refuses it, one after the other. */
import { notifyManager, QueryClient, QueryClientProvider, QueryObserver } from '@tanstack/react-query';
import { createElement } from 'react';
import { renderToString } from 'react-dom/server';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { EMPTY } from '../../../test/household/empty-household.ts';
import { lotOf } from '../../../test/kitchen/cupboards.ts';
import type { Household } from '../../household/model.ts';
import type { Lot } from '../../kitchen/model.ts';
import { useRemove, useSave } from './household.ts';
import { onSaveNow } from './waiting-saves.ts';

const lot = (id: string, grams: number) => lotOf({ id, food: 'millet', name: 'Millet', grams });

/** A request that waits for the test to answer it. */
interface Asked {
  readonly path: string;
  readonly body: Lot | undefined;
  answer(status: number): void;
}
let asked: Asked[];
let client: QueryClient;

beforeEach(() => {
  asked = [];
  client = new QueryClient();
  vi.stubGlobal('fetch', (path: string, init: RequestInit) => {
    return new Promise<Response>((done) =>
      asked.push({
        path,
        body: init.body ? (JSON.parse(init.body as string) as Lot) : undefined,
        answer: (status) =>
          done(
            status < 300
              ? new Response(null, { status })
              : Response.json({ field: '/grams', message: 'refused' }, { status }),
          ),
      }),
    );
  });
});
afterEach(() => vi.unstubAllGlobals());

function household(lots: readonly Lot[]) {
  client.setQueryData<Household>(['household'], { ...EMPTY, lots });
}
const shown = () => client.getQueryData<Household>(['household'])?.lots.map((l) => [l.id, l.grams]);

function Caller({ call }: { call(): void }) {
  call();
  return null;
}

/** What a hook gives to the component that uses it. */
function hook<T>(use: () => T): T {
  let given: T | undefined;
  const call = () => {
    given = use();
  };
  renderToString(createElement(QueryClientProvider, { client }, createElement(Caller, { call })));
  return given as T;
}

/** Answers the request that waits, and lets the page take the answer. */
async function answered(status: number) {
  await vi.waitFor(() => expect(asked).toHaveLength(1));
  asked.shift()!.answer(status);
  await new Promise((done) => setTimeout(done));
}

it('shows what is saved within the call, and keeps it once the server has it', async () => {
  household([lot('a', 1)]);
  const { mutate } = hook(() => useSave('lots'));
  mutate(lot('a', 2));
  mutate(lot('b', 5));
  expect(shown()).toEqual([
    ['a', 2],
    ['b', 5],
  ]);
  await answered(204);
  await answered(204);
  expect(shown()).toEqual([
    ['a', 2],
    ['b', 5],
  ]);
});

it('is heard of within the call, so that what was pressed shows as pressed', async () => {
  household([lot('a', 1)]);
  const observer = new QueryObserver<Household>(client, { queryKey: ['household'], enabled: false });
  let heard: number | undefined;
  // As useQuery listens.
  const listener = notifyManager.batchCalls(() => {
    heard = observer.getCurrentResult().data?.lots[0]?.grams;
  });
  const stop = observer.subscribe(listener);
  const { mutate } = hook(() => useSave('lots'));
  mutate(lot('a', 2));
  expect(heard).toBe(2);
  await answered(204);
  stop();
});

it('sends one after the other, in the order in which they were made', async () => {
  household([lot('a', 1)]);
  const first = hook(() => useSave('lots'));
  const second = hook(() => useSave('lots'));
  first.mutate(lot('a', 2));
  second.mutate(lot('a', 3));
  await vi.waitFor(() => expect(asked.map((r) => r.body?.grams)).toEqual([2]));
  await answered(204);
  await vi.waitFor(() => expect(asked.map((r) => r.body?.grams)).toEqual([3]));
  await answered(204);
  expect(shown()).toEqual([['a', 3]]);
});

it('takes back a refused change, and a refused new object, and says why', async () => {
  household([lot('a', 1)]);
  const { mutateAsync } = hook(() => useSave('lots'));
  const changed = mutateAsync(lot('a', 2));
  const made = mutateAsync(lot('b', 5));
  const both = Promise.allSettled([changed, made]);
  await answered(400);
  expect(shown()).toEqual([
    ['a', 1],
    ['b', 5],
  ]);
  await answered(400);
  expect(shown()).toEqual([['a', 1]]);
  expect((await both).map((r) => r.status === 'rejected' && r.reason.message)).toEqual([
    'refused',
    'refused',
  ]);
});

it('leaves another object alone that was kept while a change was refused', async () => {
  household([lot('a', 1), lot('b', 1)]);
  const { mutate } = hook(() => useSave('lots'));
  mutate(lot('a', 2));
  mutate(lot('b', 2));
  await answered(400);
  await answered(204);
  expect(shown()).toEqual([
    ['a', 1],
    ['b', 2],
  ]);
});

it('shows the second of two quick changes whose first is refused', async () => {
  household([lot('a', 1)]);
  const { mutate } = hook(() => useSave('lots'));
  mutate(lot('a', 2));
  mutate(lot('a', 3));
  await answered(400);
  expect(shown()).toEqual([['a', 3]]);
  await answered(204);
  expect(shown()).toEqual([['a', 3]]);
});

it('shows the second of two quick changes to the same, though the first is refused', async () => {
  household([lot('a', 1)]);
  const { mutate } = hook(() => useSave('lots'));
  mutate(lot('a', 2));
  mutate(lot('a', 2));
  await answered(503);
  await answered(204);
  expect(shown()).toEqual([['a', 2]]);
});

it('goes back to what the server has when every change was refused', async () => {
  household([lot('a', 1)]);
  const { mutate } = hook(() => useSave('lots'));
  mutate(lot('a', 2));
  mutate(lot('a', 3));
  mutate(lot('a', 4));
  await answered(400);
  await answered(400);
  await answered(400);
  expect(shown()).toEqual([['a', 1]]);
});

it('goes back to the last kept of several changes', async () => {
  household([lot('a', 1)]);
  const { mutate } = hook(() => useSave('lots'));
  mutate(lot('a', 2));
  mutate(lot('a', 3));
  await answered(204);
  await answered(400);
  expect(shown()).toEqual([['a', 2]]);
});

it('does not bring back what was deleted while a change of it was refused', async () => {
  household([lot('a', 1)]);
  const save = hook(() => useSave('lots'));
  const { mutate } = hook(() => useRemove('lots'));
  save.mutate(lot('a', 2));
  await vi.waitFor(() => expect(asked).toHaveLength(1));
  mutate('a');
  await vi.waitFor(() => expect(asked).toHaveLength(2));
  asked[1]!.answer(204);
  await vi.waitFor(() => expect(shown()).toEqual([]));
  asked[0]!.answer(404);
  await new Promise((done) => setTimeout(done, 5));
  expect(shown()).toEqual([]);
});

it('leaves what another writer put in the place of a refused change', async () => {
  household([lot('a', 1)]);
  const { mutate } = hook(() => useSave('lots'));
  mutate(lot('a', 2));
  household([lot('a', 7)]);
  await answered(400);
  expect(shown()).toEqual([['a', 7]]);
});

it('deletes only after what waits on the page is saved', async () => {
  household([lot('a', 1)]);
  let saved = () => {};
  const gone = onSaveNow(
    () =>
      new Promise<void>((done) => {
        saved = done;
      }),
  );
  const { mutateAsync } = hook(() => useRemove('lots'));
  const deleted = mutateAsync('a');
  await waitedAMoment();
  expect(asked).toEqual([]);
  saved();
  await vi.waitFor(() => expect(asked).toHaveLength(1));
  asked[0]!.answer(204);
  await deleted;
  gone();
  expect(shown()).toEqual([]);
});

/** Timers and promises that were due have run. */
async function waitedAMoment() {
  for (let n = 0; n < 5; n++) await new Promise((done) => setTimeout(done));
}
