import type { Figures } from '../figures.ts';

export const store = (f: Figures) => ({
  server: {
    silent: 'The Pouchful server does not answer. Is it still running?',
    failed: (status: number) => `The server reported a fault (${status}).`,
    stranger: 'Something else than Pouchful answers here. Is the server running, and is the address right?',
    otherVersion: 'Pouchful has changed since this page was opened. Load the page again.',
  },
  lettersLeft: (left: number, most: number) =>
    left === 0
      ? `No more fits: ${f.count(most, { one: 'letter', other: 'letters' })} at most.`
      : `${f.count(left, { one: 'more letter fits', other: 'more letters fit' })}.`,
  leaving: {
    title: 'Something typed here is not saved',
    words: 'If you leave now, it is gone.',
    stay: 'Stay here',
    leave: 'Leave without saving',
  },
});

export type Store = ReturnType<typeof store>;
