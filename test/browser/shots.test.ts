import { test } from 'vitest';
import { DESKTOP, openBench, PHONE } from './harness.ts';

test('shots', async () => {
  const b = await openBench();
  try {
    const p = await b.page(DESKTOP);
    await p.goto(b.url);
    await p.waitForSelector('[data-state="out"]');
    await p.getByRole('button', { name: 'More about Rolled oats' }).click();
    await p.getByRole('button', { name: 'Hold Rolled oats where it is' }).click();
    await p.getByRole('button', { name: 'Settings' }).click();
    await p.waitForTimeout(700);
    await p.screenshot({ path: '/tmp/shots/e-1.png' });
    await p.getByRole('button', { name: 'Window of Seeds and grains' }).click();
    await p.getByLabel('Group at most').fill('95');
    await p.keyboard.press('Enter');
    await p.getByLabel('Group at least').fill('85');
    await p.keyboard.press('Enter');
    await p.waitForSelector('[data-state="none"]');
    await p.waitForTimeout(1500);
    await p.screenshot({ path: '/tmp/shots/e-2.png' });
    await p.setViewportSize(PHONE);
    await p.waitForTimeout(300);
    await p.screenshot({ path: '/tmp/shots/e-3.png', fullPage: true });
    await p.setViewportSize(DESKTOP);
    await p.emulateMedia({ colorScheme: 'dark' });
    await p.mouse.wheel(0, 1500);
    await p.waitForTimeout(400);
    await p.screenshot({ path: '/tmp/shots/e-4.png' });
    await p.emulateMedia({ media: 'print', colorScheme: 'light' });
    await p.screenshot({ path: '/tmp/shots/e-5.png' });
    await p.emulateMedia({ media: 'screen' });
    await p.getByRole('button', { name: 'Add a food' }).click();
    await p.getByRole('searchbox').fill('oats');
    await p.waitForTimeout(900);
    await p.screenshot({ path: '/tmp/shots/e-6.png' });
    await p.goto(b.url + '/#/targets');
    await p.getByRole('button', { name: 'Copy and edit' }).click();
    await p.getByLabel('Name').waitFor();
    await p.screenshot({ path: '/tmp/shots/e-7.png' });
  } finally {
    console.log(b.complaints);
    await b.close();
  }
}, 120000);
