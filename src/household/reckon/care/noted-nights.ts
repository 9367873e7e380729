/** The nights on which left-overs were noted, and which nights a hoard may have been filled on. */
import type { Feeding, Remains } from '../../../care/model.ts';
import { daysBetween, plusDays } from '../../../kitchen/days.ts';
import type { Day } from '../../../kitchen/model.ts';
import type { Household } from '../../model.ts';
import { feedingsOf } from './records-of.ts';

/** Left-overs that were looked at together: of one night, or of several. */
export interface NotedNight {
  readonly since: Day;
  readonly on: Day;
  readonly bowl: Remains;
  /** What was offered on these days, in their order. */
  readonly feedings: readonly Feeding[];
  /** Days among them on which nothing was said to be offered. */
  readonly unticked: number;
}

/** Nights with the hoard that was found at their end. */
export interface HoardSpan {
  readonly nights: readonly NotedNight[];
  /** Absent where nobody looked for hoards after them. */
  readonly hoard?: Remains;
  /** The hoard may hold food of other days too: some before the first of these nights, or some that were not noted. */
  readonly others: boolean;
  /** Nobody is known to have looked for hoards before, so what was found may be older than all that was noted. */
  readonly first: boolean;
}

const offers = (f: Feeding) => (f.mix?.grams ?? 0) > 0 || f.beside.some((b) => b.grams > 0);

/** Nights whose left-overs in bowl and floor were noted, the latest last; nights of which nobody said what was offered are left out. */
export function notedNights(house: Pick<Household, 'feedings'>, animalId: string): NotedNight[] {
  const all = feedingsOf(house, animalId);
  let before: Day | undefined;
  return all.flatMap((feeding, at): NotedNight[] => {
    const { left, on } = feeding;
    if (!left?.bowl) return [];
    const asked = left.since !== undefined && left.since < on ? left.since : on;
    // What was looked at before is not looked at again.
    const since: Day = before !== undefined && asked <= before ? plusDays(before, 1) : asked;
    before = on;
    const feedings = daysUpTo(all, at, since).filter(offers);
    if (feedings.length === 0) return [];
    const unticked = Math.max(0, daysBetween(since, on) + 1 - feedings.length);
    return [{ since, on, bowl: left.bowl, feedings, unticked }];
  });
}

/** What was noted from a day on, up to one of the feedings: some of many years. */
function daysUpTo(all: readonly Feeding[], at: number, since: Day): Feeding[] {
  const found: Feeding[] = [];
  for (let i = at; i >= 0; i--) {
    const feeding = all[i];
    if (!feeding || feeding.on < since) break;
    found.unshift(feeding);
  }
  return found;
}

/** The noted nights that lie wholly within some days, gathered by the hoards that they may have filled. */
export function hoardSpans(
  house: Pick<Household, 'feedings'>,
  animalId: string,
  { from, to }: { readonly from: Day; readonly to: Day },
): HoardSpan[] {
  const all = feedingsOf(house, animalId);
  const nights = notedNights(house, animalId);
  const within = nights.filter((n) => n.since >= from && n.on <= to);
  const looks = all.flatMap((f) => (f.left?.hoard ? [{ on: f.on, hoard: f.left.hoard }] : []));
  const spans = looks.flatMap(({ on, hoard }, i): HoardSpan[] => {
    const after = looks[i - 1]?.on ?? '';
    const own = within.filter((n) => n.on > after && n.on <= on);
    if (own.length === 0) return [];
    const covered = new Set(own.flatMap((n) => n.feedings));
    const fed = all.filter((f) => f.on > after && f.on <= on && offers(f));
    const others = fed.some((f) => !covered.has(f)) || own.some((n) => n.since <= after);
    return [{ nights: own, hoard, others, first: i === 0 }];
  });
  const last = looks.at(-1)?.on ?? '';
  const open = within.filter((n) => n.on > last);
  return [...spans, ...open.map((n) => ({ nights: [n], others: true, first: false }))];
}

/** Days within some on which food was said to be offered. */
export function fedDays(
  house: Pick<Household, 'feedings'>,
  animalId: string,
  { from, to }: { readonly from: Day; readonly to: Day },
): number {
  return feedingsOf(house, animalId).filter((f) => f.on >= from && f.on <= to && offers(f)).length;
}
