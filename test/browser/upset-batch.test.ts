/** A finished batch holds a food on which one of its animals did not do well. */
import { afterAll, beforeAll, expect, test } from 'vitest';
import { demoHousehold } from '../../src/household/demo.ts';
import { type Bench, openBench, overflow, PHONE, wcagFindings } from './harness.ts';

const demo = demoHousehold();
const bramble = demo.animals[0]!;
const mix = demo.mixes[0]!;
const at = '2026-03-01T09:00:00Z';
let bench: Bench;

beforeAll(async () => {
  bench = await openBench({
    house: {
      ...demo,
      animals: [bramble, { ...bramble, id: 'hazel', name: 'Hazel' }],
      trials: [
        {
          id: 't',
          animalId: 'hazel',
          food: 'linseed',
          name: 'Linseed',
          days: [],
          offerings: [{ on: '2026-03-02', seen: 'upset' }],
        },
      ],
      batches: [
        {
          id: 'holds',
          mixId: mix.id,
          name: mix.name,
          problem: mix.problem,
          shares: mix.shares,
          order: ['linseed'],
          grams: 100,
          pours: [{ food: 'linseed', lots: [], target: 100, grams: 100, at }],
          animalIds: [bramble.id, 'hazel'],
          startedAt: at,
          finishedAt: '2026-03-01T10:00:00Z',
        },
      ],
    },
  });
});
afterAll(() => bench?.close());

test('it says so, on its label too, and tells no amount of it for that animal', async () => {
  const page = await bench.page(PHONE);
  await page.goto(`${bench.url}/#/weigh/holds`);
  await page
    .getByRole('alert')
    .getByText(/Do not feed it to Hazel/)
    .waitFor();
  const feeding = page.getByRole('region', { name: 'Keeping and feeding' });
  await feeding.getByText(/^Not for Hazel: it holds Linseed/).waitFor();
  await feeding.getByText(/^Bramble: .* of the mix/).waitFor();
  expect(await feeding.getByText(/^Hazel: /).count()).toBe(0);
  expect(await page.locator('.weigh-label').textContent()).toContain('Not for Hazel');
  expect(await wcagFindings(page)).toEqual([]);
  expect(await overflow(page)).toBe(0);
});
