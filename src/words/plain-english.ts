/** Plain English where no language was chosen: for the command line, the terminal, and tests. Imported for what it does. */
import { english } from './en/index.ts';
import { PLAIN_MANNER } from './manner.ts';
import { otherwiseSpeak, type Words } from './words.ts';

let plain: Words | undefined;

otherwiseSpeak(() => {
  plain ??= english(PLAIN_MANNER);
  return plain;
});
