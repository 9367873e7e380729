/** The days of what is fed from packs beside a mix: until when it lasts, and by when more is to be bought. */
import type { FedBeside } from '../../../kitchen/calendar/fed-beside.ts';
import type { Mix } from '../../model.ts';
import type { PelletStock } from '../cupboard/pellet-stock.ts';

interface BesideDays {
  readonly foods: readonly FedBeside[];
  /** Foods of which no pack is kept. */
  readonly without: readonly PelletStock[];
  /** Why nobody can say when a food runs out of which a pack is kept, one sentence each. */
  readonly unknown: readonly string[];
}

/** @param stocks of all foods fed from packs; those that the mix has beside it count */
export function besideDays(stocks: readonly PelletStock[], { problem }: Pick<Mix, 'problem'>): BesideDays {
  const own = stocks.filter((s) => problem.beside.some((b) => b.id === s.food));
  return {
    foods: own.flatMap(({ food, name, left, estimated, runsOut, buyBy }): FedBeside[] =>
      runsOut?.status === 'known' && buyBy !== undefined
        ? [{ food, name, left, estimated, gramsADay: runsOut.gramsADay, runsOut: runsOut.day, buyBy }]
        : [],
    ),
    without: own.filter((s) => s.packs.length === 0),
    unknown: own.flatMap(({ runsOut }) => (runsOut?.status === 'unknown' ? [runsOut.sentence] : [])),
  };
}
