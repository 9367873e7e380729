/** Contrast of the colours that meet on the screen, by day and by night: WCAG 2.2, success criteria 1.4.3 and 1.4.11. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const css = readFileSync(new URL('./base.css', import.meta.url), 'utf8');
const [day = '', night = ''] = [...css.matchAll(/:root \{([^}]*)\}/g)].map((m) => m[1]);
const tokens = (block: string) =>
  new Map([...block.matchAll(/--([\w-]+): (#[0-9a-f]{3,6});/g)].map((m) => [m[1], m[2]!]));
const THEMES = { day: tokens(day), night: new Map([...tokens(day), ...tokens(night)]) };

/** Relative luminance, WCAG 2.2. */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const c = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [dark = 0, light = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light + 0.05) / (dark + 0.05);
}

const GROUNDS = ['paper', 'sheet', 'sunk', 'moss-wash', 'clay-wash', 'straw-wash'];
const TEXTS = ['ink', 'soft', 'bark', 'moss', 'clay'];
const EDGES = ['edge', 'focus'];

it('counts as the standard does', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
  expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2);
});

describe.each(Object.entries(THEMES))('by %s', (_, theme) => {
  const of = (name: string) => theme.get(name)!;
  it.each(TEXTS.flatMap((text) => GROUNDS.map((ground) => [text, ground])))(
    '%s reads on %s',
    (text, ground) => expect(contrast(of(text!), of(ground!))).toBeGreaterThanOrEqual(4.5),
  );
  it.each(EDGES.flatMap((edge) => ['paper', 'sheet', 'sunk'].map((ground) => [edge, ground])))(
    '%s is seen on %s',
    (edge, ground) => expect(contrast(of(edge!), of(ground!))).toBeGreaterThanOrEqual(3),
  );
  it('what stands on bark reads', () => {
    expect(contrast(of('on-bark'), of('bark'))).toBeGreaterThanOrEqual(4.5);
  });
});
