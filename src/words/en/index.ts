/** Every text of Pouchful in English. The other languages have the same rooms, and in them the same names. */
import { figuresOf } from '../figures.ts';
import type { Manner } from '../manner.ts';
import { access } from './access.ts';
import { animals } from './animals.ts';
import { batch } from './batch.ts';
import { beside } from './beside.ts';
import { calendar } from './calendar.ts';
import { cautions } from './cautions.ts';
import { changeOver } from './change-over.ts';
import { common } from './common.ts';
import { cupboard } from './cupboard.ts';
import { drying } from './drying.ts';
import { exchange } from './exchange.ts';
import { feeding } from './feeding.ts';
import { foodForms } from './food-forms.ts';
import { foods } from './foods.ts';
import { formulation } from './formulation.ts';
import { frame } from './frame.ts';
import { freezing } from './freezing.ts';
import { household } from './household.ts';
import { hurts } from './hurts.ts';
import { keeping } from './keeping.ts';
import { kitchen } from './kitchen.ts';
import { label } from './label.ts';
import { limits } from './limits.ts';
import { mix } from './mix.ts';
import { nutrients } from './nutrients.ts';
import { nutrition } from './nutrition.ts';
import { ownTable } from './own-table.ts';
import { pairing } from './pairing.ts';
import { refusals } from './refusals.ts';
import { rows } from './rows.ts';
import { search } from './search.ts';
import { shared } from './shared.ts';
import { sharing } from './sharing.ts';
import { shopping } from './shopping.ts';
import { start } from './start.ts';
import { store } from './store.ts';
import { targets } from './targets.ts';
import { terms } from './terms.ts';
import { today } from './today.ts';
import { tradeOff } from './trade-off.ts';
import { verdict } from './verdict.ts';
import { versions } from './versions.ts';
import { weighing } from './weighing.ts';
import { why } from './why.ts';
import { wishes } from './wishes.ts';

export function english(manner: Manner) {
  const f = figuresOf(manner);
  return {
    figures: f,
    common: common(f),
    shared: shared(f),
    terms: terms(f),
    frame: frame(f),
    today: today(f),
    start: start(f),
    search: search(f),
    mix: mix(f),
    rows: rows(f),
    beside: beside(f),
    limits: limits(f),
    nutrients: nutrients(f),
    verdict: verdict(f),
    formulation: formulation(f),
    why: why(f),
    wishes: wishes(f),
    refusals: refusals(f),
    versions: versions(f),
    tradeOff: tradeOff(f),
    sharing: sharing(f),
    changeOver: changeOver(f),
    foods: foods(f),
    label: label(f),
    cautions: cautions(f),
    foodForms: foodForms(f),
    targets: targets(f),
    nutrition: nutrition(f),
    shopping: shopping(f),
    cupboard: cupboard(f),
    calendar: calendar(f),
    drying: drying(f),
    kitchen: kitchen(f),
    freezing: freezing(f),
    weighing: weighing(f),
    batch: batch(f),
    feeding: feeding(f),
    animals: animals(f),
    keeping: keeping(f),
    exchange: exchange(f),
    access: access(f),
    ownTable: ownTable(f),
    pairing: pairing(f),
    store: store(f),
    household: household(f),
    hurts: hurts(f),
  };
}

export type Words = ReturnType<typeof english>;
