/** Shopping: a list to tick, from the size of the batch to packs in the stock. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Kind } from '../../src/household/model.ts';
import { axeFindings, type Bench, DESKTOP, openBench, overflow, PHONE } from './harness.ts';
import { householdAt, putAt } from './household-at.ts';
import { story } from './story.ts';

async function clean(page: Page): Promise<void> {
  expect(await axeFindings(page)).toEqual([]);
  expect(await overflow(page)).toBe(0);
}

describe.each([
  ['on a phone', PHONE],
  ['at a desk', DESKTOP],
] as const)('%s', (_, size) => {
  let bench: Bench;
  let page: Page;
  const kept = () => householdAt(bench.url);
  const line = (food: string) => page.locator(`#shop-${food}`);
  const sum = () => page.getByRole('region', { name: 'Prices', exact: true });
  const bar = () => page.getByRole('region', { name: 'Put into your stock' });
  const more = (food: string) => line(food).getByRole('button', { name: /^More about/ });
  /** Opens or closes what stands behind a food. */
  async function behind(food: string, open = true) {
    if ((await more(food).getAttribute('aria-expanded')) !== String(open)) await more(food).click();
  }
  const how = (food: string, to: 'Bought' | 'At home' | 'I dry it') =>
    line(food)
      .getByRole('combobox', { name: /^How you get it/ })
      .selectOption(to);
  /** Opens prices and sellers where they are folded away. */
  async function prices() {
    if (!(await sum().isVisible())) await page.getByText('Prices and sellers').click();
  }
  const stocked = () => page.getByText(/^In your stock already/).click();
  /** Nothing of it was frozen. */
  const notFrozen = async () => {
    await bar().getByRole('button', { name: 'Put into my stock' }).click();
  };
  const told = () => page.getByRole('region', { name: 'Bought just now' });
  /** g of a food in 60 days for Bramble: half of 12 g a day. */
  const needed = async (food: string) => ((await kept()).mixes[0]!.shares[food]! / 100) * 360;
  /** What the page says in grams, as a number. */
  const grams = (text: string | null, before: RegExp) => {
    const [, figure, unit] = new RegExp(`([\\d.]+) (g|kg)${before.source}`).exec(text ?? '') ?? [];
    return Number(figure) * (unit === 'kg' ? 1000 : 1);
  };
  const put = <T extends { id: string }>(kind: Kind, thing: T) => putAt(bench.url, kind, thing);
  async function addOffer(
    food: string,
    o: { seller: string; pack: string; price: string; form?: 'Dry' | 'Fresh' },
  ) {
    await behind(food);
    await line(food)
      .getByRole('button', { name: /^Add a seller/ })
      .click();
    await page.getByLabel('Seller', { exact: true }).fill(o.seller);
    await page.getByLabel('Weight of a pack').fill(o.pack);
    await page.getByLabel('Price of a pack').fill(o.price);
    if (o.form) await line(food).getByRole('radio', { name: o.form, exact: true }).check();
    await page.getByRole('button', { name: 'Save the price' }).click();
    await page.getByRole('button', { name: 'Save the price' }).waitFor({ state: 'detached' });
  }

  story();
  beforeAll(async () => {
    bench = await openBench();
    page = await bench.page(size);
    await page.clock.setFixedTime(new Date('2026-03-10T10:00:00'));
  });
  afterAll(() => bench?.close());

  test('the size follows from days and what the animal eats', async () => {
    await page.goto(`${bench.url}/#/mix`);
    await page.getByRole('button', { name: 'Make it fit' }).first().click();
    await page.locator('[data-testid=verdict][data-state=in]').waitFor();
    await expect.poll(async () => (await kept()).mixes[0]!.shares['rolled-oats']).not.toBe(5);
    await page.goto(`${bench.url}/#/shopping`);
    await page.getByText('Change how much').click();
    await page.getByRole('radio', { name: 'In days' }).check();
    await page.getByLabel('Days it is to last').fill('60');
    await page.getByLabel('Days it is to last').press('Enter');
    await page
      .locator('.shop-size', {
        hasText: 'For 360 g of the mix: 60 days for Bramble, who eats 6 g of it a day.',
      })
      .waitFor();
    await expect.poll(async () => (await kept()).kitchen[0]?.next?.days).toBe(60);
    // One line a food, whole grams, and no sentence beside it.
    const oats = Math.ceil((await needed('rolled-oats')) - 1e-6);
    await line('rolled-oats').getByText(`${oats} g`, { exact: true }).waitFor();
    // Twenty foods of the mix, and the pellet beside it.
    expect(await page.locator('.shop-line').count()).toBe(21);
    expect(await page.locator('.shop-line p').count()).toBe(0);
    await prices();
    await sum().getByText('not known: no sellers yet').waitFor();
    await page.getByLabel('Days it is to last').fill('2.5');
    await page.getByLabel('Days it is to last').press('Enter');
    await page.getByText('2.5 is not a whole number of days').waitFor();
    await page.getByLabel('Days it is to last').fill('60');
    await page.getByLabel('Days it is to last').press('Enter');
    await clean(page);
  });

  test('a tick stays when the screen is left, and shows on another device', async () => {
    await line('millet').getByRole('checkbox').check();
    await how('maize', 'At home');
    await bar().getByText('2 of 21 ticked').waitFor();
    await expect
      .poll(async () => (await kept()).kitchen[0]?.basket)
      .toEqual({
        millet: { on: '2026-03-10' },
        maize: { on: '2026-03-10', home: true },
      });
    await page.goto(`${bench.url}/#/cupboard`);
    await page.goto(`${bench.url}/#/shopping`);
    await bar().getByText('2 of 21 ticked').waitFor();
    const other = await bench.page(size);
    await other.goto(`${bench.url}/#/shopping`);
    await other.getByText('2 of 21 ticked').waitFor();
    expect(await other.locator('#shop-maize select').inputValue()).toBe('home');
    await other.locator('#shop-maize select').selectOption('Bought');
    await other.context().close();
    await bar().getByText('1 of 21 ticked').waitFor();
    await clean(page);
    await line('millet').getByRole('checkbox').uncheck();
    await expect.poll(async () => (await kept()).kitchen[0]?.basket).toBeUndefined();
  });

  test('all is bought in one press, asked about once, and taken back in one', async () => {
    await how('maize', 'At home');
    await behind('maize');
    await line('maize').getByLabel('Weight you have, if it is another').fill('400');
    await line('maize').getByLabel('Weight you have, if it is another').press('Enter');
    await behind('maize', false);
    const before = (await kept()).kitchen[0]?.basket;
    await bar().getByRole('button', { name: 'All bought today' }).click();
    await bar()
      .getByText(/21 foods go into your stock. Were the dry ones frozen/)
      .waitFor();
    await clean(page);
    expect((await kept()).lots).toEqual([]);
    await bar().getByRole('radio', { name: 'Yes, by the seller' }).check();
    await bar().getByRole('button', { name: 'Put into my stock' }).click();
    await told().getByText('In your stock: 21 packs.').waitFor();
    await page.getByRole('heading', { name: 'Nothing to buy: all of it is in your stock.' }).waitFor();
    await clean(page);
    const { lots, kitchen } = await kept();
    expect(lots).toHaveLength(21);
    expect(lots.find((l) => l.food === 'maize')).toMatchObject({ grams: 400, boughtOn: '2026-03-10' });
    // What needs the freezer has the reason why it does not wait for it; animal food needs none.
    expect(lots.find((l) => l.food === 'millet')?.overruled).toEqual({
      note: 'frozen already by the seller',
      on: '2026-03-10',
    });
    expect(lots.find((l) => l.food === 'egg-dried')?.overruled).toBeUndefined();
    expect(kitchen[0]?.basket).toBeUndefined();
    expect(await told().getByRole('link', { name: 'Plan the freezing' }).count()).toBe(0);
    await told().getByRole('button', { name: 'Undo' }).click();
    await told()
      .getByText(/^Taken back:/)
      .waitFor();
    await expect.poll(async () => (await kept()).lots).toEqual([]);
    await expect.poll(async () => (await kept()).kitchen[0]?.basket).toEqual(before);
    await told().getByRole('button', { name: 'Close' }).click();
    await how('maize', 'Bought');
    await expect.poll(async () => (await kept()).kitchen[0]?.basket).toBeUndefined();
  });

  test('offers of two sellers become whole packs, for least money or least waste', async () => {
    await behind('rolled-oats');
    await line('rolled-oats')
      .getByRole('button', { name: /^Add a seller/ })
      .click();
    await page.getByRole('button', { name: 'Save the price' }).click();
    await page.getByText('Seller is empty: say who sells it.').waitFor();
    await page.getByText(/Price of a pack is empty/).waitFor();
    await clean(page);
    await page.getByRole('button', { name: 'Cancel' }).click();
    await addOffer('rolled-oats', { seller: 'Alder Mill', pack: '500 g', price: '0,80' });
    await addOffer('rolled-oats', { seller: 'Bramble Barn', pack: '50 g', price: '1' });
    await addOffer('millet', { seller: ' alder  mill', pack: '1 kg', price: '2.50' });
    expect([...new Set((await kept()).offers.map((o) => o.seller))]).toEqual(['Alder Mill', 'Bramble Barn']);
    await line('rolled-oats')
      .getByText(/^1 × 500 g from Alder Mill/)
      .waitFor();
    await prices();
    await sum().getByText('€3.30, without 19 foods').waitFor();
    const oats = await needed('rolled-oats');
    expect(
      grams(
        await line('rolled-oats')
          .getByText(/is left over/)
          .textContent(),
        / is left over/,
      ),
    ).toBeCloseTo(500 - oats, 0);

    await page.getByText('Least left over').click();
    await line('rolled-oats')
      .getByText(/^1 × 50 g from Bramble Barn/)
      .waitFor();
    await sum().getByText('€3.50, without 19 foods').waitFor();
    expect(
      grams(
        await line('rolled-oats')
          .getByText(/is left over/)
          .textContent(),
        / is left over/,
      ),
    ).toBeCloseTo(50 - oats, 0);
    await page.getByText('Least money').click();
    await line('rolled-oats')
      .getByText(/^1 × 500 g from Alder Mill/)
      .waitFor();

    await page.getByText(/^Delivery and minimum order/).click();
    const alder = page.getByRole('group', { name: 'Alder Mill' });
    await alder.getByLabel('Delivery').fill('4');
    await alder.getByLabel('Delivery').press('Enter');
    await sum().getByText('€7.30, without 19 foods').waitFor();
    await alder.getByLabel('Minimum order').fill('5');
    await alder.getByLabel('Minimum order').press('Enter');
    // More packs than the mix takes reach the minimum order.
    await sum()
      .getByText(/Alder Mill sends nothing below €5.00/)
      .waitFor();
    await expect
      .poll(async () => (await kept()).kitchen[0]!.sellers)
      .toEqual([{ seller: 'Alder Mill', delivery: 4, minimumOrder: 5 }]);
    await alder.getByLabel('Minimum order').fill('');
    await alder.getByLabel('Minimum order').press('Enter');
    await clean(page);
  });

  test('an offer is changed, deleted and put back', async () => {
    const millet = line('millet');
    await millet.getByRole('button', { name: /^Change the price: Alder Mill, 1 kg/ }).click();
    await page.getByLabel('Price of a pack').fill('2');
    await page.getByRole('button', { name: 'Save the price' }).click();
    await millet.getByText('Alder Mill, 1 kg for €2.00').waitFor();
    await millet.getByRole('button', { name: /^Delete the price/ }).click();
    await millet.getByText(/^1 × 1 kg from/).waitFor({ state: 'detached' });
    await millet.getByRole('button', { name: 'Put it back' }).click();
    await millet.getByText(/^1 × 1 kg from Alder Mill/).waitFor();
    await expect
      .poll(async () => (await kept()).offers.find((o) => o.food === 'millet'))
      .toMatchObject({
        price: 2,
        packGrams: 1000,
      });
  });

  test('a food dried at home is bought fresh, with its trimmings', async () => {
    const carrot = line('carrot-dried');
    await how('carrot-dried', 'I dry it');
    await carrot.getByText(/^gives /).waitFor();
    await behind('carrot-dried');
    await clean(page);
    await carrot.getByText(/which is 88.29 % water/).waitFor();
    const dried = await needed('carrot-dried');
    const prepared = (dried * 90) / 11.71;
    const words = async () => carrot.getByText(/ as bought/).textContent();
    expect(grams(await words(), / ready to dry/)).toBeCloseTo(prepared, 0);
    expect(grams(await words(), / as bought/)).toBeCloseTo(prepared / 0.89, 0);
    // On the list stands what is bought, in whole grams and never too little.
    const bought = grams(await carrot.locator('.shop-amount').textContent(), / fresh/);
    expect(bought).toBe(Math.ceil(prepared / 0.89 - 1e-6));
    await carrot
      .getByText(/11 % is trimmed off: crown, tops and scrapings/)
      .first()
      .waitFor();
    expect(await carrot.getByLabel('Trimmed off').getAttribute('placeholder')).toBe('11 (table)');
    await carrot.getByLabel('Trimmed off').fill('20');
    await carrot.getByLabel('Trimmed off').press('Enter');
    await carrot
      .getByText(/20 % is trimmed off \(weighed by you\)/)
      .first()
      .waitFor();
    await expect
      .poll(async () => Math.abs(grams(await words(), / as bought/) - prepared / 0.8))
      .toBeLessThan(0.51);
    await addOffer('carrot-dried', { seller: 'Market stall', pack: '1 kg', price: '1.50' });
    await carrot.getByText(/^1 × 1 kg fresh from Market stall/).waitFor();
    await carrot.getByText(/is left over once dried/).waitFor();
    await clean(page);
    await expect
      .poll(async () => (await kept()).kitchen[0]!.driedAtHome)
      .toEqual([{ food: 'carrot-dried', fresh: 'sr28:11124', moisture: 10, trimLoss: 20 }]);
    await expect
      .poll(async () => (await kept()).offers.find((o) => o.food === 'carrot-dried')?.form)
      .toBe('fresh');
  });

  test('any fresh food of the tables may be chosen, and left again', async () => {
    const nettle = line('nettle-leaf-dried');
    await how('nettle-leaf-dried', 'I dry it');
    await nettle.getByRole('button', { name: 'Find another fresh food' }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByLabel('Search foods').fill('stinging nettles');
    await clean(page);
    await dialog
      .getByRole('button', { name: /^Choose .*nettle/i })
      .first()
      .click();
    await dialog.waitFor({ state: 'detached' });
    await nettle.getByText(/^Dried from/).waitFor();
    await how('nettle-leaf-dried', 'Bought');
    await expect.poll(async () => (await kept()).kitchen[0]!.driedAtHome?.length).toBe(1);
  });

  test('what is bought goes into the stock, comes back by undo, and the list shrinks', async () => {
    await prices();
    const order = sum().getByRole('button', { name: 'Bought all 2: the whole order at Alder Mill' });
    await order.click();
    await notFrozen();
    await told()
      .getByText(/In your stock:/)
      .waitFor();
    await page.locator('.shop-line#shop-rolled-oats').waitFor({ state: 'detached' });
    await clean(page);
    await expect
      .poll(async () =>
        (await kept()).lots.map((l) => [l.food, l.grams, l.price, l.seller, l.boughtOn, l.form]),
      )
      .toEqual([
        ['rolled-oats', 500, 0.8, 'Alder Mill', '2026-03-10', 'dry'],
        ['millet', 1000, 2, 'Alder Mill', '2026-03-10', 'dry'],
      ]);
    await told().getByRole('link', { name: 'Plan the freezing' }).waitFor();
    await told().getByRole('button', { name: 'Undo' }).click();
    await told()
      .getByText(/Taken back:/)
      .waitFor();
    await page.locator('.shop-line#shop-rolled-oats').waitFor();
    await expect.poll(async () => (await kept()).lots).toEqual([]);
    await told().getByRole('button', { name: 'Close' }).click();

    // What is fresh lives in no freezer, so nothing is asked.
    await line('carrot-dried').getByRole('checkbox').check();
    await bar().getByRole('button', { name: 'Only what is ticked (1)' }).click();
    await told().getByText('In your stock: Carrot, dried, 1 kg.').waitFor();
    await page.locator('.shop-line#shop-carrot-dried').waitFor({ state: 'detached' });
    await stocked();
    await line('carrot-dried')
      .getByText(/fresh: dry it first/)
      .waitFor();
    await expect
      .poll(async () => (await kept()).lots)
      .toMatchObject([
        { food: 'carrot-dried', grams: 1000, form: 'fresh', price: 1.5, seller: 'Market stall' },
      ]);
  });

  test('where one of several is not kept, it says which, and keeps nothing twice', async () => {
    await prices();
    let lots = 0;
    await page.route('**/api/lots/**', (route) =>
      ++lots === 2
        ? route.fulfill({ status: 409, json: { field: '', message: 'there are too many lots' } })
        : route.continue(),
    );
    const heard = bench.complaints.length;
    await sum().getByRole('button', { name: 'Bought all 2: the whole order at Alder Mill' }).click();
    await page.getByRole('button', { name: 'Put into my stock' }).click();
    await told()
      .getByText(/Not kept: Millet\. there are too many lots/)
      .waitFor();
    await told()
      .getByText(/In your stock: Rolled oats, 500 g/)
      .waitFor();
    await expect
      .poll(async () => (await kept()).lots.map((l) => l.food))
      .toEqual(['carrot-dried', 'rolled-oats']);
    await told().getByRole('button', { name: 'Try the rest again' }).click();
    await told()
      .getByText(/Rolled oats, 500 g and Millet, 1 kg/)
      .waitFor();
    await page.unroute('**/api/lots/**');
    bench.complaints.splice(heard);
    await expect
      .poll(async () => (await kept()).lots.map((l) => l.food))
      .toEqual(['carrot-dried', 'rolled-oats', 'millet']);
    await page.locator('.shop-line#shop-millet').waitFor({ state: 'detached' });
    await clean(page);
    await told().getByRole('button', { name: 'Close' }).click();
    await page.reload();
    await page.locator('.shop-line').first().waitFor();
    expect(await page.locator('.shop-line#shop-millet').count()).toBe(0);
  });

  test('water and trimmings that nobody knows are said, not taken for nothing', async () => {
    const [kitchen] = (await kept()).kitchen;
    const greens = {
      id: 'greens',
      name: 'Own greens',
      kind: 'mix',
      composition: {},
      sd: {},
      source: 'grown',
      invented: false,
    };
    await put('foods', greens);
    const home = { food: 'brown-rice', fresh: 'greens', moisture: 10 };
    await put('kitchen', { ...kitchen!, driedAtHome: [...kitchen!.driedAtHome!, home] });
    await page.reload();
    await line('brown-rice').getByText('fresh weight not known').waitFor();
    await behind('brown-rice');
    await line('brown-rice')
      .getByText(/not known, since the water of Own greens is not known/)
      .waitFor();
    await put('foods', { ...greens, composition: { WATER: 90 } });
    await page.reload();
    await line('brown-rice').getByText('what is trimmed off is not known').waitFor();
    await line('brown-rice')
      .getByText(/^over .* fresh$/)
      .waitFor();
    await behind('brown-rice');
    await line('brown-rice')
      .getByText(/ready to dry, and more than that as bought/)
      .waitFor();
    await line('brown-rice')
      .getByText(/What is trimmed off Own greens is unknown/)
      .waitFor();
    await put('kitchen', kitchen!);
    await page.reload();
  });

  test('lots that may not be used are passed over, with the reason', async () => {
    const [, oats] = (await kept()).lots;
    await put('lots', { ...oats!, barred: { why: 'infested', on: '2026-03-10' } });
    await page.reload();
    await line('rolled-oats').getByText('1 pack not counted').waitFor();
    await behind('rolled-oats');
    await line('rolled-oats')
      .getByText(/Not counted: 500 g of Rolled oats; it is not to be used \(insects in it\)/)
      .waitFor();
    await line('rolled-oats')
      .getByText(/^1 × 50 g from Bramble Barn/)
      .waitFor();
    await clean(page);
  });

  test('the list prints on one page with boxes to tick, and nothing else of the page does', async () => {
    await page.emulateMedia({ media: 'print' });
    const paper = page.locator('.print-sheet');
    expect(await paper.isVisible()).toBe(true);
    expect(await page.getByRole('radio', { name: 'In days' }).isVisible()).toBe(false);
    expect(await paper.textContent()).toContain('1 × 50 g, Bramble Barn');
    expect(await paper.locator('.shop-box').count()).toBe(await page.locator('.shop-line').count());
    const pdf = (await page.pdf({ format: 'A4' })).toString('latin1');
    expect(pdf).toMatch(/\/Count 1\b/);
    expect(await overflow(page)).toBe(0);
    await page.emulateMedia({ media: 'screen' });
  });

  test('what nobody has said, and shares that do not make a mix, stop it with the way out', async () => {
    const house = await kept();
    const { dailyGrams: _, ...animal } = house.animals[0]!;
    await put('animals', animal);
    await page.reload();
    await page.getByText(/How much Bramble eats a day is not known/).waitFor();
    const link = page.getByRole('link', { name: 'Say it on Bramble’s page' });
    expect(await link.getAttribute('href')).toBe('#/animals/demo-animal');
    expect(await sum().count()).toBe(0);
    await clean(page);
    await page.getByRole('radio', { name: 'By weight' }).check();
    await page.getByLabel('Weight of the batch').fill('400');
    await page.getByLabel('Weight of the batch').press('Enter');
    await prices();
    await sum().getByText('Price of this batch').waitFor();
    expect(
      await sum()
        .getByText(/Of a day/)
        .count(),
    ).toBe(0);
    const mix = house.mixes[0]!;
    await put('mixes', { ...mix, shares: { ...mix.shares, millet: mix.shares.millet! + 7 } });
    await page.reload();
    await page.getByText(/shares of this mix add up to 107 %, not 100 %/).waitFor();
    await clean(page);
    // The request that was broken off is the only complaint there may be.
    expect(bench.complaints.filter((c) => !/ERR_FAILED/.test(c))).toEqual([]);
  });
});
