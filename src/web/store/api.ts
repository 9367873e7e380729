/** The server's HTTP interface as plain functions. Every failure is an {@link ApiError} with words for people. */
import type { Household, Kept, Kind, PourAnswer, PourEntry } from '../../household/model.ts';
import type { Batch } from '../../kitchen/model.ts';

export class ApiError extends Error {
  readonly field?: string;
  /** HTTP status; 0 when the server could not be reached. */
  readonly status: number;
  /** The batch as it stands, where another device went on with it. */
  readonly batch?: Batch;
  constructor(status: number, message: string, { field, batch }: { field?: string; batch?: Batch } = {}) {
    super(message);
    this.name = 'ApiError';
    this.status = status;
    this.field = field;
    this.batch = batch;
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
  const body = (await response.json().catch(() => ({}))) as {
    field?: string;
    message?: string;
    batch?: Batch;
  };
  throw new ApiError(response.status, body.message ?? `The server answered ${response.status}.`, body);
}

export async function fetchHousehold(): Promise<Household> {
  return (await send('/api/household')).json();
}

/** Stores one object. With `leaving`, the request outlives the page. */
export async function put<K extends Kind>(kind: K, object: Kept<K>, leaving = false): Promise<void> {
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

/**
 * Stores a batch that still stands as the page saw it.
 * @param seen its tag as the page saw it
 */
export async function putUnlessOvertaken(batch: Batch, seen: string): Promise<void> {
  await send(`/api/batches/${encodeURIComponent(batch.id)}`, {
    method: 'PUT',
    headers: { 'content-type': 'application/json', 'if-match': `"${seen}"` },
    body: JSON.stringify(batch),
  });
}

/** Adds pours to a batch; those that it has already are not added again. */
export async function postPours(batchId: string, entry: PourEntry): Promise<PourAnswer> {
  const answer = await send(`/api/batches/${encodeURIComponent(batchId)}/pours`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(entry),
  });
  return answer.json();
}

export async function remove(kind: Kind, id: string): Promise<void> {
  await send(`/api/${kind}/${encodeURIComponent(id)}`, { method: 'DELETE' });
}
