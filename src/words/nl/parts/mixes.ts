import { beside } from '../beside.ts';
import { changeOver } from '../change-over.ts';
import { feedingChange } from '../feeding-change.ts';
import { hurts } from '../hurts.ts';
import { limits } from '../limits.ts';
import { long } from '../long.ts';
import { mix } from '../mix.ts';
import { nutrients } from '../nutrients.ts';
import { refusals } from '../refusals.ts';
import { rows } from '../rows.ts';
import { sharing } from '../sharing.ts';
import { start } from '../start.ts';
import { targets } from '../targets.ts';
import { terms } from '../terms.ts';
import { tradeOff } from '../trade-off.ts';
import { versions } from '../versions.ts';
import { why } from '../why.ts';
import { wishes } from '../wishes.ts';

export const mixes = {
  start,
  terms,
  long,
  mix,
  rows,
  beside,
  limits,
  nutrients,
  why,
  wishes,
  refusals,
  versions,
  tradeOff,
  sharing,
  changeOver,
  feedingChange,
  hurts,
  targets,
};
