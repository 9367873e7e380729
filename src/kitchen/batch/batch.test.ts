import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { lotOf, pourOf } from '../../../test/kitchen/cupboards.ts';
import { batch, kept, problem, reference } from '../../../test/kitchen/spring-batch.ts';
import { dayIn, utcDay } from '../../../test/kitchen/zones.ts';
import { parseProblem } from '../../formulation/problem/parse.ts';
import type { Problem } from '../../formulation/problem/problem.ts';
import { type Highs, loadHighs } from '../../formulation/solve/highs.ts';
import type { CupboardContents } from '../cupboard/cupboard.ts';
import type { DayAt } from '../days.ts';
import { feedingOf } from '../feeding/feeding.ts';
import type { Batch } from '../model.ts';
import { weighSheet } from '../weighing/weigh-sheet.ts';
import { batchRecord, type Evaluate, evaluateWith } from './batch.ts';
import { contentWords } from './content-line.ts';
import { cautionSentence } from './foods-cautions.ts';
import { batchLabel } from './label.ts';
import { moistureRule } from './mix-moisture.ts';
import { atActualMoisture } from './weighed-problem.ts';

let evaluate: Evaluate;
let highs: Highs;
beforeAll(async () => {
  highs = await loadHighs();
  evaluate = evaluateWith({ reference, highs });
});

const recordOf = (b: Batch, from: CupboardContents = kept, dayAt: DayAt = utcDay) =>
  batchRecord(b, { kept: from, reference, evaluate, dayAt });

