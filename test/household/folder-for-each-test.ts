import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach } from 'vitest';

/**
 * A new empty folder before each test of the file, deleted after it. Call it before the file's own `afterEach`: what
 * that closes is then closed before the folder goes. @returns where the folder is
 */
export function folderForEachTest(): () => string {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'pouchful-'));
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));
  return () => folder;
}
