/**
 * Attaches every figure to what it is per: its own quantity, its unit ("%", "ppm"), or the column it stands in. What a
 * heading, a section or a footnote says of it goes with it; what they leave open goes with it as an open question.
 */

import { words } from '../../words/words.ts';
import {
  type Attachment,
  alone,
  asBound,
  attachment,
  NO_QUANTITY,
  resolved,
  withFigure,
} from './attachment.ts';
import { type Amount, cellsOf, dimension, isEnergy, isOddWeight, joined, weightsOf } from './cells.ts';
import type { Column, Heading } from './columns.ts';
import { type AttachableLine, type Context, contextsOf } from './context.ts';
import type { Draft } from './draft.ts';
import type { Figure } from './figure.ts';
import { isAnalytical, Lists } from './lists.ts';
import type { Part } from './part.ts';
import type { Bound, PrintedQuantity } from './quantity.ts';
import type { Left, Quantity } from './reading.ts';
import { trailingOf } from './trailing.ts';
import { ownQuantity } from './units.ts';

interface Attached {
  readonly drafts: readonly Draft[];
  readonly quantities: readonly Quantity[];
  /** Weights of one serving, as the label defines it. */
  readonly servings: readonly number[];
  readonly missed: readonly Missed[];
  /** Lines with amounts recognised as shares of a daily intake or of the energy, or of the food as prepared. */
  readonly left: ReadonlyMap<number, ReadonlySet<Left>>;
}

/** What could not be read of a line, and why. */
export interface Missed {
  readonly line: number;
  readonly text: string;
  readonly why: string;
}

const SERVING: PrintedQuantity = { kind: 'serving', text: 'serving' };

/**
 * @param dailyLabel whether shares of a daily intake are printed anywhere
 * @param perServing whether amounts under no heading are per serving
 */
export function attach(lines: readonly AttachableLine[], dailyLabel: boolean, perServing: boolean): Attached {
  return new Attacher(lines, dailyLabel, perServing).attached();
}

/** What holds for all figures of an amount. */
interface Around {
  readonly line: number;
  readonly context: Context;
  readonly unclear: string | undefined;
  readonly ingredient: boolean;
  readonly trailing: PrintedQuantity | undefined;
}

class Attacher {
  private readonly drafts: Draft[] = [];
  private readonly quantities: Quantity[] = [];
  private readonly servings: number[] = [];
  private readonly missed: Missed[] = [];
  private readonly split = new Set<Heading>();
  private readonly left = new Map<number, Set<Left>>();
  private readonly lines: readonly AttachableLine[];
  private readonly dailyLabel: boolean;
  private readonly perServing: boolean;

  constructor(lines: readonly AttachableLine[], dailyLabel: boolean, perServing: boolean) {
    this.perServing = perServing;
    this.lines = lines;
    this.dailyLabel = dailyLabel;
  }

  attached(): Attached {
    const contexts = contextsOf(this.lines);
    for (const [line, { parts }] of this.lines.entries())
      for (const [k, part] of parts.entries()) this.noteSplit(part, contexts[line]?.[k]);
    const lists = new Lists(this.lines, contexts);
    for (const [line, { parts }] of this.lines.entries()) {
      const tainted = parts.find((p) => p.kind === 'missed' && p.taints);
      const trailing = trailingOf(parts, (contexts[line]?.[0]?.heading.columns.length ?? 0) > 0);
      for (const [k, part] of parts.entries()) {
        const context = contexts[line]?.[k];
        if (part.kind === 'missed') this.missed.push({ line, text: part.text, why: part.why });
        else if (part.kind === 'serving size') this.takeSize(part.quantity);
        else if (part.kind === 'heading') this.takeHeading(part);
        if (part.kind !== 'amount' || !context) continue;
        const unclear = [
          context.unclear,
          tainted?.kind === 'missed' ? tainted.text : undefined,
          trailing.unclear(part),
        ].filter((words) => words !== undefined);
        const list = lists.standing(part, line, context);
        if (list === 'share') {
          const why = words().label.reading.why.listShare;
          this.missed.push({ line, text: part.heard, why });
        } else
          this.attachAmount(part, {
            line,
            context,
            unclear: unclear.length > 0 ? unclear.join('; ') : undefined,
            ingredient: list === 'perhaps',
            trailing: trailing.quantity(part),
          });
      }
    }
    const { drafts, quantities, servings, missed, left } = this;
    return { drafts, quantities, servings, missed, left };
  }

