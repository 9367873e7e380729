import { describe, expect, it } from 'vitest';
import type { Composition, Figures } from '../food.ts';
import { figuresOf } from './figures.ts';
import { readLabel } from './read.ts';
import { BY_CAUSE, SNIPPETS } from './snippets/all.ts';

/** "PROCNT=17 FAT>=4" as a sorted list, figures to 12 digits. */
function told({ composition, low = {}, high = {} }: Figures): string[] {
  const list = (sign: string, of: Composition) =>
    Object.entries(of).map(([tag, value]) => `${tag}${sign}${Number(value.toPrecision(12))}`);
  return [...list('=', composition), ...list('>=', low), ...list('<=', high)].sort();
}

describe('labels in five languages', () => {
  it('has at least ten of each language', () => {
    for (const language of ['en', 'de', 'fr', 'nl', 'es'])
      expect(SNIPPETS.filter((s) => s.language === language).length).toBeGreaterThanOrEqual(10);
    expect(SNIPPETS.length).toBeGreaterThanOrEqual(190);
  });

  it('has at least six in all five languages for each way of being wrong in silence', () => {
    for (const [cause, list] of Object.entries(BY_CAUSE)) {
      expect(list.length, cause).toBeGreaterThanOrEqual(6);
      expect([...new Set(list.flatMap((s) => s.language ?? []))].sort(), cause).toEqual([
        'de',
        'en',
        'es',
        'fr',
        'nl',
      ]);
    }
  });

  for (const snippet of SNIPPETS)
    it(`${snippet.language}: ${snippet.name}`, () => {
      const reading = readLabel(snippet.text, snippet.answers);
      const lines = reading.lines;
      const where = (has: (line: (typeof lines)[number]) => boolean) =>
        lines.flatMap((line, i) => (has(line) ? [i] : []));
      expect({
        figures: told(figuresOf(reading).figures),
        questions: reading.questions.map((q) => q.id),
        unread: where((l) => l.kind === 'unread'),
        missed: where((l) => l.kind !== 'unread' && l.missed.length > 0),
        language: reading.language,
      }).toEqual({
        figures: snippet.figures.split(' ').filter(Boolean).sort(),
        questions: snippet.questions ?? [],
        unread: snippet.unread ?? [],
        missed: snippet.missed ?? [],
        language: snippet.language,
      });
    });
});
