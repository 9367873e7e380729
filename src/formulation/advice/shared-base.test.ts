/** One base for several animals: every mix keeps its animal's rules, and nothing is weighed that need not be. */
import fc from 'fast-check';
import GLPK from 'glpk.js/node';
import { describe, expect, it, test } from 'vitest';
import { crudeAmount } from '../../../test/formulation/crude-amount.ts';
import { eater } from '../../../test/formulation/eaters.ts';
import { plainRows } from '../../../test/formulation/oracle.ts';
import { problemOf } from '../../../test/formulation/problem-of.ts';
import { type DrawnProblem, fullyKnown, randomFrom } from '../../../test/formulation/problems.ts';
import { loadReference } from '../../household/reference-file.ts';
import type { Tag } from '../../nutrition/nutrients.ts';
import { Formulation } from '../formulation.ts';
import { type Eater, forAnimals } from '../problem/for-animals.ts';
import type { Ingredient, NutrientRule, Problem, Rule } from '../problem/problem.ts';
import { loadHighs } from '../solve/highs.ts';
import { type NotShared, type SharedMix, shareMix } from './shared-base.ts';

const reference = loadReference();
const highs = await loadHighs();
const glpk = await GLPK();

const share = (problem: Problem, eaters: readonly Eater[]) => shareMix(problem, eaters, { reference, highs });

function shared(problem: Problem, eaters: readonly Eater[]): SharedMix {
  const answer = share(problem, eaters);
  if (answer.status !== 'shared') throw new Error(answer.sentence);
  return answer;
}

function notShared(problem: Problem, eaters: readonly Eater[]): NotShared {
  const answer = share(problem, eaters);
  if (answer.status !== 'none') throw new Error(answer.sentence);
  return answer;
}

const posed = (foods: readonly Ingredient[], more: Partial<Problem> = {}) => problemOf({ foods, ...more });

/** A food with so much fat and no more known of it. */
const fatty = (id: string, fat: number, more: Partial<Ingredient> = {}): Ingredient => ({
  id,
  name: id,
  composition: { FAT: fat },
  ...more,
});
const fat = (bounds: { min?: number; max?: number }): NutrientRule => ({ nutrient: 'FAT', ...bounds });

const SUNFLOWER = fatty('sunflower', 50);
const OATS = fatty('oats', 7);
const MILLET = fatty('millet', 4);

