/** One mix or food for another keeper: what leaves, what comes in, and what is asked of the sender's choices. */
import { describe, expect, it } from 'vitest';
import { foodPart, mixPart, partFile } from '../../../src/household/exchange/part-file.ts';
import { type Arrival, type Arriving, readPart } from '../../../src/household/exchange/read-part.ts';
import type { Household, Mix, OwnFood } from '../../../src/household/model.ts';
import { MARGIN } from '../../../src/household/reckon/mix/mix-edits.ts';
import { checkRecord } from '../../../src/household/shape/check-record.ts';
import { demo } from '../demo-version.ts';
import { EMPTY } from '../empty-household.ts';

const [pellet] = demo.foods;
const [plain] = demo.mixes;
if (!pellet || !plain) throw new Error('the demonstration lacks something');

const own: OwnFood = {
  ...pellet,
  id: 'own-seed',
  name: 'Own seed',
  kind: 'mix',
  group: 'seed',
  pricePerKg: 3,
};
const mix: Mix = {
  ...plain,
  problem: {
    ...plain.problem,
    foods: [
      ...plain.problem.foods.slice(0, 3),
      {
        id: own.id,
        name: own.name,
        composition: own.composition,
        sd: own.sd,
        price_per_kg: 3,
        on_hand_grams: 12,
      },
      { id: 'no', name: 'Never', ref: 'sr28:20038', refused: true },
    ],
    daily_grams: 12,
  },
  shares: { 'rolled-oats': 50, [own.id]: 50 },
  held: [own.id],
};
const sender: Household = { ...demo, foods: [pellet, own], mixes: [mix] };

const about = (here: Household, accepted: readonly string[] = []): Arriving => ({
  here,
  accepted: new Set(accepted),
  newId: (of) => `new-${of}`,
  now: '2026-11-28T12:00:00.000Z',
});

function arrives(text: string, here: Household = EMPTY, accepted: readonly string[] = []): Arrival {
  const reading = readPart(text, about(here, accepted));
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  for (const { kind, body } of reading.arrival.put) expect(checkRecord(kind, body)).toBeUndefined();
  return reading.arrival;
}

const mixIn = (arrival: Arrival) => arrival.put.find((e) => e.kind === 'mixes')?.body as Mix;

