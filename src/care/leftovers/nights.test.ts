/**
 * Ten thousand simulated nights: what the animal truly ate of each food lies within the limits, however the keeper noted
 * what was left, and so do nutrients, compositions and hoards. Drawn from a seed, so the same nights every time.
 */
import { describe, expect, it } from 'vitest';
import type { Remains } from '../model.ts';
import { contentEaten, eatenByFood, eatenInAll, nutrientEaten } from './intake-set.ts';
import { type Range, sumOf } from './pile.ts';
import { DRIES, type OfferedFood } from './pile-of.ts';
import { sortingIndex } from './sorting-index.ts';
import { observe } from './stretch.ts';

const NIGHTS = 10_000;

/** Mulberry32: a small generator of numbers from 0 to 1. */
function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

type Way = 'sorted' | 'whole' | 'mostly' | 'mostly and whole' | 'partly' | 'partly, the rest whole';
const WAYS: readonly Way[] = [
  'sorted',
  'whole',
  'mostly',
  'mostly and whole',
  'partly',
  'partly, the rest whole',
];

/** Now and then a food is fresh. */
const wetOf = (random: () => number, names: number) => Array.from({ length: names }, () => random() < 0.08);

interface Truth {
  readonly offered: readonly OfferedFood[];
  /** g as offered, of each food. */
  readonly left: readonly number[];
  readonly hoarded: readonly number[];
  readonly eaten: readonly number[];
}

/** @param wet which foods are fresh */
function night(random: () => number, names: number, wet: readonly boolean[]): Truth {
  const offered = Array.from({ length: names }, (_, i): OfferedFood => {
    // Now and then there is a crumb of it alone.
    const grams = random() < 0.1 ? 0.1 : 0.2 + 3 * random();
    return { food: `food-${i}`, grams, ...(wet[i] && { fresh: true }) };
  });
  const all = offered.map(({ grams }) => {
    const taste = random();
    const left = taste < 0.25 ? 0 : taste > 0.85 ? grams : grams * random();
    const hoarded = random() < 0.4 ? (grams - left) * random() : 0;
    return { left, hoarded, eaten: grams - left - hoarded };
  });
  return {
    offered,
    left: all.map((a) => a.left),
    hoarded: all.map((a) => a.hoarded),
    eaten: all.map((a) => a.eaten),
  };
}

/** What a keeper notes of a pile; fresh food has dried by then. */
function noted(
  random: () => number,
  way: Way,
  offered: readonly OfferedFood[],
  pile: readonly number[],
): Remains {
  const weighed = pile.map((g, i) => (offered[i]?.fresh ? g * (1 - DRIES * random()) : g));
  const grams = sumOf(weighed);
  const mostly = offered.filter((f, i) => (pile[i] ?? 0) >= f.grams / 2 && random() < 0.7).map((f) => f.food);
  const entries = offered.map((f, i) => [f.food, weighed[i] ?? 0] as const);
  const some = Object.fromEntries(entries.filter(() => random() < 0.4));
  switch (way) {
    case 'sorted':
      return { parts: Object.fromEntries(entries), sorted: true };
    case 'whole':
      return { grams };
    case 'mostly':
      return { mostly };
    case 'mostly and whole':
      return { mostly, grams };
    case 'partly':
      return { parts: some };
    case 'partly, the rest whole':
      return { parts: some, grams, mostly };
  }
}

const SLACK = 1e-7;
const inside = (value: number, range: Range) => value >= range.low - SLACK && value <= range.high + SLACK;

const content = (i: number) => (i * 37) % 83;
/** Of every fourth food nothing is known but that it is no more than half of it. */
const amountsOf = (n: number): Range[] =>
  Array.from({ length: n }, (_, i) =>
    i % 4 === 3 ? { low: 0, high: 50 } : { low: content(i), high: content(i) },
  );
const trueAmount = (i: number, random: () => number) => (i % 4 === 3 ? 50 * random() : content(i));

