import type { Figures } from '../figures.ts';

export const exchange = (_f: Figures) => ({
  refused: 'The file did not come in. Nothing was changed:',
  failed: 'That did not work:',
  pageFailed: 'Something on this page failed. Load it again and try once more.',
});

export type Exchange = ReturnType<typeof exchange>;
