/**
 * A weigh-out whose server or browser is killed (SIGKILL) at every step. What was answered is on disk, what was not
 * answered is there wholly or not at all, and whoever goes on stands at the food poured last.
 */
import { request } from 'node:http';
import { connect } from 'node:net';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Highs, loadHighs } from '../../src/formulation/solve/highs.ts';
import type { Household } from '../../src/household/model.ts';
import { loadReference } from '../../src/household/reference-file.ts';
import type { Batch, Pour } from '../../src/kitchen/model.ts';
import { WeighOut } from '../../src/kitchen/weighing/weigh-out.ts';
import { weighedMixes } from '../kitchen/weighing-mixes.ts';
import { MortalBrowser, MortalServer } from './killed.ts';

const reference = loadReference();
/** One for the batch that is walked over HTTP, one for the batch in the browser: both go on at once. */
const server = new MortalServer();
const desk = new MortalServer();
let highs: Highs;
let plan: Batch;
/** The batch as the keeper has seen it acknowledged. */
let acknowledged: Batch;

beforeAll(async () => {
  highs = await loadHighs();
  await Promise.all([server.start(), desk.start()]);
  plan = weighedMixes(reference, highs, 0)[0]!.batch;
  acknowledged = { ...plan, id: 'walked', name: 'Walked' };
});
afterAll(() => Promise.all([server.end(), desk.end()]));

async function onDisk(id: string, on = server): Promise<Batch | undefined> {
  const house = (await (await fetch(`${on.url}/api/household`)).json()) as Household;
  return house.batches.find((b) => b.id === id);
}

/** Stores a batch and reads the answer. */
async function put(batch: Batch, on = server): Promise<void> {
  const answer = await fetch(`${on.url}/api/batches/${batch.id}`, {
    method: 'PUT',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(batch),
  });
  expect(answer.ok, await answer.text()).toBe(true);
}

/** Where a client that knows nothing but the record stands: pours, next food, its target and tolerance, total. */
function standing(batch: Batch) {
  const weighOut = new WeighOut(batch, { reference, highs, spoonBack: true });
  try {
    const next = weighOut.next();
    return {
      pours: batch.pours,
      food: next?.food,
      target: next?.target,
      tolerance: [next?.asPlanned, next?.grown],
      total: weighOut.inBowl(),
      finishedAt: batch.finishedAt,
    };
  } finally {
    weighOut.dispose();
  }
}

const poured = (batch: Batch, grams: number, food: string, target: number): Batch => {
  const at = new Date(Date.UTC(2026, 2, 14, 10, batch.pours.length)).toISOString();
  const pour: Pour = { food, lots: [], target, grams, at };
  return { ...batch, pours: [...batch.pours, pour] };
};

/** Begins to store a batch and lets the server die before any answer is read. */
const CUTS = {
  async 'with half of it sent'(batch: Batch) {
    const body = JSON.stringify(batch);
    const { port, hostname } = new URL(server.url);
    const socket = connect(Number(port), hostname);
    socket.on('error', () => {});
    await new Promise<void>((sent) =>
      socket.write(
        `PUT /api/batches/${batch.id} HTTP/1.1\r\nhost: ${hostname}:${port}\r\ncontent-type: application/json\r\ncontent-length: ${Buffer.byteLength(body)}\r\n\r\n${body.slice(0, body.length / 2)}`,
        () => sent(),
      ),
    );
    await server.kill();
    socket.destroy();
  },
  'as soon as it is sent': (batch: Batch) => cutAfter(batch, 0),
  'while it is written': (batch: Batch) => cutAfter(batch, 4),
  'just before it is answered': (batch: Batch) => cutAfter(batch, 12),
};

async function cutAfter(batch: Batch, ms: number) {
  const sent = new Promise<void>((done) => {
    const asked = request(
      `${server.url}/api/batches/${batch.id}`,
      { method: 'PUT', headers: { 'content-type': 'application/json' } },
      (answer) => answer.resume(),
    );
    asked.on('error', () => {});
    asked.end(JSON.stringify(batch), () => done());
  });
  await sent;
  await new Promise((done) => setTimeout(done, ms));
  await server.kill();
}

const tally = { kept: 0, not: 0 };

/** One entry: first cut short, then made and acknowledged, and the server killed after it. */
async function entered(next: Batch, cut: keyof typeof CUTS) {
  const before = acknowledged;
  await CUTS[cut](next);
  await server.start();
  const found = (await onDisk(next.id))!;
  const wasKept = told(found) === told(next);
  if (wasKept) tally.kept++;
  else tally.not++;
  // Wholly there or not at all; half a body is never there.
  expect(standing(found)).toEqual(standing(wasKept ? next : before));
  if (cut === 'with half of it sent') expect(wasKept).toBe(false);
  await put(next);
  await server.killAndStart();
  acknowledged = next;
  expect(standing((await onDisk(next.id))!)).toEqual(standing(next));
  expect(told((await onDisk(next.id))!)).toBe(told(next));
}

const told = ({ pours, finishedAt, madeBy }: Batch) => JSON.stringify([pours, finishedAt, madeBy]);

