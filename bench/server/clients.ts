/**
 * Many clients at once: each holds an event stream open, reads what changed, pours into a batch that it shares with
 * others, and edits a lot by its version. Tells what failed, how often a version was overtaken, and how long answers took.
 */
import type { Household } from '../../src/household/model.ts';
import type { KeptRecord, RecordsPage, Written } from '../../src/household/records.ts';
import type { Batch, Lot } from '../../src/kitchen/model.ts';
import { figureOf } from '../lib/figures.ts';
import type { Cell, Table } from '../lib/report.ts';

/** Clients that pour into the same batch, and edit the same lot. */
const TOGETHER = 10;
/** Between two things that a client does, ms: from the half of it to one and a half times it. */
const PAUSE = 1000;

export async function clients(
  url: string,
  house: Household,
  { clients: count, seconds }: { clients: number; seconds: number },
): Promise<Table[]> {
  const times = new Map<string, number[]>();
  const failures = new Map<string, number>();
  let overtaken = 0;
  let told = 0;
  const end = performance.now() + seconds * 1000;
  const over = new AbortController();

  async function ask<T>(
    what: string,
    path: string,
    init?: RequestInit,
  ): Promise<{ status: number; body: T }> {
    const start = performance.now();
    try {
      const answer = await fetch(url + path, init);
      const body = (await answer.json()) as T;
      const all = times.get(what) ?? [];
      times.set(what, all);
      all.push(performance.now() - start);
      if (!answer.ok && answer.status !== 409) failed(`${what}: ${answer.status}`);
      return { status: answer.status, body };
    } catch (error) {
      failed(`${what}: ${error instanceof Error ? error.message : error}`);
      return { status: 0, body: undefined as T };
    }
  }

  function failed(why: string): void {
    failures.set(why, (failures.get(why) ?? 0) + 1);
  }

  const put = <T>(what: string, path: string, body: T, version: number) =>
    ask<Written | { stands?: KeptRecord }>(what, path, {
      method: 'PUT',
      headers: {
        'content-type': 'application/json',
        ...(version === 0 ? { 'if-none-match': '*' } : { 'if-match': `"${version}"` }),
      },
      body: JSON.stringify(body),
    });

  /** Hears of changes for as long as the bench runs. */
  async function listen(changed: () => void): Promise<void> {
    try {
      const stream = await fetch(`${url}/api/events`, { signal: over.signal });
      if (!stream.ok || !stream.body) return failed(`events: ${stream.status}`);
      const text = new TextDecoder();
      for await (const part of stream.body)
        if (text.decode(part as Uint8Array).includes('event: change')) {
          told++;
          changed();
        }
      if (!over.signal.aborted) failed('events: the stream ended');
    } catch (error) {
      if (!over.signal.aborted) failed(`events: ${error instanceof Error ? error.message : error}`);
    }
  }

  async function client(n: number): Promise<void> {
    const group = Math.floor(n / TOGETHER);
    const lot = house.lots[house.lots.length - 1 - group];
    const batch = `bench-${group}`;
    const [food] = house.mixes[0]?.problem.foods ?? [];
    if (!lot || !food) throw new Error('a household without lots or foods');
    let stands: { body: Lot; version: number } = { body: lot, version: 1 };
    let behind = false;
    let seen = newest;
    void listen(() => {
      behind = true;
    });
    for (let k = n; performance.now() < end; k++) {
      await new Promise((done) => setTimeout(done, PAUSE * (0.5 + ((k * 0.618) % 1))));
      if (behind) {
        behind = false;
        for (let more = true; more && performance.now() < end; ) {
          const { status, body } = await ask<RecordsPage>('what changed', `/api/records?after=${seen}`);
          if (status !== 200) break;
          ({ seq: seen, more } = body);
        }
      }
      if (k % 3 === 0) {
        const at = new Date(Date.UTC(2026, 2, 10, 9, 0, 0) + n * 1_000_000 + k * 1000).toISOString();
        const pour = { food: food.id, lots: [], target: 1, grams: 1, at };
        await ask('a pour', `/api/batches/${batch}/pours`, {
          method: 'POST',
          headers: { 'content-type': 'application/json' },
          body: JSON.stringify({ pours: [pour] }),
        });
      } else if (k % 3 === 1) {
        const next = { ...stands.body, grams: 300 + (k % 200) };
        const { status, body } = await put('an edit of a lot', `/api/lots/${lot.id}`, next, stands.version);
        const now =
          status === 200
            ? (body as Written).record
            : status === 409
              ? (body as { stands?: KeptRecord }).stands
              : undefined;
        if (status === 409) overtaken++;
        if (now?.body) stands = { body: now.body as Lot, version: now.version };
      } else await ask('the first part', '/api/records?after=0');
    }
  }

  let newest = 0;
  try {
    for (let more = true; more; ) {
      const { body } = await ask<RecordsPage>('a first reading', `/api/records?after=${newest}`);
      ({ seq: newest, more } = body);
    }
    const last = house.batches.at(-1);
    if (!last) throw new Error('a household without batches');
    const { finishedAt: _end, left: _left, ...plan } = last;
    for (let group = 0; group < count / TOGETHER; group++) {
      const open: Batch = { ...plan, id: `bench-${group}`, pours: [] };
      await put('a batch begun', `/api/batches/${open.id}`, open, 0);
    }
    times.clear();
    await Promise.all(Array.from({ length: count }, (_, n) => client(n)));
    over.abort();
    const all = [...times.values()].reduce((sum, list) => sum + list.length, 0);
    const errors = [...failures].map(([why, n]) => `${n} x ${why}`);
    return [
      {
        title: `${count} clients for ${seconds} s`,
        of: 'what',
        columns: ['time', '99th percentile', 'requests'],
        rows: [...times].map(([what, list]): [string, ...Cell[]] => {
          const figure = figureOf(list, 'ms');
          return [what, figure, `${figure.p99.toFixed(0)} ms`, figure.runs];
        }),
        notes: [
          `${all} requests, ${told} changes heard, ${overtaken} edits met another version; ${errors.length === 0 ? 'no error' : `errors: ${errors.join(', ')}`}.`,
        ],
      },
    ];
  } finally {
    over.abort();
  }
}
