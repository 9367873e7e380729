/** One question to the server, in the language of the page: what it refuses it says in that. */
import type { KeptRecord } from '../../household/records.ts';
import { languageHere, wordsOnceHere } from '../shared/words/texts.ts';
import { ApiError, type FieldFault } from './api-error.ts';
import { tellUnpaired } from './unpaired.ts';

/** How long an answer is waited for, ms; after that it is asked for again. */
const PATIENCE = 20_000;

interface Question extends RequestInit {
  readonly headers?: Readonly<Record<string, string>>;
}

/** Asks the server; its answer as JSON, an empty object where it has no body. @param patience ms @throws ApiError with words for people */
export async function ask(path: string, question: Question = {}, patience = PATIENCE): Promise<unknown> {
  let response: Response;
  let body: unknown;
  const cut = new AbortController();
  const timer = setTimeout(() => cut.abort(), patience);
  try {
    response = await fetch(path, {
      ...question,
      headers: { ...question.headers, 'accept-language': languageHere() },
      signal: cut.signal,
    });
    body = await response.text().then(asJson);
  } catch {
    throw new ApiError(0, (await wordsOnceHere()).store.server.silent);
  } finally {
    clearTimeout(timer);
  }
  if (response.status === 401) tellUnpaired();
  if (response.status === 204) return {};
  if (response.ok && typeof body === 'object' && body !== null) return body;
  const told = (body ?? {}) as { field?: unknown; message?: unknown; stands?: KeptRecord; faults?: unknown };
  // A refusal of another program says nothing of what is kept here.
  if (typeof told.message !== 'string' || told.message === '') {
    const { server } = (await wordsOnceHere()).store;
    throw response.status >= 500
      ? new ApiError(response.status, server.failed(response.status))
      : new ApiError(0, server.stranger);
  }
  throw new ApiError(response.status, told.message, {
    ...(typeof told.field === 'string' && { field: told.field }),
    ...(told.stands && { stands: told.stands }),
    ...(Array.isArray(told.faults) && { faults: told.faults as FieldFault[] }),
  });
}

/** What answers in a way that this page does not know. */
export async function strangeAnswer(): Promise<ApiError> {
  return new ApiError(0, (await wordsOnceHere()).store.server.otherVersion);
}

function asJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
