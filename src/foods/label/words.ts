/**
 * The words of labels, one row a meaning, one column a language (en, de, fr, nl, es), spellings parted by "|".
 * A language is added by adding a column and its name in `LANGUAGES`. Case, accents and hyphens do not count.
 * Unknown words make a part of a line unread, so a missing spelling is safe: add it where it belongs when a label
 * shows one: nutrients in `nutrient-words.ts` and `vitamin-words.ts`, what has no tagname in `untagged-words.ts`, what an amount is per or of
 * in `basis-words.ts`, the rest in `role-words.ts`.
 */
import type { Tag } from '../../nutrition/nutrients.ts';

type Columns = readonly [en: string, de: string, fr: string, nl: string, es: string];
/** What a name says beside its tag: salt stands for sodium, "total" carbohydrate holds its fibre, calories are kcal. */
export type Mark = 'salt' | 'carbohydrate' | 'calories';
export type NameRow = readonly [tags: readonly Tag[], ...Columns, mark?: Mark];
export type NoTagRow = readonly [reason: string, ...Columns];
export type RoleRow = readonly [role: Role, ...Columns];

/** What words other than names and units do in a line. */
export type Role =
  | 'per'
  | 'serving'
  | 'serving size'
  | 'serving count'
  | 'piece'
  | 'kilogram'
  | 'pound'
  | 'ounce'
  | 'contains'
  | 'product'
  | 'dry matter'
  | 'as fed'
  | 'prepared'
  | 'daily'
  | 'energy share'
  | 'low'
  | 'high'
  | 'mean'
  | 'between'
  | 'and'
  | 'about'
  | 'traces'
  | 'to'
  | 'break'
  | 'heading'
  | 'subheading'
  | 'constituents'
  | 'additives'
  | 'ingredients'
  | 'composition'
  | 'advice'
  | 'filler';
