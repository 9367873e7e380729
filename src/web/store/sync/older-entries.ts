/** Entries at the scale that an older Pouchful left on this device, before it kept every change there. */
import type { Batch } from '../../../kitchen/model.ts';
import type { DeviceStorage } from '../../shared/device-storage.ts';
import type { Keeper } from './keeper.ts';

const PREFIX = 'pouchful.batch.';

interface Entry {
  readonly base: Batch;
  readonly next: Batch;
}

/** Hands them over to the keeper, which has the household already. What is none of them stays where it is. */
export function takeOverOlderEntries(keeper: Pick<Keeper, 'write'>, storage: DeviceStorage): void {
  for (const key of storage.keys(PREFIX)) {
    const entries = read(storage.getItem(key));
    if (!entries) continue;
    for (const { base, next } of entries) keeper.write('batches', next.id, next, { base, unseen: true });
    storage.removeItem(key);
  }
}

function read(text: string | null): Entry[] | undefined {
  try {
    const found = [JSON.parse(text ?? 'null') as Entry | Entry[] | null].flat();
    const isEntry = (e: Entry | null): e is Entry =>
      typeof e?.next?.id === 'string' && Array.isArray(e.next.pours) && Array.isArray(e.base?.pours);
    return found.every(isEntry) ? found : undefined;
  } catch {
    return undefined;
  }
}
