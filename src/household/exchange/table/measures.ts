/** What a table's amounts are per and part of, which fibre and protein they mean: read where it is printed, else asked. */

import { ownQuantity } from '../../../foods/label/units.ts';
import { isTag, nutrient } from '../../../nutrition/nutrients.ts';
import { words } from '../../../words/words.ts';
import type { Asked } from './asked.ts';
import type { FigureCell } from './figure-cell.ts';
import { readHeading } from './heading.ts';
import { named, type Per, type ReadColumn } from './read-columns.ts';

export interface Measures {
  per(column: ReadColumn): Per | undefined;
  basis(column: ReadColumn): 'as fed' | 'dry matter' | undefined;
  /** Columns whose figures are parts of one. */
  readonly fractions: ReadonlySet<number>;
  /** Of protein as printed: crude, or counted with a factor that nobody says. */
  readonly protein: 'crude' | 'unsaid' | undefined;
  /** g water per 100 g, of the foods for which a table of dry matter says nothing of it. */
  readonly moisture: number | undefined;
}

export interface Figured {
  readonly column: ReadColumn;
  readonly cells: readonly FigureCell[];
}

export interface AboutTable {
  readonly above: readonly string[];
  readonly figured: readonly Figured[];
  readonly hasShares: boolean;
  readonly hasGrams: boolean;
  /** Every food has its moisture in the table. */
  readonly hasMoisture: boolean;
  /** Columns whose row of sums is the plain sum of the others: what each food brings to the mix, perhaps. */
  readonly summed: ReadonlySet<number>;
}

export function askMeasures(about: AboutTable, asked: Asked): Measures {
  const nutrients = about.figured.filter(({ column }) => isNutrient(column));
  const title = readHeading(about.above.join(' '));
  const per = askPer(about, nutrients, title.per, asked);
  const basis = askBasis(nutrients, title.basis, asked);
  const dry = nutrients.some(({ column }) => basis(column) === 'dry matter' && column.role !== 'WATER');
  return {
    per,
    basis,
    fractions: askFractions(nutrients, asked),
    protein: askProtein(nutrients, asked),
    moisture: dry && !about.hasMoisture ? askMoisture(asked) : undefined,
  };
}

/** Whether a column holds amounts of a nutrient. */
export function isNutrient({ role }: ReadColumn): boolean {
  return role !== undefined && (isTag(role) || role === 'salt' || role === 'net-carbohydrate');
}

function askPer(
  { hasGrams, hasShares, summed }: AboutTable,
  nutrients: readonly Figured[],
  titled: number | undefined,
  asked: Asked,
): Measures['per'] {
  const own = (column: ReadColumn) =>
    column.heading.per ?? (column.unit && ownQuantity(column.unit)) ?? titled;
  const sums = nutrients.filter(({ column }) => summed.has(column.index));
  const unsaid = nutrients.filter(({ column, cells }) => own(column) === undefined && cells.some(needsPer));
  const contribution = sums.length > 0;
  if (unsaid.length === 0 && !contribution) return own;
  const t = words().ownTable.ask;
  const answer = asked.ask({
    id: 'per',
    message: contribution ? t.perSummed(sums[0]?.column.heading.text ?? '') : t.per,
    options: [
      { answer: '100', label: t.per100 },
      { answer: '1000', label: t.perKg },
      ...(hasGrams ? [{ answer: 'row', label: t.perRow }] : []),
      ...(hasShares ? [{ answer: 'mix', label: t.perMix }] : []),
    ],
    free: 'grams',
  });
  const meant =
    answer === 'row' || answer === 'mix' ? answer : answer === undefined ? undefined : Number(answer);
  return (column) => {
    if (summed.has(column.index)) return meant === 100 ? (own(column) ?? meant) : meant;
    return own(column) ?? meant;
  };
}

function needsPer(cell: FigureCell): boolean {
  return cell.kind === 'amount' && cell.per === undefined && !(cell.unit && ownQuantity(cell.unit));
}

function askBasis(
  nutrients: readonly Figured[],
  titled: 'as fed' | 'dry matter' | undefined,
  asked: Asked,
): Measures['basis'] {
  const own = ({ role, heading }: ReadColumn) => (role === 'WATER' ? 'as fed' : (heading.basis ?? titled));
  if (nutrients.every(({ column }) => own(column) !== undefined)) return own;
  const t = words().ownTable.ask;
  const answer = asked.ask({
    id: 'basis',
    message: t.basis,
    options: [
      { answer: 'as fed', label: t.asFed },
      { answer: 'dry matter', label: t.dry },
    ],
  }) as 'as fed' | 'dry matter' | undefined;
  return (column) => own(column) ?? answer;
}

function askMoisture(asked: Asked): number | undefined {
  const answer = asked.ask({
    id: 'moisture',
    message: words().ownTable.ask.moisture,
    options: [],
    free: 'percent',
  });
  return answer === undefined ? undefined : Number(answer);
}

/** Nutrients of which a dry food never has as little as 1 g in 100 g in every row of a table. */
const PLENTY = ['PROCNT', 'WATER', 'CHOCDF', 'net-carbohydrate'];
const LEAST_ROWS = 2;

/** A spreadsheet shows 0.12 as 12 %: where all figures are at most 1, it is asked which they are. */
function askFractions(nutrients: readonly Figured[], asked: Asked): ReadonlySet<number> {
  const t = words().ownTable.ask;
  const small = nutrients.filter(({ column, cells }) => {
    const { role, unit } = column;
    const grams =
      role !== undefined && (role === 'net-carbohydrate' || (isTag(role) && nutrient(role).unit === 'g'));
    const values = cells.flatMap((c) =>
      c.kind === 'amount' && c.unit === undefined ? (c.value ?? c.high ?? []) : [],
    );
    return (
      grams &&
      (unit === '%' || unit === 'g') &&
      values.length >= LEAST_ROWS &&
      values.some((v) => v > 0) &&
      values.every((v) => v <= 1)
    );
  });
  const main = nutrients.filter(({ column }) => PLENTY.includes(String(column.role)));
  const suspected = main.length === 0 || main.some((m) => small.includes(m)) ? small : [];
  const fractions = suspected.filter(({ column }) => {
    const answer = asked.ask({
      id: `fraction ${column.index}`,
      column: column.index,
      message: t.fractions(named(column.heading, column.index), column.example),
      options: [
        { answer: 'percent', label: t.noFraction(column.example, column.unit ?? '') },
        {
          answer: 'fraction',
          label: t.isFraction(
            column.example,
            Number((Number(column.example.replace(',', '.')) * 100).toPrecision(10)),
          ),
        },
      ],
    });
    return answer === 'fraction';
  });
  return new Set(fractions.map(({ column }) => column.index));
}

function askProtein(nutrients: readonly Figured[], asked: Asked): Measures['protein'] {
  const protein = nutrients.filter(({ column }) => column.role === 'PROCNT');
  if (protein.length === 0) return undefined;
  if (protein.every(({ column }) => column.heading.crude)) return 'crude';
  const t = words().ownTable.ask;
  const answer = asked.ask({
    id: 'protein',
    column: protein[0]?.column.index ?? 0,
    message: t.protein,
    options: [
      { answer: 'crude', label: t.crude },
      {
        answer: 'unsaid',
        label: t.unsaid,
      },
    ],
  });
  return answer as Measures['protein'];
}
