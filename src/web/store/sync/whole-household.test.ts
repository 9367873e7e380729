/** A household of many parts comes in whole, whatever changes on the server meanwhile. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { draws } from '../../../../test/draws.ts';
import type { KeptRecord, RecordsPage, Section } from '../../../household/records.ts';
import { Replica } from './replica.ts';
import { type Page, wholeHousehold } from './whole-household.ts';

/** Fetches it, going on each time that it fails. */
async function fetchWhole(
  page: Page,
  first: RecordsPage,
  replica: Replica,
  arrived: (coming: readonly Section[]) => void = () => {},
): Promise<boolean> {
  const fetch = wholeHousehold(page, first, replica, arrived);
  for (;;) {
    try {
      return (await fetch?.()) ?? false;
    } catch (error) {
      expect(error).toBe(GONE);
    }
  }
}

const GONE = new Error('nobody answers');

const KINDS = ['lots', 'feedings', 'batches', 'weighings'] as const;
const record = (seq: number, n: number): KeptRecord => ({
  kind: KINDS[n % KINDS.length]!,
  id: `lot-${n}`,
  version: seq,
  seq,
  place: n,
  body: { id: `lot-${n}` } as never,
});

const sectionOf = ({ kind }: KeptRecord): Section =>
  kind === 'feedings' || kind === 'weighings' ? kind : 'rest';

/** A server with so many records, which gives some at a time. */
function serverOf(count: number, part: number) {
  let seq = count;
  const records = new Map(Array.from({ length: count }, (_, n) => [n, record(n + 1, n)]));
  let open = 0;
  const server = {
    epoch: 'one',
    most: 0,
    /** Another device changes a record. */
    change(n: number) {
      seq += 1;
      records.set(n, record(seq, n));
    },
    page(after: number, upTo = Number.POSITIVE_INFINITY, of?: Section): RecordsPage {
      const all = [...records.values()]
        .filter((r) => r.seq > after && r.seq <= upTo && (of === undefined || sectionOf(r) === of))
        .sort((a, b) => a.seq - b.seq);
      const given = all.slice(0, part);
      const more = given.length < all.length;
      return {
        records: given,
        seq: more ? given.at(-1)!.seq : Math.min(seq, upTo),
        more,
        newest: seq,
        epoch: server.epoch,
      };
    },
    async ask(after: number, upTo?: number, of?: Section): Promise<RecordsPage> {
      open += 1;
      server.most = Math.max(server.most, open);
      const page = server.page(after, upTo, of);
      await Promise.resolve();
      open -= 1;
      return page;
    },
  };
  return server;
}

it('takes all that was there when it began, a few requests at a time; what changed since is fetched after', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.integer({ min: 1, max: 300 }),
      fc.integer({ min: 1, max: 40 }),
      fc.array(fc.nat(299), { maxLength: 10 }),
      fc.infiniteStream(fc.boolean()),
      fc.nat(8),
      async (count, part, changed, fails, often) => {
        const server = serverOf(count, part);
        let failures = 0;
        let asked = 0;
        let received = 0;
        const shaky: Page = async (...about) => {
          const answer = await server.ask(...about);
          if (failures < often && fails.next().value) {
            failures += 1;
            throw GONE;
          }
          asked += 1;
          received += answer.records.length;
          return answer;
        };
        const first = server.page(0);
        for (const n of changed) if (n < count) server.change(n);
        const replica = new Replica('one');
        const told: (readonly Section[])[] = [];
        const stood = Array.from({ length: count }, (_, n) => record(n + 1, n));
        const whole = await fetchWhole(shaky, first, replica, (coming) => {
          told.push(coming);
          // What is not to come is whole, as it stood or as it was changed since: that is fetched after.
          for (const r of stood)
            if (!coming.includes(sectionOf(r)) && !changed.includes(r.place))
              expect(replica.get(r.kind, r.id)).toEqual(r);
        });
        expect(whole).toBe(count > part);
        if (!whole) return;
        expect(told.map((coming) => coming.length)).toEqual([2, 1]);
        // Where a range was split that somebody was at, an answer may go beyond the split; nothing else comes twice.
        expect(asked).toBeLessThanOrEqual(24 + Math.ceil(count / part));
        expect(received).toBeLessThanOrEqual(count + 9 * part);
        expect(server.most).toBeLessThanOrEqual(4);
        expect(replica.seq).toBe(count);
        for (let more = true; more; ) {
          const page = server.page(replica.seq);
          for (const r of page.records) replica.take(r);
          replica.seq = page.seq;
          more = page.more;
        }
        const all: KeptRecord[] = [];
        for (let after = 0, more = true; more; ) {
          const page = server.page(after);
          all.push(...page.records);
          after = page.seq;
          more = page.more;
        }
        for (const kind of KINDS)
          expect(replica.list(kind)).toEqual(
            all.filter((r) => r.kind === kind).sort((a, b) => a.place - b.place),
          );
      },
    ),
    { numRuns: draws(2000, 200) },
  );
});

it('leaves it where another household is put in its place meanwhile', async () => {
  const server = serverOf(100, 10);
  const first = server.page(0);
  server.epoch = 'two';
  const replica = new Replica('one');
  expect(await fetchWhole(server.ask, first, replica)).toBe(false);
  expect(replica.list('lots')).toEqual([]);
});
