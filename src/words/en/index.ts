/** Every text of Pouchful in English. The other languages have the same rooms, and in them the same names. */
import type { Manner } from '../manner.ts';
import { wordsOf } from '../words-of.ts';
import { care } from './parts/care.ts';
import { first } from './parts/first.ts';
import { house } from './parts/house.ts';
import { kitchen } from './parts/kitchen.ts';
import { mixes } from './parts/mixes.ts';
import { stock } from './parts/stock.ts';

const rooms = { ...first, ...stock, ...kitchen, ...care, ...mixes, ...house };

export const english = (manner: Manner) => wordsOf(rooms, manner);

export type Words = ReturnType<typeof english>;
