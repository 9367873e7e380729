import { describe, expect, it } from 'vitest';
import { waysToDry } from '../../../kitchen/drying/drying-practice.ts';
import { presetCelsius, presetWay } from './dryer-presets.ts';

describe('how the dryer is set', () => {
  it('takes the way that the dryer is set to, the published one for herbs, else the first', () => {
    const oven = waysToDry('vegetable', 'oven');
    expect(oven[presetWay(oven, 'vegetable', 58)]!.known).toBe('published');
    expect(oven[presetWay(oven, 'vegetable', 90)]!.known).toBe('common practice');
    expect(oven[presetWay(oven, 'vegetable', undefined)]!.known).toBe('common practice');
    const herbs = waysToDry('herb', 'oven');
    expect(herbs[presetWay(herbs, 'herb', 120)]!.known).toBe('published');
    expect(presetCelsius(oven[1]!, 58)).toBe(58);
    expect(presetCelsius(oven[1]!, 90)).toBe(60);
  });
});