describe('batchRecord', () => {
  it('tells what is in it: grams, shares, lots, who and when', () => {
    const record = recordOf(batch);
    expect(record).toMatchObject({ state: 'finished', madeBy: 'Robin', madeOn: '2026-04-02', grams: 200 });
    expect(record.foods.map((f) => [f.food, f.planned, f.grams, f.share, f.unnamed])).toEqual([
      ['oats', 60, 122, 61, 2],
      ['carrot', 20, 40, 20, 0],
      ['peas', 20, 38, 19, 38],
    ]);
    expect(record.foods[0]!.lots.map((l) => [l.lot.id, l.grams])).toEqual([['o1', 120]]);
  });

  it('counts a lot at the moisture it was measured to have', () => {
    const record = recordOf(batch);
    const factor = (100 - 12) / (100 - 4);
    const protein = record.contents.find((c) => c.tag === 'PROCNT')!;
    expect(protein.value).toBeCloseTo(0.61 * 14 + 0.2 * 8 * factor + 0.19 * 24, 9);
    expect(protein.sd).toBeCloseTo(0.61, 9);
    expect(record.contents.find((c) => c.tag === 'WATER')!.value).toBeCloseTo(6.1 + 2.4 + 1.71, 9);
    expect(record.inRange).toBe(true);
    expect(record.sentences[0]).toBe(record.evaluation.verdict);
  });

  it('says out of range where it is, and what rests on the unknown', () => {
    const rich = { ...batch, pours: [pourOf({ food: 'peas', grams: 100 })] };
    const record = recordOf(rich);
    expect(record.inRange).toBe(false);
    expect(record.sentences.join(' ')).toMatch(/[Pp]rotein/);
    const herb = recordOf({ ...batch, pours: [...batch.pours, pourOf({ food: 'nettle', grams: 10 })] });
    const protein = herb.contents.find((c) => c.tag === 'PROCNT')!;
    expect(protein.atLeast).toBe(true);
    expect(contentWords(protein)).toMatch(/^at least /);
    expect(herb.sentences.some((s) => /Nettle/.test(s))).toBe(true);
  });

  it('counts what was poured though it is refused, and forbids what the caution list forbids', () => {
    const refusing = {
      ...problem,
      foods: problem.foods.map((f) => (f.id === 'peas' ? { ...f, refused: true } : f)),
    };
    expect(recordOf({ ...batch, problem: refusing }).contents).toEqual(recordOf(batch).contents);
    const onion = { id: 'onion', name: 'Onion', composition: { WATER: 4, PROCNT: 9 } };
    const strict: Problem = { ...problem, cautions: 'apply', foods: [...problem.foods, onion] };
    const record = recordOf({
      ...batch,
      problem: strict,
      pours: [...batch.pours, pourOf({ food: 'onion', grams: 50 })],
    });
    expect(record.inRange).toBe(false);
    expect(record.sentences[0]).toBe(
      '20 % of the batch is food that the caution list forbids: do not feed it.',
    );
  });

  it('tells of a mix too damp to keep, by the rule that formulation takes', () => {
    const rules = [...problem.rules, moistureRule(10)];
    const damp = parseProblem({ ...JSON.parse(JSON.stringify(problem)), rules }, reference).problem;
    const record = recordOf({ ...batch, problem: damp });
    expect(record.evaluation.breaches.map((b) => [b.pointer, b.bound])).toEqual([['/rules/1/max', 10]]);
    expect(record.inRange).toBe(false);
  });

  it('costs at least what is known', () => {
    const { cost } = recordOf(batch);
    // 120 g of the lot, 2 g of oats at the usual price; carrot and peas have none.
    expect(cost.known).toBeCloseTo((120 * 0.6) / 300 + 2 * 0.003, 12);
    expect([cost.atLeast, cost.missing]).toEqual([true, ['Carrot, dried', 'Peas']]);
    const all = recordOf({ ...batch, pours: [pourOf({ food: 'oats', grams: 100 })] }).cost;
    expect([all.known, all.atLeast]).toEqual([0.3, false]);
  });

  it('makes shares of whatever was poured: they add up, and so do the grams', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.tuple(fc.constantFrom('oats', 'peas', 'carrot'), fc.double({ min: 0.1, max: 90, noNaN: true })),
          {
            minLength: 1,
            maxLength: 8,
          },
        ),
        (poured) => {
          const pours = poured.map(([food, grams]) => pourOf({ food, grams }));
          const evaluated = batchRecord(
            { ...batch, pours },
            { kept, reference, evaluate: (p, shares) => evaluateOnce(p, shares), dayAt: utcDay },
          );
          const total = poured.reduce((sum, [, g]) => sum + g, 0);
          const sum = (of: 'share' | 'grams') => evaluated.foods.reduce((s, f) => s + f[of], 0);
          expect(Math.abs(sum('share') - 100)).toBeLessThan(1e-9);
          expect(Math.abs(sum('grams') - total)).toBeLessThan(1e-9);
          for (const f of evaluated.foods)
            expect(Math.abs(f.share * total - 100 * f.grams)).toBeLessThan(1e-6);
        },
      ),
      { numRuns: 50 },
    );
    function evaluateOnce(p: Problem, shares: Readonly<Record<string, number>>) {
      const answer = evaluate(p, shares);
      expect(Math.abs(answer.total - 100)).toBeLessThan(1e-9);
      return answer;
    }
  });

  it('asks for what is missing', () => {
    expect(() => recordOf({ ...batch, pours: [] })).toThrow(/nothing is poured into batch b1/);
    expect(() => recordOf({ ...batch, pours: [pourOf({ food: 'rice', grams: 3 })] })).toThrow(
      /"rice" was poured/,
    );
    expect(() => recordOf(batch, { ...kept, lots: [] })).toThrow(/lot "o1" of oats is not kept/);
  });
});

describe('atActualMoisture', () => {
  it('takes the mean of the lots, and the food itself for what was not measured', () => {
    const lots = [
      { lot: lotOf({ id: 'a', moisture: 12 }), grams: 30 },
      { lot: lotOf({ id: 'b', moisture: 8 }), grams: 10 },
      { lot: lotOf({ id: 'c' }), grams: 10 },
    ];
    const moved = atActualMoisture(problem, [{ food: 'carrot', grams: 60, lots }], reference);
    // 30 g at 12 %, 10 g at 8 %, 20 g at the food's own 4 %.
    expect(moved.foods[2]!.composition!.WATER).toBeCloseTo((360 + 80 + 80) / 60, 12);
    expect(moved.foods[0]).toBe(problem.foods[0]);
  });
});