describe.concurrent('the server is killed', () => {
  test('at every step of the whole batch, before and after each answer', async () => {
    await put(acknowledged);
    await server.killAndStart();
    expect(standing((await onDisk('walked'))!)).toEqual(standing(acknowledged));

    const cuts = Object.keys(CUTS) as (keyof typeof CUTS)[];
    let steps = 0;
    for (; ; steps++) {
      const { food, target } = standing(acknowledged);
      if (food === undefined) break;
      expect(steps).toBeLessThan(60);
      // The third food is poured grossly wrong, so that the rest is corrected.
      const grams = steps === 2 ? Math.round(1.8 * target!) : target!;
      await entered(poured(acknowledged, grams, food, target!), cuts[steps % cuts.length]!);
      if (steps === 5) {
        // Written wrong, and taken back.
        await entered({ ...acknowledged, pours: acknowledged.pours.slice(0, -1) }, 'while it is written');
      }
      if (steps === 8) {
        // Some of what was poured last is spooned out again.
        await entered(poured(acknowledged, -1, food, 0), 'just before it is answered');
      }
    }
    expect(steps).toBeGreaterThan(19);
    await entered(
      { ...acknowledged, finishedAt: '2026-03-14T12:00:00.000Z', madeBy: 'Robin' },
      'as soon as it is sent',
    );
    expect((await onDisk('walked'))!.madeBy).toBe('Robin');
    expect(tally.kept + tally.not).toBe(steps + 3);
    // Half a body never counts, so both kinds of ending were met or only the one that loses nothing acknowledged.
    expect(tally.not).toBeGreaterThan(0);
  }, 120_000);
});

describe.concurrent('the browser is killed', () => {
  let browser: MortalBrowser;
  let page: Page;
  let here: string;
  const text = async (id: string) => (await page.getByTestId(id).textContent()) ?? '';
  const total = async () => Number.parseFloat(await text('running-total'));
  const target = async () => Number.parseFloat(await text('target'));
  const press = (name: string | RegExp) => page.getByRole('button', { name }).click();
  const seen = async () => [
    await page.locator('#weigh-food').textContent(),
    await text('target'),
    await text('tolerance'),
    await total(),
    await text('weigh-status'),
    await page.locator('.weigh-list li').allTextContents(),
  ];
  const pour = async (grams: number) => {
    const before = await total();
    await page.getByRole('textbox', { name: 'The scale shows, in g' }).fill(String(grams));
    await press('Poured');
    await expect.poll(total, { timeout: 20_000 }).toBeCloseTo(before + grams, 6);
  };
  /** Browser and server die together; another device goes on. */
  async function killedAndReopened(serverToo = false) {
    await browser.kill();
    if (serverToo) await desk.killAndStart();
    browser = await MortalBrowser.open(here);
    page = browser.page;
    await page.getByTestId('running-total').waitFor();
  }
  afterAll(() => browser?.kill());

  test('after begin, pour, correction, taking back, in a save, and at the end', async () => {
    await put({ ...plan, id: 'seen', name: 'Seen', mixId: 'demo-mix' }, desk);
    here = `${desk.url}/#/weigh/seen`;
    browser = await MortalBrowser.open(here);
    page = browser.page;
    await page.getByTestId('target').waitFor();

    let before = await seen();
    await killedAndReopened();
    expect(await seen()).toEqual(before);

    await pour(await target());
    before = await seen();
    await killedAndReopened(true);
    expect(await seen()).toEqual(before);

    // Grossly wrong: the rest is corrected.
    await pour(Math.round(1.8 * (await target())));
    expect(await text('weigh-status')).toMatch(/^(↻ Corrected|▲ Grown)/);
    before = await seen();
    await killedAndReopened();
    expect(await seen()).toEqual(before);

    await pour((await target()) + 2);
    await press(/^Take back the last entry/);
    await expect.poll(total).toBe(before[3]);
    await page.getByTestId('target').waitFor();
    expect(await seen()).toEqual(before);
    await killedAndReopened(true);
    expect(await seen()).toEqual(before);

    // In the middle of a save: sent, never answered.
    const pours = (await onDisk('seen', desk))!.pours.length;
    const grams = await target();
    desk.freeze();
    await page.getByRole('textbox', { name: 'The scale shows, in g' }).fill(String(grams));
    await press('Poured');
    await page.getByText(/^Saving .*…$/).waitFor();
    await killedAndReopened(true);
    const found = (await onDisk('seen', desk))!.pours.length;
    expect([pours, pours + 1]).toContain(found);
    if (found === pours) expect(await seen()).toEqual(before);
    else expect(await total()).toBe((before[3] as number) + grams);

    const finish = () => page.getByRole('button', { name: 'Finish the batch' });
    for (let n = 0; n < 40 && !(await finish().isVisible()); n++) {
      await pour(await target());
      await page.locator('[data-testid="target"], .weigh-step[aria-label="All is poured"]').waitFor();
    }
    const all = await total();
    await killedAndReopened(true);
    expect(await total()).toBe(all);
    await finish().click();
    await page.getByTestId('record-state').waitFor();
    await browser.kill();
    await desk.killAndStart();
    browser = await MortalBrowser.open(here);
    page = browser.page;
    expect(await text('record-state')).toBe('✓ In range');
    expect((await onDisk('seen', desk))!.finishedAt).toBeDefined();
  }, 120_000);
});
