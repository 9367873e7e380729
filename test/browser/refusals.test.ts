/** Foods that are left or refused, several animals on one mix, and the change-over, in a real browser. */
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Animal } from '../../src/household/model.ts';
import { axeFindings, type Bench, DESKTOP, openBench, overflow, PHONE } from './harness.ts';
import { householdAt, putAt } from './household-at.ts';
import { story } from './story.ts';

const FOODS = 20;

describe.each([
  ['desktop', DESKTOP],
  ['phone', PHONE],
])('on a %s', (_name, size) => {
  let bench: Bench;
  let page: Page;

  story();
  beforeAll(async () => {
    bench = await openBench();
    page = await bench.page(size);
    await page.goto(`${bench.url}/#/mix`);
  });
  afterAll(() => bench?.close());

  const verdictIs = (state: string) => page.waitForSelector(`[data-testid="verdict"][data-state="${state}"]`);
  const tab = (name: string) => page.getByRole('tab', { name }).click();
  const undo = () => page.getByRole('button', { name: 'Undo', exact: true });
  const share = (name: string) => page.getByLabel(`Share of ${name}`, { exact: true });
  /** What every food of the mix stands at. */
  const shares = () =>
    page.$$eval('input', (all) =>
      all.flatMap((i) => {
        const label = i.labels?.[0]?.textContent ?? '';
        return label.startsWith('Share of ') ? [[label.slice(9), Number(i.value)] as const] : [];
      }),
    );
  const total = async () => (await shares()).reduce((sum, [, v]) => sum + v, 0);
  const settled = async (region: Locator) => {
    await expect.poll(() => region.getByText('Working…').count()).toBe(0);
    await expect.poll(() => region.locator('[aria-busy="true"]').count()).toBe(0);
  };
  /** Changes the kept mix behind the page's back, then opens the page again. */
  async function rewrite(changes: {
    fat?: { min: number; max: number };
    only?: string[];
    animalProtein?: boolean;
  }) {
    await page.getByText('Saved', { exact: true }).waitFor();
    const { fat, only, animalProtein } = changes;
    const mix = (await householdAt(bench.url)).mixes[0]!;
    const rules = mix.problem.rules
      .map((r) => (fat && 'nutrient' in r && r.nutrient === 'FAT' ? { ...r, ...fat } : r))
      // The window stays, open from below.
      .map((r) => (animalProtein === false && 'group' in r && r.group === 'animal' ? { ...r, min: 0 } : r));
    const foods = only
      ? mix.problem.foods.filter((f) => only.includes(f.id)).map((f) => ({ ...f, max: 60 }))
      : mix.problem.foods;
    await putAt(bench.url, 'mixes', { ...mix, problem: { ...mix.problem, foods, rules } });
    await page.reload();
  }
  const put = (id: string, name: string, refuses: string[]) =>
    putAt(bench.url, 'animals', {
      id,
      name,
      species: 'golden hamster',
      lifeStage: 'adult',
      profileId: 'hamster-adult',
      refuses,
      dailyGrams: 10,
      invented: true,
    } satisfies Animal);
  async function clean() {
    expect(await overflow(page)).toBe(0);
    expect(await axeFindings(page)).toEqual([]);
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await axeFindings(page)).toEqual([]);
    await page.emulateMedia({ colorScheme: 'light' });
  }

  describe('if a food is left', () => {
    const panel = () => page.getByRole('region', { name: 'If a food is left' });
    const rows = () => panel().locator('.leaving-food');

    test('a mix that is out of range has to be balanced first', async () => {
      await verdictIs('out');
      await tab('If a food is left');
      await panel()
        .getByText(/not in range as it stands/)
        .waitFor();
      expect(await rows().count()).toBe(0);
      await panel().getByRole('button', { name: 'Make the mix fit' }).click();
      await verdictIs('in');
      await rows().first().waitFor();
    });

    test('every food of the mix is said to be one that may be left, or one that may not', async () => {
      await settled(panel());
      const inMix = (await shares()).filter(([, v]) => v > 0.05).length;
      expect(await rows().count()).toBeGreaterThanOrEqual(inMix);
      expect(await rows().count()).toBeLessThanOrEqual(FOODS);
      const safe = await rows().locator('.leaving-mark', { hasText: '✓ may be left' }).count();
      const breaking = await rows()
        .locator('.leaving-mark', { hasText: /^! .+ too (low|high)/ })
        .count();
      expect(safe).toBeGreaterThan(0);
      expect(breaking).toBeGreaterThan(0);
      expect(safe + breaking).toBe(await rows().count());
      await panel()
        .getByText(/goes out of range when some foods are left/)
        .waitFor();
    });

    test('one food is opened at a time and says what goes out', async () => {
      await rows().nth(0).getByRole('button').first().click();
      const name = (await rows().nth(0).locator('.leaving-name').textContent())!.replace(/ [\d.]+ %$/, '');
      await rows()
        .nth(0)
        .getByText(new RegExp(`^Without ${name.replace(/[()]/g, '.')}`))
        .first()
        .waitFor();
      await rows().nth(1).getByRole('button').first().click();
      expect(await panel().locator('.leaving-more:not([hidden])').count()).toBe(1);
      await settled(panel());
      await clean();
    });

    test('a food is swapped for one of the tables, and one undo takes it back', async () => {
      const before = await shares();
      await settled(panel());
      let swap = panel().locator('.swap-list li', { hasText: 'from the tables' }).first();
      // Some foods nothing can replace: the first one that something can.
      for (let n = 0; (await swap.count()) === 0 && n < FOODS; n++) {
        await rows().nth(n).getByRole('button').first().click();
        await settled(panel());
        swap = panel().locator('.swap-list li', { hasText: 'from the tables' }).first();
      }
      const label = (await swap.getByRole('button').getAttribute('aria-label'))!;
      const [, out, other] = /^Swap (.+) for (.+)$/.exec(label)!;
      await swap.getByRole('button').click();
      await expect.poll(() => share(out!).inputValue()).toBe('0');
      expect(Number(await share(other!).inputValue())).toBeGreaterThan(0);
      expect(await total()).toBeCloseTo(100, 0);
      await verdictIs('in');
      await panel().getByText(`${out} is swapped for ${other}`).waitFor();
      await undo().click();
      await share(other!).waitFor({ state: 'detached' });
      await expect.poll(shares).toEqual(before);
    });

    test('made safe, any one food may be left; one undo takes wish and shares back', async () => {
      const before = await shares();
      await panel().getByRole('button', { name: 'Make it safe' }).click();
      await panel().getByText('Any one food may be left: what is eaten stays in range.').waitFor();
      await verdictIs('in');
      await settled(panel());
      expect(await rows().locator('.leaving-mark', { hasText: '!' }).count()).toBe(0);
      expect(await shares()).not.toEqual(before);
      await undo().click();
      await expect.poll(shares).toEqual(before);
      await panel().getByRole('button', { name: 'Make it safe' }).click();
      await panel().getByRole('button', { name: 'Give that up' }).click();
      await panel()
        .getByText(/may go out of range when a food is left/)
        .waitFor();
      await verdictIs('in');
      while ((await shares()).some(([n, v]) => v !== before.find(([b]) => b === n)?.[1]))
        await undo().click();
    });

    test('what the animal refuses leaves the mix, and that can be taken back', async () => {
      await settled(panel());
      const row = panel().locator('.leaving-food[data-food="millet"]');
      await row.getByRole('button').first().click();
      await row.getByRole('button', { name: 'Bramble refuses this' }).click();
      await panel().getByText('Bramble refuses Millet: it is out of First mix.').waitFor();
      await page.getByText('Millet is out: Bramble refuses it.').waitFor();
      await panel().getByRole('button', { name: 'Take that back' }).click();
      await page.getByText('Millet is out: Bramble refuses it.').waitFor({ state: 'detached' });
      await page
        .getByRole('region', { name: 'Verdict' })
        .getByRole('button', { name: 'Make it fit', exact: true })
        .click();
      await verdictIs('in');
    });
  });

  describe('several animals', () => {
    const panel = () => page.getByRole('region', { name: 'Several animals' });

    test('with one animal it says how to come to more', async () => {
      await tab('Several animals');
      await panel().getByRole('link', { name: 'add another' }).waitFor();
      await clean();
    });

    test('two animals that refuse different foods share one mix without additions', async () => {
      await put('sorrel', 'Sorrel', ['millet', 'maize']);
      await put('demo-animal', 'Bramble', ['brown-rice']);
      await page.getByText('Saved', { exact: true }).waitFor();
      await page.reload();
      await page.getByRole('checkbox', { name: /^Sorrel/ }).check();
      await tab('Several animals');
      await panel().getByText('One mix suits Bramble and Sorrel without additions.').waitFor();
      await settled(panel());
      const names = await panel().locator('.sharing-table tbody th').allTextContents();
      expect(names).not.toContain('Millet');
      expect(names).not.toContain('Brown rice');
      const grams = await panel().locator('.sharing-table tbody td:last-child').allTextContents();
      expect(grams.reduce((sum, g) => sum + Number.parseFloat(g), 0)).toBe(300);
      await clean();
    });

    test('taken, the mix stands at those shares and is in range; one undo takes it back', async () => {
      const before = await shares();
      await panel().getByRole('button', { name: 'Take this mix' }).click();
      await verdictIs('in');
      expect(await share('Millet').count()).toBe(0);
      await undo().click();
      await expect.poll(shares).toEqual(before);
    });

    test('where no one mix suits both, the base and what each gets added are told', async () => {
      // Of the legumes that the split asks for, neither will eat what the other does.
      await put('sorrel', 'Sorrel', ['egg-dried', 'dried-mealworm', 'lentils-raw-dry', 'chickpeas-raw-dry']);
      await put('demo-animal', 'Bramble', ['split-peas-raw-dry', 'carob-flour', 'nettle-leaf-dried']);
      await rewrite({ animalProtein: false });
      await tab('Several animals');
      await panel().getByText('2 additions, weighed apart.').waitFor();
      await settled(panel());
      const sorrel = panel().locator('[data-animal="Sorrel"]');
      const bramble = panel().locator('[data-animal="Bramble"]');
      for (const [portion, refused] of [
        [sorrel, ['Lentils, raw dry', 'Chickpeas, raw dry']],
        [bramble, ['Split peas, raw dry', 'Carob flour']],
      ] as const) {
        const names = await portion.locator('tbody th').allTextContents();
        expect(names.length).toBe(1);
        for (const name of refused) expect(names).not.toContain(name);
        const [per100, batch] = (await portion.locator('tbody td').allTextContents()).map(Number.parseFloat);
        expect(Number.isInteger(batch)).toBe(true);
        expect(Math.abs(batch! - 3 * per100!)).toBeLessThan(4);
        await portion.getByText(/As weighed, (in range|just outside)/).waitFor();
      }
      const base = await panel().locator('.sharing-table').first().locator('tbody th').allTextContents();
      for (const name of ['Lentils, raw dry', 'Split peas, raw dry', 'Nettle leaf, dried'])
        expect(base).not.toContain(name);
      await clean();
      await panel().getByRole('button', { name: 'Take the base mix' }).click();
      await expect.poll(total).toBeCloseTo(100, 0);
      expect((await shares()).filter(([, v]) => v > 0).length).toBe(base.length);
    });
  });

  describe('change-over', () => {
    const panel = () => page.getByRole('region', { name: 'Change-over' });
    const table = () => panel().locator('.plan-table');

    test('from the pellet to the ration in ten days: dates, grams and range of every day', async () => {
      await page.getByRole('checkbox', { name: /^Sorrel/ }).uncheck();
      await page
        .getByRole('region', { name: 'Verdict' })
        .getByRole('button', { name: 'Make it fit', exact: true })
        .click();
      await verdictIs('in');
      await tab('Change-over');
      await panel().getByText('Choose what is fed now.').waitFor();
      await panel().getByLabel('Present food').selectOption({ label: 'Invented pellet' });
      await panel().getByLabel('Days', { exact: true }).fill('10');
      await panel().getByLabel('First day').fill('2026-12-27');
      await panel().getByLabel('Fed in a day').fill('12');
      await panel().getByLabel('Weighed in steps of').fill('0.5');
      await page.keyboard.press('Enter');
      await settled(panel());
      await expect.poll(() => table().locator('tbody tr').count()).toBe(10);
      const dates = await table()
        .locator('tbody tr')
        .evaluateAll((all) => all.map((r) => r.getAttribute('data-date')));
      expect(dates.slice(0, 6)).toEqual([
        '2026-12-27',
        '2026-12-28',
        '2026-12-29',
        '2026-12-30',
        '2026-12-31',
        '2027-01-01',
      ]);
      expect(dates.at(-1)).toBe('2027-01-05');
      await panel().getByText('The change is done on 5 January 2027.').waitFor();
      await panel()
        .getByText(/weighed as one/)
        .waitFor();
      const grams = await table()
        .locator('tbody tr')
        .evaluateAll((all) =>
          all.map((r) =>
            [...r.querySelectorAll('td')]
              .map((c) => c.textContent ?? '')
              .filter((t) => t.endsWith(' g'))
              .map((t) => Number.parseFloat(t)),
          ),
        );
      for (const day of grams) expect(day[0]! + day[1]!).toBe(12);
      expect(grams.at(-1)).toEqual([6, 6]);
      expect(grams[0]![1]).toBeLessThan(3.1);
      const mixGrams = grams.map((day) => day[1]!);
      expect(mixGrams).toEqual([...mixGrams].sort((a, b) => a - b));
      const marks = await table().locator('tbody td:last-child').allTextContents();
      for (const mark of marks) expect(mark).toMatch(/^(✓ in|! out|~ just out)$/);
      expect(marks.at(-1)).toContain('✓');
      await clean();
    });

    test('grams that the scale cannot show are refused with the nearest', async () => {
      await panel().getByLabel('Fed in a day').fill('12.3');
      await page.keyboard.press('Enter');
      await panel()
        .getByText(/take 12 g or 12.5 g/)
        .waitFor();
      expect(await table().count()).toBe(0);
      await panel().getByLabel('Fed in a day').fill('12');
      await page.keyboard.press('Enter');
      await table().waitFor();
    });

    test('a look at another tab loses nothing', async () => {
      await tab('If a food is left');
      await tab('Change-over');
      await table().waitFor();
      expect(await panel().getByLabel('First day').inputValue()).toBe('2026-12-27');
    });

    test('another mix, or a food of the tables, may be what is fed now', async () => {
      await page.getByRole('button', { name: 'Copy' }).click();
      await tab('Change-over');
      await panel()
        .getByLabel('Present food')
        .selectOption({ label: 'First mix with Invented pellet, as fed' });
      await settled(panel());
      await expect
        .poll(() => panel().getByTestId('change-sentence').textContent())
        .toMatch(/^In range on every day/);
      await panel().getByLabel('Present food').selectOption({ label: 'A food of the tables…' });
      await panel().getByLabel('Search the tables for the present food').fill('maize');
      await panel().getByRole('button', { name: 'Now fed: Maize', exact: true }).click();
      await settled(panel());
      await panel().getByRole('heading', { name: 'Why days are out of range' }).waitFor();
      await panel()
        .getByText(/since the old food holds/)
        .first()
        .waitFor();
      await clean();
    });

    test('the plan goes on paper by itself', async () => {
      await page.evaluate('window.print = () => {}');
      await panel().getByRole('button', { name: 'Print the plan' }).click();
      await page.emulateMedia({ media: 'print' });
      expect(await page.locator('.plan-sheet').isVisible()).toBe(true);
      expect(await page.locator('.mix-screen').isVisible()).toBe(false);
      expect(await page.locator('.plan-sheet tbody tr').count()).toBe(14);
      await page.evaluate("window.dispatchEvent(new Event('afterprint'))");
      expect(await page.locator('.plan-sheet').isVisible()).toBe(false);
      expect(await page.locator('.print-sheet').isVisible()).toBe(true);
      await page.emulateMedia({ media: 'screen' });
    });
  });

  test('where no mix is safe, the collision stands above and the wish can be given up', async () => {
    const panel = page.getByRole('region', { name: 'If a food is left' });
    // So narrow a range that no food which carries fat may be left; few foods, so that it is soon known.
    await rewrite({
      fat: { min: 6.4, max: 6.5 },
      only: [
        'rolled-oats',
        'millet',
        'dill-dried',
        'carrot-dried',
        'lentils-raw-dry',
        'egg-dried',
        'linseed',
      ],
    });
    await page.getByLabel('Other mixes').selectOption({ label: 'First mix' });
    await page
      .getByRole('region', { name: 'Verdict' })
      .getByRole('button', { name: 'Make it fit', exact: true })
      .click();
    await verdictIs('in');
    await tab('If a food is left');
    await panel.getByRole('button', { name: 'Make it safe' }).click();
    await panel.getByText(/No mix of these foods stays in range whichever one is left/).waitFor();
    await verdictIs('none');
    await page.getByRole('region', { name: 'What does not go together, and what mends it' }).waitFor();
    await clean();
    await panel.getByRole('button', { name: 'Give that up' }).click();
    await verdictIs('in');
  });

  test('the browser had nothing to complain of', () => {
    expect(bench.complaints).toEqual([]);
  });
});
