/** Every record that is drawn as accepted is accepted by the server, and none of them is unreadable. */
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { RecordsPage } from '../../src/household/records.ts';
import { openStore } from '../../src/household/store.ts';
import { createApp } from '../../src/server/app.ts';
import { draws } from '../draws.ts';
import { household, NAMED } from './arbitraries.ts';
import { folderForEachTest } from './folder-for-each-test.ts';
import { putHousehold } from './put-household.ts';

const folder = folderForEachTest();

it('takes every odd record and gives it back', async () => {
  let n = 0;
  await fc.assert(
    fc.asyncProperty(household, async (house) => {
      n += 1;
      const store = openStore(join(folder(), `${n}.sqlite`));
      try {
        const app = createApp({ store, webDir: folder(), referenceFile: '' });
        expect(await putHousehold(house, NAMED, (path, init) => app.request(path, init))).toEqual([]);
        const { records } = (await (await app.request('/api/records?after=0')).json()) as RecordsPage;
        expect(records.filter((r) => r.unreadable)).toEqual([]);
      } finally {
        await store.close();
      }
    }),
    { numRuns: draws(300, 8), endOnFailure: true },
  );
}, 300_000);
