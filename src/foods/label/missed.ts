/**
 * What becomes of a part that was not understood: it is told as missed where it holds a figure; where it may change what
 * other figures mean it taints its line; and where it may head the lines after it, it is a heading that leaves open
 * what they are per or of.
 */
import type { Item } from './match.ts';
import type { Atom, Part } from './part.ts';
import { isEnergyUnit, isGram, isPercent, isRole } from './per.ts';
import { isShared, reasons } from './reasons.ts';
import { mayChangeMeaning } from './suspect.ts';

interface Missed {
  /** The items given up. */
  readonly inner: readonly Item[];
  readonly text: string;
  readonly why: string;
  /** An unknown word follows a figure's "per". */
  readonly tainted: boolean;
  /** Unknown words stand in it before any name. */
  readonly strange: boolean;
  /** A nutrient is named anywhere in the line. */
  readonly named: boolean;
  /** It stands right after a heading, with nothing between. */
  readonly afterHeading: boolean;
}

export function missedParts({ inner, text, why, tainted, strange, named, afterHeading }: Missed): Part[] {
  const numbered = inner.some((i) => i.kind === 'number' || i.kind === 'odd');
  if (why === reasons().advice) return numbered ? [{ kind: 'missed', text, why }] : [];
  const weighs = isHeadingByWeight(inner);
  const energy = isEnergyHeading(inner);
  const taints =
    weighs ||
    tainted ||
    hasLooseEnergy(inner) ||
    isShared(why) ||
    inner.some(mayChangeMeaning) ||
    (strange && energy);
  // "per 100 g" and then a name and words with no figure: what the name is part of was not understood.
  const goesOn = !numbered && inner.length > 0 && (afterHeading || inner.some((i) => BASIS.has(i.text)));
  const heads = weighs || goesOn || (taints && (!named || !numbered));
  const parts: Part[] = [];
  if (heads) {
    const share: Atom[] = energy ? [{ kind: 'share', of: 'energy', text }] : [];
    const atoms: Atom[] = weighs ? [{ kind: 'each', text }] : share;
    parts.push({
      kind: 'heading',
      atoms,
      words: [text],
      text,
      ...((numbered || goesOn) && { leads: true }),
    });
  }
  if (numbered || why === reasons().traces || taints || goesOn)
    parts.push({
      kind: 'missed',
      text,
      why,
      ...(heads && { heads }),
      ...(taints && { taints }),
      ...(isShareOfStrange(inner) && { strangeShare: true }),
    });
  return parts;
}

/** Words that name a basis, whatever stands before them. */
const BASIS = new Set(['basis', 'base', 'Basis']);
/** Amounts that labels are per. */
const ROUND = new Set(['100', '1000']);
const isWeightOrEnergy = (item: Item | undefined) => isGram(item) || isEnergyUnit(item);

/** "pur 100 g", "per portin (25 g)": a heading by its weight, with a slip in it. */
function isHeadingByWeight(items: readonly Item[]): boolean {
  const per = isRole(items[0], 'per');
  const named = items.some((i) => i.kind === 'name');
  return items.some(
    (i, k) =>
      (i.kind === 'number' || i.kind === 'odd') &&
      ((per && k <= 2) || (ROUND.has(i.text) && isWeightOrEnergy(items[k + 1]) && !named)),
  );
}

/** "17 % % kcal": a unit of energy that belongs to no figure. */
function hasLooseEnergy(items: readonly Item[]): boolean {
  return items.some((i, k) => isEnergyUnit(i) && isPercent(items[k - 1]));
}

/** A percentage beside a word that is not known: "oats 30 %", "30 % oats". */
function isShareOfStrange(items: readonly Item[]): boolean {
  return items.some((i) => i.kind === 'word') && items.some(isPercent);
}

/** "Energy from protein": energy named without an energy, so that what follows may be shares of it. */
function isEnergyHeading(items: readonly Item[]): boolean {
  return items.some((i) => i.kind === 'name' && i.name.tags[0] === 'ENERC_KCAL') && !items.some(isEnergyUnit);
}
