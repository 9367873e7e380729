/** The server's HTTP interface as plain functions. Every failure is an {@link ApiError} with words for people. */
import type { ChangeDetail, HistoryPage, KeptRecord, RecordsPage, Written } from '../../household/records.ts';
import { tellUnpaired } from './access.ts';
import { ApiError } from './api-error.ts';
import { deviceName } from './device-name.ts';
import type { Change } from './sync/change.ts';
import { requestFor } from './sync/request.ts';

/** How long an answer is waited for, ms; after that it is asked for again. */
const PATIENCE = 20_000;
/** @throws ApiError */
async function ask(path: string, init: RequestInit = {}): Promise<unknown> {
  let response: Response;
  let body: unknown;
  const cut = new AbortController();
  const timer = setTimeout(() => cut.abort(), PATIENCE);
  try {
    response = await fetch(path, { ...init, signal: cut.signal });
    body = await response.text().then(asJson);
  } catch {
    throw new ApiError(0, 'The Pouchful server does not answer. Is it still running?');
  } finally {
    clearTimeout(timer);
  }
  if (response.status === 401) tellUnpaired();
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

/** What changed after `after`, the first part of it. */
export async function fetchRecords(after: number): Promise<RecordsPage> {
  const page = (await ask(`/api/records?after=${after}`)) as Partial<RecordsPage>;
  if (Array.isArray(page.records) && typeof page.seq === 'number' && typeof page.epoch === 'string')
    return page as RecordsPage;
  throw new ApiError(0, 'What answers at this address is no Pouchful of this version. Load the page anew.');
}

/** Makes a change. Sent again under the same id, it is not made twice. @param leaving by a request that outlives the page */
export async function sendChange(change: Change, leaving: boolean): Promise<Written> {
  const { method, path, headers, body, otherwise } = requestFor(change, deviceName());
  const written = (await ask(path, {
    method,
    headers,
    ...(body !== undefined && { body }),
    keepalive: leaving,
  }).catch((error: unknown) => {
    const gone = error instanceof ApiError && error.status === 404;
    if (!gone || !otherwise) throw error;
    return ask(path.replace(/\/pours$/, ''), { ...otherwise, keepalive: leaving });
  })) as Partial<Written>;
  if (typeof written.record?.version === 'number' && Array.isArray(written.along)) return written as Written;
  throw new ApiError(0, 'What answers at this address is no Pouchful of this version. Load the page anew.');
}

export interface HistoryQuery {
  readonly kind?: string;
  readonly id?: string;
  /** Only changes before this number. */
  readonly before?: number;
  /** Only what is deleted now. */
  readonly deleted?: boolean;
}

/** What was changed, newest first, a part of it. */
export async function fetchHistory({ kind, id, before, deleted }: HistoryQuery): Promise<HistoryPage> {
  const query = new URLSearchParams({
    ...(kind !== undefined && { kind }),
    ...(id !== undefined && { id }),
    ...(before !== undefined && { before: String(before) }),
    ...(deleted && { deleted: '1' }),
  });
  return (await ask(`/api/history?${query}`)) as HistoryPage;
}

/** One change, with what stood before and after it. */
export async function fetchChange(seq: number): Promise<ChangeDetail> {
  return (await ask(`/api/history/${seq}`)) as ChangeDetail;
}

/** Undoes a change and all that were made together with it. */
export async function takeBack(seq: number): Promise<void> {
  await ask(`/api/history/${seq}/take-back`, {
    method: 'POST',
    headers: { 'pouchful-device': encodeURIComponent(deviceName()) },
  });
}
