/**
 * A household of many parts: several of them are fetched at the same time, since each alone would wait for the one before.
 * Where to cut it the server says. What is written down every day, most of an old household, comes last, so that screens which
 * do not draw from it stand before.
 */
import { piecesAfter, type RecordsPage, SECTIONS, type Section } from '../../../household/records.ts';
import type { Replica } from './replica.ts';

/** @param upTo only changes up to this one, and of these only what is there now @param of only of this section */
export type Page = (after: number, upTo?: number, of?: Section) => Promise<RecordsPage>;

/** Requests at the same time; browsers make six to one server, and one of them listens for changes. */
const AT_ONCE = 4;

/** A piece, of which `after` moves on where it comes in several answers. */
type Piece = ReturnType<typeof piecesAfter>[number];

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
  const toCome = new Set(piecesAfter(first));
  /** Not taken before an answer says that it is still this household. */
  const waiting = [first];
  let isOther = false;

  /** Takes each part as it comes: all of them at the end would keep the page busy for long. */
  async function fetchNext(piece: Piece): Promise<void> {
    const part = await page(piece.after, piece.upTo, piece.of);
    isOther ||= part.epoch !== epoch;
    if (isOther) return;
    for (const { records } of [...waiting.splice(0), part])
      for (const record of records) replica.take(record);
    piece.after = part.more ? part.seq : piece.upTo;
    if (piece.after < piece.upTo) return;
    toCome.delete(piece);
    const coming = SECTIONS.filter((of) => [...toCome].some((p) => p.of === of));
    if (coming.length > 0 && !coming.includes(piece.of)) arrived(coming);
  }

  return async () => {
    const pieces = [...toCome].values();
    let fault: unknown;
    /** Takes one piece after the other that none is at; none goes on once another failed. */
    async function lane(): Promise<void> {
      for (const piece of pieces)
        while (toCome.has(piece) && !isOther && fault === undefined)
          await fetchNext(piece).catch((error) => {
            fault = error;
          });
    }
    await Promise.all(Array.from({ length: AT_ONCE }, lane));
    if (fault !== undefined) throw fault;
    if (isOther) return false;
    replica.seq = newest;
    return true;
  };
}
