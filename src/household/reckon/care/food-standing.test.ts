/** How foods stand with animals, under every id they have, and what batches hold that upset one. */
import { describe, expect, it } from 'vitest';
import type { Seen, Trial } from '../../../care/model.ts';
import type { Batch } from '../../../kitchen/model.ts';
import { demoHousehold } from '../../demo.ts';
import type { Animal, Household, Mix, OwnFood } from '../../model.ts';
import { foodStanding, neverTried, noTrialOf, upsetInBatch } from './food-standing.ts';

const demo = demoHousehold();
const [mix] = demo.mixes as [Mix];
const [bramble] = demo.animals as [Animal];
const hazel: Animal = { ...bramble, id: 'hazel', name: 'Hazel' };
const millet = mix.problem.foods.find((f) => f.id === 'millet')!;
const REF = millet.ref!;

const trial = (food: string, name: string, ...seen: Seen[]): Trial => ({
  id: `trial-${food}`,
  animalId: bramble.id,
  food,
  name,
  days: ['2026-03-01'],
  offerings: seen.map((s, k) => ({ on: `2026-03-${String(k + 1).padStart(2, '0')}`, seen: s })),
  endedOn: '2026-03-20',
});
const house = (more: Partial<Household>): Household => ({ ...demo, animals: [bramble, hazel], ...more });
const own = (id: string, name: string, ref?: string): OwnFood => ({
  id,
  name,
  kind: 'mix',
  composition: {},
  sd: {},
  source: 'label',
  invented: true,
  ...(ref && {
    evidence: { sources: [{ id: 's', name: 'table', ref, basis: 'as fed', composition: {}, sd: {} }] },
  }),
});
const batch = (more: Partial<Batch> = {}): Batch => ({
  id: 'b',
  mixId: mix.id,
  name: 'Batch',
  problem: mix.problem,
  shares: mix.shares,
  order: [],
  grams: 300,
  pours: [{ food: 'millet', grams: 20, target: 20, at: '2026-03-01T10:00:00Z', lots: [] }],
  animalIds: [bramble.id],
  startedAt: '2026-03-01T09:00:00Z',
  finishedAt: '2026-03-01T11:00:00Z',
  ...more,
});

describe('a food', () => {
  it.each([
    ['liked', ['eaten', 'first', 'eaten']],
    ['refused', ['left', 'left', 'left']],
    ['upset', ['eaten', 'eaten', 'eaten', 'upset']],
    ['known', ['eaten', 'left']],
    ['untried', ['left']],
    ['untried', ['hoarded', 'hoarded']],
  ] as const)('is %s after %j', (is, seen) => {
    const all = house({ trials: [trial(REF, 'Millet', ...seen)] });
    expect(foodStanding(all, bramble, { id: 'millet' }).is).toBe(is);
    expect(foodStanding(all, bramble, { id: REF }).is).toBe(is);
    expect(foodStanding(all, hazel, { id: 'millet' }).is).toBe('untried');
  });

  it('is known by a finished batch, or because the keeper says so, and then refused all the same', () => {
    expect(foodStanding(house({ batches: [batch()] }), bramble, { id: REF })).toMatchObject({
      is: 'known',
      by: 'batch',
    });
    expect(foodStanding(house({ batches: [batch()] }), hazel, { id: REF }).is).toBe('untried');
    expect(foodStanding(house({ batches: [batch({ finishedAt: undefined })] }), bramble, millet).is).toBe(
      'untried',
    );
    expect(foodStanding(house({ batches: [batch()] }), bramble, { id: 'rolled-oats' }).is).toBe('untried');
    const knowing = { ...bramble, knows: [REF] };
    expect(foodStanding(house({}), knowing, { id: 'millet' })).toMatchObject({ is: 'known', by: 'said' });
    const refusing = { ...knowing, refuses: ['millet'] };
    expect(
      foodStanding(house({ animals: [refusing], batches: [batch()] }), refusing, { id: REF }),
    ).toMatchObject({ is: 'refused', by: 'list' });
  });

  it('is the same under the name and in the own food made of it', () => {
    const foods = [...demo.foods, own('mine', 'My millet', REF), own('again', 'MILLET'), own('oat', 'Oats')];
    const all = house({ foods, trials: [trial('millet', 'Millet', 'left', 'left', 'left')] });
    expect(foodStanding(all, bramble, { id: 'again' }).is).toBe('refused');
    expect(foodStanding(all, bramble, { id: 'sr28-20031', ref: REF }).is).toBe('refused');
    expect(foodStanding(all, bramble, { id: 'oat' }).is).toBe('untried');
    // Called otherwise it may be another form of it: refused it is only as it was tried, but upsetting in every form.
    expect(foodStanding(all, bramble, { id: 'mine' }).is).toBe('untried');
    const upset = house({ foods, trials: [trial('millet', 'Millet', 'upset')] });
    expect(foodStanding(upset, bramble, { id: 'mine' }).is).toBe('upset');
  });

  it('upsets dried and fresh alike', () => {
    const all = house({ trials: [trial('sr28:11124', 'Carrot', 'upset')] });
    expect(foodStanding(all, bramble, { id: 'carrot-dried' }).is).toBe('upset');
    const refused = house({ trials: [trial('sr28:11124', 'Carrot', 'left', 'left', 'left')] });
    expect(foodStanding(refused, bramble, { id: 'carrot-dried' }).is).toBe('untried');
  });
});

