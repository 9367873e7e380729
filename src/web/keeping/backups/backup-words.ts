/** Why a backup was made and how large it is, in words. */

/** @param why as the server says it */
export function whyWords(why: string): string {
  if (why === 'auto') return 'made by itself';
  if (why === 'pressed') return 'asked for';
  if (why === 'before-going-back') return 'before an older state was put back';
  if (why.startsWith('before-upgrade')) return 'before a newer Pouchful changed the file';
  return why;
}

/** "340 kB", "2.4 MB". @param bytes of a file */
export function sizeWords(bytes: number): string {
  return bytes < 1e6 ? `${Math.max(1, Math.round(bytes / 1000))} kB` : `${(bytes / 1e6).toFixed(1)} MB`;
}
