/** A mix or food of another keeper's: read, checked, fitted beside what is here; the sender's choices are asked about. */

import { impossible } from '../../foods/impossible.ts';
import type { Problem, Rule } from '../../formulation/problem/problem.ts';
import { rulesFrom } from '../../formulation/problem/rules-from-profile.ts';
import { nutrient } from '../../nutrition/nutrients.ts';
import type { TargetProfile } from '../../targets/profile.ts';
import { PROFILES } from '../../targets/profiles.ts';
import { words } from '../../words/words.ts';
import type { Household, Mix, OwnFood } from '../model.ts';
import { isDryRule, MARGIN, withProblem, withProfile } from '../reckon/mix/mix-edits.ts';
import { checkRecord } from '../shape/check-record.ts';
import type { Fault } from '../shape/fault-words.ts';
import { canonicalJson } from './canonical-json.ts';
import { PART_FORMAT } from './format.ts';
import type { SentMix } from './part-file.ts';
import { type Entry, readJson } from './read-household.ts';
import type { TheirChoice } from './wire.ts';

export interface Arrival {
  /** What would be written: nothing that is here is changed. */
  readonly put: readonly Entry[];
  /** Names of what is here already, just as it came. */
  readonly same: readonly string[];
  readonly choices: readonly TheirChoice[];
  /** What the keeper is told: where a target comes from, what came under another id. */
  readonly notes: readonly string[];
}

export type PartReading =
  | { readonly ok: true; readonly arrival: Arrival }
  | { readonly ok: false; readonly faults: readonly Fault[] };

export interface Arriving {
  readonly here: Pick<Household, 'foods' | 'profiles' | 'mixes'>;
  /** Ids of the sender's choices that the keeper takes over. */
  readonly accepted: ReadonlySet<string>;
  /** The same id for the same name, so that a file that is looked at twice comes in the same. */
  readonly newId: (of: string) => string;
  /** ISO 8601 time, UTC. */
  readonly now: string;
}

export function readPart(text: string, about: Arriving): PartReading {
  const t = words().exchange.readingPart;
  const file = readJson(text, PART_FORMAT);
  if ('faults' in file) return { ok: false, faults: file.faults };
  const { mix, foods, profile } = file.json;
  if (!Array.isArray(foods))
    return {
      ok: false,
      faults: [{ field: '/foods', message: t.noFoods }],
    };
  const sent = mix === undefined ? undefined : asMix(mix, about.now);
  const faults = [
    ...foods.flatMap((f: unknown, i): Fault[] => foodFaults(f, `/foods/${i}`)),
    ...(profile === undefined ? [] : faultAt('/profile', checkRecord('profiles', profile))),
    ...(sent === undefined ? [] : faultAt('/mix', checkRecord('mixes', sent))),
  ];
  if (faults.length > 0) return { ok: false, faults };
  const ids = foods.map((f: OwnFood) => f.id);
  const twice = ids.find((id, i) => ids.indexOf(id) !== i);
  if (twice !== undefined)
    return {
      ok: false,
      faults: [{ field: '/foods', message: t.twice(twice) }],
    };
  if (!sent && foods.length === 0) return { ok: false, faults: [{ field: '/foods', message: t.nothing }] };
  try {
    return fitted(foods as OwnFood[], profile as TargetProfile | undefined, sent as Mix | undefined, about);
  } catch (error) {
    // A bound that no rule can be made of.
    if (error instanceof RangeError)
      return { ok: false, faults: [{ field: '/profile/bounds', message: t.leaveOut(error.message) }] };
    throw error;
  }
}

function asMix(mix: unknown, now: string): unknown {
  if (typeof mix !== 'object' || mix === null) return mix;
  const { id, name, profileId, problem, shares } = mix as SentMix;
  return { id, name, profileId, problem, shares, animalIds: [], held: [], updatedAt: now };
}

function foodFaults(food: unknown, at: string): Fault[] {
  const fault = faultAt(at, checkRecord('foods', food));
  if (fault.length > 0) return fault;
  return impossible(food as OwnFood).map(({ message }) => ({
    field: at,
    message: `${(food as OwnFood).name}: ${message}`,
  }));
}

function faultAt(at: string, fault: Fault | undefined): Fault[] {
  return fault ? [{ field: `${at}${fault.field}`, message: fault.message }] : [];
}

function fitted(
  foods: readonly OwnFood[],
  theirProfile: TargetProfile | undefined,
  sent: Mix | undefined,
  { here, accepted, newId }: Arriving,
): PartReading {
  const t = words().exchange.readingPart;
  const put: Entry[] = [];
  const same: string[] = [];
  const notes: string[] = [];
  const moved = new Map<string, string>();
  for (const food of foods) {
    const id = placeFor(food, here.foods, newId);
    if (id !== food.id) moved.set(food.id, id);
    if (here.foods.some((f) => f.id === id)) same.push(food.name);
    else put.push({ kind: 'foods', id, body: { ...food, id } });
  }
  if (!sent) return { ok: true, arrival: { put, same, choices: [], notes } };
  const profile = PROFILES.find((p) => p.id === sent.profileId) ?? theirProfile;
  if (!profile || profile.id !== sent.profileId)
    return {
      ok: false,
      faults: [
        {
          field: '/mix/profileId',
          message: t.noTarget(sent.profileId),
        },
      ],
    };
  const profileId = PROFILES.includes(profile) ? profile.id : placeFor(profile, here.profiles, newId);
  if (!PROFILES.includes(profile)) {
    notes.push(t.theirTarget(profile.name));
    if (here.profiles.some((p) => p.id === profileId)) same.push(profile.name);
    else put.push({ kind: 'profiles', id: profileId, body: { ...profile, id: profileId } });
  }
  // A food of a table may go by the id that an own food has here.
  for (const { id } of [...sent.problem.foods, ...sent.problem.beside])
    if (!foods.some((f) => f.id === id) && here.foods.some((f) => f.id === id))
      moved.set(id, newId(`ingredient ${id}`));
  const target = { ...profile, id: profileId };
  const renamed = { ...renameFoods(sent, moved), profileId };
  const choices = choicesIn(renamed.problem, target);
  const fit = withoutChoices(renamed, target, choices, accepted);
  const id = here.mixes.some((m) => m.id === fit.id) ? newId(`mix ${fit.id}`) : fit.id;
  put.push({ kind: 'mixes', id, body: { ...fit, id } });
  notes.push(t.theirChoices);
  return { ok: true, arrival: { put, same, choices, notes } };
}

