import { defineConfig } from 'vitest/config';
import { PATIENCE_MS } from './test/browser/patience.ts';
import { LONG } from './test/draws.ts';
import { LongestFirst } from './test/longest-first.ts';

const MINUTE = 60_000;

export default defineConfig({
  test: {
    include: ['src/**/*.test.ts', 'src/**/*.test.tsx', 'test/**/*.test.ts'],
    setupFiles: ['src/words/plain-english.ts', 'test/same-draws.ts'],
    // Limits only end what hangs: none is nearer than five times what a test needs on two quiet cores.
    testTimeout: LONG ? 120 * MINUTE : 10 * MINUTE,
    hookTimeout: 5 * MINUTE,
    expect: { poll: { timeout: PATIENCE_MS } },
    // Browser tests keep a server, a browser and the test itself busy: more workers than cores only make all wait.
    maxWorkers: 2,
    sequence: { sequencer: LongestFirst },
  },
});
