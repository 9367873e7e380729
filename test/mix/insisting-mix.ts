import type { Mix } from '../../src/household/model.ts';
import { problemOf } from '../formulation/problem-of.ts';

/** A mix of which much is asked: least and most shares, a wish, a refused food, a held share, and three rules. */
export const mix: Mix = {
  id: 'm',
  name: 'Mix',
  animalIds: [],
  profileId: 'p',
  problem: problemOf({
    foods: [
      { id: 'oats', min: 15, want: 5 },
      { id: 'linseed', min: 20, max: 30 },
      { id: 'dill', min: 5 },
      { id: 'peas', refused: true, min: 2 },
    ],
    rules: [
      { nutrient: 'FAT', max: 7, on: 'ration' },
      { group: 'seed', max: 50 },
      { ratio: ['CA', 'P'], min: 1 },
    ],
  }),
  shares: { oats: 60, linseed: 30, dill: 10 },
  held: ['dill'],
  updatedAt: '2026-01-01T00:00:00.000Z',
};