/** The id under which it stands here just so, its own where that is free, else a new one. */
function placeFor<T extends { readonly id: string }>(
  thing: T,
  here: readonly T[],
  newId: (of: string) => string,
): string {
  const content = (t: T) => canonicalJson({ ...t, id: '' });
  const twin =
    here.find((t) => t.id === thing.id && content(t) === content(thing)) ??
    here.find((t) => content(t) === content(thing));
  if (twin) return twin.id;
  return here.some((t) => t.id === thing.id) ? newId(thing.id) : thing.id;
}

function renameFoods(mix: Mix, moved: ReadonlyMap<string, string>): Mix {
  if (moved.size === 0) return mix;
  const to = (id: string) => moved.get(id) ?? id;
  const named = <T extends object>(thing: T): T =>
    'food' in thing && typeof thing.food === 'string' ? { ...thing, food: to(thing.food) } : thing;
  const { problem } = mix;
  return {
    ...withProblem(mix, {
      foods: problem.foods.map((f) => ({ ...f, id: to(f.id) })),
      beside: problem.beside.map((b) => ({ ...b, id: to(b.id) })),
      rules: problem.rules.map(named),
      ...(problem.aims && { aims: problem.aims.map(named) }),
    }),
    shares: Object.fromEntries(Object.entries(mix.shares).map(([id, share]) => [to(id), share])),
  };
}

const LIMITS = 'limits';

/** Everything in which the mix goes by the sender's own judgement. */
function choicesIn(problem: Problem, profile: TargetProfile): TheirChoice[] {
  const t = words().exchange.readingPart;
  const found: TheirChoice[] = [];
  if (problem.margin !== MARGIN)
    found.push({
      id: 'margin',
      words: problem.margin === undefined ? t.noMargin : t.margin(Math.round(problem.margin * 100)),
      instead: t.usualMargin(MARGIN * 100),
    });
  if (problem.confidence > 0)
    found.push({
      id: 'confidence',
      words: t.sure(Math.round(problem.confidence * 100)),
      instead: t.notSure,
    });
  if (problem.cautions !== 'apply')
    found.push({
      id: 'cautions',
      words: t.cautions,
      instead: t.cautionsCount,
    });
  const limits = limitsIn(problem, profile);
  if (limits.length > 0)
    found.push({
      id: LIMITS,
      words: t.limits(profile.name, limits.join('; ')),
      instead: t.limitsOf,
    });
  for (const food of problem.foods)
    if (food.override)
      found.push({
        id: `override ${food.id}`,
        words: t.override(food.name ?? food.id, food.override.caution, food.override.note),
        instead: t.cautionCounts,
      });
  return found;
}

/** Limits of nutrients and ratios in which the mix and its target differ, in words. */
function limitsIn(problem: Problem, profile: TargetProfile): string[] {
  const bare = (r: Rule) => canonicalJson({ ...r, source: undefined });
  const limits = problem.rules.filter((r) => ('nutrient' in r || 'ratio' in r) && !isDryRule(r));
  const targets = rulesFrom(profile);
  const wanted = new Set(targets.map(bare));
  const there = new Set(limits.map(bare));
  return [
    ...limits.filter((r) => !wanted.has(bare(r))).map(ruleWords),
    ...targets
      .filter((r) => !there.has(bare(r)))
      .map((r) => words().exchange.readingPart.without(ruleWords(r))),
  ];
}

function ruleWords(rule: Rule): string {
  const t = words().exchange.readingPart;
  const name = (tag: Parameters<typeof nutrient>[0]) => nutrient(tag).name.toLowerCase();
  const what =
    'nutrient' in rule
      ? name(rule.nutrient)
      : 'ratio' in rule
        ? t.ratio(name(rule.ratio[0]), name(rule.ratio[1]))
        : t.aLimit;
  const { min, max } = rule;
  if (min !== undefined && max !== undefined) return t.rule(what, t.both(min, max));
  if (min !== undefined) return t.rule(what, t.least(min));
  return t.rule(what, max === undefined ? t.none : t.most(max));
}

function withoutChoices(
  mix: Mix,
  profile: TargetProfile,
  choices: readonly TheirChoice[],
  accepted: ReadonlySet<string>,
): Mix {
  const not = (id: string) => choices.some((c) => c.id === id) && !accepted.has(id);
  const { own_limits: _records, ...plain } = mix.problem;
  let next: Mix = not(LIMITS) ? withProfile({ ...mix, problem: plain }, profile) : mix;
  next = withProblem(next, {
    ...(not('margin') && { margin: MARGIN }),
    ...(not('confidence') && { confidence: 0 }),
    ...(not('cautions') && { cautions: 'apply' as const }),
    foods: next.problem.foods.map((f) => {
      if (!f.override || accepted.has(`override ${f.id}`)) return f;
      const { override: _theirs, ...without } = f;
      return without;
    }),
  });
  return next;
}
