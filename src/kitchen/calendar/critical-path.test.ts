import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Network, type Starts, type Task } from './critical-path.ts';

/** Tasks that wait for some of those before them. */
const tasks = fc
  .array(
    fc.record({
      days: fc.integer({ min: 0, max: 9 }),
      waits: fc.array(fc.boolean(), { minLength: 8, maxLength: 8 }),
    }),
    { minLength: 1, maxLength: 8 },
  )
  .map((list) =>
    list.map(
      ({ days, waits }, i): Task => ({
        id: `t${i}`,
        days,
        after: waits.slice(0, i).flatMap((w, j) => (w ? [`t${j}`] : [])),
      }),
    ),
  );

/** Length of the longest path, by walking every path. */
function longestPath(list: readonly Task[]): number {
  const walk = (t: Task): number =>
    t.days + Math.max(0, ...list.filter((f) => f.after.includes(t.id)).map(walk));
  return Math.max(...list.map(walk));
}

function obeys(list: readonly Task[], starts: Starts): boolean {
  const days = new Map(list.map((t) => [t.id, t.days]));
  return list.every((t) => t.after.every((b) => starts.get(b)! + days.get(b)! <= starts.get(t.id)!));
}

/** Everything that comes after a task, or before it, by id. */
function reach(list: readonly Task[], id: string, way: 'after' | 'before'): Set<string> {
  const next = (at: string) =>
    way === 'before'
      ? list.find((t) => t.id === at)!.after
      : list.filter((t) => t.after.includes(at)).map((t) => t.id);
  const seen = new Set<string>();
  const queue = [...next(id)];
  for (let at = queue.pop(); at !== undefined; at = queue.pop()) {
    if (seen.has(at)) continue;
    seen.add(at);
    queue.push(...next(at));
  }
  return seen;
}

describe('the critical path', () => {
  test('is as long as the longest path of all', () => {
    fc.assert(
      fc.property(tasks, fc.integer({ min: -99, max: 99 }), (list, from) => {
        const network = new Network(list);
        const earliest = network.earliest(from);
        const chain = network.criticalChain(earliest);
        expect(network.end(earliest) - from).toBe(longestPath(list));
        expect(chain.reduce((sum, t) => sum + t.days, 0)).toBe(longestPath(list));
        chain.slice(1).forEach((t, i) => {
          expect(t.after).toContain(chain[i]!.id);
        });
      }),
    );
  });

  test('has no slack when the day it ends on is the day to end by; nothing begins before what it waits for ends', () => {
    fc.assert(
      fc.property(tasks, (list) => {
        const network = new Network(list);
        const earliest = network.earliest(0);
        const latest = network.latest(network.end(earliest));
        expect(obeys(list, earliest)).toBe(true);
        expect(obeys(list, latest)).toBe(true);
        for (const t of list) expect(latest.get(t.id)!).toBeGreaterThanOrEqual(earliest.get(t.id)!);
        for (const t of network.criticalChain(earliest)) expect(latest.get(t.id)).toBe(earliest.get(t.id));
      }),
    );
  });

  test('earliest and latest are tight: a day less or more breaks the plan', () => {
    fc.assert(
      fc.property(tasks, (list) => {
        const network = new Network(list);
        const earliest = network.earliest(0);
        const end = network.end(earliest);
        const latest = network.latest(end);
        for (const t of list) {
          const { id } = t;
          // Everything as early as can be, but this a day later than its latest: the end has to give.
          const late = network.shifted(earliest, id, latest.get(id)! + 1, 0);
          expect('blocked' in late ? undefined : network.end(late)).toBe(end + 1);
          expect(network.shifted(latest, id, earliest.get(id)! - 1, 0)).toHaveProperty('blocked');
          expect(network.shifted(latest, id, earliest.get(id)!, 0)).not.toHaveProperty('blocked');
        }
      }),
    );
  });

  test('a worked network: 3 + 5 + 2 days rule, 4 days have room', () => {
    const network = new Network([
      { id: 'end', days: 2, after: ['long', 'short'] },
      { id: 'begin', days: 3, after: [] },
      { id: 'long', days: 5, after: ['begin'] },
      { id: 'short', days: 1, after: ['begin'] },
    ]);
    const earliest = network.earliest(100);
    expect(network.end(earliest)).toBe(110);
    expect(network.criticalChain(earliest).map((t) => t.id)).toEqual(['begin', 'long', 'end']);
    expect(network.latest(110).get('short')! - earliest.get('short')!).toBe(4);
  });
});

