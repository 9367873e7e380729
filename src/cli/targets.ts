/** `pouchful targets`: the target profiles that come with Pouchful. */
import { countedName, nutrient } from '../nutrition/nutrients.ts';
import { unconfirmedBounds } from '../targets/confirm.ts';
import type { TargetBound, TargetProfile } from '../targets/profile.ts';
import { PROFILES } from '../targets/profiles.ts';
import { columns, figure, print } from './print.ts';

/** Prints id, name and how many bounds. @returns the exit code */
export function listTargets(): number {
  print(columns(PROFILES.map((p) => [p.id, p.name, `${p.bounds.length} bounds`, waiting(p)])));
  return 0;
}

/** Prints a profile's bounds with their sources. @returns the exit code */
export function showTarget(id: string): number {
  const profile = PROFILES.find((p) => p.id === id);
  if (!profile)
    throw new Error(`no target profile "${id}"; the profiles are: ${PROFILES.map((p) => p.id).join(', ')}`);
  print(`${profile.name} (${profile.id})\n${profile.species}, ${profile.lifeStage}. ${profile.about}\n`);
  if (waiting(profile)) print(`${waiting(profile)}: confirm them under Targets before a mix follows it.\n`);
  print(columns(profile.bounds.map((b) => [subject(b), range(b), unit(b), b.source])));
  return 0;
}

/** How many figures are from memory; empty where none is. */
function waiting(profile: TargetProfile): string {
  const { length } = unconfirmedBounds(profile);
  return length === 0 ? '' : `${length} of them from memory`;
}

function subject(bound: TargetBound): string {
  if (bound.ratio) return bound.ratio.map((tag) => nutrient(tag).name).join(' to ');
  return bound.nutrient ? countedName(bound.nutrient) : '';
}

function range({ min, max }: TargetBound): string {
  if (min !== undefined && max !== undefined) return `${figure(min)} to ${figure(max)}`;
  if (min !== undefined) return `${figure(min)} or more`;
  return max === undefined ? 'any' : `${figure(max)} or less`;
}

function unit(bound: TargetBound): string {
  if (!bound.nutrient) return 'by weight';
  const per = { 'as fed': 'per 100 g as fed', DM: 'per 100 g dry matter', 'per 1000 kcal': 'per 1000 kcal' };
  return `${nutrient(bound.nutrient).unit} ${per[bound.basis]}`;
}
