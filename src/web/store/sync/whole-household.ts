/**
 * A household of many parts: fetched in several ranges at the same time, since each part alone would wait for the one
 * before; what is written down every day, most of an old household, comes last, so that screens which do not draw from it
 * stand before.
 */
import { type RecordsPage, SECTIONS, type Section } from '../../../household/records.ts';
import type { Replica } from './replica.ts';

/** @param upTo only changes up to this one, and of these only what is there now @param of only of this section */
export type Page = (after: number, upTo?: number, of?: Section) => Promise<RecordsPage>;

/** Requests at the same time; browsers make six to one server, and one of them listens for changes. */
const AT_ONCE = 3;
/** Ranges of a section: more than requests, since some hold much more than others. */
const RANGES = 8;

interface Range {
  readonly of: Section;
  /** What came of it so far. */
  after: number;
  readonly upTo: number;
}

/**
 * Takes everything that the household held when its first part was given; what changed since then is still to be fetched.
 * @param first the first part @param replica empty
 * @param arrived told each time that a section is whole, with those still to come
 * @returns fetches it, where there is more than the first part; called again after it threw, it goes on from there. It gives
 * whether all is here; not where another household was put in its place meanwhile
 */
export function wholeHousehold(
  page: Page,
  first: RecordsPage,
  replica: Replica,
  arrived: (coming: readonly Section[]) => void,
): (() => Promise<boolean>) | undefined {
  const { epoch, newest } = first;
  if (!first.more || !(newest > first.seq)) return undefined;
  const width = Math.ceil((newest - first.seq) / RANGES);
  const toCome: Range[] = [];
  for (const of of SECTIONS)
    for (let after = first.seq; after < newest; after += width)
      toCome.push({ of, after, upTo: Math.min(after + width, newest) });
  const parts: RecordsPage[] = [first];

  function ended(range: Range): void {
    toCome.splice(toCome.indexOf(range), 1);
    if (toCome.some(({ of }) => of === range.of)) return;
    for (const { records } of parts.splice(0)) for (const record of records) replica.take(record);
    const coming = SECTIONS.filter((of) => toCome.some((r) => r.of === of));
    if (coming.length > 0) arrived(coming);
  }

  return async () => {
    const queue = [...toCome];
    let isOther = false;
    let isOver = false;
    async function fetchRanges(): Promise<void> {
      for (let range = queue.shift(); range && !isOver; range = queue.shift()) {
        while (range.after < range.upTo && !isOver) {
          const part = await page(range.after, range.upTo, range.of);
          isOther ||= part.epoch !== epoch;
          isOver ||= isOther;
          if (isOther) return;
          parts.push(part);
          range.after = part.more ? part.seq : range.upTo;
        }
        if (range.after >= range.upTo) ended(range);
      }
    }
    // None goes on once another failed: who asks again goes on from there.
    const lanes = await Promise.allSettled(
      Array.from({ length: AT_ONCE }, () =>
        fetchRanges().catch((error) => {
          isOver = true;
          throw error;
        }),
      ),
    );
    for (const lane of lanes) if (lane.status === 'rejected') throw lane.reason;
    if (isOther) return false;
    replica.seq = newest;
    return true;
  };
}
