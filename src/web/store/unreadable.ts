/** Records that cannot be read are no part of what the page keeps; they are deleted by a request of their own. */
import type { KeptRecord } from '../../household/records.ts';
import { ApiError } from './api-error.ts';

/** @throws ApiError */
export async function deleteUnreadable({ kind, id, version }: KeptRecord): Promise<void> {
  const response = await fetch(`/api/${kind}/${encodeURIComponent(id)}`, {
    method: 'DELETE',
    headers: { 'if-match': `"${version}"` },
  }).catch(() => undefined);
  if (!response) throw new ApiError(0, 'The Pouchful server does not answer. Is it still running?');
  if (response.ok) return;
  const { message } = (await response.json().catch(() => ({}))) as { message?: string };
  throw new ApiError(response.status, message ?? `The server answered ${response.status}.`);
}
