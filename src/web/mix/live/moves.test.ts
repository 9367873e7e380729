/** A live mix with a worker that counts what it is asked: what came with an answer is not asked for again. */
import { expect, test } from 'vitest';
import { evaluation } from '../../../../test/formulation/evaluations.ts';
import { problemOf } from '../../../../test/formulation/problem-of.ts';
import type { Dragged, Following, Result } from '../../../formulation/problem/result.ts';
import type { Mix } from '../../../household/model.ts';
import { EvaluationKeeper, type Known } from './evaluation-keeper.ts';
import { balance, edit, type MoveContext, move, settle, type Unsettled } from './moves.ts';

const MIX: Mix = {
  id: 'm',
  name: 'Mix',
  animalIds: [],
  profileId: 'p',
  problem: problemOf({ foods: [{ id: 'oats' }, { id: 'millet' }] }),
  shares: { oats: 50, millet: 50, gone: 7 },
  held: [],
  updatedAt: '2026-01-01T00:00:00Z',
};

const said = (verdict: string) => evaluation({ verdict });

const answered = (shares: Following['shares'], verdict: string): Result => {
  const { total: _, breaches: __, ...rest } = said(verdict);
  const grams = { grams: null, grams_proof: { proven: true } };
  return {
    ...rest,
    ...grams,
    status: 'optimal',
    objective: 0,
    spans: {},
    questions: [],
    ignored: [],
    shares,
  };
};

/** A page that follows every change, as React does. @param answers what moves and balancing answer, in turn */
function page(answers: readonly (Result | Dragged)[], mix = MIX) {
  let kept = mix;
  const asked: string[] = [];
  const shown: Known[] = [];
  const left = [...answers];
  const unsettled: Unsettled[] = [];
  const ask = async (what: string) => {
    asked.push(what);
    // Each of them is asked only for what it answers.
    const value = left.shift() as Result | undefined;
    return value ? { ok: true as const, value } : { ok: false as const, field: '/foods', message: 'bad' };
  };
  const keeper = new EvaluationKeeper(
    async () => {
      asked.push('evaluate');
      return { ok: true, value: said('asked') };
    },
    (standing) => shown.push(standing),
  );
  const moved: MoveContext = {
    engine: {
      solve: () => ask('solve'),
      follow: () => ask('follow'),
      settle: () => ask('settle'),
      newestMove: () => ask('move'),
    },
    keeper,
    kept: () => kept,
    // With animals the problem is another object each time.
    effective: (m) => ({ ...m, problem: structuredClone(m.problem) }),
    change: (next) => {
      kept = next(kept);
      void keeper.follow(structuredClone(kept.problem), kept.shares);
    },
    show: (shares) => moved.change((m) => ({ ...m, shares: { ...m.shares, ...shares } })),
    say: () => {},
    collided: () => {},
    stopped: () => false,
    unsettled: (open) => unsettled.push(open),
  };
  return {
    moved,
    asked,
    mix: () => kept,
    unsettled,
    shown: () => shown.at(-1),
    open: () => keeper.follow(kept.problem, kept.shares),
  };
}

test('a move is one question, and what came with its answer is shown', async () => {
  const p = page([answered({ oats: 60, millet: 40 }, 'moved')]);
  await p.open();
  expect(p.asked.splice(0)).toEqual(['evaluate']);
  await move(p.moved, 'oats', 60, MIX.shares);
  expect(p.asked).toEqual(['move']);
  expect(p.mix().shares).toEqual({ oats: 60, millet: 40, gone: 7 });
  expect(p.shown()).toEqual({ evaluation: said('moved') });
});

test('so is balancing', async () => {
  const p = page([answered({ oats: 30, millet: 70 }, 'balanced')]);
  await balance(p.moved);
  expect(p.asked).toEqual(['solve']);
  expect(p.shown()).toEqual({ evaluation: said('balanced') });
});

test('with a hold the best mix is that of another problem: how it stands by its own rules is asked', async () => {
  const p = page([answered({ oats: 50, millet: 50 }, 'balanced')], { ...MIX, held: ['oats'] });
  await balance(p.moved);
  await Promise.resolve();
  expect(p.asked).toEqual(['solve', 'evaluate']);
  expect(p.shown()).toEqual({ evaluation: said('asked') });
});

test('an edit shows how the shares stand under the new rules, then the mix that follows', async () => {
  const p = page([answered({ oats: 20, millet: 80 }, 'followed')]);
  const least = (m: Mix) => ({ ...m, problem: { ...m.problem, rules: [{ food: 'millet', min: 80 }] } });
  await edit(p.moved, least, { step: undefined, follows: true });
  expect(p.asked).toEqual(['evaluate', 'follow']);
  expect(p.shown()).toEqual({ evaluation: said('followed') });
});

test('a mix that is changed in another way is asked about, the same mix twice only once', async () => {
  const p = page([]);
  await Promise.all([p.open(), p.open()]);
  await p.open();
  expect(p.asked.splice(0)).toEqual(['evaluate']);
  p.moved.change((m) => ({ ...m, shares: { oats: 10, millet: 90 } }));
  expect(p.asked).toEqual(['evaluate']);
});

