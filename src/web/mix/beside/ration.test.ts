/** What is fed beside the mix: shares and grams in step with what the formulation reads, and the blend of it all. */
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Reference } from '../../../foods/reference.ts';
import { Formulation } from '../../../formulation/formulation.ts';
import { parseProblem } from '../../../formulation/problem/parse.ts';
import type { Beside } from '../../../formulation/problem/problem.ts';
import { loadHighs } from '../../../formulation/solve/highs.ts';
import { demoHousehold } from '../../../household/demo.ts';
import type { Mix } from '../../../household/model.ts';
import { loadReference } from '../../../household/reference-file.ts';
import { feedingOf } from '../../../kitchen/feeding/feeding.ts';
import { NUTRIENTS } from '../../../nutrition/nutrients.ts';
import {
  addBeside,
  besideBlend,
  besideTotal,
  blend,
  byGrams,
  byShare,
  compositionOf,
  countAirDry,
  countedPart,
  dailyOf,
  gramsOfShare,
  LEAST_MIX,
  leastDaily,
  rationWords,
  removeBeside,
  roomFor,
  shareNow,
  shareOfGrams,
  withChoice,
  withDaily,
} from './ration.ts';

const demo = demoHousehold();
const mix = demo.mixes[0]!;
const pellet = mix.problem.beside[0]!;
/** Raw cucumber with peel, SR28 11205. */
const cucumber: Beside = { id: 'cucumber', name: 'Cucumber', ref: 'sr28:11205', share_of_ration: 1 };
let reference: Reference;
const known = new Map<string, NonNullable<ReturnType<Reference['get']>>>();
const waterOf = (b: Beside) => compositionOf(b, known).WATER;
const shareOf = (m: Mix, id: string) => m.problem.beside.find((b) => b.id === id)?.share_of_ration;

const plain = (words: string) => words.replaceAll('\u00a0', ' ');

beforeAll(() => {
  reference = loadReference();
  known.set('sr28:11205', reference.get('sr28:11205')!);
});

describe('shares and grams', () => {
  it('are each other’s inverse', () => {
    const positive = fc.double({ min: 0.01, max: 1000, noNaN: true });
    fc.assert(
      fc.property(positive, positive, fc.double({ min: 0.01, max: 1, noNaN: true }), (grams, daily, part) => {
        expect(gramsOfShare(shareOfGrams(grams, daily, part), daily, part)).toBeCloseTo(grams, 6);
      }),
    );
  });

  it('grams of a fresh food are read as the formulation reads them', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        fc.double({ min: 6, max: 40, noNaN: true }),
        fc.boolean(),
        (grams, daily, airDry) => {
          const fed = addBeside(withDaily(byShare(mix, pellet.id, 1), daily, waterOf), cucumber);
          const given = byGrams(countAirDry(fed, 'cucumber', airDry, waterOf), 'cucumber', grams, waterOf);
          fc.pre(shareOf(given, 'cucumber')! < 99);
          const { problem } = parseProblem(JSON.parse(JSON.stringify(given.problem)), reference);
          expect(shareOf(given, 'cucumber')).toBeCloseTo(problem.beside[1]!.share_of_ration, 9);
        },
      ),
    );
  });

  it('follow the whole ration of a day: grams stay; without it, shares stay', () => {
    const given = byGrams(
      withDaily(addBeside(byShare(mix, pellet.id, 10), cucumber), 12, waterOf),
      pellet.id,
      3,
      waterOf,
    );
    expect(shareOf(given, pellet.id)).toBeCloseTo(25, 9);
    const more = withDaily(given, 15, waterOf);
    expect(shareOf(more, pellet.id)).toBeCloseTo(20, 9);
    expect(more.problem.beside[0]!.grams_a_day).toBe(3);
    expect(shareOf(more, 'cucumber')).toBe(1);
    const none = withDaily(more, undefined, waterOf);
    expect(none.problem.beside[0]).not.toHaveProperty('grams_a_day');
    expect(shareOf(none, pellet.id)).toBeCloseTo(20, 9);
    expect(() => parseProblem(JSON.parse(JSON.stringify(none.problem)), reference)).not.toThrow();
  });

  it('without a whole ration of a day, grams are not taken', () => {
    expect(byGrams(mix, pellet.id, 3, waterOf)).toBe(mix);
  });

  it('a fresh food counts as the dry matter it brings, at the water of dry food', () => {
    const water = 95.23;
    expect(waterOf(cucumber)).toBe(water);
    expect(countedPart({ counts_as: 'air dry' }, water)).toBeCloseTo((100 - water) / 90, 12);
    expect(countedPart({}, water)).toBe(1);
    expect(countedPart({ counts_as: 'air dry' }, undefined)).toBe(1);
  });

  it('a food drier than air-dry food counts as it is, on the screen as in the formulation and in the bowl', () => {
    const crisp: Beside = {
      id: 'crisp',
      name: 'Crisp bread',
      composition: { WATER: 4, PROCNT: 12 },
      share_of_ration: 20,
      grams_a_day: 2,
      counts_as: 'air dry',
    };
    expect(countedPart(crisp, 4)).toBe(1);
    const { problem } = parseProblem({ ...mix.problem, daily_grams: 10, beside: [crisp] }, reference);
    expect(problem.beside[0]!.share_of_ration).toBe(20);
    expect(besideBlend(problem, undefined, known)!.known).toMatchObject({ WATER: 4, PROCNT: 12 });
    const [ada] = feedingOf({
      problem,
      animals: [{ id: 'ada', name: 'Ada', dailyGrams: 10 }],
      grams: 100,
      from: '2026-03-14',
    }).animals;
    expect(ada!.beside[0]!.grams).toBeCloseTo(2, 12);
  });
});

