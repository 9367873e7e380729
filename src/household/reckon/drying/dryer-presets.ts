/** How a dryer is set for a food, where the keeper has not said yet. */
import type { DryingWay, DryKind } from '../../../kitchen/drying/drying-practice.ts';

/** The way that suits what the dryer is usually set to; else, for herbs, the published one; else the first. */
export function presetWay(ways: readonly DryingWay[], kind: DryKind, usual: number | undefined): number {
  const fits = ways.findIndex((w) => usual !== undefined && usual >= w.celsius[0] && usual <= w.celsius[1]);
  if (fits >= 0) return fits;
  const published = ways.findIndex((w) => w.known === 'published');
  return kind === 'herb' && published >= 0 ? published : 0;
}

/** Temperature of a way: the usual one where the way allows it, else its upper end. */
export function presetCelsius(way: DryingWay, usual: number | undefined): number {
  const [low, high] = way.celsius;
  return usual !== undefined && usual >= low && usual <= high ? usual : high;
}
