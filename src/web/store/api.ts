/** The household at the server, as plain functions. Every failure is an {@link ApiError} with words for people. */
import {
  type ChangeDetail,
  type HistoryPage,
  type RecordsPage,
  recordInFull,
  type Section,
  type SentRecord,
  type Written,
} from '../../household/records.ts';
import { ApiError } from './api-error.ts';
import { ask, strangeAnswer } from './ask.ts';
import { deviceName } from './device-name.ts';
import type { Change } from './sync/change.ts';
import { requestFor } from './sync/request.ts';

/**
 * What changed after `after`, the first part of it.
 * @param upTo of changes up to this one alone, what is there now @param of this section alone
 */
export async function fetchRecords(after: number, upTo?: number, of?: Section): Promise<RecordsPage> {
  const range = upTo === undefined ? '' : `&upTo=${upTo}`;
  const section = of === undefined ? '' : `&of=${of}`;
  const page = (await ask(`/api/records?after=${after}${range}${section}&brief=1`)) as Partial<RecordsPage>;
  if (Array.isArray(page.records) && typeof page.seq === 'number' && typeof page.epoch === 'string')
    return { ...(page as RecordsPage), records: (page.records as SentRecord[]).map(recordInFull) };
  throw await strangeAnswer();
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
  throw await strangeAnswer();
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
