/** What is taken out of a household and brought in again is the same, to the byte. */
import { join } from 'node:path';
import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { householdFile } from '../../../src/household/exchange/household-file.ts';
import { planImport } from '../../../src/household/exchange/plan-import.ts';
import type { Entry } from '../../../src/household/exchange/read-household.ts';
import type { ImportMode } from '../../../src/household/exchange/wire.ts';
import { type Household, KINDS, type Kind } from '../../../src/household/model.ts';
import { type FileStore, openStore, type Store } from '../../../src/household/store.ts';
import { draws } from '../../draws.ts';
import { household } from '../arbitraries.ts';
import { demo, version } from '../demo-version.ts';
import { EMPTY } from '../empty-household.ts';
import { folderForEachTest } from '../folder-for-each-test.ts';

const folder = folderForEachTest();
const BY = { device: 'test', at: '2026-11-28T12:00:00.000Z' };

const opened: FileStore[] = [];
afterEach(async () => {
  for (const store of opened.splice(0)) await store.close();
});

function open(name = 'household.sqlite'): Store {
  const store = openStore(join(folder(), name));
  opened.push(store);
  return store;
}

const fileOf = (all: Household) => [...householdFile(recordsOf(all))].join('');

function recordsOf(all: Household): Entry[] {
  return KINDS.flatMap((kind: Kind) => all[kind].map((body) => ({ kind, id: body.id, body })));
}

async function taken(store: Store): Promise<string> {
  return [...householdFile(await store.everything())].join('');
}

async function bring(store: Store, text: string, mode: ImportMode = 'replace') {
  const here = (await store.everything()).flatMap((r): Entry[] =>
    r.body ? [{ kind: r.kind, id: r.id, body: r.body }] : [],
  );
  const plan = planImport(text, here, mode);
  if (!plan.ok) throw new Error(JSON.stringify(plan.faults));
  const { seq } = await store.newest();
  await store.bringIn(
    { put: plan.put, remove: plan.remove, ...(mode === 'replace' && { order: plan.entries }), seen: seq },
    BY,
  );
  return plan;
}

describe('taking out and bringing in', () => {
  it('gives the same bytes again, after a wipe and over any other household', async () => {
    const store = open();
    await fc.assert(
      fc.asyncProperty(household, fc.boolean(), async (all, wiped) => {
        const text = fileOf(all);
        if (wiped) await bring(store, fileOf(EMPTY));
        if (wiped) expect(await taken(store)).toBe(fileOf(EMPTY));
        await bring(store, text);
        expect(await taken(store)).toBe(text);
      }),
      { numRuns: draws(600, 40) },
    );
  });

  it('gives the same bytes on another machine', async () => {
    const [one, other] = [open('one.sqlite'), open('other.sqlite')];
    await one.putAll({ ...demo, versions: [version] });
    const text = await taken(one);
    await bring(other, text);
    expect(await taken(other)).toBe(text);
    expect(await other.household()).toEqual(await one.household());
  });

  it('keeps the order of the file where the household had another', async () => {
    const store = open();
    const [pellet] = demo.foods;
    const foods = ['a', 'b', 'c'].map((id) => ({ ...pellet!, id, name: id }));
    await store.putAll({ ...EMPTY, foods });
    const turned = fileOf({ ...EMPTY, foods: [...foods].reverse() });
    const before = await store.newest();
    await bring(store, turned);
    expect(await taken(store)).toBe(turned);
    // Pages that know the old order ask anew.
    expect((await store.newest()).epoch).not.toBe(before.epoch);
  });

  it('can be taken back as a whole', async () => {
    const store = open();
    await store.putAll({ ...demo, versions: [version] });
    const text = await taken(store);
    await bring(store, fileOf(EMPTY));
    const { changes } = await store.history({});
    await store.takeBack(changes[0]!.seq, BY);
    expect(await taken(store)).toBe(text);
  });

  it('writes nothing where the household changed since it was looked at', async () => {
    const store = open();
    await store.putAll(demo);
    const before = await taken(store);
    const { seq } = await store.newest();
    await expect(store.bringIn({ put: [], remove: recordsOf(demo), seen: seq - 1 }, BY)).rejects.toThrow(
      'changed since',
    );
    expect(await taken(store)).toBe(before);
  });

  it('adds and updates without taking anything away', async () => {
    const store = open();
    await store.putAll(demo);
    const [pellet] = demo.foods;
    const theirs = fileOf({
      ...EMPTY,
      foods: [
        { ...pellet!, name: 'Other pellet' },
        { ...pellet!, id: 'second' },
      ],
    });
    const added = await bring(store, theirs, 'add');
    expect(added.changes.map((c) => c.what)).toEqual(['kept', 'new']);
    expect((await store.household()).foods.map((f) => f.name)).toEqual([pellet!.name, pellet!.name]);
    const updated = await bring(store, theirs, 'update');
    expect(updated.changes).toEqual([
      {
        kind: 'foods',
        id: pellet!.id,
        name: 'Other pellet',
        what: 'different',
        fields: [{ field: '/name', before: `"${pellet!.name}"`, after: '"Other pellet"' }],
      },
    ]);
    expect((await store.household()).mixes).toEqual(demo.mixes);
  });
});
