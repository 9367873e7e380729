/** A phrase is found the first time a finder is asked, whatever was asked before: nothing is filed where it is missed. */
import { expect, it } from 'vitest';
import { ADDITIVES } from '../ingredients/additive.ts';
import { CAUTIONS, LANGUAGES } from './caution.ts';
import { OTHER_THINGS } from './names.ts';
import { type Phrase, phraseFinder } from './phrases.ts';
import { tokensOf } from './words.ts';

const listed: readonly Phrase<string>[] = LANGUAGES.flatMap((language) =>
  [
    ...CAUTIONS.flatMap((caution) => caution.words[language]),
    ...ADDITIVES.flatMap((additive) => additive.words[language]),
    ...(OTHER_THINGS[language] ?? []),
  ].map((text) => ({ text, language, value: text })),
);

it('finds each listed phrase in its own text when it is the first that is asked', () => {
  const missed = listed.filter((phrase) => {
    const printed = phrase.text.replace(/[*=]/g, '');
    return phraseFinder([phrase])(tokensOf(printed)).length === 0;
  });
  expect(missed.map(({ text, language }) => `${language}: ${text}`)).toEqual([]);
  expect(listed.length).toBeGreaterThan(3000);
});

it('finds the same whether it is asked first or later', () => {
  const some = listed.filter((_, i) => i % 25 === 0).map(({ text }) => text.replace(/[*=]/g, ''));
  // With a slip, too, and beside other words.
  const texts = some.flatMap((text) => [text, text.replace(/(?<=\w{3})\w/, ''), `dried ${text}, oats`]);
  const later = phraseFinder(listed);
  for (const text of texts) later(tokensOf(text));
  for (const text of texts) {
    const first = phraseFinder(listed)(tokensOf(text));
    expect(first, text).toEqual(later(tokensOf(text)));
  }
});
