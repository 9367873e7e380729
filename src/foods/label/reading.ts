/**
 * What was read from a label: every line accounted for, amounts as printed, and the questions left open.
 * Nothing here is converted; `figures.ts` does that.
 */
import type { Tag } from '../../nutrition/nutrients.ts';

export type Language = 'en' | 'de' | 'fr' | 'nl' | 'es';
export const LANGUAGES: readonly Language[] = ['en', 'de', 'fr', 'nl', 'es'];

/** What a label's amounts are part of: the food as sold, or its dry matter. */
export type LabelBasis = 'as fed' | 'dry matter';

/** What an amount is "per". `grams` is set once it is known, by print or by an answer. */
export interface Quantity {
  /**
   * `serving`, `volume` and `each` (a tablet, a pack, a word that is not known) need an answer before they are grams;
   * `energy` is no weight at all ("per 100 kcal"), and `unknown` is no "per" at all.
   */
  readonly kind: 'grams' | 'percent' | 'serving' | 'volume' | 'each' | 'energy' | 'unknown';
  readonly grams?: number;
  readonly basis: LabelBasis;
  /** As the label prints it. */
  readonly text: string;
}

/** Units as labels print them, one spelling each. */
export type PrintedUnit = 'g' | 'mg' | 'ug' | 'IU' | 'kJ' | 'MJ' | 'kcal' | '%' | '‰' | 'ppm';

export interface ReadLine {
  readonly text: string;
  readonly kind: 'amount' | 'quantity' | 'ignored' | 'unread';
  /** What was understood, or why nothing was and what to do. */
  readonly note: string;
  /** Why the whole of it was not read, where that is all there is to say. */
  readonly why?: string;
  /** Parts of the line, as printed, that hold a figure and were not understood. */
  readonly missed: readonly string[];
}

export interface ReadAmount {
  /** Index into `lines`. */
  readonly line: number;
  readonly tag: Tag;
  /** In the printed unit. A bound is never a value; all three are absent while the number itself is in question. */
  readonly value?: number;
  readonly low?: number;
  readonly high?: number;
  /** Half the last printed digit: how far rounding may have moved the figure. */
  readonly rounding: number;
  readonly unit: PrintedUnit;
  readonly per: Quantity;
  /** The words that named it. */
  readonly heard: string;
  /** Salt stands for sodium; available carbohydrate lacks the fibre. */
  readonly as?: 'salt' | 'available carbohydrate';
  readonly note?: string;
  /** An answer chose another figure for the same nutrient. */
  readonly setAside?: boolean;
  /** Ids of the questions to be answered before this amount counts. */
  readonly open: readonly string[];
}

export interface Option {
  /** What to give back as the answer. */
  readonly answer: string;
  /** In words, for a screen. */
  readonly label: string;
}

export interface Question {
  /** Stays the same when the same text is read again; the key of its answer. */
  readonly id: string;
  /** Index into `lines`; absent when the whole label is meant. */
  readonly line?: number;
  readonly message: string;
  readonly options: readonly Option[];
  /** What a free answer is besides the options: a weight in grams, a percentage, or nothing. */
  readonly free?: 'grams' | 'percent';
}

export interface LabelReading {
  /** One for each line of the input, in order. */
  readonly lines: readonly ReadLine[];
  readonly amounts: readonly ReadAmount[];
  /** The "per" columns found. */
  readonly quantities: readonly Quantity[];
  readonly questions: readonly Question[];
  /** The language with most words found; undefined when none leads. */
  readonly language: Language | undefined;
  /** Moisture in percent where an answer gave it. */
  readonly moisture?: number;
}

/** Answers to earlier questions, by question id. */
export type Answers = Readonly<Record<string, string>>;

/** What of a line was recognised and is no amount of the food as sold. */
export type Left = 'daily' | 'energy' | 'prepared';
