import { test } from 'vitest';
import { openBench } from './harness.ts';
import { countingHousehold } from './two-lanes-house.ts';
test('look', async () => {
  const bench = await openBench({ house: countingHousehold() });
  const page = await bench.page({ width: Number(process.env.W ?? 1280), height: 900 });
  page.on('console', (m) => console.log('console', m.text()));
  await page.goto(`${bench.url}/#/mix`);
  for (let i = 0; i < Number(process.env.N ?? 8); i++) {
    await new Promise((r) => setTimeout(r, 5000));
    await page.screenshot({ path: `/tmp/shots/look-${i}.png` });
    console.log(i, page.workers().length, await page.locator('.verdict').allTextContents());
  }
  console.log(bench.complaints);
  await bench.close();
}, 200_000);
