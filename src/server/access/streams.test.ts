/** Which streams end when. */
import { expect, it } from 'vitest';
import { OpenStreams } from './streams.ts';

it('streams end with their device, once, and all with the server', () => {
  const streams = new OpenStreams();
  const ended: string[] = [];
  const open = (name: string, deviceId?: string) => streams.untilEnded(deviceId, () => ended.push(name));
  open('phone 1', 'phone');
  const left = open('phone 2', 'phone');
  open('phone 3', 'phone');
  open('tablet', 'tablet');
  open('nobody');
  left();
  streams.endOf('phone');
  expect(ended).toEqual(['phone 1', 'phone 3']);
  streams.endOf('phone');
  streams.endAll();
  expect(ended).toEqual(['phone 1', 'phone 3', 'tablet', 'nobody']);
  streams.endAll();
  expect(ended).toHaveLength(4);
});
