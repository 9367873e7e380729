/** Codes and secrets of an offer to pair, over time, and against guessing. */
import fc from 'fast-check';
import { beforeEach, describe, expect, it } from 'vitest';
import { draws } from '../../../test/draws.ts';
import { type Offer, Pairing, type Try } from './pairing.ts';

const MINUTE = 60_000;
let now: number;
let pairing: Pairing;
beforeEach(() => {
  now = Date.UTC(2026, 2, 20);
  pairing = new Pairing(() => now);
});
const isTaken = (tried: Try) => 'offer' in tried;
const waitOf = (tried: Try) => ('offer' in tried ? undefined : tried.wait);

/** A code that is not the offer's. */
const wrong = (offer: Offer) => (offer.code === '2222-2222' ? '3333-3333' : '2222-2222');

describe('an offer', () => {
  it('has a code of 40 bits to type and a secret of 128 bits for the link, different every time', () => {
    const offers = Array.from({ length: 200 }, () => pairing.offer('home'));
    for (const { code, secret } of offers) {
      expect(code).toMatch(/^[2-9A-HJKMNP-Z]{4}-[2-9A-HJKMNP-Z]{4}$/);
      expect(Buffer.from(secret, 'base64url')).toHaveLength(16);
    }
    expect(new Set(offers.map((o) => o.code)).size).toBe(200);
    expect(new Set(offers.map((o) => o.secret)).size).toBe(200);
  });

  it('is taken once, by its code however it is typed, or by its secret', () => {
    for (const typed of [
      (o: Offer) => o.code,
      (o: Offer) => o.code.toLowerCase().replace('-', ''),
      (o: Offer) => ` ${o.code.replace('-', ' - ')} `,
      (o: Offer) => o.secret,
    ]) {
      const offer = pairing.offer('home');
      expect(pairing.take(typed(offer), 'phone')).toEqual({ offer });
      expect(isTaken(pairing.take(offer.code, 'another'))).toBe(false);
      expect(isTaken(pairing.take(offer.secret, 'another'))).toBe(false);
    }
  });

  it('is good for ten minutes', () => {
    const first = pairing.offer('home');
    now += 10 * MINUTE - 1;
    expect(isTaken(pairing.take(first.code, 'phone'))).toBe(true);
    const second = pairing.offer('home');
    expect(second.goodUntil).toBe(now + 10 * MINUTE);
    now += 10 * MINUTE;
    expect(isTaken(pairing.take(second.code, 'phone'))).toBe(false);
    expect(isTaken(pairing.take(second.secret, 'phone'))).toBe(false);
  });

  it('makes the one before it void, in its household alone', () => {
    const old = pairing.offer('home');
    const other = pairing.offer('shelter');
    pairing.offer('home');
    expect(isTaken(pairing.take(old.code, 'phone'))).toBe(false);
    expect(pairing.take(other.code, 'phone')).toEqual({ offer: other });
  });

  it('that was given back is taken by the next, unless there is a newer one', () => {
    const offer = pairing.offer('home');
    pairing.take(offer.code, 'phone');
    pairing.giveBack(offer);
    expect(isTaken(pairing.take(offer.code, 'phone'))).toBe(true);
    const newer = pairing.offer('home');
    pairing.giveBack(offer);
    expect(isTaken(pairing.take(offer.code, 'phone'))).toBe(false);
    expect(isTaken(pairing.take(newer.code, 'phone'))).toBe(true);
  });
});

