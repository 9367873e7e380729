/** Wishes and counting rules: what is written is read by the formulation, and nothing said is lost or doubled. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AIMS, least, mix, most, read, wished } from '../../../../test/mix/wishes.ts';
import { PROFILES } from '../../../targets/profiles.ts';
import type { Mix } from '../../model.ts';
import { removeFood, withProfile } from './mix-edits.ts';
import { addCount, aimKey, countRules, giveOf, moveAim, removeAim, replaceCount } from './wishes.ts';

const some = fc.subarray([...AIMS]).chain((list) => fc.shuffledSubarray(list, { minLength: list.length }));
const keys = (m: Mix) => (m.problem.aims ?? []).map(aimKey);

describe('wishes', () => {
  it('are read back by the formulation as they were written, in their order', () => {
    fc.assert(
      fc.property(some, (aims) => {
        const { problem, ignored } = read(wished(aims).problem);
        expect(problem.aims ?? []).toEqual(aims);
        expect(ignored).toEqual([]);
      }),
    );
  });

  it('move one place at a time, and back again; at either end they stay', () => {
    fc.assert(
      fc.property(some, fc.nat(7), (aims, i) => {
        fc.pre(aims.length > 0);
        const key = aimKey(aims[i % aims.length]!);
        const before = wished(aims);
        const down = moveAim(before, key, 1);
        const last = i % aims.length === aims.length - 1;
        expect(keys(down).indexOf(key)).toBe((i % aims.length) + (last ? 0 : 1));
        expect([...keys(down)].sort()).toEqual([...keys(before)].sort());
        if (!last) expect(keys(moveAim(down, key, -1))).toEqual(keys(before));
      }),
    );
    expect(moveAim(wished(AIMS), 'liked', -1).problem.aims).toEqual(AIMS);
    expect(keys(moveAim(wished(AIMS), 'cupboard', -1)).slice(0, 2)).toEqual(['cupboard', 'liked']);
  });

  it('are told apart: the fat of the mix is not that of the ration', () => {
    expect(new Set(AIMS.map(aimKey)).size).toBe(AIMS.length);
    expect(aimKey({ aim: 'less', nutrient: 'FAT', on: 'mix', give: 2 })).toBe(aimKey(AIMS[5]!));
  });

  it('give way by as much as is written; nothing and 0 are the same', () => {
    const given = giveOf(wished(AIMS), 'few', 2);
    expect(given.problem.aims![2]).toEqual({ aim: 'few', give: 2 });
    expect(read(given.problem).problem.aims![2]).toEqual({ aim: 'few', give: 2 });
    expect(giveOf(given, 'few', 0).problem.aims).toEqual(AIMS);
    expect(giveOf(given, 'few', undefined).problem.aims).toEqual(AIMS);
  });

  it('leave no trace when the last is removed', () => {
    const none = removeAim(removeAim(wished([{ aim: 'few' }, { aim: 'liked' }]), 'few'), 'liked');
    expect(JSON.stringify(none.problem)).toBe(JSON.stringify(mix.problem));
  });

  it('about a food go with it, and the rest can still be read', () => {
    const without = removeFood(wished(AIMS), 'linseed');
    expect(keys(without)).toEqual(AIMS.slice(0, -1).map(aimKey));
    expect(() => read(without.problem)).not.toThrow();
    expect(removeFood(mix, 'linseed').problem.aims).toBeUndefined();
  });
});

describe('rules that count', () => {
  it('are replaced in their place, and no other rule is', () => {
    const two = addCount(addCount(mix, least), most);
    const [first] = countRules(two.problem);
    const changed = replaceCount(two, first!.index, { ...least, min: 17 });
    expect(countRules(changed.problem).map((c) => c.rule)).toEqual([{ ...least, min: 17 }, most]);
    expect(changed.problem.rules.slice(0, first!.index)).toEqual(mix.problem.rules);
    expect(replaceCount(two, 0, least).problem.rules).toEqual(two.problem.rules);
  });

  it('stay when the target changes, each once', () => {
    const other = PROFILES.find((p) => p.id !== mix.profileId)!;
    const turned = withProfile(addCount(mix, least), other);
    expect(turned.profileId).toBe(other.id);
    expect(countRules(turned.problem).map((c) => c.rule)).toEqual([least]);
    expect(countRules(withProfile(turned, other).problem)).toHaveLength(1);
  });
});