describe('worked out by hand', () => {
  const bramble = eater('Bramble', { refuses: ['sunflower'], rules: [fat({ max: 6 })] });
  const clover = eater('Clover', { rules: [fat({ min: 10 })] });

  it('one refuses the only fat seed: it is added for the other, to the fattest base the first may have', () => {
    const answer = shared(posed([SUNFLOWER, OATS, MILLET]), [bramble, clover]);
    // Base at 6 % fat: 7 o + 4 (1 - o) = 6. Then (600 + 50 s) / (100 + s) = 10.
    expect(answer.base.oats).toBeCloseTo(200 / 3, 5);
    expect(answer.base.millet).toBeCloseTo(100 / 3, 5);
    expect(answer.base.sunflower).toBe(0);
    expect(answer.animals[0]).toMatchObject({ id: 'bramble', name: 'Bramble', additions: {} });
    expect(answer.animals[1]!.additions).toEqual({ sunflower: expect.closeTo(10, 5) });
    expect(answer.animals[1]!.shares.sunflower).toBeCloseTo(1000 / 110, 5);
    expect(answer).toMatchObject({ weighings: 1, one_mix: null, unverified: [], proved: true, notes: [] });
    expect(answer.weight).toBeCloseTo(10, 5);
    expect(answer.sentence).toMatch(
      /^Sharing one base costs .*; on 100 g of it Clover gets 10 g of sunflower\.$/,
    );
  });

  it('a rule that only one profile brought to the problem does not bind the other', () => {
    const answer = shared(posed([SUNFLOWER, OATS, MILLET], { rules: [fat({ max: 6 })] }), [bramble, clover]);
    expect(answer.weight).toBeCloseTo(10, 5);
    // A rule of no profile binds all, and then Clover has no mix.
    const tight = posed([SUNFLOWER, OATS, MILLET], { rules: [fat({ max: 6.5 })] });
    expect(notShared(tight, [bramble, clover]).without_mix.map((a) => a.id)).toEqual(['clover']);
  });

  it('who has no mix even alone is named, with the rules that collide', () => {
    const needy = { ...bramble, rules: [fat({ min: 10 })] };
    const answer = notShared(posed([SUNFLOWER, OATS, MILLET]), [needy, clover]);
    expect(answer.without_mix).toEqual([
      {
        id: 'bramble',
        name: 'Bramble',
        verdict: expect.stringContaining('fat of the mix must be at least 10 %'),
      },
    ]);
    expect(answer.sentence).toContain('Bramble has no mix even alone.');
    const none = notShared(posed([OATS]), [eater('Moss', { refuses: ['oats'] }), clover]);
    expect(none.without_mix.map((a) => a.name)).toEqual(['Moss', 'Clover']);
    expect(none.without_mix[0]!.verdict).toMatch(/^Every food is refused/);
  });

  it('without a food that all eat there is no base, though each has a mix', () => {
    const answer = notShared(posed([OATS, MILLET]), [
      eater('Bramble', { refuses: ['oats'] }),
      eater('Clover', { refuses: ['millet'] }),
    ]);
    expect(answer.without_mix).toEqual([]);
    expect(answer.sentence).toBe(
      'There is no food that Bramble and Clover may all eat; each has a mix of its own.',
    );
  });

  it('the least share of a food that one refuses is added for the other; the one mix leaves it out', () => {
    const answer = shared(posed([{ ...OATS, min: 20 }, MILLET]), [
      eater('Bramble', { refuses: ['oats'] }),
      eater('Clover'),
    ]);
    expect(answer.animals[1]!.additions).toEqual({ oats: expect.closeTo(25, 5) });
    expect(answer).toMatchObject({ weighings: 1, one_mix: { oats: 0, millet: 100 }, unverified: [] });
  });

  it('additions never outweigh the base', () => {
    const rules = (min: number): Rule[] => [{ food: 'oats', min }];
    const millet = eater('Bramble', { refuses: ['oats'] });
    const half = shared(posed([OATS, MILLET]), [millet, eater('Clover', { rules: rules(50) })]);
    expect(half.animals[1]!.additions.oats).toBeCloseTo(100, 5);
    const answer = notShared(posed([OATS, MILLET]), [millet, eater('Clover', { rules: rules(51) })]);
    expect(answer.without_mix).toEqual([]);
    expect(answer.sentence).toContain('No base can be made to suit Bramble and Clover');
  });

  it('says what sharing costs: wanted shares, money, or nothing', () => {
    const foods = [
      { ...OATS, want: 50, price_per_kg: 2 },
      { ...MILLET, want: 50, price_per_kg: 1 },
    ];
    const eaters = [eater('Bramble', { refuses: ['millet'] }), eater('Clover')];
    const nearest = shared(posed(foods), eaters);
    expect(nearest.animals.map((a) => a.cost.further)).toEqual([expect.closeTo(0, 6), expect.closeTo(50, 6)]);
    expect(nearest.animals.map((a) => a.cost.different)).toEqual([
      expect.closeTo(0, 6),
      expect.closeTo(50, 6),
    ]);
    expect(nearest.sentence).toBe(
      'Sharing one mix costs Clover 50 % of the wanted shares; nothing has to be weighed apart.',
    );
    expect(nearest).toMatchObject({ weighings: 0, weight: 0, one_mix: nearest.base });
    const cheapest = shared(posed(foods, { objective: 'cheapest' }), eaters);
    expect(cheapest.animals.map((a) => a.cost.dearer)).toEqual([expect.closeTo(0, 6), expect.closeTo(1, 6)]);
    expect(cheapest.sentence).toBe(
      'Sharing one mix costs Clover 1 more per kg; nothing has to be weighed apart.',
    );
    const unpriced = shared(posed([foods[0]!, { ...MILLET, want: 50 }], { objective: 'cheapest' }), eaters);
    expect(unpriced.animals[1]!.cost).not.toHaveProperty('dearer');
    expect(shared(posed(foods), [eaters[1]!, { ...eaters[1]!, id: 'moss', name: 'Moss' }]).sentence).toBe(
      'Sharing one mix costs no animal anything; nothing has to be weighed apart.',
    );
  });

  it('the base is nearest to the wanted shares, or cheapest, where the additions leave a choice', () => {
    // Any base of oats and millet will do for Bramble; Clover needs 2 % of sunflower whatever the base.
    const foods = [
      SUNFLOWER,
      { ...OATS, want: 80, price_per_kg: 2 },
      { ...MILLET, want: 20, price_per_kg: 1 },
    ];
    const eaters = [
      eater('Bramble', { refuses: ['sunflower'] }),
      eater('Clover', { rules: [{ food: 'sunflower', min: 2 }] }),
    ];
    const near = shared(posed(foods), eaters);
    expect([near.base.oats, near.base.millet]).toEqual([expect.closeTo(80, 5), expect.closeTo(20, 5)]);
    expect(near.weight).toBeCloseTo(200 / 98, 5);
    expect(shared(posed(foods, { objective: 'cheapest' }), eaters).base.millet).toBeCloseTo(100, 5);
    expect(shared(posed(foods, { objective: 'varied' }), eaters).base.millet).toBeCloseTo(50, 5);
  });

  it('cautions hold for each by its own species', () => {
    const raisins: Ingredient = { id: 'raisins', ref: 'sr28:09298' };
    const onion: Ingredient = { id: 'onion', ref: 'sr28:11284', want: 50 };
    const problem = posed([OATS, raisins, onion], { cautions: 'apply' });
    const dwarf = eater('Bramble', { species: 'dwarf hamster' });
    const golden = eater('Clover', { species: 'golden hamster', rules: [{ food: 'raisins', min: 1 }] });
    const answer = shared(problem, [dwarf, golden]);
    const cap = answer.animals[0]!.shares.raisins!;
    expect(cap).toBeLessThan(1);
    // (cap + s) / (100 + s) = 1 %
    expect(answer.animals[1]!.additions).toEqual({ raisins: expect.closeTo((100 * (1 - cap)) / 99, 5) });
    for (const { shares } of answer.animals) expect(shares.onion).toBe(0);
  });

  it('a confidence is not sought with additions, and what it misses is said', () => {
    const sd = { FAT: 1 };
    const foods = [fatty('sunflower', 50, { sd }), fatty('oats', 7, { sd }), fatty('millet', 4, { sd })];
    const sure = shared(posed(foods, { confidence: 0.9 }), [bramble, clover]);
    expect(sure.unverified.length).toBeGreaterThan(0);
    expect(sure.unverified.join(' ')).toMatch(
      /For Clover: Fat of the mix is .*, below the least allowed, 10 %\./,
    );
    expect(shared(posed(foods), [bramble, clover]).unverified).toEqual([]);
  });

  it('neither is the least share of a food that is used', () => {
    const used = { ...SUNFLOWER, if_used: 20 };
    const answer = shared(posed([used, OATS, MILLET]), [bramble, clover]);
    expect(answer.weight).toBeCloseTo(10, 5);
    expect(answer.unverified).toEqual([expect.stringMatching(/^For Clover: .*sunflower.* 20 %\.$/)]);
  });

  it('where the search grows too long it still answers, says that fewer may do, and answers the same again', () => {
    const { problem, eaters } = draw(HARD, 20);
    const answer = shared(problem, eaters);
    expect(answer).toMatchObject({ proved: false, unverified: [] });
    expect(answer.notes).toEqual([expect.stringContaining('the search was ended before that was settled')]);
    expect(answer.weighings).toBeGreaterThan(0);
    expectMixes({ problem, eaters }, answer, 'hard');
    expect(shared(problem, eaters)).toEqual(answer);
  });

  it('without animals is bad input', () => {
    expect(() => share(posed([OATS]), [])).toThrow(RangeError);
  });
});

