/** A sentence with parts that are more than text: "then comes the <list>shopping</list>". */
import { Fragment, type ReactNode } from 'react';

interface Props {
  of: string;
  /** How each named part is drawn, from its own text. */
  with: Readonly<Record<string, (text: string) => ReactNode>>;
}

/** @throws RangeError where the text names a part that nobody draws */
export function Sentence({ of, with: drawn }: Props) {
  // Odd places hold a part's name, the one after it the part's text.
  const pieces = of.split(/<(\w+)>(.*?)<\/\1>/);
  const shown: ReactNode[] = [];
  for (let i = 0; i < pieces.length; i += 3) {
    shown.push(pieces[i]);
    const name = pieces[i + 1];
    if (name === undefined) continue;
    const draw = drawn[name];
    if (!draw) throw new RangeError(`nobody draws the part <${name}> of "${of}"`);
    shown.push(draw(pieces[i + 2] ?? ''));
  }
  return shown.map((piece, i) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: the parts of one sentence never change places
    <Fragment key={i}>{piece}</Fragment>
  ));
}
