/** The commands: what they print, what they return, and how they complain. */
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { run } from './main.ts';

let out = '';
let err = '';

beforeEach(() => {
  out = '';
  err = '';
  vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    out += String(text);
    return true;
  });
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    err += String(text);
    return true;
  });
  vi.spyOn(console, 'error').mockImplementation((text) => {
    err += `${text}\n`;
  });
});
afterEach(() => vi.restoreAllMocks());

it('teaches with examples and cautions', async () => {
  expect(await run(['--help'])).toBe(0);
  expect(out).toContain('npx pouchful demo | npx pouchful formulate -');
  expect(out).toContain('not veterinary advice');
  expect(out).toContain('never replaces a complete food');
});

it('says what the tables do not have, and what comes nearest', async () => {
  expect(await run(['foods', 'search', 'wheat', 'flakes'])).toBe(0);
  expect(out).toMatch(/^The tables have no wheat flakes\. The nearest is Wheat, soft\./);
});

it('finds foods by words', async () => {
  expect(await run(['foods', 'search', 'sunflower', 'seed', '--json', '--limit', '5'])).toBe(0);
  const found = JSON.parse(out) as { ref: string }[];
  expect(found.length).toBeLessThanOrEqual(5);
  expect(found.map((f) => f.ref)).toContain('sr28:12036');
});

it('shows a food in any quantity, and names what is unknown', async () => {
  expect(await run(['foods', 'show', 'sr28:11683', '--per', '250'])).toBe(0);
  // SR28 11683: protein 8.1 in 100 g.
  expect(out).toMatch(/In 250 g as fed:/);
  expect(out).toMatch(/Protein +20\.25 {2}g +PROCNT/);
  expect(out).toMatch(/Unknown \(not zero\): .*crude fibre/);
  expect(out).toContain('Source: USDA SR28');
  expect(out).toMatch(
    /Crude protein, nitrogen x 6\.25, as rules count it: [\d.]+ (?:g; the table prints|to [\d.]+ g; the)/,
  );
});

it('lists and shows target profiles with their sources', async () => {
  expect(await run(['targets', 'list'])).toBe(0);
  expect(out).toContain('hamster-adult');
  expect(await run(['targets', 'show', 'hamster-adult'])).toBe(0);
  expect(out).toMatch(/Crude protein +17 to 19 +g per 100 g as fed +common practice, no source/);
});

it('prints the demo problem as JSON', async () => {
  expect(await run(['demo'])).toBe(0);
  expect(JSON.parse(out).foods).toHaveLength(20);
});

it.each([
  [['foods', 'show', 'sr28:0'], 'no food "sr28:0"'],
  [['foods', 'show', 'sr28:11683', '--per', '-3'], 'Give grams'],
  [['foods', 'search', 'oats', '--limit', 'many'], 'whole number'],
  [['targets', 'show', 'lion'], 'the profiles are: hamster-adult'],
  [['formulate'], "missing required argument 'file'"],
  [['fromulate', 'x'], 'unknown command'],
  [['start', '--port', '99999'], '--port is "99999"'],
])('complains in one line and returns 2: %j', async (args, words) => {
  expect(await run(args)).toBe(2);
  expect(err).toContain(words);
  expect(err.trim().split('\n')).toHaveLength(1);
  expect(out).toBe('');
});