const pool = fullyKnown(reference);
const TAGS: readonly Tag[] = ['PROCNT', 'FAT', 'FIBTG', 'CA'];
/** A draw of many foods whose search is not over within its limit. */
const HARD = 265;

interface Drawn {
  readonly problem: Problem & DrawnProblem;
  readonly eaters: readonly Eater[];
}

/**
 * 6 to 9 foods of the tables, two or three animals, each with windows around what some mix of its own holds. Of eight
 * draws one asks more of everything than that, and one has few foods and picky animals.
 * @param further so many foods more
 */
function draw(seed: number, further = 0): Drawn {
  const random = randomFrom(seed);
  const [more, picky] = [seed % 8 === 0 ? 1.3 : 1, seed % 8 === 1];
  const pick = <T>(list: readonly T[]) => list[Math.floor(random() * list.length)]!;
  const chosen = [
    ...new Set(
      Array.from({ length: (picky ? 3 : 6) + further + Math.floor(4 * random()) }, () => pick(pool)),
    ),
  ];
  const foods = chosen.map((f, i) => ({
    id: `f${i}`,
    ref: f.ref,
    group: i % 2 === 0 ? 'seed' : 'herb',
    ...(random() < 0.2 ? { max: 30 + Math.round(40 * random()) } : {}),
    ...(random() < 0.1 ? { min: 1 + Math.round(3 * random()) } : {}),
    ...(random() < 0.3 ? { want: Math.round(30 * random()) } : {}),
  }));
  const pellet = random() < 0.5 ? [{ id: 'pellet', ref: pick(pool).ref, share_of_ration: 40 }] : [];
  const on = pellet.length > 0 ? 'ration' : 'mix';
  const beside = (tag: Tag) =>
    pellet.reduce((sum, p) => sum + 0.4 * crudeAmount(reference.get(p.ref)!, tag)!, 0);
  const eaters = Array.from({ length: 2 + Math.floor(2 * random()) }, (_, k): Eater => {
    const refuses = foods.flatMap((f) => (random() < (picky ? 0.35 : 0.15) ? [f.id] : []));
    const weights = foods.map((f) => (refuses.includes(f.id) ? 0 : 0.2 + random()));
    const total = weights.reduce((a, b) => a + b, 0);
    const rules = TAGS.filter(() => random() < 0.6).map((nutrient): Rule => {
      const mix = weights.reduce((sum, w, i) => sum + (w / total) * chosen[i]!.composition[nutrient]!, 0);
      const content = more * (pellet.length > 0 ? 0.6 * mix + beside(nutrient) : mix);
      const width = 0.05 + 0.25 * random();
      const max = content * (1 + width);
      return { nutrient, on, min: content * (1 - width), ...(max < 100 && { max }) };
    });
    return { id: `e${k}`, name: `Animal ${k}`, refuses, rules };
  });
  const problem = {
    ...posed(foods, { beside: pellet, rules: [{ group: 'seed', min: 15, max: 85, on: 'mix' }] }),
    foods,
    rules: [{ group: 'seed', min: 15, max: 85, on: 'mix' } as Rule],
    beside: pellet,
  };
  return { problem, eaters };
}

