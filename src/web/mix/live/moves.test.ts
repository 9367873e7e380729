/** A live mix with a worker that counts what it is asked: what came with an answer is not asked for again. */
import { expect, test } from 'vitest';
import { evaluation } from '../../../../test/formulation/evaluations.ts';
import { problemOf } from '../../../../test/formulation/problem-of.ts';
import type { Following, Result } from '../../../formulation/problem/result.ts';
import type { Mix } from '../../../household/model.ts';
import { EvaluationKeeper, type Known } from './evaluation-keeper.ts';
import { balance, edit, type MoveContext, move } from './moves.ts';

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
function page(answers: readonly Result[], mix = MIX) {
  let kept = mix;
  const asked: string[] = [];
  const shown: Known[] = [];
  const left = [...answers];
  const ask = async (what: string) => {
    asked.push(what);
    const value = left.shift();
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
    engine: { solve: () => ask('solve'), move: () => ask('move'), newestMove: () => ask('move') },
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
  };
  return {
    moved,
    asked,
    mix: () => kept,
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
  expect(p.asked).toEqual(['evaluate', 'move']);
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
