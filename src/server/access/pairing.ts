/**
 * Offers to pair: what a new device must know to be let in. An offer is good for ten minutes and for one device, and has
 * two forms. The **code** is short, to be typed: few wrong tries are taken, from one address and in all. The **secret**
 * stands in the link and the QR code: nobody can guess 128 bits, so no limit holds for it, and a stranger who wears out
 * every code by wrong tries cannot keep a household from pairing by its link.
 */
import { createHash, randomBytes, randomInt, timingSafeEqual } from 'node:crypto';
import { WrongTries } from './wrong-tries.ts';

/** Without what is easily taken for something else: 0 and O, 1, I and L. 31 characters, so 8 of them are 40 bits. */
const ALPHABET = '23456789ABCDEFGHJKMNPQRSTUVWXYZ';
const CODE_LENGTH = 8;
const GOOD_FOR = 10 * 60_000;
/** After so many wrong codes in all, every code of that time is void. At 40 bits they hit with a chance of 1 in 10^10. */
const MOST_WRONG = 50;

export interface Offer {
  readonly household: string;
  /** As it is shown: "K7QM-3FXA". */
  readonly code: string;
  readonly secret: string;
  /** ms since 1970. */
  readonly goodUntil: number;
}

/** What a try came to: an offer taken, or none, with how long to wait before the next try, ms. */
export type Try = { readonly offer: Offer } | { readonly wait: number };

interface Open {
  readonly offer: Offer;
  wrong: number;
}

export class Pairing {
  readonly #clock: () => number;
  readonly #tries: WrongTries;
  /** The newest offer of each household; an older one is void. */
  readonly #open = new Map<string, Open>();

  /** @param clock the time in ms since 1970 */
  constructor(clock: () => number) {
    this.#clock = clock;
    this.#tries = new WrongTries(clock);
  }

  /** Makes an offer; the one before it is void. */
  offer(household: string): Offer {
    const code = Array.from({ length: CODE_LENGTH }, () => ALPHABET.charAt(randomInt(ALPHABET.length))).join(
      '',
    );
    const offer: Offer = {
      household,
      code: `${code.slice(0, 4)}-${code.slice(4)}`,
      secret: randomBytes(16).toString('base64url'),
      goodUntil: this.#clock() + GOOD_FOR,
    };
    this.#open.set(household, { offer, wrong: 0 });
    return offer;
  }

  /** How long an address must wait before its next code is looked at, ms; the secret of a link is always looked at. */
  waitOf(from: string): number {
    return this.#tries.wait(from);
  }

  /**
   * Takes the offer that a code or a secret names, so that no other device can.
   * @param given as it was typed: small letters, blanks and dashes are as good
   * @param from address of the sender
   */
  take(given: string, from: string): Try {
    this.#forgetOld();
    const bySecret = this.#find(({ offer }) => same(offer.secret, given.trim()));
    const wait = this.#tries.wait(from);
    if (!bySecret && wait > 0) return { wait };
    const typed = plain(given);
    const found =
      bySecret ?? this.#find(({ offer, wrong }) => wrong < MOST_WRONG && same(plain(offer.code), typed));
    if (!found) {
      this.#tries.add(from);
      for (const open of this.#open.values()) open.wrong += 1;
      return { wait: this.#tries.wait(from) };
    }
    this.#open.delete(found.offer.household);
    this.#tries.forget(from);
    return { offer: found.offer };
  }

  /** Gives back an offer whose device could not be kept, unless a newer one was made meanwhile. */
  giveBack(offer: Offer): void {
    if (!this.#open.has(offer.household)) this.#open.set(offer.household, { offer, wrong: 0 });
  }

  #forgetOld(): void {
    const now = this.#clock();
    for (const [household, { offer }] of this.#open) if (offer.goodUntil <= now) this.#open.delete(household);
  }

  /** Looks at every offer, also after one was found: the time it takes says nothing. */
  #find(is: (open: Open) => boolean): Open | undefined {
    let found: Open | undefined;
    for (const open of this.#open.values()) if (is(open)) found = open;
    return found;
  }
}

function plain(code: string): string {
  return code.replace(/[\s-]/g, '').toUpperCase();
}

/** Whether two texts are the same, in a time that does not depend on where they differ. */
function same(a: string, b: string): boolean {
  const digest = (text: string) => createHash('sha256').update(text).digest();
  return timingSafeEqual(digest(a), digest(b));
}