describe('what of a mix is new', () => {
  it('is told by animal, with what is being tried, without what is out or known', () => {
    const running = { ...trial(REF, 'Millet'), endedOn: undefined };
    const left = trial('sr28:11683', 'Carrot, dried', 'left');
    const all = house({ trials: [running, left], animals: [bramble, { ...hazel, knows: ['millet'] }] });
    const told = neverTried(all, { ...mix, animalIds: [bramble.id, hazel.id] });
    expect(told.map((t) => t.animal.name)).toEqual(['Bramble', 'Hazel']);
    expect(told[0]?.foods.find((f) => f.food.id === 'millet')).toMatchObject({ trying: true });
    expect(told[0]?.foods.some((f) => f.food.id === 'carrot-dried')).toBe(false);
    expect(told[1]?.foods.some((f) => f.food.id === 'millet')).toBe(false);
    expect(told[1]?.foods.some((f) => f.food.id === 'carrot-dried')).toBe(true);
    const out = mix.problem.foods.map((f) => ({ ...f, refused: true }));
    expect(neverTried(all, { animalIds: [bramble.id], problem: { ...mix.problem, foods: out } })).toEqual([]);
    const gone = { ...bramble, gone: { how: 'died', on: '2026-03-01' } } as const;
    expect(neverTried(house({ animals: [gone] }), { ...mix, animalIds: [gone.id] })).toEqual([]);
  });
});

describe('a batch with a food that upset an animal', () => {
  const trials = [trial(REF, 'Millet', 'upset')];
  it('is told of, its own animal or not, poured or still to come', () => {
    expect(upsetInBatch(house({ trials }), batch())).toMatchObject([
      { food: 'millet', animal: { name: 'Bramble' }, own: true, trial: `trial-${REF}` },
    ]);
    expect(upsetInBatch(house({ trials }), batch({ animalIds: ['hazel'] }))).toMatchObject([{ own: false }]);
    expect(upsetInBatch(house({ trials }), batch({ pours: [] }))).toEqual([]);
    const coming = batch({ pours: [], finishedAt: undefined, shares: { millet: 10 } });
    expect(upsetInBatch(house({ trials }), coming)).toHaveLength(1);
  });
  it('is let be for the others where the keeper went ahead', () => {
    const lifted = [{ ...trials[0]!, others: { note: 'They eat it.', on: '2026-03-02' } }];
    expect(upsetInBatch(house({ trials: lifted }), batch({ animalIds: ['hazel'] }))).toEqual([]);
    expect(upsetInBatch(house({ trials: lifted }), batch())).toHaveLength(1);
  });
});

describe('a new trial', () => {
  it('waits until the one that runs has ended, and never begins with what upset it', () => {
    const running = { ...trial(REF, 'Millet', 'left'), endedOn: undefined };
    expect(noTrialOf(house({ trials: [running] }), bramble, { id: 'carrot-dried' })).toMatchObject({
      why: 'running',
      trial: { id: running.id },
    });
    expect(noTrialOf(house({ trials: [running] }), hazel)).toBeUndefined();
    const upset = house({ trials: [trial(REF, 'Millet', 'upset')] });
    expect(noTrialOf(upset, bramble, { id: 'millet' })).toMatchObject({ why: 'upset' });
    expect(noTrialOf(upset, bramble, { id: 'carrot-dried' })).toBeUndefined();
    expect(noTrialOf(house({}), { ...bramble, gone: { how: 'died', on: '2026-03-01' } })).toEqual({
      why: 'gone',
    });
  });
});
