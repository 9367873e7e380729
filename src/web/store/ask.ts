/** One question to the server. */
import type { KeptRecord } from '../../household/records.ts';
import { ApiError } from './api-error.ts';
import { tellUnpaired } from './unpaired.ts';

/** How long an answer is waited for, ms; after that it is asked for again. */
const PATIENCE = 20_000;

/** Asks the server; its answer as JSON, an empty object where it has no body. @param patience ms @throws ApiError with words for people */
export async function ask(path: string, init: RequestInit = {}, patience = PATIENCE): Promise<unknown> {
  let response: Response;
  let body: unknown;
  const cut = new AbortController();
  const timer = setTimeout(() => cut.abort(), patience);
  try {
    response = await fetch(path, { ...init, signal: cut.signal });
    body = await response.text().then(asJson);
  } catch {
    throw new ApiError(0, 'The Pouchful server does not answer. Is it still running?');
  } finally {
    clearTimeout(timer);
  }
  if (response.status === 401) tellUnpaired();
  if (response.status === 204) return {};
  if (response.ok && typeof body === 'object' && body !== null) return body;
  const told = (body ?? {}) as { field?: unknown; message?: unknown; stands?: KeptRecord };
  // A refusal of another program says nothing of what is kept here.
  if (typeof told.message !== 'string' || told.message === '')
    throw new ApiError(
      response.status >= 500 ? response.status : 0,
      response.status >= 500
        ? `The server answered ${response.status}.`
        : 'What answers at this address is no Pouchful. Is the server still running, and at this address?',
    );
  throw new ApiError(response.status, told.message, {
    ...(typeof told.field === 'string' && { field: told.field }),
    ...(told.stands && { stands: told.stands }),
  });
}

function asJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