describe('a mix for another keeper', () => {
  const text = partFile(mixPart(sender, mix.id));

  it('leaves with its own foods and without animals, cupboard, prices and what one animal refuses', () => {
    for (const word of [
      'demo-animal',
      'Bramble',
      'price',
      'on_hand',
      'daily',
      'Never',
      'refused',
      'held',
      'updatedAt',
    ])
      expect(text).not.toContain(word);
    expect(JSON.parse(text).foods.map((f: OwnFood) => f.id)).toEqual([pellet.id, own.id]);
  });

  it('comes into an empty household as it left', () => {
    const arrival = arrives(text);
    expect(arrival.put.map((e) => [e.kind, e.id])).toEqual([
      ['foods', pellet.id],
      ['foods', own.id],
      ['mixes', mix.id],
    ]);
    expect(mixIn(arrival).shares).toEqual(mix.shares);
    expect(mixIn(arrival).animalIds).toEqual([]);
    expect(arrival.choices).toEqual([]);
    expect(arrival.notes.join(' ')).toContain('choices of whoever sent it');
  });

  it('takes what is here just so, and gives new ids where something else has them', () => {
    const here = {
      ...EMPTY,
      foods: [pellet, { ...own, name: 'Something else' }],
      mixes: [{ ...mix, animalIds: [] }],
    };
    const arrival = arrives(text, here);
    expect(arrival.same).toEqual([pellet.name]);
    expect(arrival.put.map((e) => e.id)).toEqual(['new-own-seed', `new-mix ${mix.id}`]);
    const { problem, shares } = mixIn(arrival);
    expect(problem.foods.map((f) => f.id)).toContain('new-own-seed');
    expect(problem.foods.map((f) => f.id)).not.toContain('own-seed');
    expect(shares).toEqual({ 'rolled-oats': 50, 'new-own-seed': 50 });
  });

  it('does not become tied to an own food that has the id of a food of the tables in it', () => {
    const here = { ...EMPTY, foods: [{ ...own, id: 'rolled-oats' }] };
    expect(mixIn(arrives(text, here)).problem.foods[0]).toMatchObject({
      id: 'new-ingredient rolled-oats',
      ref: 'sr28:08120',
    });
  });

  it('does not take over margin, limits, overrides and cautions unless each is taken over', () => {
    const bold = {
      ...mix,
      problem: {
        ...mix.problem,
        margin: 0.1,
        confidence: 0.5,
        cautions: 'report' as const,
        rules: mix.problem.rules.map((r) =>
          'nutrient' in r && r.nutrient === 'FAT' ? { ...r, max: 20 } : r,
        ),
        foods: mix.problem.foods.map((f) =>
          f.id === own.id
            ? { ...f, override: { caution: 'onion', note: 'mine eat it', on: '2026-01-01' } }
            : f,
        ),
      },
    };
    const bolder = partFile(mixPart({ ...sender, mixes: [bold] }, mix.id));
    const { choices } = arrives(bolder);
    expect(choices.map((c) => c.id)).toEqual([
      'margin',
      'confidence',
      'cautions',
      'limits',
      'override own-seed',
    ]);
    const fat = (m: Mix) => m.problem.rules.find((r) => 'nutrient' in r && r.nutrient === 'FAT')?.max;
    const safe = mixIn(arrives(bolder));
    expect(safe.problem).toMatchObject({ margin: MARGIN, confidence: 0, cautions: 'apply' });
    expect(fat(safe)).toBe(7);
    expect(safe.problem.foods.some((f) => f.override)).toBe(false);
    const taken = mixIn(
      arrives(
        bolder,
        EMPTY,
        choices.map((c) => c.id),
      ),
    );
    expect(taken.problem).toMatchObject({ margin: 0.1, confidence: 0.5, cautions: 'report' });
    expect(fat(taken)).toBe(20);
    expect(taken.problem.foods.find((f) => f.id === own.id)?.override?.note).toBe('mine eat it');
  });

  it('brings its own target along, without the sender’s confirmations', () => {
    const target = {
      id: 'mine',
      name: 'Mine',
      species: 'hamster',
      lifeStage: 'adult',
      fibre: 'none' as const,
      about: '',
      bounds: [
        {
          nutrient: 'FAT' as const,
          min: 4,
          basis: 'as fed' as const,
          source: 'a book',
          confirmed: { against: 'the book', on: '2026-01-01' },
        },
      ],
    };
    const rules = [
      {
        nutrient: 'FAT' as const,
        min: 4,
        on: 'ration' as const,
        source: 'a book; confirmed by the keeper against the book on 2026-01-01',
      },
    ];
    const sent = partFile(
      mixPart(
        {
          ...sender,
          profiles: [target],
          mixes: [{ ...mix, profileId: 'mine', problem: { ...mix.problem, rules } }],
        },
        mix.id,
      ),
    );
    expect(sent).not.toContain('confirmed');
    const arrival = arrives(sent, { ...EMPTY, profiles: [{ ...target, name: 'Another' }] });
    expect(arrival.put.map((e) => e.kind)).toEqual(['foods', 'foods', 'profiles', 'mixes']);
    expect(mixIn(arrival).profileId).toBe('new-mine');
    expect(arrival.choices).toEqual([]);
  });

  it('is refused where it names a target that nobody has, or a food that cannot be', () => {
    const wrong = (json: string) => {
      const reading = readPart(json, about(EMPTY));
      return reading.ok ? 'none' : reading.faults.map((f) => `${f.field} ${f.message}`).join();
    };
    expect(wrong(text.replaceAll(mix.profileId, 'nobody'))).toMatch(/\/mix\/profileId/);
    expect(wrong(partFile({ foods: [{ ...own, composition: { PROCNT: 90, FAT: 90 } }] }))).toMatch(
      /100 g cannot hold/,
    );
    expect(wrong(partFile({ foods: [own, own] }))).toMatch(/stands twice/);
    expect(wrong(partFile({ foods: [] }))).toMatch(/neither a mix nor a food/);
  });
});

describe('a food for another keeper', () => {
  it('leaves without its price and comes in once', () => {
    const text = partFile(foodPart(sender, own.id));
    const arrival = arrives(text);
    expect(arrival.put).toEqual([{ kind: 'foods', id: own.id, body: { ...own, pricePerKg: undefined } }]);
    const { pricePerKg: _price, ...bare } = own;
    expect(arrives(text, { ...EMPTY, foods: [bare] }).same).toEqual([own.name]);
  });
});
