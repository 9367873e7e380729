/** Which build of the browser client is served: its page says it, so that an open page finds out when it is another one. */
import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Reads the name of the build from the page.
 * @param webDir folder of the built browser client
 * @returns the name as it is now (a build made while the server runs counts); empty where there is none
 */
export function buildIdOf(webDir: string): () => string {
  const page = join(webDir, 'index.html');
  let known: { readonly at: number; readonly id: string } | undefined;
  return () => {
    try {
      const at = statSync(page).mtimeMs;
      if (known?.at !== at) {
        const [, id = ''] =
          /<meta name="pouchful-build" content="([^"]*)"/.exec(readFileSync(page, 'utf8')) ?? [];
        known = { at, id };
      }
      return known.id;
    } catch {
      return '';
    }
  };
}
