/**
 * How often a batch ends in range when pours go wrong: weighing on at the planned grams, correcting only foods not yet
 * poured, and correcting with going back to poured foods; the same errors, side by side. Then orders of pouring.
 * Simulated weigh-outs: every pour off by a normal error of the given relative sd, one pour grossly wrong.
 */
import { loadHighs } from '../src/formulation/solve/highs.ts';
import { loadReference } from '../src/household/reference-file.ts';
import { type Rates, rates, simulate, type Trial } from '../test/kitchen/success.ts';
import { type WeighedMix, weighedMixes } from '../test/kitchen/weighing-mixes.ts';

/** Weigh-outs of the invented mix and of each drawn one: 1,000 in all. */
const OF_DEMO = 500;
const OF_DRAWN = 100;
/** Weigh-outs of the invented mix for each order. */
const OF_ORDER = 100;
const reference = loadReference();
const highs = await loadHighs();
const mixes = weighedMixes(reference, highs, 5);

async function run(sd: number, goBack: boolean): Promise<Trial[]> {
  const trials: Trial[] = [];
  for (const [k, mix] of mixes.entries()) {
    const count = k === 0 ? OF_DEMO : OF_DRAWN;
    trials.push(...(await simulate(mix, { reference, highs, goBack }, sd, count, 1000 * sd + k)));
  }
  return trials;
}

const line = (name: string, percent: number, of: number, rest = '') =>
  console.log(`${name.padEnd(44)} ${percent.toFixed(1).padStart(6)} % of ${of}${rest}`);
const effort = (r: Rates) => `   ${r.pours} pours, ${r.again} of them again; ${r.total} g on average`;

for (const sd of [0.05, 0.2]) {
  console.log(`errors of sd ${100 * sd} %, one gross error each, where an all-knowing solver could`);
  const start = performance.now();
  const back = rates(await run(sd, true));
  const took = performance.now() - start;
  const fixed = rates(await run(sd, false));
  line('  weighing on without correction', back.uncorrected, back.couldBe);
  line('  corrected, never going back to a food', fixed.corrected, fixed.couldBe, effort(fixed));
  line('  corrected, going back where needed', back.corrected, back.couldBe, effort(back));
  line('  the same, of all weigh-outs', back.correctedOfAll, back.trials);
  console.log(`  ${(took / back.trials).toFixed(0)} ms a weigh-out`);
}

const demo = mixes[0]!;
const { order } = demo.batch;
const heavy = [...order].sort((a, b) => demo.planned[b]! - demo.planned[a]!);
const orders: Record<string, readonly string[]> = {
  'as advised': order,
  'the other way round': [...order].reverse(),
  'heaviest first': heavy,
  'lightest first': [...heavy].reverse(),
};
for (const sd of [0.05, 0.2]) {
  console.log(`orders of pouring, invented mix, sd ${100 * sd} %`);
  for (const [name, as] of Object.entries(orders)) {
    const mix: WeighedMix = { ...demo, batch: { ...demo.batch, order: as } };
    const fixed = rates(await simulate(mix, { reference, highs, goBack: false }, sd, OF_ORDER, 77));
    const back = rates(await simulate(mix, { reference, highs }, sd, OF_ORDER, 77));
    line(
      `  ${name}`,
      fixed.correctedOfAll,
      fixed.trials,
      ` never going back; ${back.correctedOfAll.toFixed(1)} % with ${back.again} pours again`,
    );
  }
}
