/** What trials say of a food: monotone, whatever the order, never from one look, and honest of what was carried off. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draws } from '../../../test/draws.ts';
import type { Offering, Seen } from '../model.ts';
import { type Evidence, evidenceOf, NO_EVIDENCE, together } from './evidence.ts';
import { SURE, verdictOn } from './verdict.ts';

const look = (seen: Seen, on = '2026-03-01', more: Partial<Offering> = {}): Offering => ({
  on,
  seen,
  ...more,
});
const looks = (...seen: Seen[]) => seen.map((s) => look(s));
const of = (...seen: Seen[]) => verdictOn(evidenceOf(looks(...seen)));
const RUNS = { numRuns: draws(1000, 100) };

const count = fc.integer({ min: 0, max: 12 });
const some: fc.Arbitrary<Evidence> = fc.record({
  eaten: fc.double({ min: 0, max: 12, noNaN: true }),
  left: fc.double({ min: 0, max: 12, noNaN: true }),
  unknown: fc.double({ min: 0, max: 6, noNaN: true }),
  upset: fc.constant(false),
});

/** Chance that a fair coin shows at most k heads in n throws: what Beta(1 + e, 1 + l) is at one half, by counting. */
function atMostHeads(k: number, n: number): number {
  let ways = 0;
  let of = 1;
  for (let i = 0; i <= k; i++) {
    ways += of;
    of = (of * (n - i)) / (i + 1);
  }
  return ways / 2 ** n;
}

