/** Labels: what was read of them line by line, what they leave open, and what their figures come to. */
import type { Figures } from '../figures.ts';
import { labelReading } from './label-reading.ts';

export const label = (f: Figures) => ({
  reading: labelReading(f),
  amount: {
    least: (least: string) => `at least ${least}`,
    most: (most: string) => `at most ${most}`,
    both: (least: string, most: string) => `at least ${least} and at most ${most}`,
  },
  paste: {
    label: 'The label, as printed',
    hint: 'For example, line by line: “Crude protein min. 14 %”, “Rohfett 4,2 %”, “Fibre 3.1 g per 40 g serving”. English, German, French, Dutch or Spanish.',
    asSaved:
      'These figures are as you saved them; they rest on answers or changes that the text alone does not give. Change the text or answer a question to read the label anew.',
  },
  lines: {
    title: 'Line by line',
    read: 'Read',
    partly: 'Partly read',
    waits: 'Waits for an answer',
    per: 'Quantity',
    ignored: 'Left out',
    unread: 'Not understood',
    counted: {
      read: (n: number) => `${f.number(n)} read`,
      waits: (n: number) => `${f.number(n)} waiting for an answer`,
      partly: (n: number) => `${f.number(n)} partly read`,
      without: (n: number) => `${f.number(n)} without an amount`,
      unread: (n: number) => `${f.number(n)} not understood`,
    },
  },
  questions: {
    section: 'Questions about the label',
    title: (open: number) =>
      open === 0
        ? 'Questions, all answered'
        : f.form(open, { one: 'One question is open', other: `${f.number(open)} questions are open` }),
    unknown: 'An amount that waits for an answer stays unknown until it has one.',
    open: '? Open',
    answered: '✓ Answered',
    otherWeight: 'Or another weight',
    otherPercent: 'Or another percentage',
  },
  comesTo: {
    title: 'What this comes to',
    none: 'No amount yet; every nutrient is unknown.',
    known: (known: number, unknown: number) =>
      `${f.number(known)} known, ${f.number(unknown)} unknown; unknown is never taken as zero`,
    nutrient: 'Nutrient',
    fed: 'In 100 g as fed',
    printed: 'As printed',
    waits: '(waits for an answer)',
    noMoisture:
      'Moisture is unknown, so nothing can be shown in dry matter. If the pack gives it, add a line such as “moisture 10 %”.',
    min: (amount: string) => `min. ${amount}`,
    max: (amount: string) => `max. ${amount}`,
    range: (low: string, high: string) => `${low} to ${high}`,
    in: (amount: string, grams: number) => `${amount} in ${f.number(grams)} g`,
    ofDry: (amount: string) => `${amount} of dry matter`,
    ofSalt: (amount: string) => `${amount} of salt`,
  },
  ingredients: {
    section: 'Ingredients',
    label: 'Ingredient list, as printed (optional)',
    hint: 'For example “rolled oats, peas, dried carrot, minerals”. It is kept with the food and read for what to avoid.',
    tooLong: (length: number, most: number) =>
      `The list is ${f.number(length)} characters long and ${f.number(most)} can be kept; leave out what is no ingredient.`,
    avoid: (what: string) => `Avoid: ${what}`,
    mind: (what: string) => `Good to know: ${what}`,
    kinds: {
      'added sugar': 'added sugar',
      dye: 'dye',
      preservative: 'preservative',
      filler: 'filler',
      unspecified: 'says too little',
      caution: 'caution list',
    },
    none: 'Nothing on our lists was found; that is no guarantee.',
    found: (n: number) => `${f.number(n)} found on our lists:`,
    list: 'Found in the ingredients',
    source: (source: string) => `Source: ${source}`,
    unread: (parts: readonly string[]) => `Not understood, so not looked up: ${parts.join(', ')}.`,
  },
});

export type Label = ReturnType<typeof label>;
