import type { Offer } from './pairing.ts';

/** Links that open the pairing page with an offer's secret. It stands after the "#", so that no server's log has it. */
export function pairingLinks({ secret }: Offer, origins: readonly string[]): string[] {
  return origins.map((origin) => `${origin}/#pair=${secret}`);
}
