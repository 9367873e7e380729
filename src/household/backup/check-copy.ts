/** Opens a copy of a household and looks whether it is whole. Writes nothing. */
import { readFileSync } from 'node:fs';
import { openBytes } from '../file/image.ts';
import { stepOf } from '../file/look.ts';
import { type Contents, contentsOf } from './contents.ts';

/**
 * @returns what it holds
 * @throws Error with what is wrong with it
 */
export function checkCopy(path: string): Contents {
  const db = openBytes(readFileSync(path));
  try {
    stepOf(db, path);
    return contentsOf(db);
  } finally {
    db.close();
  }
}