interface PlainProgram {
  readonly cost: Readonly<Record<string, number>>;
  readonly rows: readonly {
    readonly vars: Readonly<Record<string, number>>;
    readonly min: number;
    readonly max: number;
  }[];
  readonly whole: readonly string[];
}

/** The words of the task once more, for GLPK: what a base and additions are, and what every mix must keep. */
function program(
  { problem, eaters }: Drawn,
  goal: 'number' | 'weight',
  most = Number.POSITIVE_INFINITY,
): PlainProgram {
  const rows: { vars: Record<string, number>; min: number; max: number }[] = [];
  const infinity = Number.POSITIVE_INFINITY;
  const eaten = problem.foods.filter((f) => eaters.every((e) => !e.refuses.includes(f.id)));
  rows.push({ vars: Object.fromEntries(eaten.map((f) => [`b ${f.id}`, 1])), min: 100, max: 100 });
  const flags: string[] = [];
  const added: string[] = [];
  for (const e of eaters) {
    const foods = problem.foods.filter((f) => !e.refuses.includes(f.id));
    /** Sum over what the animal eats of so much per gram. */
    const sum = (of: (i: number) => number) => {
      const vars: Record<string, number> = {};
      foods.forEach((f, i) => {
        vars[`a ${e.id} ${f.id}`] = of(i);
        if (eaten.includes(f)) vars[`b ${f.id}`] = of(i);
      });
      return vars;
    };
    const [, ...plain] = plainRows({ ...problem, foods, rules: [...problem.rules, ...e.rules] }, reference);
    for (const row of plain) {
      if (Number.isFinite(row.min))
        rows.push({ vars: sum((i) => row.a[i]! - row.min / 100), min: 0, max: infinity });
      if (Number.isFinite(row.max))
        rows.push({ vars: sum((i) => row.max / 100 - row.a[i]!), min: 0, max: infinity });
    }
    foods.forEach((f, at) => {
      if (f.min !== undefined)
        rows.push({ vars: sum((i) => (i === at ? 1 : 0) - f.min! / 100), min: 0, max: infinity });
      if (f.max !== undefined)
        rows.push({ vars: sum((i) => f.max! / 100 - (i === at ? 1 : 0)), min: 0, max: infinity });
      const [a, z] = [`a ${e.id} ${f.id}`, `z ${e.id} ${f.id}`];
      added.push(a);
      flags.push(z);
      rows.push({ vars: { [a]: -1, [z]: 100 }, min: 0, max: infinity });
    });
    rows.push({
      vars: Object.fromEntries(foods.map((f) => [`a ${e.id} ${f.id}`, 1])),
      min: Number.NEGATIVE_INFINITY,
      max: 100,
    });
  }
  if (Number.isFinite(most))
    rows.push({
      vars: Object.fromEntries(flags.map((z) => [z, 1])),
      min: Number.NEGATIVE_INFINITY,
      max: most,
    });
  const cost = Object.fromEntries((goal === 'number' ? flags : added).map((name) => [name, 1]));
  return { cost, rows, whole: flags };
}

