/** Every text of Pouchful in English. The other languages have the same rooms, and in them the same names. */
import type { Manner } from '../manner.ts';
import { wordsOf } from '../words-of.ts';
import { answers } from './parts/answers.ts';
import { care } from './parts/care.ts';
import { days } from './parts/days.ts';
import { dried } from './parts/dried.ts';
import { first } from './parts/first.ts';
import { home } from './parts/home.ts';
import { house } from './parts/house.ts';
import { mixes } from './parts/mixes.ts';
import { scale } from './parts/scale.ts';
import { solving } from './parts/solving.ts';
import { stock } from './parts/stock.ts';
import { warnings } from './parts/warnings.ts';

const rooms = {
  ...first,
  ...days,
  ...scale,
  ...solving,
  ...answers,
  ...warnings,
  ...stock,
  ...dried,
  ...home,
  ...care,
  ...mixes,
  ...house,
};

export const english = (manner: Manner) => wordsOf(rooms, manner);

export type Words = ReturnType<typeof english>;
