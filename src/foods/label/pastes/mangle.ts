/** What copying does to a label: lines lost, joined and doubled, letters lost, digits misread, junk between. */
import type { Draw } from './draw.ts';

const JUNK = ['***', 'www.', 'NEW', 'lecker', '| |', 'E', '®', '- - -', 'délicieux', '…'];
const NUMBERED = /\d/;

/** Headings are never lost: without them a figure is on another basis and nothing shows it. */
export function mangled(lines: readonly string[], d: Draw): string[] {
  let list = [...lines];
  for (let steps = Math.floor(d.next() * 3); steps > 0; steps--) {
    const at = Math.floor(d.next() * list.length);
    const line = list[at] ?? '';
    const put = (...more: string[]) => {
      list = [...list.slice(0, at), ...more, ...list.slice(at + 1)];
    };
    const kind = Math.floor(d.next() * 6);
    if (kind === 0) put(line, '');
    else if (kind === 1) put(line, d.one(JUNK));
    else if (kind === 2) put(d.one(JUNK), line);
    else if (kind === 3) {
      // A letter lost from a word, never a digit.
      const letters = [...line.matchAll(/\p{L}{4,}/gu)];
      const word = letters.length > 0 ? d.one(letters) : undefined;
      const i = word ? word.index + 1 + Math.floor(d.next() * (word[0].length - 2)) : -1;
      if (i > 0) put(line.slice(0, i) + line.slice(i + 1));
    } else if (kind === 4 && NUMBERED.test(line)) put(line.replace(/1(?=\d)/, 'l').replace(/0(?=[.,])/, 'O'));
    else if (kind === 5) put(line.replace(/ /g, d.one(['  ', '\u00a0', ' '])));
  }
  return list;
}