describe('moving one task', () => {
  test('moves what waits for it no further than it must, what it waits for only where it must, and nothing else', () => {
    fc.assert(
      fc.property(tasks, fc.nat(7), fc.integer({ min: -40, max: 40 }), fc.boolean(), (list, n, by, late) => {
        const network = new Network(list);
        const earliest = network.earliest(0);
        const before = late ? network.latest(network.end(earliest) + 7) : earliest;
        const { id } = list[n % list.length]!;
        const to = before.get(id)! + by;
        const after = network.shifted(before, id, to, 0);
        if ('blocked' in after) {
          expect(to).toBeLessThan(earliest.get(id)!);
          return;
        }
        expect(to).toBeGreaterThanOrEqual(earliest.get(id)!);
        expect(after.get(id)).toBe(to);
        expect(obeys(list, after)).toBe(true);
        const [ahead, behind] = [reach(list, id, 'before'), reach(list, id, 'after')];
        for (const t of list) {
          const [was, is] = [before.get(t.id)!, after.get(t.id)!];
          if (t.id === id || was === is) continue;
          expect(is > was ? behind.has(t.id) : ahead.has(t.id)).toBe(true);
          // A day less, back towards where it was, would break the order.
          const nearer = new Map(after).set(t.id, is > was ? is - 1 : is + 1);
          expect(obeys(list, nearer)).toBe(false);
        }
      }),
      { numRuns: 300 },
    );
  });

  test('never moves what has begun', () => {
    const network = new Network([
      { id: 'a', days: 4, after: [], fixed: 10 },
      { id: 'b', days: 2, after: ['a'] },
    ]);
    const starts = network.earliest(12);
    expect(starts.get('b')).toBe(14);
    expect(network.shifted(starts, 'a', 12, 0)).toMatchObject({ blocked: { id: 'a' } });
    expect(network.shifted(starts, 'b', 13, 0)).toMatchObject({ blocked: { id: 'a' }, needed: 9 });
    expect(network.shifted(starts, 'b', 20, 0)).toEqual(
      new Map([
        ['a', 10],
        ['b', 20],
      ]),
    );
  });
});

describe('a network that cannot be', () => {
  test.each<[string, Task[]]>([
    [
      'a, b wait for each other in a ring',
      [
        { id: 'a', days: 1, after: ['b'] },
        { id: 'b', days: 1, after: ['a'] },
      ],
    ],
    ['there is no step "x"', [{ id: 'a', days: 1, after: ['x'] }]],
    ['1.5 is no whole number', [{ id: 'a', days: 1.5, after: [] }]],
    ['-1 is no whole number', [{ id: 'a', days: -1, after: [] }]],
    [
      'two of them have the same id',
      [
        { id: 'a', days: 1, after: [] },
        { id: 'a', days: 1, after: [] },
      ],
    ],
    [
      '"b" has begun, but "a" before it has not',
      [
        { id: 'a', days: 1, after: [] },
        { id: 'b', days: 1, after: ['a'], fixed: 3 },
      ],
    ],
  ])('%s', (message, list) => {
    expect(() => new Network(list)).toThrow(message);
  });

  test('has no task of another id', () => {
    expect(() => new Network([{ id: 'a', days: 1, after: [] }]).task('z')).toThrow('"z" is none of the plan');
  });
});
