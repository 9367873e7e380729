/** What packs, batches and runs of drying are called, when a run is checked, why a pack is not used, and what has no last day. */
import type { Figures } from '../figures.ts';

export const supply = (f: Figures) => ({
  /** Why a pack is passed over when a food is weighed out. */
  passed: {
    stopped: (day: string, why: string) => `Not used any more since ${day}: ${why}.`,
    fresh: 'It is fresh.',
    dryFirst: 'Dry it before it goes into a mix.',
  },
  /** Behind "not used any more:". */
  reasons: { recalled: 'recalled', infested: 'insects in it', spoiled: 'spoiled or mouldy' },
  withNote: (reason: string, note: string) => `${reason}: ${note}`,
  nobodyEats: (food: string) => `No animal is fed ${food} now, so it does not run out.`,
  lastsLong: (food: string) => `${food} lasts for longer than anybody can plan.`,
  /** The n-th of a mix, as it stands inside a sentence. */
  numbered: (n: number) => `batch ${f.number(n)}`,
  /** What a run is called where its pack is gone. */
  goneFood: 'Food of a pack that is gone',
  load: (name: string, n: number, of: number) => `${name}, load ${f.number(n)} of ${f.number(of)}`,
  check: {
    dueSince: (at: string) => `Look and turn now: it was due at ${at}`,
    next: (at: string, left: string) => `Look and turn at ${at}, in ${left}`,
    due: (name: string) => `Look and turn now: ${name}`,
  },
});

export type Supply = ReturnType<typeof supply>;
