/** The server's HTTP interface as plain functions. Every failure is an {@link ApiError} with words for people. */
import type { Household, Kept, Kind } from '../../household/model.ts';

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

export async function remove(kind: Kind, id: string): Promise<void> {
  await send(`/api/${kind}/${encodeURIComponent(id)}`, { method: 'DELETE' });
}
