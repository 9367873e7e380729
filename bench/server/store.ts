/**
 * What the store of a household of ten years costs: putting it in, opening it, checking every record, reading it in
 * parts, and a pour. Each beside the same household at a tenth of the size: what grows with the household shows.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openStore } from '../../src/household/store.ts';
import type { Pour } from '../../src/kitchen/model.ts';
import { tenYears } from '../../test/household/ten-years.ts';
import { median } from '../lib/figures.ts';
import type { Table } from '../lib/report.ts';

const POURS = 40;
async function took<T>(work: () => Promise<T>): Promise<{ ms: number; value: T }> {
  const start = performance.now();
  const value = await work();
  return { ms: performance.now() - start, value };
}

async function measured(size: number, folder: string): Promise<Record<string, string>> {
  const house = tenYears({ size });
  const path = join(folder, `${size}.sqlite`);
  const first = openStore(path);
  const put = await took(() => first.putAll(house));
  await first.close();

  const opened = await took(async () => openStore(path));
  const store = opened.value;
  const whole = await took(() => store.household());
  const again = await took(() => store.household());
  const pages: { ms: number; bytes: number }[] = [];
  for (let after = 0, more = true; more; ) {
    const { ms, value } = await took(() => store.records({ after }));
    pages.push({ ms, bytes: Buffer.byteLength(JSON.stringify(value)) });
    ({ seq: after, more } = value);
  }
  const last = house.batches.at(-1);
  if (!last) throw new Error('no batch');
  const { finishedAt: _end, left: _left, ...batch } = last;
  const by = { device: 'bench', at: '2026-03-10T10:00:00.000Z' };
  const open = { ...batch, id: 'open', pours: [] };
  await store.write({ kind: 'batches', id: open.id, body: open, basedOn: 0 }, by);
  const pours: number[] = [];
  for (let k = 0; k < POURS; k++) {
    const [like] = last.pours;
    const at = `2026-03-10T10:00:${String(k).padStart(2, '0')}.000Z`;
    const pour = { ...(like as Pour), at };
    pours.push((await took(() => store.addPours(open.id, { pours: [pour] }, by))).ms);
  }
  await store.close();
  const ms = (n: number) => `${n.toFixed(1)} ms`;
  return {
    'bytes as JSON': String(Buffer.byteLength(JSON.stringify(house))),
    'put in, all at once': ms(put.ms),
    'open the file': ms(opened.ms),
    'read all, each record checked': ms(whole.ms),
    'read all again': ms(again.ms),
    'answers for all of it': String(pages.length),
    'the largest answer, bytes': String(Math.max(...pages.map((p) => p.bytes))),
    'all answers together': ms(pages.reduce((sum, p) => sum + p.ms, 0)),
    'the slowest answer': ms(Math.max(...pages.map((p) => p.ms))),
    'a pour, median': ms(median(pours)),
    'a pour, slowest': ms(Math.max(...pours)),
  };
}

/** @param quick a fifth of the household in place of all of it */
export async function storeTable(quick: boolean): Promise<Table> {
  const folder = mkdtempSync(join(tmpdir(), 'pouchful-bench-'));
  try {
    const whole = quick ? 0.2 : 1;
    const [small, all] = [await measured(0.1, folder), await measured(whole, folder)];
    return {
      title: 'The store',
      of: 'what',
      columns: ['a tenth', quick ? 'a fifth' : 'ten years'],
      rows: Object.entries(all).map(([name, value]) => [name, small[name] ?? '', value]),
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
