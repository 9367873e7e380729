/** A household of many parts comes in whole, whatever changes on the server meanwhile. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { draws } from '../../../../test/draws.ts';
import type { Cuts, KeptRecord, RecordsPage, Section } from '../../../household/records.ts';
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

/**
 * A server with so many records, which gives some at a time.
 * @param cut records of a piece, where it says how to cut the household; more than it gives at a time where pieces grew
 */
function serverOf(count: number, part: number, cut?: number) {
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
        newest: Math.min(seq, upTo),
        epoch: server.epoch,
        ...(cut !== undefined && after === 0 && more && { cuts: server.cuts(cut) }),
      };
    },
    cuts(every: number): Cuts {
      const of = (section: Section) =>
        [...records.values()].filter((r) => sectionOf(r) === section).map((r) => r.seq);
      const cuts = (section: Section) =>
        of(section)
          .sort((a, b) => a - b)
          .filter((_, k) => (k + 1) % every === 0);
      return { rest: cuts('rest'), feedings: cuts('feedings'), weighings: cuts('weighings') };
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
      fc.constantFrom(undefined, 0.2, 1, 3),
      async (count, part, changed, fails, often, cut) => {
        const server = serverOf(count, part, cut && Math.ceil(part * cut));
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
        expect(first.cuts !== undefined).toBe(cut !== undefined && count > part);
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
        // Nothing comes twice, and nobody is asked more often than the pieces need.
        const pieces = cut === undefined ? 0 : Math.ceil(count / Math.ceil(part * cut));
        expect(asked).toBeLessThanOrEqual(6 + Math.ceil(count / part) + pieces);
        expect(received).toBeLessThanOrEqual(count - first.records.length);
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

it('fetches four pieces at once where the server says how to cut it, each once and in their order', async () => {
  const server = serverOf(400, 10, 10);
  const asked: string[] = [];
  const page: Page = (after, upTo, of) => {
    asked.push(`${of} ${after}-${upTo}`);
    return server.ask(after, upTo, of);
  };
  const first = server.page(0);
  const replica = new Replica('one');
  expect(await fetchWhole(page, first, replica)).toBe(true);
  expect(server.most).toBe(4);
  const pieces = (['rest', 'feedings', 'weighings'] as const).flatMap((of) => {
    const ends = [10, ...server.cuts(10)[of].filter((cut) => cut > 10 && cut < 400), 400];
    return ends.slice(1).map((upTo, k) => `${of} ${ends[k]}-${upTo}`);
  });
  expect(asked).toEqual(pieces);
  expect(pieces.length).toBeGreaterThan(38);
  expect(KINDS.flatMap((kind) => replica.list(kind))).toHaveLength(400);
});
