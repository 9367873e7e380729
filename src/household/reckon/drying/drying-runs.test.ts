import { describe, expect, it } from 'vitest';
import { house, lot, run } from '../../../../test/kitchen/carrot-run.ts';
import { lotsToDry, runLines } from './drying-runs.ts';

describe('what there is', () => {
  it('lists fresh lots that hold some, and runs with their state, the last first', () => {
    expect(lotsToDry(house()).map((l) => l.lot.id)).toEqual(['fresh']);
    expect(lotsToDry(house({ lots: [{ ...lot, barred: { why: 'spoiled', on: '2026-03-14' } }] }))).toEqual(
      [],
    );
    expect(lotsToDry(house({ dryingRuns: [{ ...run, gramsTaken: 1000 }] }))).toEqual([]);
    const runs = [
      run,
      { ...run, id: 'r2', startedAt: '2026-03-15T08:00:00.000Z', gramsAfter: 60, load: { n: 1, of: 2 } },
      { ...run, id: 'r3', startedAt: '2026-03-16T08:00:00.000Z', gramsAfter: 60, endedAt: 'x' },
      { ...run, id: 'r4', startedAt: '2026-03-17T08:00:00.000Z', endedAt: 'x' },
    ];
    const lines = runLines(house({ dryingRuns: runs }));
    expect(lines.map((l) => l.state)).toEqual(['lost', 'done', 'weighed', 'drying']);
    expect(lines.map((l) => l.name)).toEqual(['Carrots', 'Carrots', 'Carrots, load 1 of 2', 'Carrots']);
  });
});
