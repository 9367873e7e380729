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
  readonly after: number;
  readonly upTo: number;
}

/**
 * Takes everything that the household held when its first part was given; what changed since then is still to be fetched.
 * @param first the first part @param replica empty
 * @param arrived told each time that a section is whole, with those still to come
 * @returns whether it did; not where there is no more than the first part, or another household was put in its place meanwhile
 */
export async function fetchWhole(
  page: Page,
  first: RecordsPage,
  replica: Replica,
  arrived: (coming: readonly Section[]) => void = () => {},
): Promise<boolean> {
  const { epoch, newest } = first;
  if (!first.more || !(newest > first.seq)) return false;
  const width = Math.ceil((newest - first.seq) / RANGES);
  const ranges: Range[] = [];
  for (const of of SECTIONS)
    for (let after = first.seq; after < newest; after += width)
      ranges.push({ of, after, upTo: Math.min(after + width, newest) });
  const toCome = [...ranges];
  const parts: RecordsPage[] = [first];
  let isOther = false;

  async function fetchRanges(): Promise<void> {
    for (let range = ranges.shift(); range && !isOther; range = ranges.shift()) {
      const { of, upTo } = range;
      for (let { after } = range; after < upTo && !isOther; ) {
        const part = await page(after, upTo, of);
        if (part.epoch !== epoch) isOther = true;
        else parts.push(part);
        after = part.more ? part.seq : upTo;
      }
      if (!isOther) ended(range);
    }
  }

  function ended(range: Range): void {
    toCome.splice(toCome.indexOf(range), 1);
    if (toCome.some(({ of }) => of === range.of)) return;
    for (const { records } of parts.splice(0)) for (const record of records) replica.take(record);
    const coming = SECTIONS.filter((of) => toCome.some((r) => r.of === of));
    if (coming.length > 0) arrived(coming);
  }

  await Promise.all(Array.from({ length: AT_ONCE }, fetchRanges));
  if (isOther) return false;
  replica.seq = newest;
  return true;
}
