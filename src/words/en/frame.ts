/** The frame around all screens: the bar, what is said beside a screen, and what stands where one failed. */
import type { Figures } from '../figures.ts';

export const frame = (_f: Figures) => ({
  /** The places of the bar; a short word where the bar is narrow. */
  places: {
    today: { long: 'Now', short: 'Now' },
    foods: { long: 'What’s inside', short: 'Inside' },
    targets: { long: 'Needs', short: 'Needs' },
    mix: { long: 'Mixes', short: 'Mixes' },
    calendar: { long: 'Kitchen', short: 'Kitchen' },
    animals: { long: 'Animals', short: 'Pets' },
    household: { long: 'Household', short: 'House' },
  },
  /** The places of the kitchen, in the order in which the work goes. */
  kitchen: {
    calendar: 'Days',
    shopping: 'To buy',
    cupboard: 'Stock',
    drying: 'Drying',
    weigh: 'Scale',
  },
  mainNav: 'Places',
  kitchenNav: 'Kitchen',
  skip: 'Skip to content',
  opening: 'Opening the household…',
  notOpened: 'The household could not be opened',
  unsentPart: 'What is not yet sent',
  worker: {
    title: 'Trouble with working out mixes',
    stopAndTry: 'Stop it and try again',
    gone: (why: string) =>
      `The part of this page that works out mixes and finds foods has stopped (${why}). What is kept is safe. Nothing new is worked out until it runs again.`,
    lacking: (why: string) => `${why} Without it nothing is worked out.`,
    slow: 'This takes longer to work out than it should.',
  },
  newer: {
    title: 'A newer Pouchful',
    text: 'Pouchful was updated: the server runs another one than this page. Load it when nothing is left to be saved.',
    load: 'Reload',
  },
  storage:
    'This browser keeps nothing more for this page: its storage is switched off, full or broken. What the server has is safe. Leave the page open until it says that all is saved.',
  typed: {
    title: 'Typed before the page was loaded anew',
    text: 'Before this page was loaded anew, this was typed and may not be kept:',
    done: 'I do not need it any more',
    field: 'A field',
    here: 'What was typed here',
  },
  failed: {
    page: 'Pouchful could not be shown',
    screen: 'This screen could not be shown',
    inPage: (why: string) => `Something failed: ${why}. What is kept on the server is not touched by this.`,
    inScreen: (why: string) =>
      `Something on it failed: ${why}. What is kept is not touched by this, and the other screens go on.`,
    openAnew: 'Open Pouchful anew',
    reload: 'Reload the page',
    copied: 'The report is copied.',
    notCopied: 'It could not be copied: mark it below.',
    copy: 'Copy the report',
    lately:
      'If it began with something that was changed lately: <changes>look at what was changed, and take it back</changes>.',
    others: 'Other screens',
    report: 'The report',
  },
});

export type Frame = ReturnType<typeof frame>;
