/** A household of many parts, fetched in several ranges at the same time: each part alone would wait for the one before. */
import type { RecordsPage } from '../../../household/records.ts';
import type { Replica } from './replica.ts';

/** @param upTo only changes up to this one, and of these only what is there now */
export type Page = (after: number, upTo?: number) => Promise<RecordsPage>;

/** Requests at the same time; browsers make six to one server, and one of them listens for changes. */
const AT_ONCE = 3;
/** Ranges: more than requests, since some hold much more than others. */
const RANGES = 12;

/**
 * Takes everything that the household held when its first part was given; what changed since then is still to be fetched.
 * @param first the first part @param replica empty
 * @returns whether it did; not where there is no more than the first part, or another household was put in its place meanwhile
 */
export async function fetchWhole(page: Page, first: RecordsPage, replica: Replica): Promise<boolean> {
  const { epoch, newest } = first;
  if (!first.more || !(newest > first.seq)) return false;
  const width = Math.ceil((newest - first.seq) / RANGES);
  const ranges: [after: number, upTo: number][] = [];
  for (let after = first.seq; after < newest; after += width)
    ranges.push([after, Math.min(after + width, newest)]);
  const parts = [first];
  let isOther = false;
  async function fetchRanges(): Promise<void> {
    for (let range = ranges.shift(); range && !isOther; range = ranges.shift()) {
      const [, upTo] = range;
      for (let [after] = range; after < upTo && !isOther; ) {
        const part = await page(after, upTo);
        if (part.epoch !== epoch) isOther = true;
        else parts.push(part);
        after = part.more ? part.seq : upTo;
      }
    }
  }
  await Promise.all(Array.from({ length: AT_ONCE }, fetchRanges));
  if (isOther) return false;
  for (const { records } of parts) for (const record of records) replica.take(record);
  replica.seq = newest;
  return true;
}
