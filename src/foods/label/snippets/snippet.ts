/**
 * Labels as keepers paste them, every brand and figure invented, each with what must be read from it.
 * `figures`: "PROCNT=17 FAT>=4 FAT<=6", per 100 g as fed in the unit of the tagname; nothing else may be read.
 * `questions`: ids, in order. `unread`: indexes of unread lines. `missed`: lines that were read but for a part.
 */
import type { Language } from '../reading.ts';

export interface Snippet {
  readonly name: string;
  readonly language: Language | undefined;
  readonly text: string;
  readonly figures: string;
  readonly questions?: readonly string[];
  readonly unread?: readonly number[];
  readonly missed?: readonly number[];
  readonly answers?: Readonly<Record<string, string>>;
}
