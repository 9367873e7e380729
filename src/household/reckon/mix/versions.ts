/** What a kept version brings back into its mix. */
import type { Rule } from '../../../formulation/problem/problem.ts';
import { rulesFrom } from '../../../formulation/problem/rules-from-profile.ts';
import type { TargetProfile } from '../../../targets/profile.ts';
import type { Mix, MixVersion } from '../../model.ts';

/**
 * The mix with a version's problem and shares. Foods that the version does not know are no longer held; where its
 * rules are those of another target, that target is the mix's again.
 */
export function broughtBack(
  mix: Mix,
  version: Pick<MixVersion, 'problem' | 'shares'>,
  profiles: readonly TargetProfile[],
): Mix {
  const { problem, shares } = version;
  const ids = new Set(problem.foods.map((f) => f.id));
  // A limit that the keeper changed is still one of the target's.
  const limits = problem.own_limits?.map((l) => l.was) ?? [];
  const rules = new Set([...problem.rules, ...limits].map(written));
  const made = (p: TargetProfile) => rulesFrom(p).every((r) => rules.has(written(r)));
  const fitting = profiles.filter((p) => p.bounds.length > 0 && made(p));
  const most = fitting.reduce<TargetProfile | undefined>(
    (best, p) => (best && best.bounds.length >= p.bounds.length ? best : p),
    fitting.find((p) => p.id === mix.profileId),
  );
  return {
    ...mix,
    problem,
    shares,
    held: mix.held.filter((id) => ids.has(id)),
    profileId: most?.id ?? mix.profileId,
  };
}

/** A rule in one way of writing: its fields may come back from the store in another order. */
function written(rule: Rule): string {
  return JSON.stringify(rule, Object.keys(rule).sort());
}
