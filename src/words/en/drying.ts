import type { Figures } from '../figures.ts';

export const drying = (f: Figures) => {
  const hours = (n: number) => `${f.number(n)} h`;
  return {
    title: 'Drying',
    halfDried: (food: string) => `${food}, half dried`,
    food: 'Food',
    weighedAndDriedOn: 'weighed, and dried on',
    thrownAwayNote: 'thrown away',
    asDried: (source: string, water: number, day: string) =>
      `${source}; at ${f.percent(water, 1)} water as dried on ${day}`,

    holds: {
      damp: (water: number, most: number) =>
        `It holds about ${f.percent(water, 1)} water, above the ${f.percent(most)} at which it keeps: not dry enough to keep. Dry it on and weigh again, or freeze it.`,
      dry: (water: number, most: number) =>
        `It holds about ${f.percent(water, 1)} water: dry enough to keep (at most ${f.percent(most)}).`,
      unsure: (water: number, most: number) =>
        `It holds about ${f.percent(water, 1)} water, but it may be more than the ${f.percent(most)} at which it keeps. Dry on until a cooled piece breaks, keep it in a glass for a week and look for damp, or dry a small sample till it loses no more weight.`,
    },
    waterWithRange: (water: number, low: number, high: number) =>
      `${f.percent(water, 1)} (${f.number(low, 1)} to ${f.percent(high, 1)})`,
    fault: {
      sayFreshFirst: 'Say first which fresh food it is: its water is needed.',
      waterNotKnown: (food: string) =>
        `The water of ${food} is not known. Dry a small sample till it loses no more weight, and enter its two weights.`,
      noLighter: (after: number, before: number) =>
        `Weight after (${f.grams(after)}) is not below the weight before (${f.grams(before)}): drying takes water out. Were the two swapped, or was a tray weighed with it?`,
      tooLight: (after: number, least: number, before: number, water: number) =>
        `Weight after (${f.grams(after)}) is less than the dry matter of the fresh food (${f.grams(least, 1)} of ${f.grams(before)} at ${f.percent(water)} moisture). Weigh again, count what fell through or was eaten, or give the moisture of this fresh food, which must have been damper.`,
      sampleHeavier: (dry: number, fresh: number) =>
        `The dry sample (${f.grams(dry)}) is heavier than the fresh one (${f.grams(fresh)}); weigh again.`,
      sampleAfterStart: (of: number, before: number) =>
        `The load weighed ${f.grams(of)} when the sample was taken, more than the ${f.grams(before)} at the start; correct one of the two.`,
    },
    lighterThanTable:
      'It weighs a little less than the table says of its dry matter. So the fresh food was damper than in the table, or some was lost. It counts as 0 % moisture.',
    dryWhen: {
      'vegetable-oven': 'nothing is soft or sticky any more',
      vegetable: 'hard and brittle, or tough and leathery where the pieces are large; about 10 % moisture',
      leaf: 'brittle; about 10 % moisture',
      herb: 'leaves crumble and stems break; about 10 % moisture',
      fruit: 'leathery, and no moisture can be squeezed out',
    },
    layer: {
      vegetable: 'common practice, no source: one layer of pieces some 5 mm thick with gaps for the air',
      leaf: 'common practice, no source: one loose layer',
      herb: 'common practice, no source: one layer, leaves not touching',
      fruit: 'common practice, no source: one layer of slices, not touching',
    },
    known: { 'common practice': 'common practice', published: 'published' },
    caution: {
      stay: 'Stay at home and awake while it dries and look every 2 hours; never leave it running alone or overnight. What is nearly dry scorches fast and can catch fire.',
      oven: 'Dry in the oven only where no young children and no animals are about. Without a fan its door stands ajar 5 to 15 cm to let the damp out, and it is hot for hours.',
      'no-break':
        'Dry without a break and to the end: half-dry food left standing moulds, and what shows mould is thrown away, not dried on.',
      thermometer: (celsius: number) =>
        `Test with an oven thermometer where the food will lie that the oven can hold a low heat; many do not go below ${f.degrees(celsius)}, and herbs and leaves are then better dried in a dehydrator or in warm air.`,
      crust: 'Too hot at the start, and the outside hardens while the inside stays damp and moulds later.',
      'last-hours': 'Turn the heat down for the last hours: food that is nearly dry needs less.',
      cool: 'Let pieces cool before you test them: warm food feels softer and damper than it is.',
    },

    screen: {
      runs: 'Runs',
      run: 'Run',
      dryer: 'Dryer',
      yourDryer: 'Your dryer',
      dryerIs: (device: string, trays: number, area: number, celsius: number) =>
        `${device}, ${f.number(trays)} × ${f.number(area, 1)} dm², ${f.degrees(celsius)}`,
      dryerNotSaid: 'Not said yet: oven or dehydrator, and its trays',
      notHere: 'Not kept here',
      notHereWhy: 'There is no run or fresh pack of this name any more. It may be used up, or deleted.',
      back: '‹ All of drying',
      thisDrying: 'This drying',
      thisRun: 'This drying run',
    },
    list: {
      now: 'Drying now',
      toDry: 'To dry',
      finished: 'Finished',
      nothingFresh: 'Nothing fresh is in stock. <add>Add a new pack</add>, kind “Fresh”.',
      leftOf: (left: string, all: string) => `${left} left of ${all}`,
      inFreezer: (what: string) => `${what}, in the freezer`,
      bought: (what: string, day: string) => `${what} · bought ${day}`,
      halfDried: (what: string, day: string) => `${what} · half dried ${day}`,
      thrownAway: (when: string) => `Thrown away, ${when}`,
      became: (before: string, after: string, when: string) => `${before} became ${after} · ${when}`,
      becameWith: (before: string, after: string, water: string, when: string) =>
        `${before} became ${after}, ${water} water · ${when}`,
    },
    state: {
      drying: 'Drying',
      weighed: 'Weighed: say what becomes of it',
      done: 'Finished',
      lost: 'Thrown away',
    },
    check: {
      section: 'Next check',
      weight: 'Weight at this check, if you weigh it',
      weightShort: 'Weight at this check',
      waterNow: (water: string) => `About ${water} water by now.`,
      noTrays: 'Without trays.',
      note: 'Note, if you like',
      noteExample: 'still soft in the middle',
      done: 'I looked and turned it',
      soFar: 'Checks so far',
      atGrams: (when: string, grams: string) => `${when}: ${grams}`,
      atWater: (when: string, grams: string, water: string) => `${when}: ${grams}, about ${water} water`,
      withNote: (line: string, note: string) => `${line} · ${note}`,
      asFile: 'Checks as a calendar file',
      fileName: 'drying-checks.ics',
      notify: 'Notify me when a check is due',
      notified: 'Notifications come as long as this page is open.',
      notNotified: 'Notifications are turned off for this page in the browser.',
      fileFailed: (why: string) => `The calendar file could not be made: ${why}`,
    },
    page: {
      began: 'Began',
      ended: 'Ended',
      oven: 'Oven',
      dehydrator: 'Dehydrator',
      trays: (n: number) => f.count(n, { one: 'tray', other: 'trays' }),
      set: (celsius: number, trays: string) => `${f.degrees(celsius)}, ${trays}`,
      setFor: (celsius: number, trays: string, h: number) =>
        `${f.degrees(celsius)}, ${trays}, about ${hours(h)}`,
      onTrays: 'On the trays',
      ofTaken: (weight: string, taken: string) => `${weight} of ${taken} taken`,
      pack: 'Pack',
      wasLost: (name: string) => `Was ${name} thrown away?`,
      deleteRun: (name: string) => `Delete the run of ${name}?`,
      goBack: 'No, go back',
      lost: 'It was thrown away',
      delete: 'Delete the run',
      lostMeans: 'The run ends and nothing of it comes into stock. What it took from the pack stays used.',
      deleteMeans: 'For a run begun by mistake: what it took is in the pack again.',
      askLost: 'Thrown away…',
      askDelete: 'Delete this run…',
    },
    facts: {
      yield: 'Yield',
      yieldIs: (after: string, before: string, percent: number) =>
        `${after} of ${before}: ${f.percent(percent, 1)}`,
      water: 'Water, and how far off it may be (95 times in 100)',
      keepsAt: 'Keeps at',
      orLess: (most: number) => `${f.percent(most)} water or less`,
      limit: (source: string) => `Limit: ${source}`,
    },
    verdict: {
      section: 'Verdict',
      dry: 'Dry enough to keep',
      unsure: 'Perhaps not dry enough',
      damp: 'Too damp to keep',
      notEnded: 'Not ended yet',
      keptNotEnded: (name: string) => `${name} is kept, but the end of this run was not saved.`,
      end: 'End the run',
      notKnown: 'Not known yet',
      dryOn: 'Dry on',
      toStock: 'Put it into stock',
      toFreezer: 'Put it into the freezer',
      dampMeans: (h: number) =>
        `It does not go into stock. Dried on, the next check is ${hours(h)} from now. From the freezer it can be dried another day; it is not weighed out till then.`,
      sampleToBeSure: 'Dry out a small sample to be sure',
      keepAnyway: 'Keep it all the same',
      whyKeep: 'Why you keep it, and how you watch it',
      whyExample: 'every piece breaks; in a glass for a week',
      sayWhy: 'Write a note that says why; it stays with the run.',
      keepUnderNote: 'Keep it under this note',
      dryOnAnyway: 'Dry on all the same',
    },
    end: {
      section: 'Done drying',
      title: 'Done?',
      how: 'Let it cool, then weigh all of it without the trays.',
      weight: 'Weight after',
      weigh: 'Weigh it',
      sampleDone: 'A sample was dried out',
      sample: 'Dry out a sample of the fresh food',
    },
    sample: {
      putBack: 'Put it back with the rest then.',
      before: 'Sample before',
      dry: 'Sample dried out',
      held: (water: number) => `It held ${f.percent(water, 1)} water.`,
      step: 'The scale shows steps of',
      count: 'Count with the sample',
      leaveOut: 'Leave the sample out',
      counts: 'The sample counts in place of the table; all that is left of the doubt is the scale.',
    },
    result: {
      section: 'Result',
      inStock: 'In stock as <pack></pack>.',
      inFreezer: 'In the freezer as <pack></pack>.',
      halfDried: 'In the freezer as <pack></pack>, half dried: it is not weighed out till it was dried on.',
      keptThough: (day: string, note: string) => `Kept on ${day} though it may be too damp: “${note}”`,
      startLoad: (n: number, of: number) => `Start load ${f.number(n)} of ${f.number(of)}`,
    },
    inMix: {
      section: 'In the mix',
      notNamed: 'The mix at hand does not name this food.',
      noFigures: 'The figures of this food are not at hand.',
      working: 'Working…',
      title: (grams: number) => `What ${f.grams(grams)} of it hold`,
      caption: (grams: number) => `Per ${f.grams(grams)} as weighed.`,
      content: 'Content',
      counts: (mix: string) => `“${mix}” counts`,
      sameAt: (water: number) => `The same at ${f.percent(water, 1)} water`,
      fromFresh: 'From the fresh food',
      about:
        'Water apart, another harvest differs more than another dryer: the last column, worked out from the fresh food, is a second opinion.',
      countsWith: (water: number) => `The mix counts with ${f.percent(water, 1)} water.`,
      use: 'Use it in the mix',
      used: 'The mix has it; look there whether it is still in range.',
      batches: 'Batches count with the water of their packs already; this is for what you plan.',
      notKnown: 'not known',
      undoName: 'moisture as dried',
    },
    dryer: {
      with: 'What you dry with',
      oven: 'Oven',
      dehydrator: 'Dehydrator',
      trays: 'Trays',
      usual: 'Usual temperature',
      size: 'Size of one tray',
      byWidth: 'Width and length',
      byArea: 'Area',
      width: 'Width',
      length: 'Length',
      area: 'Area',
      cm: 'cm',
      dm2: 'dm²',
      areaIs: (dm2: number) => `${f.number(dm2)} dm²`,
      areaHint: 'A tray of 40 × 30 cm has 12 dm² (square decimetres: 10 × 10 cm each).',
      keep: 'Keep the dryer',
      kept: 'Kept.',
    },
    heed: { section: 'Heed while it dries', more: 'More to heed while it dries' },
    fresh: {
      title: 'Which fresh food is it?',
      why: 'How dry it is follows from the water that the fresh food holds.',
      planned: (water: number) => `Planned to ${f.percent(water)} water when dry`,
    },
    number: {
      empty: (label: string) => `${label} is empty: enter a number.`,
      none: (label: string, typed: string, one: number, other: number) =>
        `${label}: “${typed}” is not a number; write for example ${f.number(one)} or ${f.number(other)}.`,
      tooLow: (label: string, typed: string) => `${label}: ${typed} is too low; it must be above 0.`,
      tooHigh: (label: string, typed: string, most: number) =>
        `${label}: ${typed} is too high; it may be ${f.number(most)} at most.`,
      notWhole: (label: string, typed: string) => `${label}: ${typed} is not a whole number.`,
    },
    plan: {
      title: (name: string) => `Dry ${name}`,
      inFreezer: (weight: string) => `${weight} in the freezer.`,
      inStock: (weight: string) => `${weight} in stock.`,
      halfDried: (water: number) => `Half dried: ${f.percent(water, 1)} water.`,
      freshFood: (food: string) => `Fresh food: ${food}.`,
      freshFoodWith: (food: string, water: number, source: string) =>
        `Fresh food: ${food}, ${f.percent(water, 1)} water (${source}).`,
      loadsFollow: 'How many loads it takes follows from the trays.',
      restOf: (done: number, rest: string) =>
        `${f.count(done, { one: 'load is', other: 'loads are' })} done. The rest of what was planned is ${rest}.`,
      howMuch: 'How much',
      taken: 'Taken from the pack',
      ready: 'Trimmed and ready',
      about: (weight: string) => `about ${weight}`,
      readyHint: 'As your scale says: how dry it gets is worked out from it.',
      kind: 'Kind',
      kinds: {
        vegetable: 'Vegetable, in pieces',
        leaf: 'Leafy vegetable',
        herb: 'Herb or flower',
        fruit: 'Fruit',
      },
      estimate: (note: string) => `Estimate: ${note}`,
      leaves: (weight: string) => `That leaves about ${weight}.`,
      perArea: 'Weight on 1 dm²',
      onTrays: 'On the trays now',
      firstOf: (loads: number) =>
        `The first of ${f.number(loads)} loads; keep the rest cold. The next starts when this one ends.`,
      temperature: 'Temperature',
      time: 'Time',
      mayTake: (most: number, every: number) =>
        `It may take up to ${hours(most)}; a check every ${hours(every)} goes on till you weigh it dry.`,
      checkEvery: (every: number) => `A check every ${hours(every)}.`,
      startLoad: 'Start this load',
      start: 'Start drying',
      takenTooMuch: (typed: string, has: string) =>
        `Taken from the pack: ${typed} is more than the ${has} that are left.`,
      readyTooMuch: (typed: string, taken: string) =>
        `Trimmed and ready: ${typed} is more than the ${taken} taken from the pack.`,
      eachTooMuch: (typed: string, ready: string) =>
        `On the trays now: ${typed} is more than the ${ready} that are ready.`,
      howThick: (trays: number, area: number) =>
        `How thick, on ${f.count(trays, { one: 'tray', other: 'trays' })} of ${f.number(area, 1)} dm²`,
      onArea: (grams: number, loads: string) => `${f.grams(grams)} on 1 dm²: ${loads}`,
      loads: (n: number) => (n === 1 ? 'one load' : `${f.number(n)} loads`),
      loadsOf: (n: number, weight: string) =>
        n === 1 ? `one load of ${weight}` : `${f.number(n)} loads of ${weight}`,
      asILoad: 'As I load them',
      asILoadThem: (loads: string) => `As I load them: ${loads}`,
      howHot: 'How hot and how long',
      way: (celsius: string, h: string) => `${celsius}, ${h}`,
      hours: (low: number, high: number) =>
        low === high ? hours(low) : `${f.number(low)} to ${hours(high)}`,
      degrees: (low: number, high: number) =>
        low === high
          ? f.degrees(low)
          : `${f.number(f.heat(low), 0)} to ${f.number(f.heat(high), 0)} ${f.heatUnit}`,
      doneWhen: (sign: string) => `Done when: ${sign}.`,
    },
  };
};

export type Drying = ReturnType<typeof drying>;
