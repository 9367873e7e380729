import { expect, it } from 'vitest';
import { turns } from './turns.ts';

it('takes one after the other, in the order asked; who comes while others wait comes last', async () => {
  const inTurn = turns();
  const done: number[] = [];
  let at = 0;
  let most = 0;
  const work = (n: number) => async () => {
    most = Math.max(most, ++at);
    await Promise.resolve();
    done.push(n);
    at--;
    return n;
  };
  const first = inTurn(work(1)).then(() => inTurn(work(4)));
  const rest = [inTurn(work(2)), inTurn(work(3))];
  expect(await Promise.all([first, ...rest])).toEqual([4, 2, 3]);
  expect(done).toEqual([1, 2, 3, 4]);
  expect(most).toBe(1);
});

it('goes on after one that failed, which alone is told', async () => {
  const inTurn = turns();
  const failed = inTurn(() => Promise.reject(new Error('full')));
  const next = inTurn(() => Promise.resolve('fine'));
  await expect(failed).rejects.toThrow('full');
  expect(await next).toBe('fine');
});

it('lets what else waits have its turn in between', async () => {
  const inTurn = turns();
  const seen: string[] = [];
  setImmediate(() => seen.push('an answer sent'));
  await Promise.all([1, 2, 3].map((n) => inTurn(async () => void seen.push(`work ${n}`))));
  expect(seen.indexOf('an answer sent')).toBeLessThan(seen.indexOf('work 3'));
});