describe('wrong codes', () => {
  it('are free five times from one address, then each doubles the wait, an hour at most', () => {
    const offer = pairing.offer('home');
    const waits: (number | undefined)[] = [];
    for (let i = 0; i < 16; i++) {
      const wait = waitOf(pairing.take(wrong(offer), 'phone'));
      waits.push(wait);
      // While it waits, no code is looked at, and asking makes the wait no longer.
      if (wait) expect(waitOf(pairing.take(offer.code, 'phone'))).toBe(wait);
      now += wait ?? 0;
    }
    expect(waits.map((ms) => (ms ?? 0) / 1000)).toEqual([
      0, 0, 0, 0, 30, 60, 120, 240, 480, 960, 1920, 3600, 3600, 3600, 3600, 3600,
    ]);
  });

  it('keep nobody else waiting, and are forgotten by a right one and after a day', () => {
    for (let i = 0; i < 5; i++) pairing.take('nothing', 'stranger');
    const offer = pairing.offer('home');
    expect(waitOf(pairing.take(offer.code, 'stranger'))).toBe(30_000);
    expect(isTaken(pairing.take(offer.code, 'phone'))).toBe(true);
    now += 30_000;
    expect(isTaken(pairing.take(pairing.offer('home').code, 'stranger'))).toBe(true);
    for (let i = 0; i < 4; i++) expect(waitOf(pairing.take('nothing', 'stranger'))).toBe(0);
    now += 24 * 60 * MINUTE;
    for (let i = 0; i < 4; i++) expect(waitOf(pairing.take('nothing', 'stranger'))).toBe(0);
  });

  it('fail 10,000 times, from one address or from as many, and the right code after them too; its link still lets in', () => {
    for (const address of [() => 'one', (i: number) => `10.0.${i >> 8}.${i & 255}`]) {
      const offer = pairing.offer('home');
      for (let i = 0; i < 10_000; i++) {
        now += 10;
        expect(isTaken(pairing.take(codeOf(i), address(i)))).toBe(false);
      }
      expect(isTaken(pairing.take(offer.code, address(0)))).toBe(false);
      expect(isTaken(pairing.take(offer.secret, address(0)))).toBe(true);
    }
  });

  it('void the code after 50 from anywhere; the next code is good again', () => {
    const worn = pairing.offer('home');
    for (let i = 0; i < 49; i++) pairing.take(wrong(worn), `a${i}`);
    const offers = [worn, pairing.offer('shelter')] as const;
    pairing.take(wrong(worn), 'a49');
    expect(isTaken(pairing.take(offers[0].code, 'phone'))).toBe(false);
    expect(isTaken(pairing.take(offers[1].code, 'phone'))).toBe(true);
    expect(isTaken(pairing.take(pairing.offer('home').code, 'phone'))).toBe(true);
  });

  it('are remembered of the newest thousand addresses alone', () => {
    for (let i = 0; i < 5; i++) pairing.take('nothing', 'first');
    expect(pairing.waitOf('first')).toBe(30_000);
    for (let i = 0; i < 1000; i++) pairing.take('nothing', `a${i}`);
    expect(pairing.waitOf('first')).toBe(0);
  });
});

it('whatever is tried in whatever order, an offer lets in only who knows it, while it is good, and once', () => {
  const step = fc.oneof(
    fc.record({ is: fc.constant('offer' as const), household: fc.constantFrom('a', 'b') }),
    fc.record({
      is: fc.constant('take' as const),
      nth: fc.nat(20),
      form: fc.constantFrom('code' as const, 'secret' as const),
      from: fc.constantFrom('x', 'y'),
    }),
    fc.record({ is: fc.constant('guess' as const), text: fc.string(), from: fc.constantFrom('x', 'y') }),
    fc.record({ is: fc.constant('wait' as const), ms: fc.nat(6 * MINUTE) }),
  );
  let letIn = 0;
  fc.assert(
    fc.property(fc.array(step, { maxLength: 60 }), (steps) => {
      pairing = new Pairing(() => now);
      const made: Offer[] = [];
      const used = new Set<Offer>();
      for (const s of steps) {
        if (s.is === 'offer') made.push(pairing.offer(s.household));
        else if (s.is === 'wait') now += s.ms;
        else {
          const meant = s.is === 'take' ? made.at(s.nth % Math.max(1, made.length)) : undefined;
          const tried = pairing.take(s.is === 'guess' ? s.text : meant ? meant[s.form] : '', s.from);
          const newest = made.findLast((o) => o.household === meant?.household);
          const good = meant !== undefined && meant === newest && !used.has(meant) && now < meant.goodUntil;
          if ('offer' in tried) {
            expect(good && tried.offer === meant).toBe(true);
            used.add(tried.offer);
            letIn += 1;
          } else if (good && s.is === 'take') expect(s.form).toBe('code');
        }
      }
    }),
    { numRuns: draws(4000, 400) },
  );
  expect(letIn).toBeGreaterThan(draws(4000, 400) / 4);
});

/** The i-th of 10,000 different codes. */
function codeOf(i: number): string {
  const alphabet = '23456789ABCDEFGHJKMNPQRSTUVWXYZ';
  return Array.from({ length: 8 }, (_, digit) => alphabet.charAt(Math.floor(i / 31 ** digit) % 31)).join('');
}
