import type { Figures } from '../figures.ts';

export const freezing = (f: Figures) => {
  const days = (n: number) => f.count(Math.round(n * 10) / 10, { one: 'day', other: 'days' });
  return {
    /** "step 2 (thaw)". */
    step: { freeze: 'freeze', thaw: 'thaw' },
    why: {
      pellet:
        'Pellets: pressed or baked hot, and sold in a closed pack. They need no freezing (common practice, no source).',
      fresh: 'Bought fresh: insects of the store room live in dry goods.',
      dried: (low: number, high: number) =>
        `Dried at home: grain insects die within about 15 minutes at ${f.degrees(low)} to ${f.degrees(high)}. Freeze it if it was dried cooler.`,
      animal: 'Dried animal food: freezing is common practice for plant goods. Freeze it if you see insects.',
      dry: 'Bought dry: insects may lie in it as eggs or grubs, some of them inside the kernels.',
      dryOfNoGroup: 'Bought dry, of no known group: insects may lie in it, so it goes into the freezer.',
    },
    before: (pack: string, n: number, kind: string, before: number, beforeKind: string) =>
      `${pack}: step ${f.number(n)} (${kind}) cannot be ticked off before step ${f.number(before)} (${beforeKind}). Tick off step ${f.number(before)} first, or go ahead and say why.`,
    tooSoon: (
      pack: string,
      n: number,
      kind: string,
      lasted: number,
      needed: number,
      day: string,
      due: string,
    ) =>
      `${pack}: step ${f.number(n)} (${kind}) will have lasted ${f.number(lasted)} of ${days(needed)} on ${day}. Tick it off on ${due} or later, or go ahead and say why.`,
    overlaps: (
      pack: string,
      n: number,
      kind: string,
      day: string,
      before: number,
      beforeKind: string,
      due: string,
    ) =>
      `${pack}: step ${f.number(n)} (${kind}) cannot begin on ${day}: step ${f.number(before)} (${beforeKind}) ends on ${due}. Begin then or later.`,
    noStep: (pack: string, n: number, of: number) =>
      `${pack} has no step ${f.number(n)} of freezing; it has ${f.number(of)}. Plan its freezing first.`,
    tickedAlready: (pack: string, n: number, kind: string, day: string) =>
      `${pack}: step ${f.number(n)} (${kind}) was ticked off on ${day} and is not changed any more.`,
    sayWhy: (pack: string) =>
      `${pack}: write a note that says why it is weighed out before its freezing is done.`,
    stopped: (pack: string, day: string, why: string) => `${pack} is not used any more since ${day}: ${why}.`,
    stoppedWayOut: 'Take another pack, or leave the food out of this batch.',
    wentAhead: (day: string, note: string) => `Its freezing is not done; you went ahead on ${day}: ${note}`,
    pastBestBefore: (day: string) => `Best before ${day}: look at it and smell it before you use it.`,
    notFrozen: (pack: string) => `${pack} was bought dry and has not been frozen and thawed.`,
    planIt: 'Plan its freezing, or go ahead and say why.',
    notYet: (pack: string, ready: string, day: string) =>
      `${pack} is done with freezing on ${ready}, not yet on ${day}.`,
    weighLater: (ready: string) => `Weigh it out on ${ready} or later, or go ahead and say why.`,
    notTicked: (pack: string, open: number) =>
      `${pack} is not done with freezing: ${f.count(open, { one: 'step is', other: 'steps are' })} not ticked off.`,
    tickOff: {
      freeze: (due: string, ready: string) =>
        `Tick off the freezing that ends on ${due}; it is ready on ${ready}. Or go ahead and say why.`,
      thaw: (due: string, ready: string) =>
        `Tick off the thawing that ends on ${due}; it is ready on ${ready}. Or go ahead and say why.`,
    },
    notUsed: (why: string) => `Not used any more: ${why}.`,
    late: (pack: string, needed: string, ready: string) =>
      `${pack} is wanted on ${needed}, but is done with freezing on ${ready} at the soonest.`,
    tooBig: (pack: string, size: number, room: number) =>
      `${pack} takes ${f.grams(size, 0)}, and the freezer has room for ${f.grams(room, 0)}.`,
    tooBigInLitres: (pack: string, size: number, room: number) =>
      `${pack} takes ${f.figure(size)} litres, and the freezer has ${f.figure(room)} litres.`,
    splitIt: (packs: number) => `Split it into ${f.number(packs)} packs, or make more room.`,
    tooWarm: (celsius: number, set: number) =>
      `Air of ${f.degrees(celsius)} is too warm to kill insects in a known time: set the freezer to ${f.degrees(set)} or colder.`,
    longer: (n: number, mid: number, most: number, core: number, hold: number) =>
      `${days(n)}: the core of this bag takes ${days(mid)} (at most ${days(most)}) to reach ${f.degrees(core)}. The hardiest insects tried died within ${days(hold)} at that or colder.`,
    usual: (n: number, most: number, core: number, hold: number) =>
      `${days(n)}, as is common practice; the core needs at most ${days(most)} to reach ${f.degrees(core)}. The hardiest insects tried died within ${days(hold)} at that or colder.`,
    source: (lethal: string, goods: string) => `Heat conduction; ${lethal}. ${goods}`,
    lethal: {
      laboratory:
        'Collins, Conyers, Cardwell: all larvae of Ephestia elutella in diapause dead after 22 days at -10 °C, 3 at -15 °C, 1 at -20 °C',
      bins: 'Canadian Grain Commission: grain at -5 °C for 12 weeks, -10 °C 8, -15 °C 4, -20 °C 1 week',
    },
  };
};

export type Freezing = ReturnType<typeof freezing>;
