/**
 * A household of many parts: several ranges of it are fetched at the same time, since each part alone would wait for the one
 * before. What is written down every day, most of an old household, comes last, so that screens which do not draw from it
 * stand before.
 */
import { type RecordsPage, SECTIONS, type Section } from '../../../household/records.ts';
import type { Replica } from './replica.ts';

/** @param upTo only changes up to this one, and of these only what is there now @param of only of this section */
export type Page = (after: number, upTo?: number, of?: Section) => Promise<RecordsPage>;

/** Requests at the same time; browsers make six to one server, and one of them listens for changes. */
const AT_ONCE = 4;
/** A range that spans fewer changes than this is not split. */
const LEAST = 64;

/** What is still to come of a section, or of a part of it. */
interface Range {
  readonly of: Section;
  after: number;
  upTo: number;
  /** How many changes an answer spans, by the last one; 0 before the first. */
  step: number;
  /** Whether somebody is at it. */
  taken: boolean;
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
  const toCome: Range[] = SECTIONS.map((of) => ({
    ...{ of, after: first.seq, upTo: newest },
    ...{ step: 0, taken: false },
  }));
  /** Not taken before an answer says that it is still this household. */
  const waiting = [first];

  /** Takes each part as it comes: all of them at the end would keep the page busy for long. */
  function take(part: RecordsPage): void {
    for (const { records } of [...waiting.splice(0), part])
      for (const record of records) replica.take(record);
  }

  function ended(range: Range): void {
    toCome.splice(toCome.indexOf(range), 1);
    if (toCome.some(({ of }) => of === range.of)) return;
    const coming = SECTIONS.filter((of) => toCome.some((r) => r.of === of));
    if (coming.length > 0) arrived(coming);
  }

  return async () => {
    let isOther = false;
    let isOver = false;
    async function fetchRanges(): Promise<void> {
      for (let range = nextOf(toCome); range && !isOver; range = nextOf(toCome)) {
        range.taken = true;
        while (range.after < range.upTo && !isOver) {
          const { after, upTo, of } = range;
          const part = await page(after, upTo, of);
          isOther ||= part.epoch !== epoch;
          isOver ||= isOther;
          if (isOther) return;
          take(part);
          range.after = part.more ? part.seq : upTo;
          range.step = range.after - after;
        }
        if (range.after >= range.upTo) ended(range);
      }
    }
    for (const range of toCome) range.taken = false;
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

/**
 * What to fetch next of the section that comes first: what nobody is at, or the half of the widest range that who is at it
 * would come to last. Where its records lie is not known before: they may all lie at one end.
 */
function nextOf(toCome: Range[]): Range | undefined {
  for (const section of SECTIONS) {
    const ranges = toCome.filter(({ of }) => of === section);
    const free = ranges.find(({ taken }) => !taken);
    if (free) return free;
    // What is asked for this moment will span as much as the answer before it.
    const width = ({ after, upTo, step }: Range) => upTo - after - step;
    const [widest] = ranges.sort((a, b) => width(b) - width(a));
    if (!widest || width(widest) < Math.max(LEAST, widest.step)) continue;
    const { of, upTo, step } = widest;
    const middle = upTo - Math.floor(width(widest) / 2);
    widest.upTo = middle;
    const half: Range = { of, after: middle, upTo, step, taken: false };
    toCome.push(half);
    return half;
  }
  return undefined;
}
