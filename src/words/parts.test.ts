/** The texts come in parts: those that are here are said, and who asks for another waits for its part alone. */
import { expect, it } from 'vitest';
import { wordsIn } from './languages.ts';
import { LANGUAGES, PLAIN_MANNER } from './manner.ts';
import { PART_OF, type Part } from './part-shapes.ts';
import { PARTS, wordsInParts } from './parts.ts';

/** What is thrown; fails where nothing is. */
function thrown(work: () => unknown): unknown {
  try {
    work();
  } catch (error) {
    return error;
  }
  return expect.fail('nothing was thrown');
}

it('gives a text once its part is here', async () => {
  const texts = wordsInParts({ ...PLAIN_MANNER, language: 'de' });
  const comes = thrown(() => texts.words.mix);
  expect(comes).toBeInstanceOf(Promise);
  await comes;
  expect(texts.words.mix).toBeDefined();
  expect(thrown(() => texts.words.keeping)).toBeInstanceOf(Promise);
});

it('is no promise itself, so that it may be awaited', async () => {
  const texts = wordsInParts(PLAIN_MANNER);
  await texts.fetch('first');
  expect((await Promise.resolve(texts.words)).common).toBe(texts.words.common);
});

it.each(LANGUAGES)('says in parts what it says whole: %s', async (language) => {
  const manner = { ...PLAIN_MANNER, language };
  const texts = wordsInParts(manner);
  await Promise.all(PARTS.map(texts.fetch));
  const whole = await wordsIn(manner);
  const rooms = Object.keys(PART_OF) as (keyof typeof PART_OF)[];
  expect(Object.keys(texts.words).sort()).toEqual(['figures', ...rooms].sort());
  for (const room of rooms) expect(Object.keys(texts.words[room]), room).toEqual(Object.keys(whole[room]));
});

it('finds each room in the part that is named for it', async () => {
  for (const [room, part] of Object.entries(PART_OF)) {
    const texts = wordsInParts(PLAIN_MANNER);
    await texts.fetch(part as Part);
    expect(texts.words[room as keyof typeof PART_OF], room).toBeDefined();
  }
});

it('tells whoever cares which part is not here, and throws what they throw', () => {
  const texts = wordsInParts(PLAIN_MANNER, (part) => {
    throw new Error(`no ${part}`);
  });
  expect(thrown(() => texts.words.mix)).toEqual(new Error('no mixes'));
});