describe('room', () => {
  it('whatever is fed within the room it is offered, the mix keeps its least part', () => {
    const percent = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(3), percent), { maxLength: 12 }), (steps) => {
        let m = byShare(mix, pellet.id, 0);
        for (const [i, part] of steps) {
          const id = i === 0 ? pellet.id : `food-${i}`;
          m = addBeside(m, { id, composition: {}, share_of_ration: 0 });
          m = byShare(m, id, part * roomFor(m.problem, id));
          expect(besideTotal(m.problem, undefined)).toBeLessThanOrEqual(100 - LEAST_MIX + 1e-9);
        }
      }),
    );
  });

  it('the least whole ration leaves the mix exactly its least part', () => {
    const given = byGrams(
      withDaily(addBeside(byShare(mix, pellet.id, 40), { ...cucumber, counts_as: 'air dry' }), 12, waterOf),
      'cucumber',
      5,
      waterOf,
    );
    const least = leastDaily(given.problem, waterOf);
    expect(besideTotal(withDaily(given, least, waterOf).problem, undefined)).toBeCloseTo(100 - LEAST_MIX, 9);
    expect(leastDaily(mix.problem, waterOf)).toBe(0);
  });

  it('nothing is fed twice, and what is taken out is gone', () => {
    const twice = addBeside(addBeside(mix, cucumber), { ...cucumber, share_of_ration: 9 });
    expect(twice.problem.beside.map((b) => b.share_of_ration)).toEqual([50, 1]);
    expect(addBeside(mix, { ...cucumber, id: mix.problem.foods[0]!.id })).toBe(mix);
    expect(removeBeside(twice, pellet.id).problem.beside.map((b) => b.id)).toEqual(['cucumber']);
  });
});

describe('a chosen share', () => {
  const chosen = withChoice(mix, pellet.id, 40, 60);

  it('is the program’s, and the written one before it has answered or where none is open', () => {
    const answer = { beside: { [pellet.id]: { share: 44.5 } } };
    expect(shareNow(chosen.problem.beside[0]!, answer)).toBe(44.5);
    expect(shareNow(chosen.problem.beside[0]!, undefined)).toBe(50);
    expect(shareNow(pellet, answer)).toBe(50);
    expect(plain(rationWords(chosen.problem, answer, () => 'pellet'))).toBe('44.5 % pellet and 55.5 % mix');
    const two = addBeside(chosen, cucumber).problem;
    expect(plain(rationWords(two, answer, (b) => b.name ?? b.id))).toBe(
      '44.5 % Invented pellet; 1 % Cucumber; and 54.5 % mix',
    );
    expect(rationWords({ beside: [] }, undefined, () => '')).toBe('mix only');
  });

  it('loses its bounds with both of them', () => {
    const fixed = withChoice(chosen, pellet.id, undefined, undefined).problem.beside[0]!;
    expect(fixed).toEqual(pellet);
  });
});

