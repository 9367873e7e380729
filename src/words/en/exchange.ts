/** Taking the household out as files and bringing files in. */
import type { Figures } from '../figures.ts';

export const exchange = (f: Figures) => ({
  refused: 'The file did not come in. Nothing was changed:',
  failed: 'That did not work:',
  pageFailed: 'Something on this page failed. Load it again and try once more.',
  moment: 'One moment…',
  bringIn: 'Bring in',
  intro:
    'A file saved from Pouchful: a whole household, or one mix or food from another keeper. It is looked at first; nothing is written until you have seen what would change.',
  file: 'File',
  tooLarge: (name: string, megabytes: number) =>
    `${name} has more than ${megabytes} MB, the most that is taken in. Is it the right file?`,
  notRead: 'The file could not be read. Choose it again.',
  how: 'How should it come in?',
  add: 'Add what is not here. Everything here stays as it is',
  update: 'Add what is not here, and change what differs to match the file',
  replace: 'Replace everything: only what is in the file remains',
  replaceNow: 'Replace everything',
  done: (name: string, counts: string) =>
    `Brought in from ${name}: ${counts}. You find it under “Changes” and can undo it there.`,
  counts: (new_: number, changed: number, gone: number, kept: number, same: number) =>
    `${[`${new_} new`, `${changed} changed`, `${gone} gone`, ...(kept > 0 ? [`${kept} different but left as they are`] : []), `${same} the same`].join(', ')}`,
  changesTitle: 'What would change',
  changes: (counts: string) => `<b>What would change:</b> ${counts}.`,
  leftOut: (n: number) =>
    `${f.count(n, { one: 'entry of the file was', other: 'entries of the file were' })} not readable where it was made. They stay in the file and do not come in.`,
  new: (thing: string) => `New: ${thing}`,
  different: (thing: string) => `Changes: ${thing}`,
  gone: (thing: string) => `Goes: ${thing}`,
  kept: (thing: string) => `Stays as it is here: ${thing}`,
  because: (thing: string, why: string) => `${thing} (${why})`,
  allOfIt: 'all of it',
  nothing: 'nothing',
  moreFields: (n: number) => `and ${f.count(n, { one: 'more field', other: 'more fields' })}`,
  moreChanges: (n: number) =>
    `${f.count(n, { one: 'more change is', other: 'more changes are' })} not listed here.`,
  partDone: (names: string) => `Brought in: ${names}.`,
  partNothing: 'Nothing was brought in: all of it was here already.',
  coming: (things: string) => `Comes in: ${things}.`,
  comingNothing: 'Comes in: nothing that is not here already.',
  same: (names: string) => `Here already, exactly like this: ${names}.`,
  choices: 'Choices of the sender. What you do not tick is not taken over',
  notTicked: (instead: string) => `Not ticked: ${instead}.`,
  takeOut: 'Take out',
  takeOutIntro:
    'Everything in one open file that any program can read, and that Pouchful can bring in again as it was. Its history and its backups stay here.',
  saveAll: 'Save everything as one file',
  tables: 'Tables for a spreadsheet',
  decimal: 'Decimal mark',
  point: '6.25, columns parted by commas',
  comma: '6,25, columns parted by semicolons',
  ofFoods: 'Own foods',
  ofMixes: 'Shares of mixes',
  ofLots: 'Packs',
  ofBatches: 'Batches',
  ofPours: 'What was poured',
  ofAnimals: 'Animals',
  oneForAnother: 'One mix or food for another keeper',
  oneForAnotherHint:
    'Own foods and own needs that the mix uses come along. Animals, stock, prices and what your animal refuses do not.',
  mixOrFood: 'Mix or food',
  mixNamed: (name: string) => `Mix: ${name}`,
  foodNamed: (name: string) => `Food: ${name}`,
  saveFile: 'Save as a file',
  ownTable: 'A table of your own',
  ownTableHint: 'Foods and shares that you keep in a spreadsheet come in as foods of your own and a mix.',
  bringTable: 'Bring in a table',
  theKitchen: 'the kitchen',
  finishedKept: 'a finished batch is not changed',
  reading: {
    noRecords: 'the list of records is missing; the file may have been cut off',
    goneList: 'it must be a list; leave it out where nothing is gone',
    twiceAmong: (id: string, kind: string, before: number) =>
      `"${id}" stands twice among the ${kind}, first at /records/${before}; leave one of them out`,
    goneEntry: 'it must be an object with a kind and an id',
    namesFood: (id: string) =>
      `it names the food "${id}", which is not in the file; add it, or name it under "gone"`,
    namesOther: (kind: string, id: string) =>
      `it names one of the ${kind}, "${id}", which is not in the file; add it, or name it under "gone"`,
    empty: 'the file is empty; choose the file that was saved from Pouchful',
    tooDeep: 'its brackets are nested deeper than those of any export; it is damaged or of another kind',
    noJson: (why: string) =>
      `it is no JSON (${why}); the file may have been cut off or changed by another program. Export it again, or take a backup`,
    noExport: 'it is JSON, but no export of Pouchful',
    formatIs: (format: string, needed: string) => `its format is "${format}", and "${needed}" is needed here`,
    formatNone: (needed: string) => `it does not say its format, and "${needed}" is needed here`,
    versionNumber: 'the version of the format must be a whole number from 1 on',
    newer: (version: number, most: number) =>
      `the file is of version ${version} and this program reads up to ${most}; bring Pouchful up to date, then bring it in`,
    recordShape: 'it must be an object with kind, id and body',
    noKind: (kind: string, kinds: string) => `${kind} is no kind of record; use one of ${kinds}`,
    noId: (id: string) => `${id} is no id; write a text`,
    within: (kind: string, id: string, why: string) => `${kind} "${id}": ${why}`,
    otherId: (says: string, id: string) => `it says "${says}" and the record "${id}"; make them the same`,
    noFoods: 'the list of foods is missing; the file may have been cut off',
    twice: (id: string) => `"${id}" stands twice; leave one of them out`,
    neither: 'the file holds neither a mix nor a food',
    leaveOut: (why: string) => `${why}; leave it out`,
    noTarget: (id: string) => `the needs "${id}" are neither among Pouchful’s nor in the file`,
    cannot: 'it cannot be taken in',
    another: 'the file or the household is another than was looked at; look again at what would change',
    tooLargeFile: (megabytes: number) =>
      `the file is over ${megabytes} MB, the most that is taken in; go back to a backup instead, or delete what is old before it is exported`,
  },
  sent: {
    ownTarget: (name: string) =>
      `Its needs “${name}” are the sender’s own: look at each limit and its source before you feed by it.`,
    theirs:
      'Needs, limits and cautions of the mix are the choices of whoever sent it, for their animals. Choose your animals in the mix, and look whether it suits them.',
    noMargin: 'It keeps no distance from its limits.',
    margin: (percent: number) => `It keeps a distance of ${f.percent(percent)} from its limits.`,
    usualMargin: (percent: number) => `the usual distance of ${f.percent(percent)}`,
    sure: (percent: number) => `How sure its limits must hold: ${f.percent(percent)}.`,
    notAsked: 'this is not asked for',
    cautionsNamed: 'Foods on the caution list are only named, neither stopped nor limited.',
    cautionsCount: 'cautions count',
    limits: (target: string, limits: string) =>
      `Limits that are not those of the needs “${target}”: ${limits}.`,
    limitsOfTarget: 'the limits of the needs',
    override: (food: string, caution: string, note: string) =>
      `${food} is let in against a caution (${caution}): “${note}”`,
    cautionCounts: 'the caution counts',
    without: (rule: string) => `without ${rule}`,
    ratio: (over: string, under: string) => `${over} to ${under}`,
    aLimit: 'a limit',
    between: (what: string, least: number, most: number) =>
      `${what} at least ${f.number(least)} and at most ${f.number(most)}`,
    least: (what: string, least: number) => `${what} at least ${f.number(least)}`,
    most: (what: string, most: number) => `${what} at most ${f.number(most)}`,
    noBounds: (what: string) => `${what} without limits`,
  },
});

export type Exchange = ReturnType<typeof exchange>;
