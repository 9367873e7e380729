/** Every text of Pouchful in German; the names are those of the English. */
import type { Rooms, Words } from '../en/index.ts';
import type { Manner } from '../manner.ts';
import { wordsOf } from '../words-of.ts';
import { access } from './access.ts';
import { advice } from './advice.ts';
import { animals } from './animals.ts';
import { batch } from './batch.ts';
import { beside } from './beside.ts';
import { bodyWeight } from './body-weight.ts';
import { calendar } from './calendar.ts';
import { cautions } from './cautions.ts';
import { changeOver } from './change-over.ts';
import { common } from './common.ts';
import { cupboard } from './cupboard.ts';
import { dailyFood } from './daily-food.ts';
import { drying } from './drying.ts';
import { exchange } from './exchange.ts';
import { feeding } from './feeding.ts';
import { foodForms } from './food-forms.ts';
import { foods } from './foods.ts';
import { formulation } from './formulation.ts';
import { frame } from './frame.ts';
import { freezing } from './freezing.ts';
import { hands } from './hands.ts';
import { household } from './household.ts';
import { hurts } from './hurts.ts';
import { keeping } from './keeping.ts';
import { kitchen } from './kitchen.ts';
import { label } from './label.ts';
import { leftovers } from './leftovers.ts';
import { lifeline } from './lifeline.ts';
import { limits } from './limits.ts';
import { mix } from './mix.ts';
import { nutrients } from './nutrients.ts';
import { nutrition } from './nutrition.ts';
import { ownTable } from './own-table.ts';
import { pairing } from './pairing.ts';
import { pelletStock } from './pellet-stock.ts';
import { refusals } from './refusals.ts';
import { rows } from './rows.ts';
import { search } from './search.ts';
import { shared } from './shared.ts';
import { sharing } from './sharing.ts';
import { shopping } from './shopping.ts';
import { sitter } from './sitter.ts';
import { start } from './start.ts';
import { store } from './store.ts';
import { targets } from './targets.ts';
import { terms } from './terms.ts';
import { today } from './today.ts';
import { tradeOff } from './trade-off.ts';
import { trials } from './trials.ts';
import { verdict } from './verdict.ts';
import { versions } from './versions.ts';
import { vetPage } from './vet-page.ts';
import { weighing } from './weighing.ts';
import { why } from './why.ts';
import { wishes } from './wishes.ts';

const rooms: Rooms = {
  common,
  shared,
  terms,
  frame,
  today,
  start,
  search,
  mix,
  rows,
  beside,
  limits,
  nutrients,
  verdict,
  formulation,
  why,
  wishes,
  refusals,
  versions,
  tradeOff,
  sharing,
  changeOver,
  foods,
  label,
  cautions,
  foodForms,
  targets,
  nutrition,
  shopping,
  cupboard,
  calendar,
  drying,
  kitchen,
  freezing,
  weighing,
  batch,
  feeding,
  animals,
  pelletStock,
  hands,
  sitter,
  vetPage,
  lifeline,
  trials,
  leftovers,
  dailyFood,
  bodyWeight,
  keeping,
  exchange,
  access,
  ownTable,
  pairing,
  store,
  household,
  hurts,
  advice,
};

export const german = (manner: Manner): Words => wordsOf(rooms, manner);
