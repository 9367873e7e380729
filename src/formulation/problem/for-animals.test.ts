/** One problem for several animals: nothing of the problem moves, nothing of any animal is lost. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { eater } from '../../../test/formulation/eaters.ts';
import { problemOf } from '../../../test/formulation/problem-of.ts';
import { cautionsFor } from '../../foods/cautions/find.ts';
import { profile } from '../../targets/profiles.ts';
import { forAnimals, forOneOf, ruleKey } from './for-animals.ts';
import type { Problem, Rule } from './problem.ts';
import { rulesFrom } from './rules-from-profile.ts';

const SPLIT: Rule = { group: 'seed', min: 30, max: 50 };
const problem = problemOf({
  foods: [{ id: 'oats' }, { id: 'hemp', refused: true }, { id: 'peas' }, { id: 'dill' }],
  rules: [SPLIT, { nutrient: 'FAT', max: 7, on: 'ration' }],
});

describe('one problem for several animals', () => {
  it('is the problem itself without animals', () => {
    expect(forAnimals(problem, [])).toEqual({ problem, refusedBy: {} });
    expect(forAnimals(problem, []).problem).toBe(problem);
  });

  it('leaves out what any of them refuses, and says who', () => {
    const both = forAnimals(problem, [
      eater('Bramble', { refuses: ['peas', 'unheard of'] }),
      eater('Clover', { refuses: ['dill', 'peas', 'hemp'] }),
    ]);
    expect(both.problem.foods.map((f) => f.refused ?? false)).toEqual([false, true, true, true]);
    expect(both.refusedBy).toEqual({ hemp: ['Clover'], peas: ['Bramble', 'Clover'], dill: ['Clover'] });
    // Foods that nothing changes are the same objects, so that a view need not draw them anew.
    expect(both.problem.foods[0]).toBe(problem.foods[0]);
    expect(problem.foods[2]).toEqual({ id: 'peas' });
  });

  it('adds rules of every animal once, after the rules of the problem', () => {
    const fat: Rule = { nutrient: 'FAT', max: 7, on: 'ration', basis: 'as fed', source: 'common practice' };
    const lean: Rule = { nutrient: 'FAT', max: 5, on: 'ration' };
    const both = forAnimals(problem, [
      eater('Bramble', { rules: [fat, lean] }),
      eater('Clover', {
        rules: [
          { ...lean, source: 'elsewhere' },
          { ...SPLIT, on: 'mix' },
        ],
      }),
    ]);
    expect(both.problem.rules).toEqual([...problem.rules, lean]);
  });

  it('tells rules apart by everything but their source and what is a default', () => {
    const rule: Rule = { nutrient: 'CA', min: 1, max: 2 };
    expect(ruleKey({ max: 2, min: 1, nutrient: 'CA', on: 'mix', basis: 'as fed', source: 'x' })).toBe(
      ruleKey(rule),
    );
    const others: Rule[] = [
      { ...rule, nutrient: 'P' },
      { ...rule, min: 1.5 },
      { nutrient: 'CA', min: 1 },
      { ...rule, on: 'ration' },
      { ...rule, basis: 'DM' },
      { ratio: ['CA', 'P'], min: 1, max: 2 },
      { ratio: ['P', 'CA'], min: 1, max: 2 },
      { count: { group: 'seed' }, min: 1, max: 2 },
      { count: { group: 'seed', at_least: 2 }, min: 1, max: 2 },
      { group: 'seed', min: 1, max: 2 },
      { food: 'seed', min: 1, max: 2 },
    ];
    const keys = [rule, ...others].map(ruleKey);
    expect(new Set(keys).size).toBe(keys.length);
    expect(ruleKey({ count: { at_least: 2, group: 'seed' } })).toBe(
      ruleKey({ count: { group: 'seed', at_least: 2 } }),
    );
  });

  it('keeps every caution of every animal, and of the problem', () => {
    const raisins = { ref: 'sr28:09298', name: 'Raisins' };
    const heeded = (species?: string) => cautionsFor(raisins, species).map((hit) => hit.caution.id);
    const golden = eater('Bramble', { species: 'golden hamster' });
    const dwarf = eater('Clover', { species: 'Winter white' });
    expect(heeded('Winter white')).not.toEqual(heeded('golden hamster'));
    for (const eaters of [[golden, dwarf], [dwarf, golden], [dwarf], [dwarf, eater('Nobody')]])
      expect(heeded(forAnimals(problem, eaters).problem.species)).toEqual(heeded('Winter white'));
    const dwarfs = { ...problem, species: 'Winter white' };
    expect(heeded(forAnimals(dwarfs, [golden]).problem.species)).toEqual(heeded('Winter white'));
    expect(forAnimals(problem, [golden, eater('Moss', golden)]).problem.species).toBe('golden hamster');
    expect(forAnimals(problem, [eater('Nobody')]).problem).not.toHaveProperty('species');
  });

  it('changes nothing the second time, and nobody is lost by whoever comes with', () => {
    const rules = [
      ...rulesFrom(profile('hamster-adult')!),
      ...rulesFrom(profile('mouse-nrc')!).map((rule) => ({ ...rule, on: 'mix' }) as Rule),
      SPLIT,
    ];
    const someone = fc.record({
      name: fc.constantFrom('Bramble', 'Clover', 'Moss'),
      species: fc.constantFrom('golden hamster', 'dwarf hamster'),
      refuses: fc.subarray(problem.foods.map((f) => f.id)),
      rules: fc.subarray(rules),
    });
    fc.assert(
      fc.property(fc.array(someone, { minLength: 1, maxLength: 4 }), (drawn) => {
        const eaters = drawn.map((e, i) => ({ id: `${i}`, ...e }));
        const all = forAnimals(problem, eaters);
        expect(all.problem.rules.slice(0, problem.rules.length)).toEqual(problem.rules);
        expect(all.problem.foods.map((f) => f.id)).toEqual(problem.foods.map((f) => f.id));
        expect(forAnimals(all.problem, eaters).problem).toEqual(all.problem);
        const keys = new Set(all.problem.rules.map(ruleKey));
        for (const one of eaters) {
          expect(one.rules.every((rule) => keys.has(ruleKey(rule)))).toBe(true);
          for (const food of all.problem.foods)
            if (one.refuses.includes(food.id)) expect(food.refused).toBe(true);
        }
      }),
    );
  });
});

describe('the problem of one among several', () => {
  const fat = problem.rules[1]!;
  const bramble = eater('Bramble', { rules: [fat], refuses: ['peas'] });
  const clover = eater('Clover', { rules: [{ nutrient: 'FAT', max: 4, on: 'ration' }] });

  it('leaves out a rule that another brought, and keeps what binds all', () => {
    expect(forOneOf(problem, clover, [bramble, clover]).rules).toEqual([SPLIT, ...clover.rules]);
    expect(forOneOf(problem, bramble, [bramble, clover]).rules).toEqual(problem.rules);
    expect(forOneOf(problem, clover, [clover]).rules).toEqual([...problem.rules, ...clover.rules]);
  });

  it('refuses only what the one refuses', () => {
    const refused = (p: Problem) => p.foods.flatMap((f) => (f.refused ? [f.id] : []));
    expect(refused(forOneOf(problem, clover, [bramble, clover]))).toEqual(['hemp']);
    expect(refused(forOneOf(problem, bramble, [bramble, clover]))).toEqual(['hemp', 'peas']);
  });
});
