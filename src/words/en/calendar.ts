import type { Figures } from '../figures.ts';

export const calendar = (f: Figures) => {
  const days = (n: number) => f.count(n, { one: 'day', other: 'days' });
  return {
    title: 'Days',
    move: {
      isDone: (step: string) => `${step} is done and does not move; move what comes after it.`,
      hasBegun: (step: string) => `${step} has begun and does not move; move what comes after it.`,
      withItsPack: (step: string) => `${step} has its day with its packs: move it there.`,
      stillFreezing: (step: string, day: string, first: string) =>
        `${step} cannot begin on ${day}: what is in the freezer is not done by then. The first day possible is ${first}.`,
      beforePlan: (step: string, day: string, begin: string, first: string) =>
        `${step} cannot begin on ${day}: that is before ${begin}, the first day of the plan. The first day possible is ${first}.`,
      fixedUntil: (step: string, day: string, other: string, until: string, first: string) =>
        `${step} cannot begin on ${day}: ${other} lasts until ${until}. The first day possible is ${first}, or move that step first.`,
      goesOnUntil: (step: string, day: string, other: string, until: string, first: string) =>
        `${step} cannot begin on ${day}: ${other} lasts until ${until}. The first day possible is ${first}, or give that step fewer days.`,
      tooEarlyFor: (step: string, day: string, other: string, needed: string, begin: string, first: string) =>
        `${step} cannot begin on ${day}: ${other} would have to begin on ${needed}, before ${begin}. The first day possible is ${first}, or give the steps between fewer days.`,
      beforeLasts: (step: string, day: string, before: string, until: string) =>
        `${step} cannot begin on ${day}: ${before} before it lasts until ${until}. That is the first day possible, unless you move that step first.`,
      firstDay: (step: string, day: string, first: string) =>
        `${step} cannot begin on ${day}: the first day possible is ${first}.`,
      noRoom: (step: string, day: string, full: string, grams: number, room: number) =>
        `${step} cannot begin on ${day}: on ${full} ${f.weight(grams)} would lie in the freezer, and it has room for ${f.weight(room)}.`,
      nextRoom: (day: string) => `From then on, the first day with room is ${day}.`,
      nowBegins: (step: string, day: string) => `${step} now begins on ${day}.`,
      stays: (step: string, day: string) => `${step} stays on ${day}.`,
      nothingElse: 'Nothing else moves.',
      to: (step: string, day: string) => `${step} to ${day}`,
      withIt: (moves: readonly string[]) => `With it: ${f.list(moves)}.`,
      nowLate: (end: string, due: string) => `The plan now ends on ${end}, after ${due}.`,
      stepGone: (day: string) =>
        `A step that you put on ${day} is no longer in the plan; your day for it is dropped.`,
      dropped: (why: string) => `Your day for a step is dropped. ${why}`,
      begins: (day: string) => `Begins on ${day}`,
      take: (day: string) => `Take ${day}`,
      seeFreezer: 'See all that goes into the freezer',
      anotherDay: 'Another day',
      put: 'Move it there',
      earlier: 'A day earlier',
      later: 'A day later',
      done: 'Done',
      from: (day: string) => `From ${day} on.`,
      by: (day: string) => `By ${day} at the latest.`,
      with: (foods: string) => `With ${foods}.`,
    },

    screen: {
      noShares: (mix: string) =>
        `${mix} has no food with a share yet: <mix>give it some on Mixes</mix>, then there is something to plan.`,
      for: (batch: string, mix: string) => `For ${batch} of ${mix}.`,
      forGrams: (batch: string, mix: string, grams: number) => `For ${batch} of ${mix}, ${f.grams(grams)}.`,
      toBuy: 'How much, and what to buy',
      inShort: 'The plan in short',
      beginPassed: 'The first day you gave has passed, so the plan begins today.',
      overdue: (foods: string, step: string, day: string) =>
        `${foods}: ${step} was over on ${day} and is not ticked off; what follows will be later. <tick>Tick it off</tick>`,
      packWithoutDays: (pack: string) =>
        `${pack} has no days in the freezer yet; the days below do not know how much room there is. <plan>Plan the freezing for the room there is</plan>`,
      packsWithoutDays: (n: number) =>
        `${f.number(n)} packs have no days in the freezer yet; the days below do not know how much room there is. <plan>Plan the freezing for the room there is</plan>`,
      whenRunsOut: '<animals>Go to the animals</animals> or <now>weigh what is left</now>.',
      takeBack: 'Take back the days you chose',
      ready: 'Ready',
      readyToWeigh: 'Ready to weigh out',
      readyFoods: (foods: readonly string[]) => `${f.list(foods)}.`,
    },
    goBy: {
      section: 'What the days go by',
      question: 'What do you go by?',
      today: 'I begin today',
      from: 'I begin on another day',
      runsOut: (name: string, day: string) => `It is ready when ${name} runs out, ${day}`,
      until: 'It is ready by a day I choose',
      beginning: 'Every step comes as early as it can.',
      end: 'Every step comes as late as it can.',
      firstDay: 'First day',
      fromPassed: 'It has passed: today counts.',
      doneBy: 'All done by',
      untilPassed: 'It has passed: give a later day, or begin today.',
    },
    list: {
      section: 'Steps by day',
      title: 'Step by step',
      onDay: (weekday: string, day: string) => `${weekday}, ${day}`,
      today: (day: string) => `${day} (today)`,
      deadline: (day: string) => `${day}: the day by which all has to be done.`,
      doneSoFar: (n: number) => `Done so far (${f.number(n)})`,
      on: (day: string) => `on ${day}`,
      span: (from: string, to: string) => `${from} to ${to}`,
      begun: (when: string) => `${when}, has begun`,
      done: (when: string) => `${when}, done`,
      setsPace: 'sets the pace',
      withPack: 'its day is kept with the pack',
      yourDay: 'your day',
      change: 'Change',
      close: 'Close',
      changeDay: (step: string) => `Change the day: ${step}`,
      closeDay: (step: string) => `Close: ${step}`,
    },
    picture: {
      bowl: 'Into the bowl',
      freeze: 'freezer',
      thaw: 'thaws',
      dry: 'dries',
      weigh: 'weigh out',
      change: 'from old food to new',
      buy: 'buy',
      setsPace: 'thick line: sets the pace, a day lost here is a day lost for all',
      waits: 'dotted: waits',
      done: 'done',
      today: 'today',
      due: (day: string) => `${day}: all has to be done`,
    },
    lengths: {
      title: 'How long each step takes',
      about:
        'For what has no days yet. A pack that has its days in the freezer keeps them until its freezing is planned anew; a big bag is given more.',
      unit: 'days',
      buy: 'Buying',
      freeze: 'Freezing, each time',
      thaw: 'Thawing, each time',
      dry: 'Drying',
      weigh: 'Weighing out',
      'change-over': 'Changing over',
    },
    file: {
      title: 'For your own calendar',
      about:
        'A file that calendar programs read (.ics). A later file of the same batch takes the place of an earlier one.',
      reminder: 'With a reminder at 9 in the morning of each first day',
      save: 'Save the calendar file',
      saved: (name: string) => `Saved as ${name}: open it with your calendar.`,
      failed: (why: string) => `The file could not be made: ${why}`,
      /** As in the name of the file. */
      fileName: (batch: string) => `pouchful-${batch}`,
      /** What is done to which batch: the title of an entry. */
      entryOf: (step: string, made: string) => `${step}: ${made}`,
      check: (food: string) => `Turn and check: ${food}`,
      checkText: (n: number, of: number) =>
        `Check ${f.number(n)} of ${f.number(of)}. Done when nothing is soft or sticky (common practice, no source).`,
      forBatch: (made: string, foods: string) => `For ${made}: ${foods}.`,
      beginBy: (day: string) => `Begin by ${day}.`,
      setsPace: 'Sets the pace: a day lost here is a day lost for all.',
      room: (n: number) => `${days(n)} between the earliest and the latest day.`,
      category: {
        buy: 'Shopping',
        freeze: 'Freezing',
        thaw: 'Freezing',
        dry: 'Drying',
        weigh: 'Weighing',
        'change-over': 'Change of food',
      },
    },
  };
};

export type Calendar = ReturnType<typeof calendar>;