test('a move that the rules forbid moves that share alone; then it is asked how the mix stands', async () => {
  const { status: _, ...rest } = answered({}, 'no') as Following;
  const p = page([{ ...rest, status: 'infeasible', conflict: [], remedies: [] }]);
  await move(p.moved, 'oats', 90, MIX.shares);
  expect(p.mix().shares).toEqual({ ...MIX.shares, oats: 90 });
  expect(p.asked).toEqual(['move', 'evaluate']);
});

test('where the worker fails, a share that was asked for is kept alone', async () => {
  const p = page([]);
  const gone = async () => Promise.reject(new Error('gone'));
  await move({ ...p.moved, engine: { ...p.moved.engine, newestMove: gone } }, 'oats', 60, MIX.shares);
  expect(p.mix().shares).toEqual({ ...MIX.shares, oats: 60 });
  expect(p.asked).toEqual(['evaluate']);
});

test('a fault is shown beside the last evaluation, and goes with the next answer', async () => {
  const p = page([]);
  await p.open();
  await move(p.moved, 'oats', 60, MIX.shares);
  expect(p.shown()).toMatchObject({ evaluation: said('asked'), fault: { field: '/foods', message: 'bad' } });
  p.moved.change((m) => ({ ...m, shares: { oats: 10, millet: 90 } }));
  await Promise.resolve();
  await Promise.resolve();
  expect(p.shown()?.fault).toBeUndefined();
});

test('what was changed while the best mix was sought is not overwritten by it', async () => {
  const p = page([answered({ oats: 30, millet: 70 }, 'balanced')]);
  const said: string[] = [];
  const sought = balance({ ...p.moved, say: (notice) => said.push(notice) });
  const tighter = { ...MIX.problem, rules: [{ food: 'oats', min: 80 }] };
  p.moved.change((m) => ({ ...m, problem: tighter }));
  await sought;
  expect(p.mix()).toMatchObject({ problem: tighter, shares: MIX.shares });
  expect(said).toEqual([]);
});

const TOO_FEW = { pointer: '/rules/0/min', sentence: 'too few', actual: 1, bound: 2, side: 'min' as const };
/** What a drag answers that breaks a rule that counts foods. */
const strayed = (shares: Following['shares'], verdict: string): Dragged => ({
  ...(answered(shares, verdict) as Following),
  breaches: [TOO_FEW],
});

test('a drag that breaks a rule that counts foods says so, and goes on to a mix that keeps it', async () => {
  const p = page([
    strayed({ oats: 100, millet: 0 }, 'strayed'),
    answered({ oats: 95, millet: 5 }, 'settled'),
  ]);
  await move(p.moved, 'oats', 100, MIX.shares);
  expect(p.shown()?.evaluation).toMatchObject({ verdict: 'strayed', breaches: [TOO_FEW] });
  const [open] = p.unsettled;
  expect(open).toEqual({
    from: { ...MIX.shares, oats: 100 },
    held: { oats: 100 },
    moving: 'oats',
    step: 'move oats',
  });
  await settle(p.moved, open!, new AbortController().signal);
  expect(p.mix().shares).toMatchObject({ oats: 95, millet: 5 });
  expect(p.shown()).toEqual({ evaluation: said('settled') });
  expect(p.asked).toEqual(['move', 'settle']);
});

test('what was changed while a mix settles is not overwritten by it', async () => {
  const p = page([
    strayed({ oats: 100, millet: 0 }, 'strayed'),
    answered({ oats: 95, millet: 5 }, 'settled'),
  ]);
  await move(p.moved, 'oats', 100, MIX.shares);
  const settling = settle(p.moved, p.unsettled[0]!, new AbortController().signal);
  p.moved.change((m) => ({ ...m, shares: { oats: 40, millet: 60 } }));
  await settling;
  expect(p.mix().shares).toEqual({ oats: 40, millet: 60 });
});

test('an edit that only another choice of foods can follow leaves the shares till that is found', async () => {
  const p = page([strayed({ oats: 100, millet: 0 }, 'strayed')]);
  const most = (m: Mix) => ({ ...m, problem: { ...m.problem, rules: [{ food: 'millet', max: 0 }] } });
  await edit(p.moved, most, { step: 'rule', follows: true });
  expect(p.mix().shares).toEqual(MIX.shares);
  expect(p.unsettled).toEqual([{ from: MIX.shares, held: {}, moving: undefined, step: 'rule' }]);
});

test('of a search that was stopped the best so far is taken, and said not to be proven', async () => {
  const p = page([]);
  const said: string[] = [];
  const found = { status: 'optimal' as const, objective: 9, gap: 4, shares: { oats: 30, millet: 70 } };
  const engine = { ...p.moved.engine, solve: async () => ({ ok: true as const, value: found }) };
  await balance({ ...p.moved, engine, stopped: () => true, say: (notice) => said.push(notice) });
  expect(p.mix().shares).toMatchObject({ oats: 30, millet: 70 });
  expect(p.asked).toEqual(['evaluate']);
  expect(said.at(-1)).toContain('best found before you stopped');
});
