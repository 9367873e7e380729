/** A swap in words, its figures rounded so that they still keep every rule. */

import type { Tag } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import { words as nutrientWords } from '../solve/bounds.ts';

interface SwapWords {
  /** Name of the food that goes, and its share, percent. */
  readonly out: string;
  readonly taken: number;
  /** Name of the food that comes, and its share before, where it is in the mix already. */
  readonly name: string;
  readonly had: number | undefined;
  /** What it takes, percent, and the span of it. */
  readonly share: number;
  readonly low: number;
  readonly high: number;
  /** Ruled nutrients of it that nobody knows. */
  readonly unsure: readonly Tag[];
}

/** "Oats 10 % can be replaced by millet, 9.5 % (8 to 11 %)." */
export function swapSentence({ out, taken, name, had, share, low, high, unsure }: SwapWords): string {
  const said = shareFigures(share, low, high);
  const t = words().advice.swap;
  const span =
    said.low === said.high ? t.only : said.low === 0 ? t.upTo(said.high) : t.from(said.low, said.high);
  const sentence =
    had === undefined
      ? t.by(out, taken, name, said.share, span)
      : t.byMore(out, taken, name, said.share, had, span);
  return unsure.length > 0 ? t.unsure(sentence, unsure.map(nutrientWords)) : sentence;
}

/** Rounded to what people read, with as many decimals as it takes for the rounded share to lie in the span. */
function shareFigures(share: number, low: number, high: number) {
  for (let decimals = 1; decimals <= 4; decimals++) {
    const unit = 10 ** decimals;
    const up = Math.ceil(low * unit - 1e-6) / unit;
    const down = Math.floor(high * unit + 1e-6) / unit;
    if (up > down) continue;
    return { share: Math.min(down, Math.max(up, Math.round(share * unit) / unit)), low: up, high: down };
  }
  const rounded = Number(share.toFixed(4));
  return { share: rounded, low: rounded, high: rounded };
}