/** Least cost by GLPK; undefined where nothing fits. */
async function least({ cost, rows, whole }: PlainProgram): Promise<number | undefined> {
  const bounds = (min: number, max: number) =>
    min === max
      ? { type: glpk.GLP_FX, lb: min, ub: max }
      : Number.isFinite(min)
        ? { type: glpk.GLP_LO, lb: min, ub: 0 }
        : { type: glpk.GLP_UP, lb: 0, ub: max };
  const kept = rows.filter((r) => Object.keys(r.vars).length > 0);
  if (kept.length < rows.length && rows.some((r) => Object.keys(r.vars).length === 0 && r.min > 0))
    return undefined;
  const { result } = await glpk.solve(
    {
      name: 'share',
      objective: {
        direction: glpk.GLP_MIN,
        name: 'cost',
        vars: Object.entries(cost).map(([name, coef]) => ({ name, coef })),
      },
      subjectTo: kept.map((row, r) => {
        const scale = Math.max(...Object.values(row.vars).map(Math.abs)) || 1;
        return {
          name: `r${r}`,
          vars: Object.entries(row.vars).map(([name, coef]) => ({ name, coef: coef / scale })),
          bnds: bounds(row.min / scale, row.max / scale),
        };
      }),
      binaries: [...whole],
    },
    { msglev: glpk.GLP_MSG_OFF, presol: true, tmlim: 20 },
  );
  return result.status === glpk.GLP_OPT ? result.z : undefined;
}

