/** The figures of one row as those of a food: per 100 g as fed, in the units of the tagnames. Unknown stays unknown. */

import { crudeOfUnsaid } from '../../../foods/crude-protein.ts';
import { plainFigures } from '../../../foods/figures.ts';
import type { Composition, Figures } from '../../../foods/food.ts';
import type { PrintedUnit } from '../../../foods/label/reading.ts';
import { inTagUnit, ownQuantity, SALT_PER_SODIUM, unitFits } from '../../../foods/label/units.ts';
import { isTag, type Tag } from '../../../nutrition/nutrients.ts';
import { words } from '../../../words/words.ts';
import type { FigureCell } from './figure-cell.ts';
import type { Measures } from './measures.ts';
import type { ReadColumn } from './read-columns.ts';
import { round } from './read-shares.ts';
import type { Role } from './words.ts';

export interface RowCell {
  readonly column: ReadColumn;
  readonly cell: FigureCell;
}

export interface RowWeights {
  /** g of the food in the mix. */
  readonly grams?: number;
  /** Percent of the mix. */
  readonly share?: number;
}

export interface RowFigures {
  readonly figures: Figures;
  /** What was reckoned rather than printed, in words. */
  readonly notes: readonly string[];
  /** What keeps a printed figure from being used. */
  readonly faults: readonly string[];
}

type Part = 'value' | 'low' | 'high';
type Amount = Extract<FigureCell, { kind: 'amount' }>;
const PARTS: readonly Part[] = ['value', 'low', 'high'];
const MOST_IN_HUNDRED = 100;

export function rowFigures(cells: readonly RowCell[], measures: Measures, weights: RowWeights): RowFigures {
  const t = words().ownTable.rowsTold;
  const into: Record<Part, Composition> = { value: {}, low: {}, high: {} };
  const notes = new Set<string>();
  const faults: string[] = [];
  let withoutFibre: number | undefined;
  const moisture = moistureOf(cells, measures, weights) ?? measures.moisture;
  const given = new Set(cells.flatMap(({ column, cell }) => (cell.kind === 'amount' ? [column.role] : [])));
  for (const { column, cell } of cells) {
    const { role, heading } = column;
    const tag = tagOf(role);
    if (!tag || cell.kind !== 'amount') continue;
    // Moisture and sodium count where they are given themselves.
    if ((role === 'dry matter' && given.has('WATER')) || (role === 'salt' && given.has('NA'))) continue;
    const name = heading.text || String(role);
    const unit = cell.unit ?? (measures.fractions.has(column.index) ? undefined : column.unit);
    if (unit && !unitFits(tag, unit)) {
      faults.push(t.wrongUnit(name, unit));
      continue;
    }
    const basis = measures.basis(column);
    const dry = tag !== 'WATER' && basis === 'dry matter';
    // What is asked and not yet answered gives no figure yet.
    if (basis === undefined || (dry && moisture === undefined) || isOpen(column, cell, unit)) continue;
    if (dry && (moisture ?? 0) >= MOST_IN_HUNDRED) {
      faults.push(t.noDryMatter(name, moisture ?? 0));
      continue;
    }
    for (const part of PARTS) {
      const printed = cell[part];
      if (printed === undefined) continue;
      const hundred = perHundred(printed, column, cell, measures, weights);
      if (hundred === undefined) {
        faults.push(t.noWeight(name));
        continue;
      }
      const dryPart = dry ? (MOST_IN_HUNDRED - (moisture ?? 0)) / MOST_IN_HUNDRED : 1;
      const amount = round(
        inTagUnit(hundred * dryPart, unit ?? '%', tag) / (role === 'salt' ? SALT_PER_SODIUM : 1),
      );
      if (role === 'dry matter' && amount > MOST_IN_HUNDRED) {
        faults.push(t.tooDry(name, amount));
        continue;
      }
      if (role === 'net-carbohydrate') {
        if (part !== 'high') withoutFibre = amount;
      } else
        putPart(
          heading.bound && part === 'value' ? heading.bound : part,
          tag,
          role === 'dry matter' ? turned(amount) : amount,
          role === 'dry matter',
        );
    }
    if (role === 'salt') notes.add(t.fromSalt);
    if (role === 'dry matter') notes.add(t.fromDryMatter);
    if (dry) notes.add(t.toAsFed(moisture ?? 0));
  }
  if (given.has('dry matter') && given.has('WATER')) faults.push(...moistureFaults(cells, measures, weights));
  if (withoutFibre !== undefined) addFibre(withoutFibre);
  if (measures.protein === 'unsaid') protein();
  return {
    figures: plainFigures({ composition: into.value, sd: {}, low: into.low, high: into.high }),
    notes: [...notes],
    faults,
  };

  /** The least of the dry matter is the most of the moisture. */
  function putPart(part: Part, tag: Tag, amount: number, isTurned: boolean): void {
    const other: Part = part === 'low' ? 'high' : part === 'high' ? 'low' : part;
    put(into, tag, isTurned ? other : part, amount);
  }

  function isOpen(column: ReadColumn, cell: Amount, unit: PrintedUnit | undefined): boolean {
    if (measures.fractions.has(column.index) && cell.unit === undefined) return false;
    return unit === undefined || (cell.per ?? ownQuantity(unit) ?? measures.per(column)) === undefined;
  }

  /** Carbohydrate by difference holds the fibre; without the fibre it is at least the rest. */
  function addFibre(rest: number): void {
    const fibre = into.value.FIBTG;
    if (fibre === undefined) put(into, 'CHOCDF', 'low', rest);
    else put(into, 'CHOCDF', 'value', round(rest + fibre));
    notes.add(t.withFibre);
  }

  /** Nobody says with which factor nitrogen became protein: its crude protein is known within a range. */
  function protein(): void {
    const printed = into.value.PROCNT;
    if (printed === undefined) return;
    const [least, most] = crudeOfUnsaid();
    delete into.value.PROCNT;
    put(into, 'PROCNT', 'low', round(printed * least));
    put(into, 'PROCNT', 'high', round(printed * most));
    notes.add(t.proteinRange);
  }
}

