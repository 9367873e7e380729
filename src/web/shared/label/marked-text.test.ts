import fc from 'fast-check';
import { expect, test } from 'vitest';
import { markedText } from './marked-text.ts';

test('found words are marked, overlapping ones too, and each mark says where it ends', () => {
  expect(
    markedText('oats, sugar beet', [
      { start: 6, end: 11 },
      { start: 6, end: 16 },
    ]),
  ).toEqual([
    { text: 'oats, ', marked: false, ends: [] },
    { text: 'sugar', marked: true, ends: [0] },
    { text: ' beet', marked: true, ends: [1] },
  ]);
});

test('nothing of the text is lost or doubled, and every mark that lies in it ends once', () => {
  const span = fc
    .tuple(fc.nat(30), fc.nat(30))
    .map(([a, b]) => ({ start: Math.min(a, b), end: Math.max(a, b) }));
  fc.assert(
    fc.property(fc.string({ maxLength: 25 }), fc.array(span, { maxLength: 6 }), (text, spans) => {
      const pieces = markedText(text, spans);
      expect(pieces.map((p) => p.text).join('')).toBe(text);
      const inside = spans.flatMap((s, i) => (s.start < s.end && s.end <= text.length ? [i] : []));
      expect(pieces.flatMap((p) => p.ends).sort()).toEqual(inside.sort());
    }),
  );
});