describe('a verdict', () => {
  it('is as sure as counting says, from a uniform prior', () => {
    fc.assert(
      fc.property(count, count, (eaten, left) => {
        const { chance, mean } = verdictOn({ ...NO_EVIDENCE, eaten, left });
        // P(p >= 1/2) under Beta(1 + e, 1 + l) is P(at most e heads in e + l + 1 throws).
        const sure = atMostHeads(eaten, eaten + left + 1);
        expect(chance[0]).toBeCloseTo(sure, 10);
        expect(chance[1]).toBeCloseTo(sure, 10);
        expect(mean[0]).toBeCloseTo((eaten + 1) / (eaten + left + 2), 12);
      }),
      RUNS,
    );
  });

  it('is none before the first look: every chance counts alike', () => {
    const { is, chance, span, mean } = verdictOn(NO_EVIDENCE);
    expect([is, mean[0]]).toEqual(['undecided', 0.5]);
    expect(chance[0]).toBeCloseTo(0.5, 9);
    expect(span[0]).toBeCloseTo(0.025, 9);
    expect(span[1]).toBeCloseTo(0.975, 9);
  });

  it('falls after three looks that agree, and never after one or two', () => {
    expect([of('first').is, of('eaten', 'first').is, of('eaten', 'first', 'eaten').is]).toEqual([
      'undecided',
      'undecided',
      'liked',
    ]);
    expect([of('left').is, of('left', 'left').is, of('left', 'left', 'left').is]).toEqual([
      'undecided',
      'undecided',
      'refused',
    ]);
    expect(of('left', 'eaten', 'left', 'left', 'left').is).toBe('undecided');
  });

  it('is never lower for more that was eaten, never higher for more that was left', () => {
    fc.assert(
      fc.property(some, fc.double({ min: 0, max: 3, noNaN: true }), (evidence, by) => {
        const now = verdictOn(evidence);
        const eaten = verdictOn({ ...evidence, eaten: evidence.eaten + by });
        const left = verdictOn({ ...evidence, left: evidence.left + by });
        for (const key of ['chance', 'mean', 'span'] as const)
          for (const end of [0, 1] as const) {
            expect(eaten[key][end]).toBeGreaterThanOrEqual(now[key][end] - 1e-9);
            expect(left[key][end]).toBeLessThanOrEqual(now[key][end] + 1e-9);
          }
        if (now.is === 'liked') expect(eaten.is).toBe('liked');
        if (now.is === 'refused') expect(left.is).toBe('refused');
      }),
      RUNS,
    );
  });

  it('does not depend on the order of the looks', () => {
    const seen = fc.constantFrom<Seen>('first', 'eaten', 'hoarded', 'left', 'upset');
    const weighed = fc.record({
      on: fc.constant('2026-03-01'),
      seen,
      grams: fc.option(fc.double({ min: 0.1, max: 3, noNaN: true }), { nil: undefined }),
      left: fc.option(fc.double({ min: 0, max: 4, noNaN: true }), { nil: undefined }),
    }) as fc.Arbitrary<Offering>;
    fc.assert(
      fc.property(
        fc
          .array(weighed, { maxLength: 10 })
          .chain((all) => fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length }))),
        ([all, other]) => {
          const [a, b] = [verdictOn(evidenceOf(all)), verdictOn(evidenceOf(other))];
          expect(b.is).toBe(a.is);
          expect(b.chance[0]).toBeCloseTo(a.chance[0], 9);
          expect(b.span[1]).toBeCloseTo(a.span[1], 9);
        },
      ),
      RUNS,
    );
  });

  it('holds both if what was carried off was eaten and if it was not', () => {
    fc.assert(
      fc.property(some, fc.double({ min: 0, max: 1, noNaN: true }), (evidence, part) => {
        const said = verdictOn(evidence);
        const { eaten, left, unknown } = evidence;
        const really = verdictOn({
          ...NO_EVIDENCE,
          eaten: eaten + part * unknown,
          left: left + (1 - part) * unknown,
        });
        expect(said.chance[0]).toBeLessThanOrEqual(really.chance[0] + 1e-9);
        expect(said.chance[1]).toBeGreaterThanOrEqual(really.chance[1] - 1e-9);
        expect(said.span[0]).toBeLessThanOrEqual(really.span[0] + 1e-9);
        expect(said.span[1]).toBeGreaterThanOrEqual(really.span[1] - 1e-9);
        if (said.is !== 'undecided') expect(really.is).toBe(said.is);
      }),
      RUNS,
    );
    expect(of('hoarded', 'hoarded', 'hoarded', 'hoarded', 'hoarded').is).toBe('undecided');
  });

  it('is an upset after any upset, whatever else was seen', () => {
    expect(of('upset').is).toBe('upset');
    expect(of('first', 'first', 'first', 'first', 'upset', 'first').is).toBe('upset');
  });

  it('says the least number of offers that would settle it', () => {
    fc.assert(
      fc.property(some, (evidence) => {
        const { more } = verdictOn(evidence);
        const liked = (k: number) => verdictOn({ ...evidence, eaten: evidence.eaten + k }).chance[0] >= SURE;
        const refused = (k: number) =>
          verdictOn({ ...evidence, left: evidence.left + k }).chance[1] <= 1 - SURE;
        expect(liked(more.eaten)).toBe(true);
        expect(refused(more.left)).toBe(true);
        if (more.eaten > 0) expect(liked(more.eaten - 1)).toBe(false);
        if (more.left > 0) expect(refused(more.left - 1)).toBe(false);
      }),
      { numRuns: draws(300, 60) },
    );
    expect(verdictOn(NO_EVIDENCE).more).toEqual({ eaten: 3, left: 3 });
    expect(of('eaten', 'eaten').more.eaten).toBe(1);
  });
});

describe('what a look counts', () => {
  it('is by weight where the food was weighed', () => {
    expect(evidenceOf([look('eaten', '2026-03-01', { grams: 2, left: 1.5 })])).toMatchObject({
      eaten: 0.25,
      left: 0.75,
    });
    expect(evidenceOf([look('left', '2026-03-01', { grams: 2, left: 1.5 })])).toMatchObject({
      eaten: 0.25,
      left: 0.75,
    });
    // Damp air makes it heavier than it was.
    expect(evidenceOf([look('left', '2026-03-01', { grams: 2, left: 2.1 })])).toMatchObject({
      eaten: 0,
      left: 1,
    });
    expect(evidenceOf([look('eaten', '2026-03-01', { grams: 2 })])).toMatchObject({ eaten: 1, left: 0 });
  });
  it('is unknown where it was carried off, but for what lies there', () => {
    expect(evidenceOf([look('hoarded')])).toMatchObject({ eaten: 0, left: 0, unknown: 1 });
    expect(evidenceOf([look('hoarded', '2026-03-01', { grams: 2, left: 0.5 })])).toMatchObject({
      left: 0.25,
      unknown: 0.75,
    });
  });
  it('is less for older looks', () => {
    const old = evidenceOf(looks('left', 'left'));
    expect(together(evidenceOf(looks('eaten')), old, 0.5)).toMatchObject({ eaten: 1, left: 1 });
  });
});