  /** A row with more figures than weights has one for the basis, which then heads a column of its own. */
  private noteSplit(part: Part, context: Context | undefined): void {
    if (part.kind !== 'amount' || context?.heading.based === undefined) return;
    if (cellsOf(part) > weightsOf(context.heading.columns).length) this.split.add(context.heading);
  }

  private takeSize(quantity: PrintedQuantity): void {
    this.quantities.push(resolved(quantity, undefined));
    if (quantity.kind === 'grams' && quantity.grams !== undefined) this.servings.push(quantity.grams);
  }

  private takeHeading(part: Part & { readonly kind: 'heading' }): void {
    for (const atom of part.atoms) {
      if (atom.kind === 'share' || atom.kind === 'bound') continue;
      this.quantities.push(resolved(atom, undefined));
      if (atom.maySize && atom.grams !== undefined) this.servings.push(atom.grams);
    }
  }

  private leave(line: number, what: Left): void {
    const had = this.left.get(line);
    if (had) had.add(what);
    else this.left.set(line, new Set([what]));
  }

  private attachAmount(part: Amount, whole: Around): void {
    const { line, context } = whole;
    const { columns, shares, based } = context.heading;
    const weights = weightsOf(columns);
    const around = this.split.has(context.heading) ? { ...whole, unclear: based } : whole;
    const energyPer = part.figures.find((f) => f.per && isEnergy(f))?.per;
    const weighed = part.figures.some((f) => f.unit !== '%' && !f.share);
    const inColumns: Figure[] = [];
    for (const figure of part.figures) {
      const share = figure.unit === '%' && weighed && (this.dailyLabel || shares.length > 0);
      if (figure.share || share) this.leave(line, figure.share === 'energy' ? 'energy' : 'daily');
      else if (figure.per) {
        // "12 g (per serving 13 g)" under "per 100 g": another figure or the weight of a serving.
        const odd =
          (isOddWeight(figure.per) && weights.some((c) => c.quantity?.grams !== figure.per?.grams)) ||
          (!figure.per.basis && !figure.basis && new Set(columns.map((c) => c.basis)).size > 1);
        const doubt = odd ? { ...around, unclear: figure.per.text } : around;
        this.put(part, figure, alone(figure.per, context), doubt);
      }
      // "1580 kJ / 377 kcal/100 g" is one energy.
      else if (energyPer && isEnergy(figure)) this.put(part, figure, alone(energyPer, context), around);
      else inColumns.push(figure);
    }
    const groups = new Set(inColumns.map(dimension));
    for (const unit of groups) {
      const alike = joined(inColumns.filter((f) => dimension(f) === unit));
      const own = ownQuantity(alike[0]?.[0]?.unit ?? 'g');
      if (own === undefined) this.attachWeighed(part, alike, weights, around);
      else this.attachShares(part, alike, columns, weights, weighed, around);
    }
  }

  /** Figures in g, mg, kJ ...: one for each column, or one that the only column holds for. */
  private attachWeighed(
    part: Amount,
    cells: readonly Figure[][],
    weights: readonly Column[],
    around: Around,
  ): void {
    const { context, line } = around;
    const bounds = context.heading.columns.filter((c) => !c.quantity && c.bound);
    const columns = weights.length > 0 ? weights : bounds.length > 1 ? bounds : [];
    const heads = context.heading.printed;
    const printed = weights.length > 0 ? weightsOf(heads) : bounds.length > 1 ? heads : [];
    // Where a column repeats, a row must fill every one: with a cell left blank nobody can say which.
    const fitting = printed.length > 1 && printed.length === cells.length ? printed : undefined;
    if (fitting) this.zip(part, cells, fitting, around);
    else if (cells.length === 1) {
      for (const figure of cells.flat()) {
        const [only, ...others] = columns;
        if (others.length > 0) this.choose(part, figure, columns, around);
        else if (only) this.put(part, figure, attachment(only), around);
        else if (around.trailing) this.put(part, figure, alone(around.trailing, context), around);
        else this.put(part, figure, alone(this.perServing ? SERVING : undefined, context), around);
      }
    } else {
      const t = words().label.reading.why;
      const why =
        columns.length === 0 ? t.noLineSays(cells.length) : t.someColumns(cells.length, columns.length);
      this.missed.push({ line, text: part.heard, why });
    }
  }

