/** Each who asks is answered in the language that they ask for (RFC 9110, 12.5.4); plain English where they ask for none. */
import { AsyncLocalStorage } from 'node:async_hooks';
import type { MiddlewareHandler } from 'hono';
import { wordsIn } from '../words/languages.ts';
import { type Language, languageOf, PLAIN_MANNER } from '../words/manner.ts';
import { speak, type Words } from '../words/words.ts';
import '../words/plain-english.ts';

const spoken = new AsyncLocalStorage<Words>();
const texts = new Map<Language, Promise<Words>>();

/** Before anything that may refuse. */
export function inTheirLanguage(): MiddlewareHandler {
  speak(() => spoken.getStore());
  return async (c, next) => {
    const language = languageOf(wished(c.req.header('accept-language') ?? ''));
    let said = texts.get(language);
    if (!said) {
      said = wordsIn({ ...PLAIN_MANNER, language });
      texts.set(language, said);
    }
    await spoken.run(await said, next);
  };
}

/** "de-CH, en;q=0.5" as tags of languages, the one liked best first. */
function wished(header: string): string[] {
  return header
    .split(',')
    .map((part) => {
      const [tag = '', ...parameters] = part.trim().split(/\s*;\s*/);
      const weight = Number(parameters.find((p) => /^q=/i.test(p))?.slice(2) ?? 1);
      return { tag, weight };
    })
    .filter(({ tag, weight }) => tag !== '' && weight > 0)
    .sort((a, b) => b.weight - a.weight)
    .map(({ tag }) => tag);
}
