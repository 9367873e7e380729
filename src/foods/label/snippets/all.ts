/** Every label of the snippet tables. */
import { dutch } from './dutch.ts';
import { english } from './english.ts';
import { french } from './french.ts';
import { german } from './german.ts';
import type { Snippet } from './snippet.ts';
import { spanish } from './spanish.ts';

export const SNIPPETS: readonly Snippet[] = [...english, ...german, ...french, ...dutch, ...spanish];
