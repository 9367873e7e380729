/**
 * Numbers as labels print them: decimal comma or point, groups of three parted by point, comma, apostrophe or space.
 * "1.234" may be one and a bit or over a thousand; both readings are kept until something settles it.
 */

import { words } from '../../words/words.ts';
export interface NumberReading {
  readonly text: string;
  /** One reading, or two when the mark may be decimal or thousands: the decimal one first. */
  readonly readings: readonly [number, ...number[]];
  /** Half a step of the last printed digit, for each reading. */
  readonly rounding: readonly [number, ...number[]];
  /** The mark that is certainly the decimal mark, if this number shows it. */
  readonly decimalMark?: ',' | '.';
}

const FRACTIONS: Readonly<Record<string, number>> = { '½': 0.5, '¼': 0.25, '¾': 0.75 };

/** Reads one number, or says why it is none. @param text digits with marks; spaces only between groups of three */
export function readNumber(text: string): NumberReading | string {
  if (text.length > 20) return words().label.reading.why.tooLong(text.slice(0, 20));
  const fraction = FRACTIONS[text.slice(-1)];
  if (fraction !== undefined) {
    const whole = text.slice(0, -1).trim();
    if (!/^\d{0,9}$/.test(whole)) return words().label.reading.why.noNumber(text);
    return { text, readings: [Number(whole || 0) + fraction], rounding: [0] };
  }
  const marks = [...text].filter((c) => c < '0' || c > '9');
  const kinds = new Set(marks.map((c) => (/\s/u.test(c) ? ' ' : c === '’' ? "'" : c)));
  const pieces = text.split(/[^\d]/u);
  const last = marks.at(-1);
  if (last === undefined) return single(text, text);
  const grouped = ([first = '', ...rest]: readonly string[]) =>
    rest.length > 0 && /^[1-9]\d{0,2}$/.test(first) && rest.every((p) => p.length === 3);
  const whole = pieces.slice(0, -1);
  if (kinds.size === 1 && kinds.has(last) && (last === ',' || last === '.')) {
    if (pieces.length > 2) return grouped(pieces) ? single(text, pieces.join('')) : unclear(text);
    const decimal = single(text, `${pieces[0]}.${pieces[1]}`, last);
    if (!grouped(pieces)) return decimal;
    const thousands = single(text, pieces.join(''));
    return {
      text,
      readings: [decimal.readings[0], thousands.readings[0]],
      rounding: [decimal.rounding[0], thousands.rounding[0]],
    };
  }
  if (kinds.size === 1) return grouped(pieces) ? single(text, pieces.join('')) : unclear(text);
  if (kinds.size === 2 && (last === ',' || last === '.') && marks.filter((m) => m === last).length === 1)
    return grouped(whole) ? single(text, `${whole.join('')}.${pieces.at(-1)}`, last) : unclear(text);
  return unclear(text);
}

function single(text: string, plain: string, decimalMark?: ',' | '.') {
  const decimals = plain.includes('.') ? plain.length - plain.indexOf('.') - 1 : 0;
  return {
    text,
    readings: [Number(plain)] as const,
    rounding: [0.5 * 10 ** -decimals] as const,
    ...(decimalMark && { decimalMark }),
  };
}

function unclear(text: string): string {
  return words().label.reading.why.oneMark(text);
}
