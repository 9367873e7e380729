/** The scale: weighing out a batch, food by food. */
import type { Figures } from '../figures.ts';

export const weighing = (f: Figures) => ({
  title: (mix: string) => `Weigh out: ${mix}`,
  allBatches: 'All batches',
  backToMix: 'Back to the mix',
  noMix: 'There is no mix yet',
  notKept: 'This batch is not kept here',
  toMix: '<mix>Go to the mix</mix>, and weigh out from there.',
  at: (day: string, time: string) => `${day} at ${time}`,
  working: 'Working out what comes next…',
  notWorkedOut: (why: string) => `The batch could not be worked out: ${why}`,
  notDeleted: (why: string) => `Not deleted: ${why}`,

  total: {
    region: 'Running total',
    inBowl: (total: number, of: number) => `<b>${f.grams(total)}</b> of ${f.grams(of)} in the bowl`,
    bar: 'Poured so far',
  },
  status: {
    'as planned': 'As planned',
    corrected: 'Corrected: other amounts than planned',
    grown: (total: number) => `Grown to ${f.grams(total)}: other amounts than planned`,
    changedSize: (total: number) => `Changed to ${f.grams(total)}: other amounts than planned`,
    asked: 'Your choice is needed',
  },

  /** The food to pour now. */
  step: {
    now: 'Now',
    more: 'More of',
    instead: (food: string | undefined) =>
      food === undefined ? 'Instead of ending here' : `Instead of ${food}`,
    ofIt: (target: number) => `on the scale, ${f.grams(target)} of it this food`,
    insteadHelp: 'Pour as much as you like; the others follow. Poured already? Write what went in.',
    outHelp: 'The nearest that can be done; the batch stays out of range.',
    reading: `The scale shows, in ${f.massUnit}`,
    right: (grams: number) => `${f.grams(grams)}, right`,
    poured: 'Poured',
    pouredGrams: (grams: number) => `Poured: ${f.grams(grams)}`,
    oneMore: (step: number) => `${f.grams(step)} more`,
    oneLess: (step: number) => `${f.grams(step)} less`,
    noMore: 'There is no more of it',
    leaveOut: 'Leave it out',
    leaveOutSure: (food: string) => `Yes, do without ${food}`,
    leaveOutMoreSure: (food: string) => `Yes, do without more of ${food}`,
    leaveOutHelp: 'The others then make up for it, as far as they can.',
    backTo: (food: string | undefined) => (food === undefined ? 'Back to the end' : `Back to ${food}`),
    other: 'Another food went in, or goes first',
    choose: 'Choose it here',
    stranger: 'A food that is not in this mix',
    strangerHelp:
      'Take it out again, all of it, and go on. What the mix does not know cannot be worked out: if some of it stays in, give up this batch below and start anew.',
    reads: 'What the scale shows',
    readsFood: 'this food alone (set to zero first)',
    readsBowl: 'all in the bowl',
  },
  /** What is wrong with a reading of the scale. */
  reading: {
    missing: `Write what the scale shows, in ${f.massUnit}.`,
    missingNoMore: `Write first what the scale shows of it, in ${f.massUnit}. Nothing at all? Press “Leave it out”.`,
    noNumber: `That is not a number; write for example 15 or 15.5, in ${f.massUnit}.`,
    belowZero: (grams: number) =>
      `${f.grams(grams)} is below 0. Set the empty scale to zero and weigh again.`,
    lessThanBowl: (grams: number, inBowl: number) =>
      `${f.grams(grams)} is less than the ${f.grams(inBowl)} that lay in the bowl. If the scale was set to zero, choose “this food alone”.`,
    nothing: 'Nothing was poured. To do without this food, press “Leave it out”.',
  },
  /** Between which amounts the ration stays in range. */
  tolerance: {
    none: 'No amount of it brings the ration into range; this is the nearest.',
    only: (g: number, onScale: boolean) =>
      `Only ${f.grams(g)}${onScale ? ' on the scale' : ''} keeps the ration in range.`,
    upTo: (g: number, onScale: boolean) =>
      `Anything up to ${f.grams(g)}${onScale ? ' on the scale' : ''} keeps the ration in range.`,
    between: (low: number, high: number, onScale: boolean) =>
      `Anything from ${f.number(f.mass(low))} to ${f.grams(high)}${onScale ? ' on the scale' : ''} keeps the ration in range.`,
    grows: (total: number) => `The batch then grows to ${f.grams(total)}.`,
    comesTo: (total: number) => `The batch then comes to ${f.grams(total)}.`,
    orWider: (low: number, high: number, total: number) =>
      low === 0
        ? `Up to ${f.grams(high)} if the batch comes to ${f.grams(total)}.`
        : `From ${f.number(f.mass(low))} to ${f.grams(high)} if the batch comes to ${f.grams(total)}.`,
  },

  changed: {
    more: (food: string, g: number) => `Pour ${f.grams(g)} more of ${food}.`,
    leftOut: (food: string, from: number) => `Leave out ${food}, ${f.grams(from)} until now.`,
    instead: (food: string, to: number, from: number) =>
      `${food}: ${f.grams(to)} instead of ${f.grams(from)}.`,
  },
  /** What the last pour did. */
  after: {
    region: 'After the last pour',
    poured: (food: string, g: number) => `${f.grams(g)} of ${food}`,
    takenOut: (food: string, g: number) => `${f.grams(g)} of ${food} taken out`,
    leftOut: (food: string) => `${food} is left out`,
    lost: (what: string) => `${what}: the batch is out of range.`,
    asked: (what: string) => `${what}: the batch cannot stay as planned.`,
    done: (what: string, total: number) => `${what}: all is poured, ${f.grams(total)} in range.`,
    grown: (what: string, others: number, again: boolean, total: number, planned: number) =>
      `${what}: ${othersChange(others, again)}; the batch comes to ${f.grams(total)} instead of ${f.grams(planned)}.`,
    goesOn: (what: string, others: number, again: boolean) =>
      `${what}: ${othersChange(others, again)}, and the batch stays in range.`,
    changes: (n: number) => `What changes (${f.number(n)})`,
  },
  spoonBack: (food: string, out: number) =>
    `Or take ${f.grams(out)} of ${food} out again: the batch then stays as large as planned.`,
  takenOut: (out: number) => `${f.grams(out)} taken out`,

  /** Before the batch becomes another than planned. */
  ask: {
    heading: (planned: number) => `This cannot be in range at ${f.grams(planned)} any more`,
    grow: (total: number, planned: number) =>
      `A batch of ${f.grams(total)} would be in range instead of ${f.grams(planned)}.`,
    without: (foods: readonly string[]) => `Without ${f.list(foods)} it would be in range.`,
    growWithout: (total: number, planned: number, foods: readonly string[]) =>
      `A batch of ${f.grams(total)} without ${f.list(foods)} would be in range instead of ${f.grams(planned)}.`,
    doGrow: (total: number) => `Grow it to ${f.grams(total)}`,
    doWithout: (foods: readonly string[]) => `Leave out ${f.list(foods)}`,
    doGrowWithout: (total: number, foods: readonly string[]) =>
      `Grow it to ${f.grams(total)} and leave out ${f.list(foods)}`,
    doTakeOut: (out: number, food: string) => `Take ${f.grams(out)} of ${food} out again`,
    takeOutHelp: (out: number, food: string) =>
      `Take ${f.grams(out)} of ${food} out of the bowl now, then press.`,
    takeOutDone: (out: number) => `${f.grams(out)} taken out`,
    takeOutNotYet: 'Back to the choices',
    doKeep: (planned: number) => `Keep ${f.grams(planned)} and leave it out of range`,
    missed: 'If it stays as it is:',
  },

  lost: {
    region: 'Out of range',
    heading: 'This cannot be brought into range',
    noSteps: 'No whole steps of the scale bring this batch into range.',
    sentence:
      'This batch can no longer be brought into range with what there is. The nearest that can be done:',
    larger: (total: number) => `A batch of ${f.grams(total)} would be in range.`,
    largerWith: (total: number, needed: readonly { readonly name: string; readonly grams: number }[]) =>
      `A batch of ${f.grams(total)} would be in range; it takes ${f.list(needed.map((n) => `${f.grams(n.grams)} of ${n.name}`))} more than the packs hold.`,
    grow: (total: number) => `Grow it to ${f.grams(total)} after all`,
    growWithMore: 'Let the batch grow; I have more of it',
    goOn: 'Or go on below: the next amounts are the nearest that can be done.',
    why: 'Accept the bowl as it is, because',
    whyMissing: 'Write the reason; it is kept with the batch.',
    accept: 'Accept as it is and finish',
    again: 'Start again',
    againSure: 'Yes, empty the bowl and start again',
    againHelp: 'This batch is then closed, marked as not to be fed, and a new one of the same plan begins.',
    againFailed: (why: string) => `No new batch was begun: ${why}`,
    startedAgain: 'started again with an empty bowl',
  },

  finish: {
    region: 'All is poured',
    heading: (total: number) => `All is poured: ${f.grams(total)}`,
    press: 'Finish the batch',
    madeBy: 'Made by (optional)',
  },
  giveUp: {
    press: 'Give up this batch',
    emptyHelp: 'Nothing is poured yet, so nothing is lost.',
    help: 'What was poured stays on record and counts as gone from its packs; the batch is closed as not to be fed.',
    why: 'Why (optional; it is kept with the batch)',
    noReason: 'no reason was written',
    yesDelete: 'Yes, delete it',
    yes: 'Yes, give it up',
    no: 'No, go on',
  },
  takeBack: (food: string, g: number) =>
    `Take back the last entry (${f.grams(g)} of ${food}), it was written wrong`,
  usedUp: (food: string) => `No more of ${food}: it is not asked for again.`,
  moreAfterAll: (food: string) => `There is more of ${food} after all`,

  list: {
    region: 'All foods of the batch',
    heading: 'All foods',
    done: (done: number, all: number) => `${f.number(done)} of ${f.number(all)} done`,
    state: { poured: 'poured', 'left out': 'left out', now: 'now', 'to come': 'to come' },
    planned: (g: number) => `planned ${f.grams(g)}`,
    otherToCome: (food: string, g: number) => `${food}, ${f.grams(g)} to come`,
    otherMore: (food: string, g: number) => `more of ${food}, ${f.grams(g)} in the bowl`,
    otherLeftOut: (food: string) => `${food}, left out now`,
    otherNotPlanned: (food: string) => `${food}, not planned`,
  },

  /** What the server does not have yet. */
  save: {
    saving: (g: number, food: string) => `Saving ${f.grams(g)} of ${food}…`,
    savingChange: 'Saving your last change…',
    savingEnd: 'Saving the end of the batch…',
    waits: (pours: number) =>
      `${f.count(pours, { one: 'pour waits', other: 'pours wait' })} to be sent. Go on pouring; nothing is lost.`,
    changeWaits: 'Your last change waits to be sent. Go on; nothing is lost.',
    endWaits: 'The end of the batch waits to be sent; nothing is lost.',
    tryNow: 'Try now',
    refused: (g: number, food: string, why: string) =>
      `<b>Not noted:</b> ${f.grams(g)} of ${food}. ${why} What stands here is the batch as it is kept; look into the bowl before you pour on.`,
    refusedChange: (why: string) =>
      `<b>Not noted:</b> your last change. ${why} What stands here is the batch as it is kept; look into the bowl before you pour on.`,
    refusedEnd: (why: string) =>
      `<b>Not noted:</b> the end of the batch. ${why} What stands here is the batch as it is kept; look into the bowl before you pour on.`,
    asked: 'Another device changed the same of this batch meanwhile: choose above which is to stand.',
  },

  /** Packs that a food comes from. */
  lots: {
    from: (packs: readonly string[]) => `From ${packs.join(', then ')}.`,
    bought: (pack: string, day: string) => `${pack}, ${day}`,
    grams: (pack: string, g: number) => `${pack} (${f.grams(g)})`,
    rest: (g: number) => `No pack that is ready holds the other ${f.grams(g)}.`,
    none: 'No pack of it is ready to weigh out.',
    passed: 'Packs that are not ready',
    why: (grams: number, why: string, wayOut: string) => `(${f.grams(grams)}): ${why} ${wayOut}`,
    goAhead: (pack: string) => `Weigh ${pack} out without freezing…`,
  },

  scaleSteps: 'The scale reads in steps of',
  scaleStep: (g: number) => f.grams(g),
  order: {
    why: 'Why in this order',
    free: (food: string) => `${food}: no rule minds how much of it there is, so it may go in at any time.`,
    early: (food: string, on: string) =>
      `${food} goes in early: it moves the ${on} most, and the foods after it can still make up for it.`,
    between: (food: string, on: string) => `${food} goes in between: it moves the ${on} somewhat.`,
    late: (food: string, on: string) =>
      `${food} goes in late: poured a little wrong it hardly moves the ${on}, and little comes after it to mend that.`,
  },

  begin: {
    running: 'Being weighed',
    goOn: (name: string) => `Go on weighing ${name}`,
    finished: 'Finished',
    record: (name: string) => `Record of ${name}`,
    region: 'A new batch',
    weight: 'Weight of the batch',
    working: 'Working…',
    fitFirst: 'Make the mix fit first; then it can be weighed out.',
    press: (g: number) => `Begin with ${f.grams(g)}`,
    busy: 'Working it out…',
    failed: (why: string) => `The batch was not begun: ${why}`,
    notReady: 'Packs that are not ready',
    notReadyHeading: 'Not ready to weigh out',
    notReadyHelp: 'These packs are not counted, and there is not enough of their foods without them.',
    withoutCounting: 'I have what is missing: begin without counting the packs',
    thisBatch: 'This batch',
    batches: 'batches',
    made: (when: string, g: number) => `${when}, ${f.grams(g)}`,
    madeOf: (when: string, g: number, of: number) => `${when}, ${f.grams(g)} of ${f.grams(of)}`,
  },

  sheet: {
    print: 'Print the sheet to weigh by',
    heading: (grams: number, step: number, batch: string, day: string) =>
      `To weigh out: ${f.grams(grams)} in steps of ${f.grams(step)}. Batch ${batch}, begun on ${day}.`,
    weighed: 'Weighed on <day></day> by <name></name>',
    food: 'food, and the pack it comes from',
    pour: `pour, ${f.massUnit}`,
    range: 'from–to',
    total: `total, ${f.massUnit}`,
    weighedColumn: `weighed, ${f.massUnit}`,
    span: (low: string, high: string) => `${low} to ${high}`,
    rangeHelp:
      'From–to: the batch stays in range while this food lies between and all others are as printed. If one is outside, or several are off, write it in on the page: the others then change.',
    short: (food: string, g: number) => `${food}: ${f.grams(g)} short.`,
    caution: (foods: readonly string[], way: string) => `<b>${f.list(foods)}:</b> ${way}`,
    notComplete: 'Not veterinary advice. A home mix never replaces a complete food.',
  },
});

function othersChange(n: number, again: boolean): string {
  if (n === 0) return 'nothing changes';
  const amounts = n === 1 ? 'one other amount changes' : `${n} other amounts change`;
  return again ? `${amounts}, and more is needed of what was poured` : amounts;
}

export type Weighing = ReturnType<typeof weighing>;
