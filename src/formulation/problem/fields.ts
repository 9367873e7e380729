/**
 * Single fields of what is kept, each within what a home kitchen can have to do with: the largest sensible values are
 * taken ten times over and more, so that a limit is met by slips and by nobody's real figures. What lies within them
 * can be reckoned with and shown. Loaded with zod, so by the server alone.
 */
import { z } from '@hono/zod-openapi';
import { FIRST_YEAR, isInYears, LAST_YEAR } from '../../nutrition/calendar-years.ts';
import { gramsPer, NUTRIENTS, nutrient, type Tag, type Unit } from '../../nutrition/nutrients.ts';
import { words as said } from '../../words/words.ts';
import { MOST_NAME, MOST_WORDS } from './letters.ts';

const TAGS = NUTRIENTS.map((n) => n.tag) as [Tag, ...Tag[]];

/** Smaller than the last digit of any sum, above what divides to infinity. */
const LEAST = 1e-30;
/** g; a laboratory scale reads to 0.0001, a kitchen's finest to 0.01. */
const LEAST_WEIGHT = 0.001;
/** A ton, g. */
const MOST_GRAMS = 1_000_000;
/** g a day for one animal or a shelf of them. */
const MOST_DAILY_GRAMS = 100_000;
/** In the keeper's money; a million is no rare price in rupiah or dong. */
const MOST_MONEY = 1e8;
/** Of any nutrient, whatever its unit: 100 g of pure vitamin D are 4e9 IU. */
const MOST_AMOUNT = 1e10;
/** Pure fat has 902 kcal in 100 g; a label's kJ among the kcal is asked about, not refused here. */
const MOST_KCAL = 10_000;
/** Percent; shares of an unfinished mix may be above 100. */
const MOST_SHARE = 1000;

/** Control characters, halves of characters, and signs that turn the direction of all that follows, figures too. */
const UNSHOWN = /[\p{Cc}\p{Surrogate}\u202a-\u202e\u2066-\u2069]/u;
const PLAIN_ID = /^[\p{L}\p{N}][\p{L}\p{M}\p{N} ._:/+-]*$/u;

/** Whether a text may name a thing: no name that every object has already ("constructor"). */
const isFreeName = (text: string) => !(text in Object.prototype) && text !== 'prototype';

const plain = (text: z.ZodString) =>
  text.refine((written) => !UNSHOWN.test(written.replace(/[\t\n\r]/g, '')), {
    error: () => said().household.fault.control,
  });

/** Letters, digits and a few signs; starts with a letter or digit. */
export const id = z
  .string()
  .trim()
  .min(1)
  .max(100)
  .regex(PLAIN_ID, {
    error: () => said().household.fault.id,
  })
  .refine(isFreeName, { error: () => said().household.fault.reserved });
/** With something to see in it: spaces of no width alone are no name. */
export const name = plain(z.string().trim().min(1).max(MOST_NAME)).regex(/[\p{L}\p{N}\p{P}\p{S}]/u, {
  error: () => said().household.fault.letter,
});
/** Free text of a few paragraphs at most. */
export const words = plain(z.string().max(MOST_WORDS));
/** Text taken over from elsewhere as it was: it may hold what a page or a scan brought along. */
export const pasted = z
  .string()
  .max(MOST_WORDS)
  .refine((text) => !text.includes('\0') && !/\p{Surrogate}/u.test(text), {
    error: () => said().household.fault.noText,
  });

const noCrumb = (value: number) => value === 0 || Math.abs(value) >= LEAST;
const CRUMB = { error: () => said().household.fault.crumb };
const upTo = (most: number) => z.number().min(0).max(most).refine(noCrumb, CRUMB);

/** Of any nutrient or ratio, 0 or more. */
export const amount = upTo(MOST_AMOUNT);
export const percent = z.number().min(0).max(100).refine(noCrumb, CRUMB);
/** Percent of a mix that need not add up. */
export const share = upTo(MOST_SHARE);
export const money = upTo(MOST_MONEY);
/** g, 0 or more. */
export const grams = upTo(MOST_GRAMS);
/** g of what is there: above 0. */
export const weight = z.number().gt(0).min(LEAST_WEIGHT).max(MOST_GRAMS);
/** g of one animal: a newborn dwarf hamster weighs over a gram, a rat under a kilogram. */
export const bodyWeight = z.number().min(0.1).max(20_000);
export const dailyGrams = z.number().gt(0).min(LEAST_WEIGHT).max(MOST_DAILY_GRAMS);
/** 0 to below 1. */
export const probability = z.number().min(0).lt(1).refine(noCrumb, CRUMB);

export const tag = z.enum(TAGS);

const inYears = {
  error: () => said().household.fault.years(FIRST_YEAR, LAST_YEAR),
};
/** ISO 8601 calendar day. */
export const day = z.iso.date().refine(isInYears, inYears);
/** ISO 8601 time, UTC. */
export const moment = z.iso.datetime().refine(isInYears, inYears);

/** A record by ids, such as shares by food. */
export function byId<S extends z.ZodType>(value: S) {
  return z.record(id, value);
}

/** More of a nutrient than 100 g of food can hold, by its unit. */
function mostIn100g(unit: Unit): number {
  if (unit === 'kcal') return MOST_KCAL;
  const each = gramsPer(unit);
  return each === undefined ? MOST_AMOUNT : Math.round(100 / each);
}

export const composition = z
  .partialRecord(tag, amount)
  .superRefine((amounts, context) => {
    for (const [key, value] of Object.entries(amounts) as [Tag, number][]) {
      const { unit } = nutrient(key);
      const most = mostIn100g(unit);
      if (value <= most) continue;
      context.addIssue({
        code: 'custom',
        path: [key],
        message: said().household.fault.per100(unit === 'g' ? 100 : most, unit),
      });
    }
  })
  .openapi('Composition', {
    type: 'object',
    description: 'Amounts per 100 g as fed by INFOODS tagname; absent means unknown.',
  });

/** A check for a list: complains of the first thing whose key another had before it. @param field that holds the key */
export function once<T>(keyOf: (thing: T) => string, field?: string) {
  return (things: readonly T[], context: z.RefinementCtx): void => {
    const keys = things.map(keyOf);
    const again = keys.findIndex((key, i) => keys.indexOf(key) < i);
    if (again < 0) return;
    const path = field === undefined ? [again] : [again, field];
    context.addIssue({ code: 'custom', path, message: said().household.fault.twice });
  };
}
