/** Figures from memory and their confirmation. */
import { describe, expect, it } from 'vitest';
import { confirmedProfile, isUnconfirmed, unconfirmedBounds, withConfirmations } from './confirm.ts';
import { PROFILES, profile } from './profiles.ts';

const nrc = profile('hamster-nrc')!;
const confirmed = { against: 'the printed edition, p. 70', on: '2026-03-14' };

describe('figures from memory', () => {
  it('are those whose source says so, until they are confirmed', () => {
    const bound = { nutrient: 'CA', min: 1, basis: 'DM', source: 'A book, From memory' } as const;
    expect(isUnconfirmed(bound)).toBe(true);
    expect(isUnconfirmed({ ...bound, confirmed })).toBe(false);
    expect(isUnconfirmed({ ...bound, source: 'common practice, no source' })).toBe(false);
  });

  it('keep a profile from being chosen; the others are free', () => {
    const waiting = PROFILES.filter((p) => unconfirmedBounds(p).length > 0);
    expect(waiting.map((p) => p.id)).toEqual(['hamster-nrc', 'rat-nrc']);
    const after = confirmedProfile(nrc, confirmed);
    expect(unconfirmedBounds(after)).toEqual([]);
    // What was never in doubt is not said to be confirmed.
    expect(after.bounds.filter((b) => b.confirmed).length).toBe(unconfirmedBounds(nrc).length);
  });
});

describe('a confirmation that was kept', () => {
  it('comes back with the profile, through the JSON of the store', () => {
    const kept = JSON.parse(JSON.stringify(confirmedProfile(nrc, confirmed)));
    expect(withConfirmations(nrc, kept)).toEqual(confirmedProfile(nrc, confirmed));
    expect(withConfirmations(nrc, undefined)).toBe(nrc);
  });

  it('does not hold for a figure that is another by now', () => {
    const kept = confirmedProfile(nrc, confirmed);
    const newer = {
      ...nrc,
      bounds: nrc.bounds.map((b) => (b.nutrient === 'FE' ? { ...b, min: b.min! + 1 } : b)),
    };
    expect(unconfirmedBounds(withConfirmations(newer, kept)).map((b) => b.nutrient)).toEqual(['FE']);
    // Only confirmations are taken from what is stored under the id, never its figures.
    const forged = { ...kept, name: 'x', bounds: [{ ...kept.bounds[0]!, min: 1 }] };
    expect(withConfirmations(nrc, forged)).toEqual(nrc);
  });
});
