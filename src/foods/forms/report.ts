/** `docs/drying-model.md`: how far the drying model lies from foods measured both fresh and dried. Markdown. */

import { driedAmount } from '../../nutrition/amount.ts';
import { NUTRIENTS, nutrient, type Tag } from '../../nutrition/nutrients.ts';
import { amountOf } from '../food.ts';
import type { Reference, ReferenceFood } from '../reference.ts';
import { comparePairs, PAIRS_LEFT_OUT, REPEATS, type Skipped } from './compare-pairs.ts';
import {
  ABOVE,
  BELOW,
  type Fit,
  fitFor,
  fitSpread,
  type HeldOut,
  holdOut,
  LEVEL,
  median,
  type Spread,
  sdOfLogs,
  TOO_WIDE,
} from './fit.ts';
import { PAIRS, type Pair } from './pairs.ts';
import { RETENTION_ROWS, RETENTION_SOURCE } from './retention.ts';

/** The whole report; the same reference always gives the same text. */
export function dryingReport(reference: Reference): string {
  const { comparisons, skipped, calculated } = comparePairs(reference);
  const spread = fitSpread(comparisons);
  const fitOf = (h: HeldOut) => fitFor(spread, h.tag, h.pair.kind === 'fruit')!;
  const held = holdOut(comparisons);
  const own = held.filter((h) => !REPEATS.includes(h.tag));
  const single = own.filter((h) => fitOf(h).sd !== null);
  const bounded = own.filter((h) => fitOf(h).sd === null);
  const used = PAIRS.filter((pair) => !calculated.includes(pair));
  const plants = new Set(used.map((pair) => pair.plant)).size;
  const typical = (tag: Tag) =>
    pc(
      median(
        held
          .filter((h) => h.tag === tag)
          .map((h) => Math.abs(h.kept / fitOf(h).kept - 1))
          .sort((a, b) => a - b),
      ),
    );
  const titled = (ref: string) => `${nameOf(reference, ref)} (${ref.replace('sr28:', '')})`;

  return `${[
    '# How sure a dried food is',
    'This file is made by `dryingReport` in `src/foods/forms/report.ts`; a test keeps it true. Renew it, and `src/foods/forms/drying-spread.json`, with `npx vitest run src/foods/forms/report.test.ts -u`.',
    '## In short',
    `- ${used.length} pairs of rows of USDA SR28 (${plants} plants and animals) hold a food both fresh and dried. The model dries the fresh row to the moisture of the dried one and is compared with what the table prints: ${own.length} figures.`,
    `- Left out one plant at a time, ${share(own)} of the figures lie in what the model declares without having seen that plant: ${share(single)} of ${single.length} where it gives a value (value +- 1.96 sd, cut at 0), ${share(bounded)} of ${bounded.length} where it gives bounds only.`,
    `- Typical error (half of the pairs do better): ${(['ENERC_KCAL', 'CHOCDF', 'PROCNT', 'FIBTG', 'FAT', 'K', 'CA'] as const).map((tag) => `${nutrient(tag).name.toLowerCase()} ${typical(tag)}`).join(', ')}. Little of it is the drying: the dried row is another harvest, variety and laboratory than the fresh one. A keeper who dries one carrot and reads the figures of another has the same error.`,
    '- Most vitamins, sodium, iron, manganese, selenium and the fatty acids scatter too widely for one figure. They get bounds.',
    '## How it is made',
    `- **Kept** is the dried figure over the dry-matter figure (fresh figure x (100 - moisture dried) / (100 - moisture fresh)).`,
    '- Proximates, carbohydrates, fibre, minerals and fatty acids: kept is taken as 1.',
    `- Vitamins in fruit: kept is the published factor where there is one (${RETENTION_SOURCE}, code ${RETENTION_ROWS.find((r) => r.form === 'dried')?.code}). That table has no row for dried vegetables.`,
    '- Vitamins in everything else, and those without a factor: the median of the pairs, at most 1. This is what the tables show, not a published factor.',
    `- The declared sd is chosen so that value +- 1.96 sd holds ${pc(LEVEL)} of new pairs by the rank of the deviations (no normal distribution is assumed: the ratios are heavy-tailed). The fresh food's own sd is joined to it.`,
    `- Where the sd of log(kept) or the declared sd is above ${TOO_WIDE}, only bounds are given; at most ${pc(BELOW)} of new pairs are expected below and ${pc(ABOVE)} above them, for a nutrient with figures enough.`,
    '- A nutrient with fewer than 12 figures borrows those of its class. A nutrient that no pair and no table of factors covers (biotin) stays unknown. A printed 0 stays 0: a fresh row that prints 0 while the dried row does not (a trace below the last decimal, or an additive) is outside the model.',
    '- Folate in all its forms, and vitamin A with its carotenes, share one factor, so that sums and conversions stay true.',
    '## Error by nutrient',
    table(
      [
        'nutrient',
        'figures',
        'median measured / predicted',
        'mean of log',
        'sd of log',
        'robust sd of log',
        'typical error',
        'declared',
        'held out, covered',
      ],
      NUTRIENTS.flatMap(({ tag }) => nutrientRow(tag, held, spread)),
    ),
    'Predicted is the dry-matter figure times what the model takes as kept. Typical error is the median of |measured / predicted - 1|. Logs are natural logs of measured / predicted and leave printed zeros out; the robust sd is 1.4826 times the median absolute deviation. Rows in italics repeat another figure (another unit, a part or a sum) and are not counted in the totals.',
    '## Coverage by kind of food',
    table(
      ['kind', 'pairs', 'figures', 'held out, covered'],
      [...new Set(used.map((pair) => pair.kind))].map((kind) => {
        const some = own.filter((h) => h.pair.kind === kind);
        return [
          kind,
          String(used.filter((pair) => pair.kind === kind).length),
          String(some.length),
          share(some),
        ];
      }),
    ),
    '## Check values',
    checkValues(reference),
    '## Pairs used',
    table(
      ['plant', 'fresh row', 'dried row', 'single figures left out'],
      used.map((pair) => [pair.plant, titled(pair.fresh), titled(pair.dried), leftOut(pair, skipped)]),
    ),
    '## Pairs left out',
    'Calculated rows show when most of their figures equal, within the rounding of both rows, the dry-matter figure of the fresh row.',
    table(
      ['fresh row', 'dried row', 'why'],
      [
        ...calculated.map((pair) => [
          titled(pair.fresh),
          titled(pair.dried),
          'calculated: most figures are the dry-matter figures of the fresh row',
        ]),
        ...PAIRS_LEFT_OUT.map((pair) => [
          pair.fresh ? titled(pair.fresh) : '-',
          titled(pair.dried),
          pair.why,
        ]),
      ],
    ),
    '## Not in the table',
    'SR28 has no fresh row of chervil, marjoram, oregano, sage, savory or tarragon. The abbreviated table does not say which figures were measured, so rows found to be copied, calculated or imputed are named above; others may remain.',
  ].join('\n\n')}\n`;
}

const pc = (part: number) => `${Math.round(100 * part)} %`;

function share(held: readonly HeldOut[]): string {
  return `${((100 * held.filter((h) => h.covered).length) / held.length).toFixed(1)} %`;
}

function nutrientRow(tag: Tag, all: readonly HeldOut[], spread: Spread): string[][] {
  const held = all.filter((h) => h.tag === tag);
  if (held.length === 0) return [];
  const ratios = held
    .map((h) => h.kept / fitFor(spread, tag, h.pair.kind === 'fruit')!.kept)
    .sort((a, b) => a - b);
  const errors = ratios.map((r) => Math.abs(r - 1)).sort((a, b) => a - b);
  const name = `${nutrient(tag).name} (${tag})`;
  const fits: (readonly [string, Fit | undefined])[] = [
    ['', spread.general[tag]],
    ['fruit: ', spread.fruit[tag]],
  ];
  const declared = fits.flatMap(([prefix, fit]) => (fit ? [`${prefix}${describe(fit)}`] : [])).join('; ');
  return [
    [
      REPEATS.includes(tag) ? `*${name}*` : name,
      String(held.length),
      median(ratios).toFixed(2),
      ...logStatistics(ratios),
      pc(median(errors)),
      declared,
      share(held),
    ],
  ];
}

/** Mean, sd and robust sd (1.4826 x median absolute deviation) of the logs of the ratios above 0. */
function logStatistics(ratios: readonly number[]): string[] {
  const logs = ratios.filter((ratio) => ratio > 0).map(Math.log);
  if (logs.length < 2) return ['-', '-', '-'];
  const mean = logs.reduce((a, b) => a + b, 0) / logs.length;
  const centre = median(logs);
  const deviations = logs.map((log) => Math.abs(log - centre)).sort((a, b) => a - b);
  return [mean, sdOfLogs(ratios), 1.4826 * median(deviations)].map((x) => x.toFixed(2));
}

function describe(fit: Fit): string {
  const kept = fit.basis === 'dry matter' ? '' : `kept ${pc(fit.kept)} (${fit.basis}), `;
  if (fit.sd !== null) return `${kept}sd ${pc(fit.sd)}`;
  return `bounds ${fit.low.toFixed(2)} to ${fit.high.toFixed(2)} of the dry-matter figure`;
}

function checkValues(reference: Reference): string {
  const fresh = food(reference, 'sr28:11124');
  const dried = food(reference, 'sr28:11683');
  const rows = (['PROCNT', 'FIBTG'] as const).map((tag) => {
    const predicted = driedAmount(amountOf(fresh, tag), fresh.composition.WATER!, dried.composition.WATER!);
    return [
      nutrient(tag).name,
      predicted.known ? predicted.value.toFixed(2) : '-',
      String(dried.composition[tag]),
    ];
  });
  return `Raw carrot (11124, moisture ${fresh.composition.WATER}) dried to the ${dried.composition.WATER} % of dehydrated carrot (11683), g per 100 g:\n\n${table(['nutrient', 'predicted', 'printed'], rows)}`;
}

function leftOut(pair: Pair, skipped: readonly Skipped[]): string {
  const reasons = new Map<string, Tag[]>();
  for (const { tag, why } of skipped.filter((s) => s.pair === pair))
    reasons.set(why, [...(reasons.get(why) ?? []), tag]);
  return [...reasons].map(([why, tags]) => `${tags.join(', ')}: ${why}`).join('; ') || '-';
}

function food(reference: Reference, ref: string): ReferenceFood {
  const found = reference.get(ref);
  if (!found) throw new RangeError(`the reference does not hold ${ref}`);
  return found;
}

function nameOf(reference: Reference, ref: string): string {
  return food(reference, ref).tableName.toLowerCase();
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}
