/** Puts a household of drawn records in through the HTTP interface, as devices would have done over the years. */
import { expect } from 'vitest';
import type { Household, Kind } from '../../src/household/model.ts';
import { PROFILES } from '../../src/targets/profiles.ts';
import { demo } from './demo-version.ts';

type Ask = (path: string, init: RequestInit) => Response | Promise<Response>;

const DAY = '2026-03-14';
const AT = `${DAY}T09:30:00Z`;

/** The plainest record of each kind that others name. */
const PLAIN: Partial<Record<Kind, (id: string) => object>> = {
  foods: (id) => ({ id, name: id, kind: 'mix', composition: {}, sd: {}, source: '', invented: true }),
  profiles: (id) => ({ ...PROFILES[0], id }),
  animals: (id) => ({ ...demo.animals[0], id }),
  mixes: (id) => ({ ...demo.mixes[0], id, animalIds: [] }),
  lots: (id) => ({
    id,
    food: 'millet',
    name: id,
    grams: 1,
    form: 'dry',
    boughtOn: DAY,
    frozen: false,
    cold: [],
  }),
  dryingRuns: (id) => ({
    id,
    lot: 'lot-1',
    device: 'oven',
    celsius: 45,
    startedAt: AT,
    trays: 1,
    gramsBefore: 1,
    checks: [],
  }),
  batches: (id) => ({
    id,
    name: id,
    problem: demo.mixes[0]?.problem,
    shares: {},
    order: [],
    grams: 1,
    pours: [],
    animalIds: [],
    startedAt: AT,
  }),
};

/**
 * First all that is named is there, then each record becomes what was drawn, then what was not drawn is deleted, as far
 * as nothing holds it.
 * @param ids of each kind that a drawn record may name @returns the records that were refused, with why
 */
export async function putHousehold(
  house: Household,
  ids: Partial<Record<Kind, readonly string[]>>,
  ask: Ask,
): Promise<string[]> {
  const refused: string[] = [];
  const versions = new Map<string, number>();
  async function write(kind: Kind, id: string, body: unknown): Promise<void> {
    const at = versions.get(`${kind}/${id}`);
    const answer = await ask(`/api/${kind}/${encodeURIComponent(id)}`, {
      method: body === null ? 'DELETE' : 'PUT',
      headers: {
        ...(body === null ? {} : { 'content-type': 'application/json' }),
        ...(at === undefined ? { 'if-none-match': '*' } : { 'if-match': `"${at}"` }),
      },
      ...(body === null ? {} : { body: JSON.stringify(body) }),
    });
    expect(answer.status, `${kind}/${id}`).toBeLessThan(500);
    if (answer.status === 200) {
      const { record, along } = (await answer.json()) as { record: Told; along: Told[] };
      for (const told of [record, ...along]) versions.set(`${told.kind}/${told.id}`, told.version);
    } else if (body !== null) refused.push(`${kind}/${id}: ${await answer.text()}`);
  }
  for (const [kind, plain] of Object.entries(PLAIN) as [Kind, (id: string) => object][])
    for (const id of ids[kind] ?? []) await write(kind, id, plain(id));
  for (const [kind, records] of Object.entries(house) as [Kind, readonly { id: string }[]][])
    for (const record of records) await write(kind, record.id, record);
  for (const [kind, all] of Object.entries(ids) as [Kind, readonly string[]][])
    for (const id of all) if (!house[kind].some((r) => r.id === id)) await write(kind, id, null);
  return refused;
}

interface Told {
  readonly kind: Kind;
  readonly id: string;
  readonly version: number;
}
