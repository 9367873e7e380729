import { expect, it } from 'vitest';
import { fileSchema } from './file-schema.ts';

it('is what docs/export.schema.json says; where shapes change, vitest -u writes it anew', async () => {
  await expect(`${JSON.stringify(fileSchema(), null, 1)}\n`).toMatchFileSnapshot(
    '../../../docs/export.schema.json',
  );
});
