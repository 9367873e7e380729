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
  unsent: {
    onDevice: (n: number, why: string) =>
      `Not sent yet: ${f.count(n, { one: 'change', other: 'changes' })}, kept on this device. ${why}`,
    onPage: (n: number, why: string) =>
      `Not sent yet: ${f.count(n, { one: 'change', other: 'changes' })}. This device cannot keep them, so leave this page open. ${why}`,
    refused: (thing: string, why: string) => `Your change was not saved (${thing}): ${why}`,
  },
  conflict: {
    label: 'Changed in two places',
    title: (thing: string) => `Changed in two places: ${thing}`,
    who: (when: string, device: string) => ` (${when}, ${device})`,
    deletedHere: (who: string) => `You deleted it here; meanwhile it was changed elsewhere${who}.`,
    deletedThere: (who: string) => `You changed it here; meanwhile it was deleted elsewhere${who}.`,
    choose: 'Choose which one counts. What only one side changed is kept from both.',
    what: 'What',
    here: (when: string) => `Here (${when})`,
    elsewhere: (who: string) => `Elsewhere${who}`,
    deleteAllTheSame: 'Delete it anyway',
    keepWithMine: 'Keep it with my change',
    keepMine: 'Keep mine',
    keepIt: 'Keep it',
    letGo: 'Leave it deleted',
    takeTheirs: 'Take theirs',
    more: (n: number) => `${f.number(n)} more after this.`,
  },
  value: {
    nothing: 'nothing',
    yes: 'yes',
    no: 'no',
    oneOfThem: 'one of them',
  },
  device: {
    browser: 'A browser',
    on: (browser: string, system: string) => `${browser} on ${system}`,
    iphone: 'an iPhone',
    ipad: 'an iPad',
    mac: 'a Mac',
  },
  worker: {
    stopped: 'The part of this page that works it out has stopped. Start it again above.',
    endedEarly: 'It was stopped before it had an answer.',
    notLoaded: 'its program could not be loaded',
    unreadable: 'an answer of it could not be read',
    couldNotLoad: (what: string, why: string) => `${what} could not be loaded: ${why}`,
    foods: 'The table of foods',
    solver: 'The part that works out mixes',
    answered: (status: number) => `the server answered ${status}`,
    broke: (why: string) => `The part that works out mixes failed: ${why}`,
  },
});

export type Store = ReturnType<typeof store>;
