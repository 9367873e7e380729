/** Shows in the terminal how to pair a device: at the start, and anew as long as none is paired. */

import type { Devices } from '../../household/access/devices.ts';
import { HOME } from '../../household/store/tables.ts';
import type { Pairing } from './pairing.ts';
import { type Place, sayOffer } from './say-offer.ts';

interface OfferParts {
  readonly pairing: Pairing;
  readonly devices: Devices;
  place(): Place;
  say(text: string): void;
}

/** @returns a function that ends it */
export function showOffers({ pairing, devices, place, say }: OfferParts): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let over = false;
  function show(): void {
    const offer = pairing.offer(HOME);
    say(sayOffer(offer, place()));
    timer = setTimeout(() => void again().catch(() => {}), offer.goodUntil - Date.now());
    timer.unref();
  }
  async function again(): Promise<void> {
    // From a paired device a code can be made at any time.
    const paired = await devices.list(HOME);
    if (paired.length === 0 && !over) show();
  }
  show();
  return () => {
    over = true;
    clearTimeout(timer);
  };
}