describe('batchLabel', () => {
  it('says what it holds, until when, how to keep and how to feed', () => {
    const record = recordOf(batch);
    const feeding = feedingOf({
      problem,
      animals: [{ id: 'ada', name: 'Ada', dailyGrams: 10 }],
      grams: record.grams,
      from: record.madeOn,
    });
    const label = batchLabel(record, { feeding, reference });
    expect(label.contents.map((c) => c.tag)).toEqual(['PROCNT', 'FAT', 'WATER']);
    expect(label.foods[0]).toEqual({ name: 'Oats', share: 61 });
    // Dried carrot at 12 % is damper than it keeps: 125 days, which is before its six months.
    expect(label.useBy.day).toBe('2026-08-05');
    expect(label.useBy.reason).toMatch(/Carrot, dried holds 12 % water/);
    expect(label.moisture.state).toBe('dry');
    expect(label.feeding).toEqual(['Ada: 5 g of the mix and 5 g Pellet a day.']);
    expect(label.lasts).toBe('Lasts 40 days, until 12 May 2026.');
    expect(label.keep.length).toBeGreaterThan(0);
  });

  it('carries the cautions of foods that are in it, and of no other', () => {
    const withOnion = parseProblem(
      {
        ...JSON.parse(JSON.stringify(problem)),
        foods: [...problem.foods, { id: 'onion', name: 'Onion', composition: { WATER: 4, PROCNT: 9 } }],
      },
      reference,
    ).problem;
    const feeding = feedingOf({ problem, animals: [], grams: 1, from: '2026-04-02' });
    const label = (pours: Batch['pours']) =>
      batchLabel(recordOf({ ...batch, problem: withOnion, pours }), { feeding, reference })
        .cautions.map(cautionSentence)
        .join(' ');
    expect(label([...batch.pours, pourOf({ food: 'onion', grams: 5 })])).toMatch(/Onion:/);
    expect(label(batch.pours)).not.toMatch(/Onion/);
  });
});

describe('the day of a batch', () => {
  const weighed = { ...batch, pours: batch.pours.map((p) => ({ ...p, at: '2026-04-02T02:00:00Z' })) };
  const feeding = feedingOf({ problem, animals: [], grams: 200, from: '2026-04-01' });
  const dated = (times: Pick<Batch, 'startedAt' | 'finishedAt'>, zone: string) => {
    const dayAt = dayIn(zone);
    const record = recordOf({ ...weighed, ...times }, kept, dayAt);
    const label = batchLabel(record, { feeding, reference });
    return {
      sheet: weighSheet({ ...weighed, ...times }, { reference, dayAt }).begunOn,
      record: record.madeOn,
      label: label.madeOn,
      mixed: label.useBy.limits.filter((l) => l.why.includes('from mixing')).map((l) => l.until.slice(8)),
    };
  };

  it.each([
    // Ten in the evening of the 1st.
    ['America/New_York', '2026-04-02T02:00:00Z', '2026-04-01'],
    // Half past seven in the morning of the 2nd.
    ['Asia/Tokyo', '2026-04-01T22:30:00Z', '2026-04-02'],
    ['UTC', '2026-04-01T22:30:00Z', '2026-04-01'],
  ])('is that of the keeper’s own calendar, in %s', (zone, at, day) => {
    const { mixed, ...days } = dated({ startedAt: at, finishedAt: at }, zone);
    expect(days).toEqual({ sheet: day, record: day, label: day });
    // Whole months from mixing end on the day of the month on which they began.
    expect(mixed.length).toBeGreaterThan(0);
    expect([...new Set(mixed)]).toEqual([day.slice(8)]);
  });
});

describe('a batch that was given up', () => {
  it('is said to be so, with the reason', () => {
    const record = recordOf({ ...batch, givenUp: { note: 'spilt', on: '2026-04-02' } });
    expect([record.state, record.givenUp?.note]).toEqual(['given up', 'spilt']);
  });
});
