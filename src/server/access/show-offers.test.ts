/** What the terminal says, and when it says it anew. */
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { Device, Devices } from '../../household/access/devices.ts';
import { Pairing } from './pairing.ts';
import { showOffers } from './show-offers.ts';

let said: string[];
let paired: Device[];
let origins: string[];
let pairing: Pairing;
let end: () => void;

beforeEach(() => {
  vi.useFakeTimers();
  [said, paired, origins] = [[], [], ['http://192.168.1.5:4173']];
  pairing = new Pairing(Date.now);
  end = showOffers({
    pairing,
    devices: { list: async () => paired } as unknown as Devices,
    place: () => ({ url: 'http://localhost:4173', origins, colours: false }),
    say: (text) => said.push(text),
  });
});
afterEach(() => {
  end();
  vi.useRealTimers();
});

const TEN_MINUTES = 10 * 60_000;
const code = (text = '') => /Pairing code: (\S+)/.exec(text)?.[1] ?? '';

it('says a code that is good, a link for this machine, and where others find it', () => {
  expect(said).toHaveLength(1);
  const [text = ''] = said;
  const [, secret = ''] = /http:\/\/localhost:4173\/#pair=(\S+)/.exec(text) ?? [];
  expect(text).toContain('or open http://192.168.1.5:4173 and type the code.');
  expect(text).toMatch(/[█▀▄]{20}/);
  expect('offer' in pairing.take(secret, 'here')).toBe(true);
});

it('says a new one as the old runs out, as long as no device is paired', async () => {
  await vi.advanceTimersByTimeAsync(TEN_MINUTES - 1);
  expect(said).toHaveLength(1);
  await vi.advanceTimersByTimeAsync(1);
  expect(said).toHaveLength(2);
  expect('offer' in pairing.take(code(said[0]), 'phone')).toBe(false);
  origins = [];
  await vi.advanceTimersByTimeAsync(TEN_MINUTES);
  expect(said[2]).toContain('in no network at the moment');
  expect('offer' in pairing.take(code(said[2]), 'phone')).toBe(true);
  paired = [{ household: 'home', id: 'd', name: 'Phone', pairedAt: '', seenAt: '' }];
  await vi.advanceTimersByTimeAsync(3 * TEN_MINUTES);
  expect(said).toHaveLength(3);
});

it('says nothing after its end', async () => {
  end();
  await vi.advanceTimersByTimeAsync(3 * TEN_MINUTES);
  expect(said).toHaveLength(1);
});
