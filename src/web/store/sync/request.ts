/** A change as the request that brings it to the server. */
import { same } from '../../../household/merge/merge-record.ts';
import type { PourEntry } from '../../../household/model.ts';
import type { Batch } from '../../../kitchen/model.ts';
import type { Change } from './change.ts';

interface ChangeRequest {
  readonly method: 'PUT' | 'POST' | 'DELETE';
  readonly path: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly body?: string;
  /** The whole record, where there is none to add to. */
  readonly otherwise?: Pick<ChangeRequest, 'method' | 'headers' | 'body'>;
}

/** @param device name of this device, for the history */
export function requestFor(
  { kind, id, base, body, writeId }: Omit<Change, 'slot' | 'at'>,
  device: string,
): ChangeRequest {
  const path = `/api/${kind}/${encodeURIComponent(id)}`;
  const headers = {
    ...(base.version === 0 ? { 'if-none-match': '*' } : { 'if-match': `"${base.version}"` }),
    'idempotency-key': writeId,
    'pouchful-device': encodeURIComponent(device),
  };
  if (body === null) return { method: 'DELETE', path, headers };
  const json = { ...headers, 'content-type': 'application/json' };
  const put = { method: 'PUT', headers: json, body: JSON.stringify(body) } as const;
  const added = kind === 'batches' && base.body ? addedPours(base.body as Batch, body as Batch) : undefined;
  if (!added) return { ...put, path };
  return {
    method: 'POST',
    path: `${path}/pours`,
    headers: json,
    body: JSON.stringify(added),
    otherwise: put,
  };
}

/** The pours that `next` has beyond `base`, and the stock said with them; undefined where anything else differs. */
export function addedPours(base: Batch, next: Batch): PourEntry | undefined {
  const { pours: before, stock: stockBefore, ...rest } = base;
  const { pours: after, stock, ...restNow } = next;
  const pours = after.slice(before.length);
  const onlyAdded = pours.length > 0 && same(after.slice(0, before.length), before) && same(rest, restNow);
  if (!onlyAdded) return undefined;
  if (same(stock, stockBefore)) return { pours };
  return stock && { pours, stock };
}
