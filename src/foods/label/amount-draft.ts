/** An amount as it is read: its name, what stands before its next figure, and the figures it has. */
import type { Ahead, Figure } from './figure.ts';
import type { Item, Name } from './match.ts';
import type { FoundQuantity } from './per.ts';
import type { Basis, Bound, PrintedQuantity } from './quantity.ts';
import type { PrintedUnit } from './reading.ts';
import { reasons, shared } from './reasons.ts';

export class AmountDraft {
  name: Name;
  heard: string;
  readonly figures: Figure[] = [];
  /** A comma stands between the name and its figure. */
  parted = false;
  hint: PrintedUnit | undefined;
  per: PrintedQuantity | undefined;
  basis: Basis | undefined;
  shareNext: 'daily' | undefined;
  between = false;

  constructor({ name, text }: Item & { kind: 'name' }) {
    this.name = name;
    this.heard = text;
  }

  get last(): Figure | undefined {
    return this.figures.at(-1);
  }

  /** "Energy %" with no figure: what follows are shares of the energy. */
  get isEnergyShare(): boolean {
    return this.hint === '%' && this.figures.length === 0 && this.name.tags[0] === 'ENERC_KCAL';
  }

  /** A second name before the figure, as "fibre (crude fibre)"; a reason where the two are not one. */
  takeName({ name, text }: Item & { kind: 'name' }): string | undefined {
    const both = this.name.tags.filter((tag) => name.tags.includes(tag));
    if (both.length === 0) return shared(this.heard.slice(0, 60), text);
    if (both.length < this.name.tags.length) this.name = name;
    this.heard += ` ${text}`;
    return undefined;
  }

  /** A quantity or basis behind the last figure, or before the next one. */
  takeQuantity({ quantity, basisOnly }: FoundQuantity): string | undefined {
    const owner = this.figures.findLast((figure) => !figure.share) ?? this;
    if (basisOnly) {
      if (owner.basis && owner.basis !== quantity.basis) return reasons().twoBases;
      owner.basis = quantity.basis;
    } else if (owner.per) return reasons().twoQuantities;
    else owner.per = quantity;
    return undefined;
  }

  ahead(bound: Bound | undefined, strict: boolean, about: boolean): Ahead {
    const { hint, between, per, shareNext: share } = this;
    return {
      hint: hint ?? (this.name.mark === 'calories' ? 'kcal' : undefined),
      printedHint: hint !== undefined,
      bound,
      strict,
      about,
      between,
      per,
      share,
    };
  }

  takeFigure(figure: Figure): void {
    if (this.basis) figure.basis = this.basis;
    this.basis = this.per = this.shareNext = undefined;
    this.between = this.parted = false;
    this.figures.push(figure);
  }

  /** A bound behind the last figure. */
  boundLast(side: Bound): string | undefined {
    const { last } = this;
    if (!last || (last.low && last.high)) return undefined;
    if (!last.value) return reasons().twoBoundsBeside;
    last[side] = last.value;
    last.value = undefined;
    return undefined;
  }
}
