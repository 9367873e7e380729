/** Which household is served. */
import { homedir } from 'node:os';
import { resolve } from 'node:path';
import { defaultFile, oldFile } from '../household/file/data-folder.ts';
import { moveOldFile } from '../household/file/move-old-file.ts';

/**
 * The file that was named, else the one in the user's folder for data; one that lies in the program's folder, where it
 * used to be, is brought there first.
 * @param given what `--data` says
 * @param program the program's folder
 * @param tell takes lines for the terminal
 */
export async function householdPath(
  given: string | undefined,
  program: string,
  tell: (line: string) => void,
): Promise<string> {
  const named = given ?? process.env.POUCHFUL_DATA;
  if (named) return resolve(named);
  const path = defaultFile({ platform: process.platform, env: process.env, home: homedir() });
  const told = await moveOldFile(oldFile(program), path);
  if (told) tell(told);
  return path;
}
