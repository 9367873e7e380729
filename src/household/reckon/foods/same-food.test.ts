/** Ids that mean one food: whatever mixes call it, it is bought, kept and weighed out as one. */
import { describe, expect, it } from 'vitest';
import { lotOf } from '../../../../test/kitchen/cupboards.ts';
import { offer } from '../../../../test/kitchen/offers.ts';
import { demoHousehold } from '../../demo.ts';
import type { Household, Mix, OwnFood } from '../../model.ts';
import { contentsOfFoods } from '../cupboard/contents.ts';
import { foodsForLots } from '../cupboard/lot-foods.ts';
import { lotsByFood } from '../cupboard/lots-by-food.ts';
import { cupboardChanges } from '../cupboard/on-hand.ts';
import { lotsFor } from '../cupboard/take-from-lots.ts';
import { ingredientFromOwn, ingredientFromReference } from '../mix/mix-edits.ts';
import { shoppingQuestion } from '../shopping/shopping-question.ts';
import { driedAtHome } from './fresh-food.ts';
import { foodKeys } from './same-food.ts';

const DAY = '2026-03-10';
const demo = demoHousehold();
const [first] = demo.mixes as [Mix];

/** An own food made from a row of the tables by a form. */
function made(id: string, name: string, ref: string, more: readonly { ref?: string }[] = []): OwnFood {
  const source = {
    id: `${id}-source`,
    name: 'the table, dried',
    basis: 'as fed' as const,
    composition: {},
    sd: {},
  };
  return {
    id,
    name,
    kind: 'mix',
    group: 'vegetable',
    composition: {},
    sd: {},
    source: 'the table, dried',
    invented: false,
    evidence: {
      sources: [{ ...source, ref }, ...more.map((m, i) => ({ ...source, id: `${id}-${i}`, ...m }))],
    },
  };
}

const CARROT = ingredientFromReference({ ref: 'sr28:11683', name: 'Carrot, dried', group: 'vegetable' });
const PARSLEY = made('parsley-a', 'Parsley, fresh, dried', 'sr28:11297');
const AGAIN = made('parsley-b', 'Parsley, dried', 'sr28:11297');

/** A mix of the keeper's own beside the demonstration's, with the same carrot under another id. */
function own(foods = [CARROT], shares: Record<string, number> = { [CARROT.id]: 100 }): Mix {
  return { ...first, id: 'own', name: 'Own mix', problem: { ...first.problem, foods }, shares };
}

const house = (more: Partial<Household> = {}): Household => ({
  ...demo,
  mixes: [first, own()],
  lots: [lotOf({ id: 'bag', food: 'carrot-dried', name: 'Carrot, dried', grams: 500, form: 'dried' })],
  ...more,
});

const ask = (all: Household, mix: Mix) =>
  shoppingQuestion(all, mix, { size: { grams: 300 }, aim: 'cost', on: DAY, nameOf: (f) => f.name ?? f.id });

describe('the same food under two ids', () => {
  it('is one pack for the mixes of both', () => {
    expect(CARROT.id).not.toBe('carrot-dried');
    const all = house({
      offers: [offer({ id: 'o', food: 'carrot-dried' })],
      kitchen: [
        { id: 'kitchen', driedAtHome: [{ food: 'carrot-dried', fresh: 'sr28:11124', moisture: 10 }] },
      ],
    });
    const asked = ask(all, all.mixes[1]!);
    expect(asked.cupboard.map((c) => [c.lot.id, c.lot.food])).toEqual([['bag', CARROT.id]]);
    expect(asked.offers.map((o) => o.food)).toEqual([CARROT.id]);
    expect(asked.driedAtHome.map((d) => d.food)).toEqual([CARROT.id]);
    expect(driedAtHome(all, CARROT.id)?.fresh).toBe('sr28:11124');
    expect(ask(all, first).cupboard.map((c) => c.lot.food)).toEqual(['carrot-dried']);
    expect(cupboardChanges(all, all.mixes[1]!, DAY)).toMatchObject([{ food: CARROT.id, to: 500 }]);
    const kept = contentsOfFoods(all, [CARROT.id]);
    expect(lotsFor(kept, CARROT.id, 20, { day: DAY, groupOf: () => 'vegetable' })).toMatchObject({
      takes: [{ lot: { id: 'bag' }, grams: 20 }],
      short: 0,
    });
  });

  it('stands once in the cupboard, and once among the foods that a pack may be of', () => {
    const [bag] = house().lots;
    const all = house({ lots: [bag!, { ...bag!, id: 'jar', food: CARROT.id }] });
    expect(lotsByFood(all, DAY).map((f) => [f.name, f.all, f.lots.length])).toEqual([
      ['Carrot, dried', 1000, 2],
    ]);
    expect(foodsForLots(all).filter((f) => f.name === 'Carrot, dried')).toHaveLength(1);
  });

  it('stands once on the list of a mix that has both, with the shares of both', () => {
    const foods = [PARSLEY, AGAIN].map(ingredientFromOwn);
    const mix = own([CARROT, ...foods], { [CARROT.id]: 50, 'parsley-a': 30, 'parsley-b': 20 });
    const asked = ask(house({ foods: [...demo.foods, PARSLEY, AGAIN], mixes: [first, mix] }), mix);
    expect(asked.shares).toEqual({ [CARROT.id]: 50, 'parsley-a': 50 });
    expect(asked.foods.map((f) => f.food)).toEqual([CARROT.id, 'parsley-a']);
  });
});

describe('what is one food', () => {
  const keys = (...foods: OwnFood[]) => foodKeys(house({ foods }));
  it('is a form made twice from the same row, and the row of the tables that is that form', () => {
    const same = keys(PARSLEY, AGAIN, made('carrot-a', 'Carrot, dried', 'sr28:11124'));
    expect(same('parsley-a')).toBe(same('parsley-b'));
    expect(same('carrot-a')).toBe(same('carrot-dried'));
    expect(same('carrot-dried')).toBe(same(CARROT.id));
  });
  it('is not another form, another row, or what has figures of a label too', () => {
    const roast = made('roast', 'Parsley, roasted', 'sr28:11297');
    const label = made('label', 'Parsley, dried', 'sr28:11297', [{}]);
    const other = keys(PARSLEY, roast, label);
    expect(
      new Set(['parsley-a', 'roast', 'label', 'millet', 'rolled-oats', 'unheard-of'].map(other)).size,
    ).toBe(6);
  });
});
