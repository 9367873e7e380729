import { openBench, DESKTOP, PHONE, axeFindings, overflow } from './harness.ts';
import { test } from 'vitest';
test('shots', async () => {
const b = await openBench();
try {
  for (const [n, size] of [['d', DESKTOP], ['p', PHONE]] as const) {
    const p = await b.page(size);
    await p.goto(b.url);
    await p.waitForSelector('[data-state="out"],[data-state="in"],[data-state="none"],[data-state="fault"]', {timeout: 15000}).catch(e => console.log(e.message));
    await p.waitForTimeout(1200);
    await p.screenshot({ path: `/tmp/shots/${n}-1.png`, fullPage: n === 'p' });
    console.log(await p.textContent('[data-testid=verdict]').catch(()=>'-'));
    await p.getByRole('button', { name: 'Balance the mix' }).click();
    await p.waitForTimeout(1500);
    console.log(await p.textContent('[data-testid=verdict]'));
    await p.screenshot({ path: `/tmp/shots/${n}-2.png` });
    console.log('axe', await axeFindings(p), await overflow(p));
    if (n === 'p') { await p.getByRole('button', { name: 'Nutrients', exact: true }).click(); await p.waitForTimeout(300); await p.screenshot({ path: `/tmp/shots/${n}-3.png` }); }
    for (const s of ['foods', 'foods/sr28:20038', 'foods/new', 'targets']) {
      await p.goto(b.url + '/#/' + s); await p.waitForTimeout(900);
      await p.screenshot({ path: `/tmp/shots/${n}-${s.replace(/\W/g,'_')}.png` });
      console.log(s, 'axe', await axeFindings(p), await overflow(p));
    }
  }
} finally { console.log(b.complaints); await b.close(); }

}, 120000);
