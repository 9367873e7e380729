/**
 * The texts in the language that is spoken here. A page and its worker speak one language from their start to their end;
 * a server speaks to each who asks in theirs. Where nothing is said, it is what `plain-english.ts` says, where that is here.
 */
import type { Words } from './en/index.ts';

export type { Words } from './en/index.ts';

let spoken: () => Words | undefined = () => undefined;
let otherwise: () => Words = () => {
  throw new Error('no language is spoken here; import words/plain-english.ts first');
};

/** All texts, as they are to be said now. */
export function words(): Words {
  return spoken() ?? otherwise();
}

/** Says where texts are taken from hereafter. @param from undefined means that nothing is said */
export function speak(from: () => Words | undefined): void {
  spoken = from;
}

/** Says what is spoken where nothing is said. */
export function otherwiseSpeak(from: () => Words): void {
  otherwise = from;
}
