import { describe, expect, it } from 'vitest';
import { batchGrams } from './batch-grams.ts';

describe('size of a batch', () => {
  it('is days x what the animals eat x the mix’s part of the ration', () => {
    const animals = [
      { name: 'Pip', dailyGrams: 10 },
      { name: 'Moss', dailyGrams: 8 },
    ];
    expect(batchGrams({ days: 30, animals, mixPart: 0.5 })).toBe(270);
    expect(batchGrams({ grams: 300 })).toBe(300);
  });

  it.each([
    [{ grams: 0 }, 'batch grams'],
    [{ days: 0, animals: [{ name: 'Pip', dailyGrams: 10 }], mixPart: 0.5 }, 'days'],
    [{ days: 7, animals: [], mixPart: 0.5 }, 'animals'],
    [{ days: 7, animals: [{ name: 'Pip' }], mixPart: 0.5 }, 'Pip eats a day is unknown'],
    [{ days: 7, animals: [{ name: 'Pip', dailyGrams: -1 }], mixPart: 0.5 }, 'daily grams of Pip'],
    [{ days: 7, animals: [{ name: 'Pip', dailyGrams: 10 }], mixPart: 1.5 }, 'mixPart'],
  ])('refuses %j', (batch, message) => {
    expect(() => batchGrams(batch)).toThrow(message);
  });
});
