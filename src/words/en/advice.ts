/** What would mend a mix that cannot be, and what can take the place of a food. */
import type { Figures } from '../figures.ts';

export const advice = (f: Figures) => {
  const amount = (value: number, unit: string) =>
    unit === '' ? f.number(value, 6) : `${f.number(value, 6)} ${unit}`;
  const most = (subject: string, to: number, from: number, unit: string) =>
    `${subject} of at most ${amount(to, unit)} instead of ${amount(from, unit)}`;
  const least = (subject: string, to: number, from: number, unit: string) =>
    `${subject} of at least ${amount(to, unit)} instead of ${amount(from, unit)}`;
  return {
    /** Parts of the sentence that allows several. */
    most,
    least,
    allow: (parts: readonly string[]) => `Allow ${f.list(parts)}.`,
    count: {
      some: (subject: string, to: number, from: number) =>
        `Ask for a ${subject} of ${f.number(to)} instead of ${f.number(from)}.`,
      few: (subject: string, to: number, from: number) =>
        `Allow a ${subject} of ${f.number(to)} instead of ${f.number(from)}.`,
      used: (subject: string, to: number, from: number, unit: string) =>
        `Let ${subject.replace(/,$/, '')} be ${amount(to, unit)} or more instead of ${amount(from, unit)}.`,
    },
    dropOne: 'Let the mix go out of range when one of its foods is left.',
    add: (food: string, ref: string, share: number) =>
      `Add ${food} (${ref}): ${f.percent(share)} of the mix is enough.`,
    addPriced: (food: string, ref: string, share: number, price: number) =>
      `Add ${food} (${ref}): ${f.percent(share)} of the mix is enough. Its price is taken as ${f.number(price)} per kg, like the dearest food; put in the real one.`,
    /** Kept as the source of a limit that was changed. */
    ownLimit: {
      ownChoice: (day: string, limits: string, source: string) =>
        `own choice since ${day}; the target has ${limits} (${source})`,
      noSource: 'no source',
      least: (value: number) => `at least ${f.number(value, 6)}`,
      most: (value: number) => `at most ${f.number(value, 6)}`,
    },
    swap: {
      mustStay: (food: string, least: number) =>
        `${food} must be at least ${f.figure(least)} % of the mix, so nothing can replace it.`,
      can: (food: string, share: number, others: readonly string[]) =>
        `${food} ${f.figure(share)} % can be replaced by ${f.either(others)}.`,
      none: (food: string) =>
        `No other food can take the place of ${food} with every rule kept; make the mix fit without it, and you see why.`,
      only: '(and no other share)',
      upTo: (high: number) => `(up to ${f.number(high, 4)} %)`,
      from: (low: number, high: number) => `(${f.number(low, 4)} to ${f.number(high, 4)} %)`,
      by: (out: string, taken: number, name: string, share: number, span: string) =>
        `${out} ${f.figure(taken)} % can be replaced by ${name}, ${f.number(share, 4)} % ${span}.`,
      byMore: (out: string, taken: number, name: string, share: number, had: number, span: string) =>
        `${out} ${f.figure(taken)} % can be replaced by more ${name}, ${f.number(share, 4)} % on top of its ${f.figure(had)} % ${span}.`,
      unsure: (sentence: string, what: readonly string[]) => `${sentence} Its ${f.list(what)} is not known.`,
    },
  };
};

export type Advice = ReturnType<typeof advice>;
