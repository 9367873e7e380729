import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dryEnough } from './dry-enough.ts';

describe('dryEnough', () => {
  it('says damp above the limit, dry well below, unsure between', () => {
    expect(dryEnough({ moisture: 12, sd: 0 }, 'vegetable').state).toBe('damp');
    expect(dryEnough({ moisture: 12, sd: 0 }, 'vegetable').sentence).toMatch(/not dry enough to keep/);
    expect(dryEnough({ moisture: 6, sd: 1 }, 'vegetable').state).toBe('dry');
    expect(dryEnough({ moisture: 6, sd: 4 }, 'vegetable').state).toBe('unsure');
    expect(dryEnough({ moisture: 12, sd: 1 }, 'fruit').state).toBe('dry');
    expect(dryEnough({ moisture: 10, sd: 0 }, 'herb').state).toBe('dry');
  });

  it('is the less sure the damper, and never calls damp what has even chances', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 30, noNaN: true }),
        fc.double({ min: 0, max: 10, noNaN: true }),
        fc.double({ min: 0.1, max: 5, noNaN: true }),
        (at, more, sd) => {
          const drier = dryEnough({ moisture: at, sd }, 'leaf');
          const damper = dryEnough({ moisture: at + more, sd }, 'leaf');
          // Far from the limit both are 0 or 1 but for the last digits.
          expect(damper.chance).toBeLessThanOrEqual(drier.chance + 1e-12);
          expect(drier.state === 'damp').toBe(at > drier.most);
        },
      ),
    );
  });
});
