/** What is eaten when a food is left, who refuses what, and what can take a food's place. */
import type { Figures } from '../figures.ts';

export const refusals = (f: Figures) => ({
  heading: 'If a food is left',
  foods: 'Foods of the mix',
  takeBack: 'Take that back',
  refuses: (animal: string, food: string, mixes: readonly string[]) =>
    `${animal} refuses ${food}: it is out of ${f.list(mixes)}.`,
  mayBeFed: (animal: string, food: string) => `${animal} may be fed ${food} again.`,
  first: {
    none: 'No mix keeps these rules. What collides, and what mends it, is listed near the top. After that, you see here what happens when a food is left, and what can take its place.',
    out: 'The mix is not in range as it stands. Make it fit first. After that, you see here what happens when a food is left, and what can take its place.',
  },
  safety: {
    safe: 'Any one food may be left: what is eaten stays in range.',
    unsafe: 'The ration goes out of range when some foods are left; which ones, and how, is listed below.',
    impossible:
      'No mix of these foods stays in range whichever one is left. What collides and what would mend it stand near the top of this page; or give the wish up here.',
    wanted: 'It is asked of this mix that any one food may be left.',
    giveUp: 'Give that up',
    makeSafe: 'Make it safe',
    looking: 'Looking for a mix that stays in range whichever food is left…',
    noAnswer: 'No answer came; try again.',
    changed: 'The mix has changed meanwhile; ask again.',
    isSafe: 'The mix fits anew: any one food may be left.',
    gaveUp: 'The mix may go out of range when a food is left.',
  },
  food: {
    share: (share: number) => f.percent(share, 1),
    mayBeLeft: '✓ may be left',
    breaks: (wrong: string) => `! ${wrong}`,
    spokenSafe: (food: string, share: number) => `${food}, ${f.percent(share, 1)}: may be left`,
    spoken: (food: string, share: number, wrong: string) => `${food}, ${f.percent(share, 1)}: ${wrong}`,
    fine: 'Without it, what is eaten stays in range.',
    refusesThis: (animal: string) => `${animal} refuses this`,
    leaves: (animals: number) =>
      f.form(animals, {
        one: 'It then leaves every mix made for it.',
        other: 'It then leaves every mix made for that animal.',
      }),
    low: (what: string) => `${what} too low`,
    high: (what: string) => `${what} too high`,
    aRule: 'a rule',
    aShare: 'a share',
    ratio: (over: string, under: string) => `${over} to ${under}`,
    andMore: (first: string, more: number) => `${first} and ${f.number(more)} more`,
  },
  swap: {
    heading: 'What can take its place',
    heldHint: 'Its share is held. Let go of it, and what can take its place is listed here.',
    othersHeld: 'Foods that are held keep their shares in a swap.',
    done: (out: string, other: string) =>
      `${out} is swapped for ${other}; ${out} stays in the list at 0 %. Undo takes it back.`,
    further: (share: string, all: number) => `further ${share}, then ${f.percent(all, 1)} in all`,
    unsure: 'some of what it holds is not known, so the rules may not hold',
    swap: 'Swap',
    swapOf: (out: string, other: string) => `Swap ${out} for ${other}`,
    inMix: 'in the mix',
    fromTables: 'from the tables',
    listed: 'listed, at 0 %',
    hardly: (share: number) => `${f.percent(share)} (hardly any other share)`,
    upTo: (share: number, high: number) => `${f.percent(share)} (up to ${f.percent(high)})`,
    from: (share: number, low: number, high: number) =>
      `${f.percent(share)} (${f.number(low)} to ${f.percent(high)})`,
  },
});

export type Refusals = ReturnType<typeof refusals>;
