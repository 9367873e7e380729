/** Every text of Pouchful in German; the names are those of the English. */
import type { Words } from '../en/index.ts';
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

export const german = (manner: Manner): Words =>
  wordsOf(
    {
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
    },
    manner,
  );
