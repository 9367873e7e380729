/** The server's HTTP interface as plain functions. Every failure is an {@link ApiError} with words for people. */
import type { Animal, Household, Mix, MixVersion, OwnFood } from '../../household/model.ts';
import type { Batch, DryingRun, Kitchen, Lot, Offer } from '../../kitchen/model.ts';
import type { TargetProfile } from '../../targets/profile.ts';

export class ApiError extends Error {
  readonly field?: string;
  /** HTTP status; 0 when the server could not be reached. */
  readonly status: number;
  constructor(status: number, message: string, field?: string) {
    super(message);
    this.name = 'ApiError';
    this.status = status;
    this.field = field;
  }
}

async function send(path: string, init?: RequestInit): Promise<Response> {
  let response: Response;
  try {
    response = await fetch(path, init);
  } catch {
    throw new ApiError(0, 'The Pouchful server does not answer. Is it still running?');
  }
  if (response.ok) return response;
  const body = (await response.json().catch(() => ({}))) as { field?: string; message?: string };
  throw new ApiError(response.status, body.message ?? `The server answered ${response.status}.`, body.field);
}

/** What is kept one by one, by the name its address has. */
export interface KeptObjects {
  foods: OwnFood;
  profiles: TargetProfile;
  animals: Animal;
  mixes: Mix;
  versions: MixVersion;
  lots: Lot;
  offers: Offer;
  dryingRuns: DryingRun;
  batches: Batch;
  kitchen: Kitchen;
}

export async function fetchHousehold(): Promise<Household> {
  return (await send('/api/household')).json();
}

/** Stores one object. With `leaving`, the request outlives the page. */
export async function put<K extends keyof KeptObjects>(
  kind: K,
  object: KeptObjects[K],
  leaving = false,
): Promise<void> {
  const body = JSON.stringify(object);
  // Browsers refuse keepalive bodies over 64 KiB.
  const keepalive = leaving && body.length < 60_000;
  await send(`/api/${kind}/${encodeURIComponent(object.id)}`, {
    method: 'PUT',
    headers: { 'content-type': 'application/json' },
    body,
    keepalive,
  });
}

export async function remove(kind: keyof KeptObjects, id: string): Promise<void> {
  await send(`/api/${kind}/${encodeURIComponent(id)}`, { method: 'DELETE' });
}
