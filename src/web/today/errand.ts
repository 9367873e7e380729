/** One thing that needs hands, and how pressing it is. */

/** A place of the client, as its address has it. */
export type Place = readonly string[];

/** How pressing: an animal may come to harm; it should have been done; or it is to be done. */
const RANKS = ['danger', 'overdue', 'later'] as const;

export interface Errand {
  readonly key: string;
  readonly rank: (typeof RANKS)[number];
  readonly words: string;
  /** What the link says, and where it goes. */
  readonly link: string;
  readonly to: Place;
  /** The mix that it is about: it is taken to hand on the way there. */
  readonly mix?: string;
  /** Something may be wrong, not only to be done. */
  readonly warns?: true;
}

/** The most pressing first; those of one rank in the order given. */
export function byRank(errands: readonly Errand[]): Errand[] {
  return RANKS.flatMap((rank) => errands.filter((e) => e.rank === rank));
}
