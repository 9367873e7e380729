import { expect, it, vi } from 'vitest';
import { askAnew, fetchAll, isComing, later } from './later.ts';

/** What is thrown; undefined where nothing is. */
function thrown(work: () => unknown): unknown {
  try {
    work();
  } catch (error) {
    return error;
  }
  return undefined;
}

it('is waited for until it is here, and fetched once', async () => {
  const load = vi.fn(async () => 7);
  const part = later(load);
  const comes = thrown(part.now);
  expect(isComing(comes)).toBe(true);
  expect(thrown(part.now)).toBe(comes);
  await comes;
  expect(part.now()).toBe(7);
  await part.fetch();
  expect(load).toHaveBeenCalledTimes(1);
});

it('tells who draws why it could not be had, and is asked for anew once that was told', async () => {
  let gone = true;
  const part = later(async () => {
    if (gone) throw new Error('no network');
    return 'here';
  });
  await expect(part.fetch()).rejects.toThrow('no network');
  expect(thrown(part.now)).toEqual(new Error('no network'));
  gone = false;
  expect(thrown(part.now)).toEqual(new Error('no network'));
  askAnew();
  await thrown(part.now);
  expect(part.now()).toBe('here');
});

it('fetches everything, also what names itself on the way, and goes on where one cannot be had', async () => {
  const inner = vi.fn(async () => 1);
  let gone = true;
  const lost = later(async () => {
    if (gone) throw new Error('gone');
    return 2;
  });
  later(async () => later(inner));
  await fetchAll();
  expect(inner).toHaveBeenCalledTimes(1);
  // Needed now, it is asked for anew.
  gone = false;
  await thrown(lost.now);
  expect(lost.now()).toBe(2);
});
