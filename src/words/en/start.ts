/** The first steps: from nothing to a first mix. */
import type { Figures } from '../figures.ts';

export const start = (f: Figures) => ({
  title: 'Start your own',
  lead: 'Three steps to your first mix. You can change everything later.',
  isDone: '(done)',
  doThisNow: 'Do this now',
  changeStep: (step: string) => `Change: ${step}`,
  mixName: 'My mix',
  mixFor: (animal: string) => `Mix for ${animal}`,
  animal: {
    title: 'Your animal',
    done: (names: readonly string[], grams: number | undefined) =>
      grams === undefined ? f.list(names) : `${f.list(names)}, ${f.grams(grams, 1)} of food a day`,
    name: 'Name',
    nameless: 'Give the animal a name.',
    species: 'What is it?',
    lifeStage: 'How old?',
    daily: 'Dry food a day',
    notKnown: 'not known',
    suggested: {
      handouts: (low: number, high: number) =>
        `Mix and pellet together. Vets’ handouts commonly say ${f.grams(low)} to ${f.grams(high)} for an adult.`,
      memory: (low: number, high: number) =>
        `Mix and pellet together. About ${f.grams(low)} to ${f.grams(high)} for an adult (common practice, from memory; no source). Weigh what yours eats.`,
    },
    noSuggestion: 'Mix and pellet together. Leave it empty if you do not know: weigh what is eaten.',
    keep: 'Keep the animal',
  },
  pellet: {
    title: 'Your pellet',
    why: 'Half of the food is a complete pellet from the shop; the mix is the other half. What the pellet holds decides what the mix must bring.',
    name: 'What do you call it?',
    usualName: 'My pellet',
    nameless: 'Give it a name.',
    noFigures: 'Paste the label, or write at least one of the figures.',
    keep: 'Keep the pellet',
    done: (names: readonly string[]) => f.list(names),
  },
  label: {
    pellet: 'The label of your pellet',
    food: 'The label of this food',
    hint: 'Paste or type what the pack says, for example “crude protein min. 16 %, crude fat min. 4 %, crude fibre max. 9 %”.',
    source: 'label',
    read: (amounts: readonly string[]) => `Read, in 100 g: ${amounts.join('; ')}.`,
    nothingRead: 'Nothing was understood yet. Write for example “protein 16 %”.',
    unread: (lines: number) =>
      f.form(lines, {
        one: 'One line was not understood.',
        other: `${f.number(lines)} lines were not understood.`,
      }),
    lineByLine: 'Line by line',
    recheck: 'Check that line of the label.',
    tooLong: (letters: number, most: number) =>
      `The label has ${f.number(letters)} letters and ${f.number(most)} can be kept; leave out the lines without figures.`,
    orType: 'No label to paste? Write what the pack says:',
    missing: 'Your label leaves this open. Write what you know; the maker can tell you.',
    fatAtLeast: (least: number) =>
      `Your label says at least ${f.percent(least)}. Left empty, the mix cannot be surely in range.`,
    saysAtLeast: (least: number) => `Your label says at least ${f.percent(least)}.`,
    saysAtMost: (most: number) =>
      `Your label says at most ${f.percent(most)}. Left empty, it counts as none, and the mix has to bring it all.`,
    least: { PROCNT: 'Protein at least', FAT: 'Fat at least', FIBC: 'Fibre at least' },
    most: { PROCNT: 'Protein at most', FAT: 'Fat at most', FIBC: 'Fibre at most' },
    amount: { PROCNT: 'Protein', FAT: 'Fat', FIBC: 'Fibre' },
    notKnown: 'not known',
  },
  foods: {
    title: 'Your foods',
    box: 'Which foods do you have?',
    hint: 'One a line, for example “oats, 5 %”, “millet 15 g” or just “lentils”. Enter adds. You can paste a list or a table. 20 to 30 foods make a good mix (common practice, no source).',
    add: 'Add',
    makeFit: 'Make it fit',
    working: 'Working it out…',
    lookingUp: 'Looking them up…',
    told: (added: number, there: readonly string[]) =>
      [
        added === 0
          ? ''
          : f.form(added, { one: 'One food was added.', other: `${f.number(added)} foods were added.` }),
        there.length === 0
          ? ''
          : f.form(there.length, {
              one: `${f.list(there)} is in the mix already.`,
              other: `${f.list(there)} are in the mix already.`,
            }),
      ]
        .filter(Boolean)
        .join(' '),
    count: (n: number) =>
      f.form(n, { one: 'One food in the mix.', other: `${f.number(n)} foods in the mix.` }),
    left: (line: string, why: string) => `“${line}”: ${why}`,
    faults: {
      nameless: 'no food is named here; write its name beside the figure.',
      unitless: 'is that percent or grams? Write “5 %” or “5 g”.',
      range: 'write one figure, not several.',
      over: 'more than 100 % of the mix cannot be.',
      nothing: 'nothing of it would be in the mix; leave the line out, or the figure.',
      long: 'the name is too long.',
    },
    tableName: 'my own table',
    unsure: 'Which food is it?',
    unsureHint: 'These are not in the mix yet.',
    noFood: 'No food of the tables is called so.',
    takeFor: (food: string, typed: string) => `${food} for “${typed}”`,
    leaveOut: 'Leave it out',
    leaveOutFood: (typed: string) => `Leave out “${typed}”`,
    or: 'or:',
    makeOwn: 'My own',
    makeOwnOf: (food: string) => `Make ${food} a food of my own, from its label`,
    keepOwn: 'Keep this food',
    rows: 'Foods in the mix',
    wanted: (share: number) => `about ${f.percent(share)}`,
    typed: (typed: string) => `for “${typed}”`,
    fresh: 'fresh: dry it before it goes into the mix',
    instead: (other: string, food: string) => `${other} instead of ${food}`,
    removeFood: (food: string) => `Remove ${food}`,
    removed: (food: string) => `${food} was taken out.`,
  },
  table: {
    title: 'About your table',
    hint: (n: number) =>
      f.form(n, {
        one: 'One question before your table comes in.',
        other: `${f.number(n)} questions before your table comes in.`,
      }),
    other: 'Or another figure',
  },
});

export type Start = ReturnType<typeof start>;
