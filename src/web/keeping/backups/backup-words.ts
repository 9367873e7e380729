/** Why a backup was made and how large it is, in words. */
import { words } from '../../../words/words.ts';

/** @param why as the server says it */
export function whyWords(why: string): string {
  const known = words().keeping.backups.why;
  const plain = why.startsWith('before-upgrade') ? 'before-upgrade' : why;
  return Object.hasOwn(known, plain) ? known[plain as keyof typeof known] : why;
}

/** "340 kB", "2.4 MB". @param bytes of a file */
export function sizeWords(bytes: number): string {
  const t = words().keeping.backups;
  return bytes < 1e6 ? t.kilobytes(Math.max(1, Math.round(bytes / 1000))) : t.megabytes(bytes / 1e6);
}
