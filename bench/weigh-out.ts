/**
 * How often a batch ends in range when pours go wrong: weighing on at the planned grams, correcting only foods not yet
 * poured, and correcting with going back to poured foods; the same errors, side by side. Then orders of pouring.
 * Simulated weigh-outs: every pour off by a normal error of the given relative sd, one pour grossly wrong.
 */
import { loadHighs } from '../src/formulation/solve/highs.ts';
import { loadReference } from '../src/household/reference-file.ts';
import { type Rates, rates, simulate, type Trial } from '../test/kitchen/success.ts';
import { type WeighedMix, weighedMixes } from '../test/kitchen/weighing-mixes.ts';
import type { Cell, Options, Report } from './lib/report.ts';

const ERRORS = [0.05, 0.2];

export async function run({ quick }: Options): Promise<Report> {
  const reference = loadReference();
  const highs = await loadHighs();
  const mixes = weighedMixes(reference, highs, quick ? 1 : 5);
  /** Weigh-outs of the invented mix, of each drawn one, and of the invented one in each order. */
  const [ofDemo, ofDrawn, ofOrder] = quick ? [6, 3, 3] : [150, 30, 40];

  async function weighed(sd: number, goBack: boolean): Promise<Rates> {
    const trials: Trial[] = [];
    for (const [k, mix] of mixes.entries()) {
      const count = k === 0 ? ofDemo : ofDrawn;
      trials.push(...(await simulate(mix, { reference, highs, goBack }, sd, count, 1000 * sd + k)));
    }
    return rates(trials);
  }

  const corrected: [string, ...Cell[]][] = [];
  for (const sd of ERRORS) {
    const start = performance.now();
    const back = await weighed(sd, true);
    const each = (performance.now() - start) / back.trials;
    const fixed = await weighed(sd, false);
    const errors = `errors of sd ${100 * sd} %`;
    corrected.push(
      [`${errors}, without correction`, percent(back.uncorrected), back.couldBe, '', '', ''],
      [
        `${errors}, never going back to a food`,
        percent(fixed.corrected),
        fixed.couldBe,
        ...effort(fixed),
        '',
      ],
      [
        `${errors}, going back where needed`,
        percent(back.corrected),
        back.couldBe,
        ...effort(back),
        `${each.toFixed(0)} ms`,
      ],
    );
  }

  const [demo] = mixes;
  if (!demo) throw new Error('no mix to weigh');
  const orders: [string, ...Cell[]][] = [];
  for (const sd of ERRORS)
    for (const [name, as] of Object.entries(ordersOf(demo))) {
      const mix: WeighedMix = { ...demo, batch: { ...demo.batch, order: as } };
      const fixed = rates(await simulate(mix, { reference, highs, goBack: false }, sd, ofOrder, 77));
      const back = rates(await simulate(mix, { reference, highs }, sd, ofOrder, 77));
      orders.push([
        `sd ${100 * sd} %, ${name}`,
        percent(fixed.correctedOfAll),
        percent(back.correctedOfAll),
        back.again,
        fixed.trials,
      ]);
    }
  return {
    about: [
      'Simulated weigh-outs: every pour is off by a normal error of the given relative sd, and one is grossly wrong. No time is measured here but what a weigh-out costs.',
    ],
    tables: [
      {
        title: 'Batches that end in range, of those that an all-knowing solver could bring there',
        of: 'way',
        columns: ['in range', 'weigh-outs', 'pours', 'of them again', 'a weigh-out takes'],
        rows: corrected,
      },
      {
        title: 'Orders of pouring, the invented mix',
        of: 'order',
        columns: ['in range, never going back', 'in range, going back', 'pours again', 'weigh-outs'],
        rows: orders,
      },
    ],
    limits: [],
  };
}

const percent = (value: number) => `${value.toFixed(1)} %`;
const effort = ({ pours, again }: Rates) => [pours, again] as const;

function ordersOf({ batch: { order }, planned }: WeighedMix): Record<string, readonly string[]> {
  const heavy = [...order].sort((a, b) => (planned[b] ?? 0) - (planned[a] ?? 0));
  return {
    'as advised': order,
    'the other way round': [...order].reverse(),
    'heaviest first': heavy,
    'lightest first': [...heavy].reverse(),
  };
}
