/** What is said of mixes, of needs, and of what is inside of foods. */
import type { PartOf } from '../../part-shapes.ts';
import { advice } from '../advice.ts';
import { beside } from '../beside.ts';
import { cautions } from '../cautions.ts';
import { changeOver } from '../change-over.ts';
import { foods } from '../foods.ts';
import { hurts } from '../hurts.ts';
import { label } from '../label.ts';
import { limits } from '../limits.ts';
import { long } from '../long.ts';
import { mix } from '../mix.ts';
import { nutrients } from '../nutrients.ts';
import { refusals } from '../refusals.ts';
import { rows } from '../rows.ts';
import { search } from '../search.ts';
import { sharing } from '../sharing.ts';
import { start } from '../start.ts';
import { targets } from '../targets.ts';
import { terms } from '../terms.ts';
import { tradeOff } from '../trade-off.ts';
import { versions } from '../versions.ts';
import { why } from '../why.ts';
import { wishes } from '../wishes.ts';

export const mixes: PartOf<'mixes'> = {
  start,
  terms,
  mix,
  rows,
  beside,
  limits,
  long,
  nutrients,
  why,
  wishes,
  refusals,
  versions,
  tradeOff,
  sharing,
  changeOver,
  hurts,
  advice,
  targets,
  foods,
  label,
  cautions,
  search,
};
