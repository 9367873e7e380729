import { expect, it } from 'vitest';
import { largePieces } from './pieces.ts';

it('whole pulses, nuts and maize are large; what was made small is not', () => {
  for (const food of [
    { name: 'Chickpeas, raw dry', group: 'legume' },
    { name: 'Kichererbsen', group: 'legume' },
    { name: 'Hazelnut', ref: 'sr28:12120' },
    { name: 'Erdnüsse' },
    { name: 'Maize', group: 'seed' },
  ] as const)
    expect(largePieces(food), food.name).toBe(true);
  for (const food of [
    { name: 'Chickpea flour', group: 'legume' },
    { name: 'Erbsenflocken', group: 'legume' },
    { name: 'Lentils, raw dry', group: 'legume' },
    { name: 'Spliterwten', group: 'legume' },
    { name: 'Millet', group: 'seed' },
    { name: 'Gemahlene Haselnüsse' },
  ] as const)
    expect(largePieces(food), food.name).toBe(false);
});
