/** Files of older versions of the format, brought to the newest, one version after the other. */
import type { Problem } from '../../formulation/problem/problem.ts';
import type { OwnFood } from '../model.ts';
import { withPrintedLists } from '../reckon/foods/printed-lists.ts';
import { FORMAT_VERSION } from './format.ts';

/** From version i + 1 to i + 2, by place. A file is changed only where its shape was; what records hold is checked after. */
const STEPS: readonly ((file: Record<string, unknown>) => Record<string, unknown>)[] = [
  putPrintedLists,
  // Version 3 knows more kinds of records; what an older file holds is as it was.
  (file) => file,
];

/** @param version of the file, from 1 to the newest */
export function upgraded(file: Record<string, unknown>, version: number): Record<string, unknown> {
  return STEPS.slice(version - 1, FORMAT_VERSION - 1).reduce((f, step) => step(f), file);
}

/** What the packs of own foods print stands beside them in the problems of mixes, in a household and in a part of one. */
function putPrintedLists(file: Record<string, unknown>): Record<string, unknown> {
  const records = listIn(file, 'records').filter(isObject);
  const bodies = records.flatMap((r) => (r.kind === 'foods' ? [r.body] : []));
  const foods = [...bodies, ...listIn(file, 'foods')].filter(isFood);
  const told = (body: unknown) =>
    isObject(body) && isProblem(body.problem)
      ? { ...body, problem: withPrintedLists(body.problem, foods) }
      : body;
  const makesMixes = (r: Record<string, unknown>) => r.kind === 'mixes' || r.kind === 'versions';
  return {
    ...file,
    ...(Array.isArray(file.records) && {
      records: file.records.map((r) => (isObject(r) && makesMixes(r) ? { ...r, body: told(r.body) } : r)),
    }),
    ...(file.mix !== undefined && { mix: told(file.mix) }),
  };
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function listIn(object: Record<string, unknown>, field: string): readonly unknown[] {
  const list = object[field];
  return Array.isArray(list) ? list : [];
}

/** As far as it matters here; the rest is checked with all else. */
function isFood(value: unknown): value is OwnFood {
  if (!isObject(value) || typeof value.id !== 'string' || !isObject(value.evidence)) return false;
  const { ingredients, sources } = value.evidence;
  const printed = sources === undefined ? [] : Array.isArray(sources) ? sources : [undefined];
  const isText = (text: unknown) => text === undefined || typeof text === 'string';
  return isText(ingredients) && printed.every((s) => isObject(s) && isText(s.printed));
}

function isProblem(value: unknown): value is Problem {
  return isObject(value) && [value.foods, value.beside].every((l) => Array.isArray(l) && l.every(isObject));
}
