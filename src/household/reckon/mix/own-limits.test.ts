/** Limits of the target that a keeper changes: on record, and back again. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draws } from '../../../../test/draws.ts';
import { PROFILES } from '../../../targets/profiles.ts';
import { demoHousehold } from '../../demo.ts';
import type { Mix } from '../../model.ts';
import { withMostWater } from './keep-dry.ts';
import { withProfile } from './mix-edits.ts';
import { withRemedy } from './mix-remedies.ts';
import {
  isLimitOfTarget,
  limitOwners,
  withChanges,
  withLimitSetBack,
  withRuleLeftOut,
} from './own-limits.ts';

const { mixes, animals } = demoHousehold();
const mix = mixes[0]!;
const bramble = animals[0]!;
/** Rules of the demo: protein, fat, fibre, then the four groups. */
const FAT = 1;
const GROUP = 3;
const ON = '2026-03-14';
const rules = (m: Mix) => m.problem.rules;
const fatTo = (to: number, m = mix) => withChanges(m, [{ pointer: `/rules/${FAT}/max`, from: 7, to }], ON);

describe('whose a rule is', () => {
  it('is the animal’s for nutrients and ratios, and the keeper’s for all else', () => {
    expect(isLimitOfTarget(mix.problem, `/rules/${FAT}/max`)).toBe(true);
    expect(isLimitOfTarget(mix.problem, `/rules/${FAT}`)).toBe(true);
    for (const pointer of [
      `/rules/${GROUP}/min`,
      '/foods/0/max',
      '/drop_one',
      '/least_grams',
      '/rules/99/max',
    ])
      expect(isLimitOfTarget(mix.problem, pointer), pointer).toBe(false);
    // That the mix is dry enough to keep is the keeper's own setting.
    const dry = withMostWater(mix, 12);
    expect(isLimitOfTarget(dry.problem, `/rules/${rules(dry).length - 1}/max`)).toBe(false);
  });

  it('names the animals whose target the mix follows', () => {
    const nut = { ...bramble, id: 'nut', name: 'Nut', profileId: 'hamster-nrc' };
    expect(limitOwners(mix, [bramble, nut])).toEqual(['Bramble']);
    expect(limitOwners({ ...mix, animalIds: ['nut'] }, [bramble, nut])).toEqual(['Nut']);
    expect(limitOwners({ ...mix, animalIds: [bramble.id, 'nut'] }, [bramble, nut])).toEqual(['Bramble']);
    expect(limitOwners({ ...mix, animalIds: [] }, [bramble, nut])).toEqual([]);
  });
});

describe('a limit that gives way', () => {
  it('is on record with what it was, and says so as its source', () => {
    const next = fatTo(7.5);
    expect(rules(next)[FAT]).toMatchObject({ nutrient: 'FAT', min: 4, max: 7.5 });
    expect(rules(next)[FAT]?.source).toMatch(
      /^own choice since 2026-03-14; the target has at least 4, at most 7 \(common practice, no source\)$/,
    );
    expect(next.problem.own_limits).toEqual([{ was: rules(mix)[FAT], now: rules(next)[FAT], on: ON }]);
  });

  it('keeps what it was at first, however often it is changed; back at that, it is nobody’s own', () => {
    const twice = fatTo(8, fatTo(7.5));
    expect(twice.problem.own_limits).toHaveLength(1);
    expect(twice.problem.own_limits?.[0]).toMatchObject({ was: { max: 7 }, now: { max: 8 } });
    expect(fatTo(7, twice)).toEqual(mix);
    expect(withLimitSetBack(twice, twice.problem.own_limits![0]!)).toEqual(mix);
  });

  it('may be left out, also after it was changed, and comes back among the limits', () => {
    for (const before of [mix, fatTo(7.5)]) {
      const gone = withRuleLeftOut(before, FAT, ON);
      expect(rules(gone).some((r) => 'nutrient' in r && r.nutrient === 'FAT')).toBe(false);
      expect(gone.problem.own_limits).toEqual([{ was: rules(mix)[FAT], on: ON }]);
      const back = withLimitSetBack(gone, gone.problem.own_limits![0]!);
      expect(rules(back)[2]).toEqual(rules(mix)[FAT]);
      expect(new Set(rules(back))).toEqual(new Set(rules(mix)));
      expect(back.problem.own_limits).toBeUndefined();
    }
  });

  it('is recorded whichever way it goes: a remedy of several bounds', () => {
    const both = withRemedy(
      mix,
      {
        kind: 'loosen-together',
        sentence: '',
        changes: [
          { pointer: `/rules/${FAT}/max`, from: 7, to: 8 },
          { pointer: `/rules/${GROUP}/max`, from: 50, to: 60 },
        ],
      },
      ON,
    );
    expect(both.problem.own_limits?.map((l) => l.was)).toEqual([rules(mix)[FAT]]);
    expect(rules(both)[GROUP]).toMatchObject({ max: 60 });
  });

  it('goes with the mix through the store’s JSON, and a whole target brought back clears the record', () => {
    const kept: Mix = JSON.parse(JSON.stringify(fatTo(7.5)));
    expect(withLimitSetBack(kept, JSON.parse(JSON.stringify(kept.problem.own_limits![0])))).toEqual(mix);
    const profile = PROFILES.find((p) => p.id === mix.profileId)!;
    expect(withProfile(kept, profile).problem.own_limits).toBeUndefined();
    expect(rules(withProfile(kept, profile))[FAT]).toEqual(rules(mix)[FAT]);
  });

  it('what the keeper asked for leaves no record', () => {
    expect(withRuleLeftOut(mix, GROUP, ON).problem.own_limits).toBeUndefined();
    const wider = withChanges(mix, [{ pointer: `/rules/${GROUP}/max`, from: 50, to: 60 }], ON);
    expect(wider.problem.own_limits).toBeUndefined();
  });
});

it('any run of changes, set back one by one in any order, ends at the target', () => {
  const step = fc.record({
    row: fc.integer({ min: 0, max: 6 }),
    side: fc.constantFrom('min' as const, 'max' as const),
    to: fc.integer({ min: 1, max: 30 }),
    leave: fc.boolean(),
  });
  const limitsOf = (m: Mix) => rules(m).filter((_, i) => isLimitOfTarget(m.problem, `/rules/${i}`));
  const sorted = (m: Mix) =>
    limitsOf(m)
      .map((r) => JSON.stringify(r))
      .sort();
  fc.assert(
    fc.property(fc.array(step, { maxLength: 8 }), fc.infiniteStream(fc.nat()), (steps, picks) => {
      let now: Mix = mix;
      for (const { row, side, to, leave } of steps) {
        const rule = rules(now)[row];
        if (!rule) continue;
        now = leave
          ? withRuleLeftOut(now, row, ON)
          : withChanges(now, [{ pointer: `/rules/${row}/${side}`, from: rule[side] ?? 0, to }], ON);
        // Every limit stands as the target has it, or is on record.
        const recorded = new Set(now.problem.own_limits?.map((l) => JSON.stringify(l.now)));
        const strange = sorted(now).filter((r) => !sorted(mix).includes(r) && !recorded.has(r));
        expect(strange).toEqual([]);
        expect(limitsOf(now).length + (now.problem.own_limits?.filter((l) => !l.now).length ?? 0)).toBe(3);
      }
      while (now.problem.own_limits) {
        const { own_limits } = now.problem;
        now = withLimitSetBack(now, own_limits[picks.next().value % own_limits.length]!);
      }
      expect(sorted(now)).toEqual(sorted(mix));
    }),
    { numRuns: draws(2000, 200) },
  );
});
