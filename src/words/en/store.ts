import type { Figures } from '../figures.ts';

export const store = (_f: Figures) => ({
  server: {
    silent: 'The Pouchful server does not answer. Is it still running?',
    failed: (status: number) => `The server reported a fault (${status}).`,
    stranger: 'Something else than Pouchful answers here. Is the server running, and is the address right?',
    otherVersion: 'Pouchful has changed since this page was opened. Load the page again.',
  },
  leaving: {
    title: 'Something typed here is not saved',
    words: 'If you leave now, it is gone.',
    stay: 'Stay here',
    leave: 'Leave without saving',
    field: 'A field',
  },
});

export type Store = ReturnType<typeof store>;
