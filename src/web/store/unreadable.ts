/** Records that cannot be shown: there is nothing of them to be changed, only to be let go. */
import type { KeptRecord } from '../../household/records.ts';
import { ask } from './ask.ts';
import { deviceName } from './device-name.ts';
import { keeper } from './page-keeper.ts';

/** Deletes one. Its text stays in the history. @throws ApiError */
export async function removeUnreadable({ kind, id, version }: KeptRecord): Promise<void> {
  await ask(`/api/${kind}/${encodeURIComponent(id)}`, {
    method: 'DELETE',
    headers: { 'if-match': `"${version}"`, 'pouchful-device': encodeURIComponent(deviceName()) },
  });
  await keeper.pull();
}
