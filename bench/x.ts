import { leavesShareOpen } from '../src/formulation/solve/ration-share.ts';
import { calendarOf } from '../src/household/reckon/calendar/batch-calendar.ts';
import { freezerDays } from '../src/household/reckon/cupboard/freezer-days.ts';
import { gramsInFreezer } from '../src/household/reckon/cupboard/freezer-load.ts';
import { cupboardFoods } from '../src/household/reckon/cupboard/lot-foods.ts';
import { lotsByFood } from '../src/household/reckon/cupboard/lots-by-food.ts';
import { lotsToFreeze } from '../src/household/reckon/cupboard/lots-to-freeze.ts';
import { barredInUse, lotsPastBest } from '../src/household/reckon/cupboard/lots-to-look-at.ts';
import { cupboardChanges } from '../src/household/reckon/cupboard/on-hand.ts';
import { treatmentToday } from '../src/household/reckon/cupboard/treatment-today.ts';
import { lotsToDry, runLines } from '../src/household/reckon/drying/drying-runs.ts';
import { onTrays } from '../src/household/reckon/drying/on-trays.ts';
import { inventedIn, isNew } from '../src/household/reckon/new-household.ts';
import { householdSchema } from '../src/household/shape/household-schema.ts';
import { tenYears } from '../test/household/ten-years.ts';

const h = tenYears();
const t = (n: string, f: () => unknown) => {
  for (let i = 0; i < 2; i++) {
    const s = performance.now();
    f();
    console.log(n, (performance.now() - s).toFixed(1));
  }
};
console.log(
  'json',
  JSON.stringify(h).length,
  Object.fromEntries(Object.entries(h).map(([k, v]) => [k, JSON.stringify(v).length])),
);
t('parse zod', () => householdSchema.parse(h));
const day = '2026-03-10';
const dayAt = (m: string) => m.slice(0, 10);
t('cupboardFoods', () => cupboardFoods(h));
t('lotsByFood', () => lotsByFood(h, day));
t('cupboardChanges', () => cupboardChanges(h, h.mixes[0]!, day));
t('lotsToFreeze', () => lotsToFreeze(h, day));
t('lotsPastBest', () => lotsPastBest(h, day));
t('barredInUse', () => barredInUse(h, h.batches.at(-1), dayAt));
t('treatmentToday', () => treatmentToday(h, day));
t('runLines', () => runLines(h));
t('lotsToDry', () => lotsToDry(h));
t('onTrays', () => onTrays(h));
t('calendarOf', () =>
  calendarOf(h, h.mixes[0]!, { today: day, dayAt, table: new Map(), chosenFor: () => undefined }),
);
t('freezerDays', () => freezerDays(h, h.kitchen[0]!.freezer!, day));
t('gramsInFreezer', () => gramsInFreezer(h, day));
t('open shares', () => h.batches.filter((b) => leavesShareOpen(b.problem)).length);
t('isNew', () => [isNew(h), inventedIn(h)]);
