/** Files and folders as they lie on disk, for tests of what is written and what is not. */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** Every file below a folder with the hash of its bytes and the moment of its last change. */
export function stateOf(folder: string): Record<string, string> {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort();
  return Object.fromEntries(
    names.map((name) => {
      const path = join(folder, name);
      const stats = statSync(path);
      const bytes = stats.isFile() ? createHash('sha256').update(readFileSync(path)).digest('hex') : 'folder';
      return [name, `${stats.mtimeMs} ${bytes}`];
    }),
  );
}
