/**
 * Which parts of the texts each part of the worker says, beside the first: they are fetched with it, since an answer that
 * is being worked out cannot wait for one. `room-texts.test.ts` reads the code for what it says.
 */
import type { Part } from '../../words/part-shapes.ts';

export const ROOM_TEXTS = {
  mixes: ['solving', 'answers', 'warnings'],
  changing: ['mixes', 'days', 'solving', 'answers', 'warnings'],
  sharing: ['mixes', 'solving', 'answers', 'warnings'],
  weighing: ['days', 'scale', 'solving', 'answers', 'warnings'],
  papers: ['days', 'scale', 'solving', 'answers', 'warnings'],
  search: ['answers'],
  names: [],
  similar: ['answers'],
  shopping: ['days', 'home', 'stock'],
  intake: ['care', 'scale', 'answers'],
} as const satisfies Readonly<Record<string, readonly Part[]>>;

export type Room = keyof typeof ROOM_TEXTS;