describe('ten thousand nights', () => {
  it('one by one: the truth lies within every limit', () => {
    const random = chance(20_251_129);
    const outside: string[] = [];
    const tallies = { looked: 0, unlooked: 0, exact: 0 };
    for (let n = 0; n < NIGHTS; n++) {
      const names = 1 + Math.floor(random() * 12);
      const truth = night(random, names, wetOf(random, names));
      const bowlWay = WAYS[Math.floor(random() * WAYS.length)] ?? 'whole';
      const hoardWay = WAYS[Math.floor(random() * WAYS.length)] ?? 'whole';
      const looks = random() < 0.5;
      const seen = observe({
        looks: [{ offered: truth.offered, bowl: noted(random, bowlWay, truth.offered, truth.left) }],
        ...(looks && { hoard: noted(random, hoardWay, truth.offered, truth.hoarded) }),
      });
      tallies[looks ? 'looked' : 'unlooked']++;
      const amounts = [amountsOf(truth.offered.length)];
      const held = truth.offered.map((_, i) => trueAmount(i, random));
      const taken = truth.eaten.map((g, i) => g + (truth.hoarded[i] ?? 0));
      const told = `night ${n}, bowl ${bowlWay}, ${looks ? `hoard ${hoardWay}` : 'no hoard'}`;
      for (const [what, set, grams] of [
        ['taken', seen.taken, taken],
        ['eaten', seen.eaten, truth.eaten],
      ] as const) {
        const ranges = eatenByFood(set);
        for (const [i, range] of ranges.entries())
          if (!inside(grams[i] ?? 0, range)) outside.push(`${told}: ${what} of food ${i}`);
        const whole = sumOf(grams);
        if (!inside(whole, eatenInAll([set]))) outside.push(`${told}: ${what} in all`);
        const nutrient = sumOf(grams.map((g, i) => (g * (held[i] ?? 0)) / 100));
        if (!inside(nutrient, nutrientEaten([set], amounts))) outside.push(`${told}: nutrient ${what}`);
        const per = contentEaten([set], amounts);
        if (whole > 1e-6 && !(per && inside((100 * nutrient) / whole, per)))
          outside.push(`${told}: composition ${what}`);
        if (what === 'taken' && ranges.every((r) => r.low === r.high)) tallies.exact++;
      }
    }
    expect(outside.slice(0, 5)).toEqual([]);
    // Every kind of night was among them.
    for (const count of Object.values(tallies)) expect(count).toBeGreaterThan(NIGHTS / 10);
  });

  it('with a hoard counted after some of them, over all of them and each by itself', () => {
    const random = chance(4711);
    const outside: string[] = [];
    for (let n = 0; n < NIGHTS; ) {
      const nights = 1 + Math.floor(random() * 5);
      const names = 2 + Math.floor(random() * 6);
      const wet = wetOf(random, names);
      const truths = Array.from({ length: nights }, () => night(random, names, wet));
      n += nights;
      const way = WAYS[Math.floor(random() * WAYS.length)] ?? 'whole';
      const looks = truths.map((t) => ({
        offered: t.offered,
        bowl: noted(random, random() < 0.5 ? 'sorted' : way, t.offered, t.left),
      }));
      // What lies in the hoard is of all nights.
      const fresh = truths[0]?.offered.map((f, i) => ({
        ...f,
        grams: sumOf(truths.map((t) => t.offered[i]?.grams ?? 0)),
      }));
      const pile = (fresh ?? []).map((_, i) => sumOf(truths.map((t) => t.hoarded[i] ?? 0)));
      const hoard = noted(random, random() < 0.5 ? 'sorted' : 'whole', fresh ?? [], pile);
      const all = observe({ looks, hoard });
      const eaten = pile.map((_, i) => sumOf(truths.map((t) => t.eaten[i] ?? 0)));
      for (const [i, range] of eatenByFood(all.eaten).entries())
        if (!inside(eaten[i] ?? 0, range)) outside.push(`${nights} nights to ${n}: food ${i}`);
      if (!inside(sumOf(eaten), eatenInAll([all.eaten]))) outside.push(`${nights} nights to ${n}: in all`);
      const amounts = [amountsOf(names)];
      const nutrient = sumOf(eaten.map((g, i) => (g * trueAmount(i, random)) / 100));
      if (!inside(nutrient, nutrientEaten([all.eaten], amounts)))
        outside.push(`${nights} nights to ${n}: nutrient`);
      const per = contentEaten([all.eaten], amounts);
      if (sumOf(eaten) > 1e-6 && !(per && inside((100 * nutrient) / sumOf(eaten), per)))
        outside.push(`${nights} nights to ${n}: composition`);
      for (const [at, truth] of truths.entries()) {
        const look = looks[at];
        if (!look) continue;
        const one = observe({ looks: [look], hoard, ...(nights > 1 && { others: true }) });
        for (const [i, range] of eatenByFood(one.eaten).entries())
          if (!inside(truth.eaten[i] ?? 0, range))
            outside.push(`night ${at} of ${nights} to ${n}: food ${i}`);
      }
    }
    expect(outside.slice(0, 5)).toEqual([]);
  });

  it('the sorting index of these very nights lies within its limits, and for nights like these mostly within its span', () => {
    const random = chance(1789);
    let indices = 0;
    const outside: string[] = [];
    let within = 0;
    let spans = 0;
    /** An animal with a taste: it takes so much of each food, give or take, and so its index is known. */
    const taste = [0.95, 0.8, 0.5, 0.2];
    const grams = [3, 3, 3, 3];
    const long = sumOf(taste) / taste.length;
    for (let run = 0; run < NIGHTS / 10; run++) {
      const truths = Array.from({ length: 10 }, () =>
        grams.map((g, i) => g * Math.min(1, Math.max(0, (taste[i] ?? 0) + 0.3 * (random() - 0.5)))),
      );
      const offered = grams.map((g, i): OfferedFood => ({ food: `food-${i}`, grams: g }));
      const sets = truths.map((eaten) => {
        const left = eaten.map((g, i) => (grams[i] ?? 0) - g);
        const way = random() < 0.6 ? 'sorted' : 'whole';
        return observe({ looks: [{ offered, bowl: noted(random, way, offered, left) }] }).taken;
      });
      for (const [i] of grams.entries()) {
        const index = sortingIndex(sets, `food-${i}`);
        const actual = sumOf(truths.map((t) => t[i] ?? 0));
        const predicted = sumOf(truths.map((t) => sumOf(t) / grams.length));
        indices++;
        if (!index || !inside((100 * actual) / predicted, index.bounds))
          outside.push(`run ${run}, food ${i}`);
        if (i === 0 || !index?.span) continue;
        spans++;
        if (inside((100 * (taste[i] ?? 0)) / long, { low: index.span.low - 2, high: index.span.high + 2 }))
          within++;
      }
    }
    expect(indices).toBe(4 * (NIGHTS / 10));
    expect(outside.slice(0, 5)).toEqual([]);
    expect(within / spans).toBeGreaterThan(0.95);
  });
});