describe('the blend of all that is fed beside', () => {
  const amount = fc.option(fc.double({ min: 0, max: 40, noNaN: true }), { nil: undefined });
  const part = fc.record({
    weight: fc.double({ min: 0.1, max: 50, noNaN: true }),
    composition: fc.record({ PROCNT: amount, CA: amount }),
  });

  it('knows an amount where every part knows it, and then lies between them; else only its least', () => {
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 5 }), (parts) => {
        const { known, least } = blend(parts)!;
        for (const tag of ['PROCNT', 'CA'] as const) {
          const values = parts.flatMap((p) => p.composition[tag] ?? []);
          if (values.length === parts.length) {
            expect(known[tag]).toBeGreaterThanOrEqual(Math.min(...values) - 1e-9);
            expect(known[tag]).toBeLessThanOrEqual(Math.max(...values) + 1e-9);
            expect(least).not.toHaveProperty(tag);
          } else {
            expect(known).not.toHaveProperty(tag);
            expect(least[tag] ?? 0).toBeLessThanOrEqual(Math.max(0, ...values) + 1e-9);
          }
        }
      }),
    );
  });

  it('takes crude fibre for the least of dietary fibre, and a label’s least for what it is', () => {
    const { known, least } = blend([
      { weight: 1, composition: { FIBC: 9 }, low: { PROCNT: 16 } },
      { weight: 1, composition: { FIBTG: 3, PROCNT: 10 } },
    ])!;
    expect(known).toEqual({});
    expect(least).toEqual({ FIBTG: 6, FIBC: 4.5, PROCNT: 13 });
  });

  it('of nothing is nothing; of one food it is that food, whatever its share', () => {
    expect(blend([{ weight: 0, composition: { FAT: 1 } }])).toBeUndefined();
    const none = byShare(mix, pellet.id, 0);
    expect(besideBlend(none.problem, undefined, known)!.known).toEqual(pellet.composition);
  });
});

describe('against the formulation', () => {
  let formulation: Formulation;
  afterAll(() => formulation?.dispose());

  it('the blend is what the ration holds beyond the mix, fresh food and a chosen share included', async () => {
    const fed = addBeside(withDaily(mix, 12, waterOf), { ...cucumber, counts_as: 'air dry' });
    const given = withChoice(byGrams(fed, 'cucumber', 6, waterOf), pellet.id, 30, 60);
    const { problem } = parseProblem(JSON.parse(JSON.stringify(given.problem)), reference);
    formulation = new Formulation(problem, { reference, highs: await loadHighs() });
    const at = formulation.evaluate(mix.shares);
    const part = besideTotal(given.problem, at) / 100;
    const { known: whole } = besideBlend(given.problem, at, known)!;
    const compared = NUTRIENTS.filter(({ tag }) => whole[tag] !== undefined && at.nutrients[tag]);
    expect(compared.map((n) => n.tag)).toContain('CA');
    for (const { tag } of compared) {
      const { mix: own, ration } = at.nutrients[tag]!;
      expect(whole[tag]).toBeCloseTo((ration - (1 - part) * own) / part, 6);
    }
  });
});

describe('what the animals are fed a day', () => {
  const animals = [
    { id: 'a', name: 'Bramble', dailyGrams: 12 },
    { id: 'b', name: 'Hazel', dailyGrams: 7 },
    { id: 'c', name: 'Sorrel' },
  ];
  it('is summed and averaged over those of the mix for which it is said', () => {
    expect(dailyOf(animals, ['a', 'b', 'c'])).toEqual({ names: ['Bramble', 'Hazel'], sum: 19, mean: 9.5 });
    expect(dailyOf(animals, ['c'])).toBeUndefined();
  });
});
