/** What the terminal says to who may pair a device. */
import { renderUnicodeCompact } from 'uqr';
import { pairingLinks } from './links.ts';
import type { Offer } from './pairing.ts';

/** Black on white whatever the terminal's colours are: many readers do not take a QR code in white on black. */
const DARK_ON_LIGHT = '\u001b[97;40m';
const PLAIN = '\u001b[0m';

export interface Place {
  /** Where this machine's own browser finds the server. */
  readonly url: string;
  /** Where other devices do, the best first. */
  readonly origins: readonly string[];
  /** Whether the terminal has colours. */
  readonly colours: boolean;
}

/** An offer with all that a first reader needs: link for this machine, QR code, addresses and code for others. */
export function sayOffer(offer: Offer, { url, origins, colours }: Place): string {
  const [here] = pairingLinks(offer, [url]);
  const [best] = pairingLinks(offer, origins);
  const others = best
    ? [
        'On a phone in the same network, scan this:',
        '',
        ...qrLines(best, colours),
        '',
        `or open ${origins.join(' or ')} and type the code.`,
      ]
    : ['This machine is in no network at the moment; other devices find it once it is.'];
  return [
    '',
    `Pairing code: ${offer.code} (good for 10 minutes and one device)`,
    `In the browser of this machine, open ${here}`,
    ...others,
    'More devices: press "Pair a device" under Household > Devices on one that is paired.',
    '',
  ].join('\n');
}

/** What plain HTTP means, for who opens it to a network. */
export const PLAIN_HTTP = [
  "By plain HTTP anyone in the same network who listens in can read what is sent, and a device's token too:",
  'use it at home, not in a cafe or a shared network. With --cert and --key it is served by HTTPS.',
].join('\n');

function qrLines(text: string, colours: boolean): string[] {
  const lines = renderUnicodeCompact(text, { ecc: 'L', border: 2 }).split('\n');
  return colours ? lines.map((line) => `${DARK_ON_LIGHT}${line}${PLAIN}`) : lines;
}
