/**
 * The texts in the language that is spoken here. A page and its worker speak one language from their start to their end;
 * a server speaks to each who asks in theirs. Without anything said, it is plain English.
 */
import { english, type Words } from './en/index.ts';
import { PLAIN_MANNER } from './manner.ts';

export type { Words } from './en/index.ts';

let plain: Words | undefined;
let spoken: () => Words | undefined = () => undefined;

/** All texts, as they are to be said now. */
export function words(): Words {
  const now = spoken();
  if (now) return now;
  plain ??= english(PLAIN_MANNER);
  return plain;
}

/** Says where texts are taken from hereafter. @param from undefined means plain English */
export function speak(from: () => Words | undefined): void {
  spoken = from;
}