function put(into: Record<Part, Composition>, tag: Tag, part: Part, amount: number): void {
  into[part][tag] = amount;
}

function turned(dryMatter: number): number {
  return round(MOST_IN_HUNDRED - dryMatter);
}

function tagOf(role: Role | undefined): Tag | undefined {
  if (role === 'dry matter') return 'WATER';
  if (role === 'salt') return 'NA';
  if (role === 'net-carbohydrate') return 'CHOCDF';
  return role !== undefined && isTag(role) ? role : undefined;
}

/** In 100 g of what it is part of, in the printed unit. */
function perHundred(
  printed: number,
  column: ReadColumn,
  cell: Amount,
  measures: Measures,
  { grams, share }: RowWeights,
): number | undefined {
  if (measures.fractions.has(column.index) && cell.unit === undefined) return printed * MOST_IN_HUNDRED;
  const said = cell.per ?? (cell.unit && ownQuantity(cell.unit));
  const per = said ?? measures.per(column);
  if (per === undefined) return undefined;
  const weight = per === 'row' ? grams : per === 'mix' ? share : per;
  return weight === undefined || !(weight > 0) ? undefined : (printed * MOST_IN_HUNDRED) / weight;
}

/** How far moisture and dry matter may come from 100 together, by rounding (common practice, no source). */
const NEAR = 1;

function moistureFaults(cells: readonly RowCell[], measures: Measures, weights: RowWeights): string[] {
  const of = (role: Role) =>
    moistureOf(
      cells.filter((c) => c.column.role === role),
      measures,
      weights,
    );
  const [given, turnedRound] = [of('WATER'), of('dry matter')];
  if (given === undefined || turnedRound === undefined || Math.abs(given - turnedRound) <= NEAR) return [];
  return [words().ownTable.rowsTold.notHundred(given, turned(turnedRound))];
}

function moistureOf(cells: readonly RowCell[], measures: Measures, weights: RowWeights): number | undefined {
  for (const { column, cell } of cells) {
    if (cell.kind !== 'amount' || cell.value === undefined) continue;
    if (column.role !== 'WATER' && column.role !== 'dry matter') continue;
    const unit: PrintedUnit = cell.unit ?? column.unit ?? '%';
    const hundred = perHundred(cell.value, column, cell, measures, weights);
    if (hundred === undefined || !unitFits('WATER', unit)) continue;
    const amount = round(inTagUnit(hundred, unit, 'WATER'));
    if (amount > MOST_IN_HUNDRED) return undefined;
    return column.role === 'WATER' ? amount : turned(amount);
  }
  return undefined;
}
