/** Every text of Pouchful in German; the names are those of the English. */
import type { Words } from '../en/index.ts';
import type { Manner } from '../manner.ts';
import { wordsOf } from '../words-of.ts';
import { care } from './parts/care.ts';
import { first } from './parts/first.ts';
import { house } from './parts/house.ts';
import { kitchen } from './parts/kitchen.ts';
import { mixes } from './parts/mixes.ts';
import { stock } from './parts/stock.ts';

export const german = (manner: Manner): Words =>
  wordsOf({ ...first, ...stock, ...kitchen, ...care, ...mixes, ...house }, manner);
