/**
 * A weigh-out whose server is killed (SIGKILL) at every step. What was answered is on disk, what was not answered is
 * there wholly or not at all, and whoever goes on stands at the food poured last.
 */
import { request } from 'node:http';
import { connect } from 'node:net';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Batch } from '../../src/kitchen/model.ts';
import { MortalServer } from './killed.ts';
import { onDisk, plan, poured, pouredNext, put, requestFor, standing } from './killed-batch.ts';

const server = new MortalServer();
beforeAll(() => server.start());
afterAll(() => server.end());

/** Begins to store a batch and lets the server die before any answer is read. */
const CUTS = {
  async 'with half of it sent'(before: Batch, next: Batch) {
    const { method, path, headers, body } = requestFor(next, before);
    const { port, hostname } = new URL(server.url);
    const socket = connect(Number(port), hostname);
    socket.on('error', () => {});
    await new Promise<void>((sent) =>
      socket.write(
        `${method} ${path} HTTP/1.1\r\nhost: ${hostname}:${port}\r\n${Object.entries(headers)
          .map(([name, value]) => `${name}: ${value}\r\n`)
          .join('')}content-length: ${Buffer.byteLength(body)}\r\n\r\n${body.slice(0, body.length / 2)}`,
        () => sent(),
      ),
    );
    await server.kill();
    socket.destroy();
  },
  'as soon as it is sent': (before: Batch, next: Batch) => cutAfter(before, next, 0),
  'while it is written': (before: Batch, next: Batch) => cutAfter(before, next, 4),
  'just before it is answered': (before: Batch, next: Batch) => cutAfter(before, next, 12),
};
type Cut = keyof typeof CUTS;

/** The wait is the moment of death; whatever the server got done by then, the test holds. */
async function cutAfter(before: Batch, next: Batch, ms: number) {
  const { method, path, headers, body } = requestFor(next, before);
  const sent = new Promise<void>((done) => {
    const asked = request(`${server.url}${path}`, { method, headers }, (answer) => answer.resume());
    asked.on('error', () => {});
    asked.end(body, () => done());
  });
  await sent;
  await new Promise((done) => setTimeout(done, ms));
  await server.kill();
}

interface Step {
  readonly what: string;
  readonly before: Batch;
  readonly next: Batch;
  readonly cut: Cut;
}

/** Every entry of a whole batch: the third food grossly wrong, one entry taken back, some of one spooned out again. */
function entries(): Step[] {
  const cuts = Object.keys(CUTS) as Cut[];
  const steps: Step[] = [];
  let now: Batch = plan;
  const enter = (what: string, next: Batch, cut: Cut) => {
    const id = `walked-${steps.length}`;
    steps.push({ what, before: { ...now, id }, next: { ...next, id }, cut });
    now = next;
  };
  for (let n = 0; n < 60; n++) {
    const { food } = standing(now);
    const next = pouredNext(now, n === 2 ? 1.8 : 1);
    if (!next || food === undefined) break;
    enter(`pour ${n + 1}, ${food}`, next, cuts[n % cuts.length]!);
    if (n === 5)
      enter('an entry taken back', { ...now, pours: now.pours.slice(0, -1) }, 'while it is written');
    if (n === 8) enter('1 g spooned out again', poured(now, -1, food, 0), 'just before it is answered');
  }
  enter(
    'finished',
    { ...now, finishedAt: '2026-03-14T12:00:00.000Z', madeBy: 'Robin' },
    'as soon as it is sent',
  );
  return steps;
}

const told = ({ pours, finishedAt, madeBy }: Batch) => JSON.stringify([pours, finishedAt, madeBy]);
const STEPS = entries();

test('the whole batch is walked, to its end', () => {
  expect(STEPS.length).toBeGreaterThan(22);
  const last = STEPS.at(-1)!;
  expect(standing(last.before).food).toBeUndefined();
});

test('begun: the server is killed after its answer', async () => {
  const begun = { ...plan, id: 'begun' };
  await put(begun, server);
  await server.killAndStart();
  expect(standing(await onDisk('begun', server))).toEqual(standing(begun));
});

test.each(
  STEPS.map(
    (step) => [`${step.what}: the server is killed ${step.cut}, and after its answer`, step] as const,
  ),
)('%s', async (_, { before, next, cut }) => {
  await put(before, server);
  await CUTS[cut](before, next);
  await server.start();
  const found = await onDisk(next.id, server);
  const wasKept = told(found) === told(next);
  // Wholly there or not at all; half a body is never there.
  expect(standing(found)).toEqual(standing(wasKept ? next : before));
  expect(told(found)).toBe(told(wasKept ? next : before));
  if (cut === 'with half of it sent') expect(wasKept).toBe(false);

  await put(next, server, before);
  await server.killAndStart();
  const again = await onDisk(next.id, server);
  expect(standing(again)).toEqual(standing(next));
  expect(told(again)).toBe(told(next));
});
