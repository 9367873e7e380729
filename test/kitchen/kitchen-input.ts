/** What a kitchen plan is made for: dry goods to freeze and fresh ones to dry. */
import type { KitchenInput, Supply } from '../../src/kitchen/calendar/kitchen-plan.ts';

export const dry: Supply = {
  id: 'dry-goods',
  route: 'freeze',
  goods: [
    { food: 'oats', name: 'oats' },
    { food: 'millet', name: 'millet' },
  ],
};

export const fresh: Supply = {
  id: 'fresh-goods',
  route: 'dry',
  goods: [{ food: 'carrot', name: 'carrot' }],
};

export const kitchen: KitchenInput = { id: 'plan-4', name: 'batch 4', supplies: [dry, fresh] };
