/** Answers that take long: what is being done, what is found so far, and how far that is from the best. */
import type { Figures } from '../figures.ts';

export const long = (f: Figures) => ({
  doing: {
    aims: 'Looking for the mix that meets your wishes…',
    best: 'Looking for the best mix…',
    spans: 'The mix is found. Working out how far each share may move…',
    conflict: 'No mix keeps all these limits. Looking for those that get in each other’s way…',
    remedies: 'No mix keeps all these limits. Trying what would help…',
    points: 'Looking for mixes between the two…',
    alone: 'Looking for the best mix of each animal…',
    together: 'Looking for one mix that suits all…',
    fewest: 'Looking for as few additions as will do…',
    lightest: 'Looking for additions as light as will do…',
  },
  steps: (done: number, of: number) => `Step ${f.number(done)} of ${f.number(of)} at most.`,
  found: {
    /** How much better it may get is not known yet. */
    some: 'Best found so far: a mix that keeps every limit. How much better it may get is not known yet.',
    nearest: (percent: number) =>
      `Best found so far: a mix that keeps every limit. It may come nearer to what you want by at most ${f.percent(percent, 0)}.`,
    cheapest: (price: number, less: number) =>
      `Best found so far: ${f.money(price)} per kg. It may get cheaper by at most ${f.money(less)} per kg.`,
    varied: (percent: number) =>
      `Best found so far: a mix that keeps every limit. It may get more varied by at most ${f.percent(percent, 0)}.`,
    fewest: (n: number, least: number) =>
      `Found so far: ${f.count(n, { one: 'addition', other: 'additions' })} for all animals together. Fewer than ${f.number(least)} will not do.`,
    lightest: (grams: number, least: number) =>
      `Found so far: additions of ${f.grams(grams, 1)} to 100 g of base. Less than ${f.grams(least, 1)} will not do.`,
  },
  stopHere: 'Stop here',
  goOn: 'Go on looking',
  stopped: {
    nothing: 'Stopped before anything was found.',
    found: 'Stopped. This is the best found so far; it is not proven that there is no better one.',
    points: 'Stopped. There may be more mixes between the two.',
    notSure: 'Stopped. What gets in the way was found; there may be more that helps.',
  },
  whyLater: 'What holds the best mix back is worked out once that mix is found.',
  took: 'It fits: every limit is kept. It is the best found before you stopped; there may be a better one.',
});

export type Long = ReturnType<typeof long>;
