/** How many reads and writes the server does in a second, asked by a few at once without a pause. */
import type { Household } from '../../src/household/model.ts';
import { figureOf } from '../lib/figures.ts';
import type { Table } from '../lib/report.ts';

/** Who ask at once. */
const AT_ONCE = 8;

export async function throughput(url: string, house: Household, seconds: number): Promise<Table> {
  const last = house.batches.at(-1);
  const [food] = house.mixes[0]?.problem.foods ?? [];
  if (!last || !food) throw new Error('a household without batches or foods');
  const { finishedAt: _end, left: _left, ...plan } = last;
  const json = { 'content-type': 'application/json' };
  for (let k = 0; k < AT_ONCE; k++)
    await fetch(`${url}/api/batches/busy-${k}`, {
      method: 'PUT',
      headers: { ...json, 'if-none-match': '*' },
      body: JSON.stringify({ ...plan, id: `busy-${k}`, pours: [] }),
    });
  let moment = Date.UTC(2026, 2, 12, 9);
  const pour = (k: number) =>
    fetch(`${url}/api/batches/busy-${k}/pours`, {
      method: 'POST',
      headers: json,
      body: JSON.stringify({
        pours: [{ food: food.id, lots: [], target: 1, grams: 1, at: new Date(moment++).toISOString() }],
      }),
    });
  const rows: Table['rows'] = [
    [
      'reads: what changed, nothing new',
      ...(await rate(() => fetch(`${url}/api/records?after=1000000000`), seconds)),
    ],
    [
      'reads: the first part of the records',
      ...(await rate(() => fetch(`${url}/api/records?after=0`), seconds)),
    ],
    ['writes: a pour', ...(await rate(pour, seconds))],
  ];
  return {
    title: `Reads and writes a second, ${AT_ONCE} asking at once`,
    of: 'what',
    columns: ['a second', 'an answer takes'],
    rows,
  };
}

async function rate(ask: (k: number) => Promise<Response>, seconds: number) {
  const end = performance.now() + 1000 * seconds;
  const times: number[] = [];
  await Promise.all(
    Array.from({ length: AT_ONCE }, async (_, k) => {
      while (performance.now() < end) {
        const start = performance.now();
        const answer = await ask(k);
        await answer.arrayBuffer();
        if (!answer.ok) throw new Error(`the server answered ${answer.status}`);
        times.push(performance.now() - start);
      }
    }),
  );
  return [Math.round(times.length / seconds), figureOf(times, 'ms')] as const;
}
