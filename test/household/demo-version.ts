/** The demo household, its one mix, and a version of that mix. */
import { demoHousehold } from '../../src/household/demo.ts';
import type { MixVersion } from '../../src/household/model.ts';

export const demo = demoHousehold();
export const mix = demo.mixes[0]!;

export const version: MixVersion = {
  id: 'v1',
  mixId: mix.id,
  name: 'before the fat came down',
  problem: { ...mix.problem, batch_grams: 250 },
  shares: { millet: 97.5 },
  keptAt: '2026-11-25T08:30:00.000Z',
};