  /** Figures in %, per mille, ppm: their own quantity, under whatever basis and bound the columns give. */
  private attachShares(
    part: Amount,
    cells: readonly Figure[][],
    columns: readonly Column[],
    weights: readonly Column[],
    weighed: boolean,
    around: Around,
  ): void {
    const { context, line } = around;
    const kinds = new Set(columns.map((c) => `${c.basis} ${c.bound}`));
    const grams = weights.map((c) => c.quantity?.grams);
    const otherThan = grams.some((g) => g !== 100 && g !== 1000);
    const percentUnclear = this.dailyLabel || otherThan || context.heading.shares.length > 0 || weighed;
    if (kinds.size > 1 && cells.length !== columns.length) {
      if (cells.length === 1)
        for (const f of cells.flat()) this.choose(part, f, columns, around, percentUnclear);
      else {
        const why = words().label.reading.why.figuresForColumns(cells.length, columns.length);
        this.missed.push({ line, text: part.heard, why });
      }
      return;
    }
    for (const [k, cell] of cells.entries())
      for (const figure of cell) {
        const column = kinds.size > 1 ? columns[k] : columns[0];
        const unclear = figure.unit === '%' && percentUnclear;
        this.put(part, figure, attachment(column), around, unclear);
      }
  }

  private zip(part: Amount, cells: readonly Figure[][], columns: readonly Column[], around: Around): void {
    for (const [k, column] of columns.entries())
      for (const figure of cells[k] ?? []) this.put(part, figure, attachment(column), around);
  }

  /** One figure under several columns: which it is must be asked. */
  private choose(
    part: Amount,
    figure: Figure,
    columns: readonly Column[],
    around: Around,
    percentUnclear = false,
  ): void {
    const { name, heard } = part;
    // Moisture is of the food as sold, whichever of the bases stands beside it.
    const asSold = columns.find((c) => c.basis === undefined || c.basis === 'as fed');
    if (
      name.tags[0] === 'WATER' &&
      asSold &&
      columns.every((c) => c.quantity?.kind === 'percent' && !c.bound)
    ) {
      this.put(part, figure, attachment(asSold), around, percentUnclear);
      return;
    }
    const list = columns.map((c) => withFigure(attachment(c), figure));
    this.drafts.push({
      line: figure.line ?? around.line,
      name,
      heard,
      figure: this.bounded(figure, part, around),
      per: NO_QUANTITY,
      columns: list,
      ...(figure.unit === '%' && percentUnclear && { percentUnclear }),
      ...(around.unclear !== undefined && { unclear: around.unclear }),
      ...(around.ingredient && { ingredient: true }),
    });
  }

  private put(part: Amount, figure: Figure, to: Attachment, around: Around, percentUnclear = false): void {
    const { line, context } = around;
    const { per, bound, prepared } = withFigure(to, figure);
    const bases = new Set(context.heading.columns.map((c) => c.basis));
    if (prepared !== undefined && bases.size > 1) {
      this.leave(line, 'prepared');
      return;
    }
    const unclear = [prepared, around.unclear].filter((words) => words !== undefined).join('; ');
    const own = this.bounded(figure, part, around, bound);
    this.drafts.push({
      line: figure.line ?? line,
      name: part.name,
      heard: part.heard,
      figure: own,
      per,
      ...(percentUnclear && { percentUnclear }),
      ...(unclear !== '' && { unclear }),
      ...(around.ingredient && { ingredient: true }),
    });
  }

  /** A value that heading or section make a bound; a bound of its own stays. */
  private bounded(figure: Figure, { heard, name }: Amount, around: Around, column?: Bound): Figure {
    const { section, sectionLine, bound } = around.context;
    // Additives are what is put in; the food holds at least that much. Percentages on later lines are the analysis.
    const added =
      section === 'additives' &&
      (figure.unit !== '%' || sectionLine === around.line) &&
      !isAnalytical(name, heard);
    const side = column ?? bound ?? (added ? 'low' : undefined);
    return side === undefined ? figure : asBound(figure, side);
  }
}
