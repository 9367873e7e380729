/** What goes out of the household as a file, and comes in from one. */
import type { Figures } from '../figures.ts';

export const exchange = (f: Figures) => ({
  refused: 'The file did not come in. Nothing was changed:',
  failed: 'That did not work:',
  pageFailed: 'Something on this page failed. Load it again and try once more.',
  moment: 'One moment…',
  bringIn: {
    title: 'Bring in',
    text: 'A file saved from Pouchful: a whole household, or one mix or food from another keeper. It is looked at first. Nothing is written until you have seen what would change.',
    file: 'File',
    tooBig: (name: string, megabytes: number) =>
      `${name} has more than ${f.number(megabytes)} MB, the most that is taken in. Is it the right file?`,
    notRead: 'The file could not be read. Choose it again.',
    press: 'Bring in',
    replace: 'Replace everything',
    how: 'How is it to come in?',
    ways: {
      add: 'Add what is not here; all that is here stays as it is',
      update: 'Add what is not here, and make what differs as in the file',
      replace: 'Replace everything: the household holds what the file holds, and nothing else',
    },
    done: (name: string, counts: string) =>
      `Brought in from ${name}: ${counts}. It stands under “Changes” and can be taken back there.`,
    counts: {
      new: (n: number) => `${f.number(n)} new`,
      different: (n: number) => `${f.number(n)} changed`,
      gone: (n: number) => `${f.number(n)} gone`,
      kept: (n: number) => `${f.number(n)} that differ left as they are`,
      same: (n: number) => `${f.number(n)} the same`,
    },
    changes: 'What would change',
    changesAre: (counts: string) => `<head>What would change:</head> ${counts}.`,
    leftOut: (n: number) =>
      f.form(n, {
        one: 'One record of the file was not readable where it was made. It stays in the file and is not taken in.',
        other: `${f.number(n)} records of the file were not readable where it was made. They stay in the file and are not taken in.`,
      }),
    what: { new: 'New', different: 'Changes', gone: 'Goes', kept: 'Stays as it is here' },
    allOfIt: 'all of it',
    nothing: 'nothing',
    moreFields: (n: number) =>
      f.form(n, { one: 'and one more field', other: `and ${f.number(n)} more fields` }),
    moreChanges: (n: number) =>
      f.form(n, {
        one: 'One more change is not listed here.',
        other: `${f.number(n)} more changes are not listed here.`,
      }),
  },
  part: {
    done: (names: string) => `Brought in: ${names}.`,
    doneNothing: 'Brought in: nothing, all of it was here.',
    comes: (list: string) => `<head>Comes in:</head> ${list}.`,
    comesNothing: '<head>Comes in:</head> nothing that is not here already.',
    same: (names: string) => `Here already, just so: ${names}.`,
    choices: 'Choices of the sender: what you do not tick is not taken over',
    notTicked: (instead: string) => `Not ticked: ${instead}.`,
    kinds: { foods: 'food', profiles: 'needs', mixes: 'mix' },
  },
  takeOut: {
    title: 'Take out',
    text: 'Everything as one open file that any program can read, and that Pouchful brings in again as it was. Its history and its backups stay here.',
    all: 'Save everything as one file',
    tables: 'Tables for a spreadsheet',
    decimal: 'Decimal mark',
    point: '6.25, with commas between the columns',
    comma: '6,25, with semicolons between the columns',
    names: {
      foods: 'Own foods',
      mixes: 'Shares of mixes',
      lots: 'Packs',
      batches: 'Batches',
      pours: 'Pours',
      animals: 'Animals',
      weighings: 'Weighings',
      feedings: 'Food and left-overs',
      trials: 'Trials of new foods',
      notes: 'Notes',
    },
    forAnother: 'One mix or food for another keeper',
    forAnotherText:
      'With the own foods and the own needs that a mix names; without animals, stock, prices and what your animal refuses.',
    mixOrFood: 'Mix or food',
    mix: (name: string) => `Mix: ${name}`,
    food: (name: string) => `Food: ${name}`,
    save: 'Save as a file',
  },
  ownTable: {
    title: 'A table of your own',
    text: 'Foods and shares that you keep in a spreadsheet come in as foods of your own and a mix.',
    press: 'Bring in a table',
  },
  reading: {
    finished: 'a finished batch is not changed',
    theKitchen: 'the kitchen',
    noRecords: 'the list of records is missing; the file may have been cut off',
    goneList: 'it must be a list; leave it out where nothing is gone',
    twice: (id: string, kind: string, at: string) =>
      `“${id}” stands twice among the ${kind}, first at ${at}; leave one of them out`,
    needsKindAndId: 'it must be an object with a kind and an id',
    namesFood: (id: string) =>
      `it names the food “${id}”, which is not in the file; add it, or name it under "gone"`,
    names: (kind: string, id: string) =>
      `it names “${id}” of ${kind}, which is not in the file; add it, or name it under "gone"`,
    empty: 'the file is empty; choose the file that was saved',
    deep: 'its brackets are nested deeper than those of any file of Pouchful; it is damaged or of another kind',
    noJson: (why: string) =>
      `it is no JSON (${why}); the file may have been cut off or changed by another program. Save it again, or take a backup`,
    noExport: 'it is JSON, but no file of Pouchful',
    otherFormat: (format: string, needed: string) =>
      `its format is "${format}", and "${needed}" is needed here`,
    noFormat: (needed: string) => `it does not say its format, and "${needed}" is needed here`,
    noVersion: 'the version of the format must be a whole number from 1 on',
    tooNew: (version: number, most: number) =>
      `the file is of version ${version} and this program reads up to ${most}; bring Pouchful up to date, then bring it in`,
    needsKindIdBody: 'it must be an object with kind, id and body',
    noKind: (kind: string, kinds: string) => `${kind} is no kind of record; use one of ${kinds}`,
    noId: (id: string) => `${id} is no id; write a text`,
    otherId: (inside: string, outside: string) =>
      `it says “${inside}” and the record “${outside}”; make them the same`,
  },
  readingPart: {
    noFoods: 'the list of foods is missing; the file may have been cut off',
    twice: (id: string) => `“${id}” stands twice; leave one of them out`,
    nothing: 'the file holds neither a mix nor a food',
    leaveOut: (why: string) => `${why}; leave it out`,
    noTarget: (id: string) => `the needs “${id}” are neither among Pouchful’s nor in the file`,
    theirTarget: (name: string) =>
      `Its needs “${name}” are the sender’s own: look at each limit and its source before you feed by it.`,
    theirChoices:
      'Needs, limits and cautions of the mix are the choices of whoever sent it, for their animals. Choose your animals in the mix, and look whether it suits them.',
    noMargin: 'How far it keeps from its limits: it does not.',
    margin: (percent: number) => `How far it keeps from its limits: ${f.percent(percent)}.`,
    usualMargin: (percent: number) => `the usual ${f.percent(percent)}`,
    sure: (percent: number) => `How sure its limits must hold: ${f.percent(percent)}.`,
    notSure: 'no such demand',
    cautions: 'Foods on the caution list are only named; none is kept out or kept low.',
    cautionsCount: 'cautions count',
    limits: (name: string, list: string) => `Limits that are not those of the needs “${name}”: ${list}.`,
    limitsOf: 'the limits of the needs',
    override: (food: string, caution: string, note: string) =>
      `${food} is let in against a caution (${caution}): “${note}”`,
    cautionCounts: 'the caution counts',
    without: (rule: string) => `without ${rule}`,
    rule: (what: string, limits: string) => `${what} ${limits}`,
    ratio: (over: string, under: string) => `${over} to ${under}`,
    aLimit: 'a limit',
    least: (min: number) => `at least ${f.number(min, 6)}`,
    most: (max: number) => `at most ${f.number(max, 6)}`,
    both: (min: number, max: number) => `at least ${f.number(min, 6)} and at most ${f.number(max, 6)}`,
    none: 'without limits',
  },
});

export type Exchange = ReturnType<typeof exchange>;
