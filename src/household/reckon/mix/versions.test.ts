/** What going back to a kept version brings. */
import { expect, test } from 'vitest';
import { rulesFrom } from '../../../formulation/problem/rules-from-profile.ts';
import { PROFILES } from '../../../targets/profiles.ts';
import type { Mix } from '../../model.ts';
import { newMix, withProfile } from './mix-edits.ts';
import { withChanges, withRuleLeftOut } from './own-limits.ts';
import { broughtBack } from './versions.ts';

const [first, second] = PROFILES as [(typeof PROFILES)[number], (typeof PROFILES)[number]];
const mix: Mix = {
  ...newMix({ id: 'm', name: 'Mix', profile: first, at: '2026-03-10T10:00:00.000Z' }),
  held: ['oats', 'gone'],
};

test('problem and shares come back, the name stays, and foods no longer known are not held', () => {
  const version = { problem: { ...mix.problem, foods: [{ id: 'oats' }] }, shares: { oats: 100 } };
  const back = broughtBack({ ...mix, name: 'Renamed' }, version, PROFILES);
  expect(back.problem).toBe(version.problem);
  expect(back.shares).toBe(version.shares);
  expect(back.held).toEqual(['oats']);
  expect(back.name).toBe('Renamed');
  expect(back.id).toBe('m');
});

test('the target is the one whose rules the version has, in whatever order their fields are', () => {
  const turned = rulesFrom(first).map((r) => Object.fromEntries(Object.entries(r).reverse()) as typeof r);
  const version = { problem: { ...mix.problem, rules: turned }, shares: {} };
  expect(broughtBack(withProfile(mix, second), version, PROFILES).profileId).toBe(first.id);
});

test('a version in which a limit was changed has the target of that limit', () => {
  const changed = withChanges(mix, [{ pointer: '/rules/1/max', from: 7, to: 8 }], '2026-03-14');
  const version = { problem: withRuleLeftOut(changed, 0, '2026-03-14').problem, shares: {} };
  const back = broughtBack(withProfile(mix, second), version, PROFILES);
  expect(back.profileId).toBe(first.id);
  expect(back.problem.own_limits).toHaveLength(2);
});

test('rules of no target leave the target as it is', () => {
  const version = { problem: { ...mix.problem, rules: [] }, shares: {} };
  expect(broughtBack(withProfile(mix, second), version, PROFILES).profileId).toBe(second.id);
});
