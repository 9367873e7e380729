/** Where a household lies when nobody says otherwise: in the user's own folder for data, never in the program's. */
import { join, posix, win32 } from 'node:path';

const FILE_NAME = 'household.sqlite';

export interface Surroundings {
  readonly platform: NodeJS.Platform;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** The user's home folder. */
  readonly home: string;
}

/**
 * The household's file by default.
 * Linux and others: XDG Base Directory Specification 0.8 (`$XDG_DATA_HOME`, else `~/.local/share`; a relative path is
 * not to be used). macOS: `~/Library/Application Support`. Windows: `%APPDATA%`.
 */
export function defaultFile({ platform, env, home }: Surroundings): string {
  if (platform === 'darwin') {
    return posix.join(home, 'Library', 'Application Support', 'Pouchful', FILE_NAME);
  }
  if (platform === 'win32') {
    return win32.join(env.APPDATA || win32.join(home, 'AppData', 'Roaming'), 'Pouchful', FILE_NAME);
  }
  const xdg = env.XDG_DATA_HOME;
  const data = xdg && posix.isAbsolute(xdg) ? xdg : posix.join(home, '.local', 'share');
  return posix.join(data, 'pouchful', FILE_NAME);
}

/** Where the household lay in the program's own folder, in earlier versions. @param program the program's folder */
export const oldFile = (program: string) => join(program, 'data', FILE_NAME);
