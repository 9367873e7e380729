/** One sentence that says what is done next, and where. */
import { linkTo } from '../shared/route.ts';
import type { NextWords } from './next-of.ts';

export function NextSentence({ sentence, link, to }: NextWords) {
  return (
    <>
      <p className="today-sentence">{sentence}</p>
      <a className="big-button today-go" href={linkTo(...to)}>
        {link}
      </a>
    </>
  );
}
