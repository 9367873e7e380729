/** Answers that stay open, and how they end. */
import { expect, it } from 'vitest';
import { OpenStreams } from './streams.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

/** A stream that says what it is told to, and whether its reader has left. */
function source() {
  let controller!: ReadableStreamDefaultController<Uint8Array>;
  const left = { is: false };
  const body = new ReadableStream<Uint8Array>({
    start(c) {
      controller = c;
    },
    cancel() {
      left.is = true;
    },
  });
  return { body, left, say: (text: string) => controller.enqueue(bytes(text)), controller };
}

it('are handed on as they come, until they end', async () => {
  const streams = new OpenStreams();
  const { body, say, controller } = source();
  const text = new Response(streams.through(body, 'phone')).text();
  say('a');
  say('b');
  controller.close();
  expect(await text).toBe('ab');
  streams.endOf('phone');
  streams.endAll();
});

it('end with their device, others stay', async () => {
  const streams = new OpenStreams();
  const [phone, tablet, nobody] = [source(), source(), source()];
  const readers = [
    streams.through(phone.body, 'phone').getReader(),
    streams.through(tablet.body, 'tablet').getReader(),
    streams.through(nobody.body).getReader(),
  ] as const;
  const waiting = readers[0].read();
  streams.endOf('phone');
  expect(await waiting).toEqual({ done: true, value: undefined });
  expect(phone.left.is).toBe(true);
  expect([tablet.left.is, nobody.left.is]).toEqual([false, false]);
  tablet.say('still here');
  expect((await readers[1].read()).value).toEqual(bytes('still here'));
  streams.endAll();
  expect((await readers[1].read()).done).toBe(true);
  expect((await readers[2].read()).done).toBe(true);
  expect([tablet.left.is, nobody.left.is]).toEqual([true, true]);
});

it('tell their source when the reader leaves, and hand on its failure', async () => {
  const streams = new OpenStreams();
  const gone = source();
  await streams.through(gone.body, 'phone').cancel();
  expect(gone.left.is).toBe(true);
  streams.endOf('phone');
  const failing = source();
  const reader = streams.through(failing.body, 'phone').getReader();
  failing.controller.error(new Error('broken'));
  await expect(reader.read()).rejects.toThrow('broken');
  streams.endAll();
});