describe('on drawn problems', () => {
  test('100: every mix keeps the rules; additions are as few and as light as another solver finds', async () => {
    const met = { none: 0, alone: 0, one: 0, few: 0, many: 0 };
    for (let seed = 0; seed < 100; seed++) {
      const drawn = draw(seed);
      const { problem, eaters } = drawn;
      const answer = share(problem, eaters);
      const fewest = await least(program(drawn, 'number'));
      if (answer.status === 'none') {
        expect(fewest, `seed ${seed}`).toBeUndefined();
        for (const { id } of answer.without_mix) {
          const single = { problem, eaters: eaters.filter((e) => e.id === id) };
          expect(await least(program(single, 'number')), `seed ${seed}, ${id}`).toBeUndefined();
        }
        met[answer.without_mix.length > 0 ? 'alone' : 'none']++;
        continue;
      }
      expect(answer.proved, `seed ${seed}`).toBe(true);
      if (fewest === undefined) {
        // The least share of a food that one refuses can be kept for nobody: then it is left out, and that is said.
        expect(answer.one_mix, `seed ${seed}`).toBe(answer.base);
        expect(answer.unverified.every((s) => /Share of .* is 0 %, below the least/.test(s))).toBe(true);
        expect(answer.unverified.length).toBeGreaterThan(0);
        continue;
      }
      expect(answer.unverified, `seed ${seed}`).toEqual([]);
      expect(answer.weighings, `seed ${seed}`).toBe(fewest);
      if (answer.weighings === 0) expect(answer.one_mix, `seed ${seed}`).toBe(answer.base);
      if (answer.weighings > 0) {
        const lightest = (await least(program(drawn, 'weight', answer.weighings)))!;
        // GLPK takes a flag of 1e-5 for none: as much as 1e-3 g of each addition.
        expect(Math.abs(answer.weight - lightest), `seed ${seed}`).toBeLessThan(0.02);
      }
      met[answer.weighings === 0 ? 'one' : answer.weighings === 1 ? 'few' : 'many']++;
      expectMixes(drawn, answer, `seed ${seed}`);
    }
    expect(Math.min(...Object.values(met)), JSON.stringify(met)).toBeGreaterThan(1);
  });

  test('alike animals need no additions whenever there is a mix', () => {
    fc.assert(
      fc.property(fc.nat(100_000), fc.integer({ min: 1, max: 4 }), (seed, count) => {
        const { problem, eaters } = draw(seed);
        const alike = Array.from({ length: count }, (_, k) => ({
          ...eaters[0]!,
          id: `e${k}`,
          name: `N${k}`,
        }));
        const feasible = hasMix(forAnimals(problem, [eaters[0]!]).problem);
        const answer = share(problem, alike);
        expect(answer.status).toBe(feasible ? 'shared' : 'none');
        if (answer.status === 'none') {
          expect(answer.without_mix).toHaveLength(count);
          return;
        }
        expect(answer).toMatchObject({ weighings: 0, weight: 0, unverified: [] });
        for (const { cost } of answer.animals) expect(cost.different).toBeCloseTo(0, 6);
      }),
      { numRuns: 60 },
    );
  });
});

/** Whether a problem has a mix; where every food is refused it has none. */
function hasMix(problem: Problem): boolean {
  if (problem.foods.every((f) => f.refused)) return false;
  const formulation = new Formulation(problem, { reference, highs });
  const feasible = formulation.feasible();
  formulation.dispose();
  return feasible;
}

/** Every mix is base and additions, holds nothing refused, and keeps the rules as the formulation judges them. */
function expectMixes({ problem, eaters }: Drawn, answer: SharedMix, label: string): void {
  expect(Object.values(answer.base).reduce((a, b) => a + b, 0)).toBeCloseTo(100, 9);
  answer.animals.forEach(({ additions, shares }, k) => {
    const e = eaters[k]!;
    const total = 100 + Object.values(additions).reduce((a, b) => a + b, 0);
    for (const { id } of problem.foods) {
      expect(shares[id]!, label).toBeCloseTo((100 * (answer.base[id]! + (additions[id] ?? 0))) / total, 9);
      if (e.refuses.includes(id)) expect([shares[id], additions[id]], label).toEqual([0, undefined]);
    }
    const formulation = new Formulation(forAnimals(problem, [e]).problem, { reference, highs });
    const { breaches, total: sum } = formulation.evaluate(shares);
    formulation.dispose();
    expect(breaches, label).toEqual([]);
    expect(sum).toBeCloseTo(100, 9);
  });
}
