/** A batch on record: what it holds, how it keeps, its label. */
import type { Figures } from '../figures.ts';

export const batch = (f: Figures) => {
  const months = (n: number) => f.count(n, { one: 'month', other: 'months' });
  return {
    title: (name: string) => `Batch: ${name}`,
    working: 'Working out the record…',
    record: {
      region: 'Verdict',
      givenUp: 'Given up: not to be fed',
      finished: (grams: number, when: string) => `${f.grams(grams)}, finished ${when}.`,
      finishedBy: (grams: number, when: string, by: string) =>
        `${f.grams(grams)}, finished ${when}, made by ${by}.`,
      closed: (grams: number, when: string) => `${f.grams(grams)}, closed ${when}.`,
      closedBy: (grams: number, when: string, by: string) =>
        `${f.grams(grams)}, closed ${when}, made by ${by}.`,
      givenUpHelp:
        'It is no food in hand and reaches no animal. What was poured into it is gone from its packs, and it is still found when a pack is followed.',
      givenUpWhy: (note: string) => `Given up; not to be fed: ${note}`,
      acceptedWhy: (note: string) => `Accepted out of range: ${note}`,
      forbidden: (percent: number) =>
        `${f.percent(percent)} of the batch is food that the caution list forbids: do not feed it.`,
      why: 'What this rests on',
      cautions: 'Cautions',
      caution: (foods: string, title: string, reason: string, way: string) =>
        `<b>${foods}</b>: ${title}. ${reason} ${way}`,
    },
    foods: {
      title: 'What is in it',
      food: 'Food',
      planned: 'planned %',
      from: (grams: number) => `from <pack></pack>, ${f.grams(grams)}`,
    },
    contents: {
      title: 'What it holds',
      help: 'Per 100 g as weighed. ± is how much it may vary from bag to bag (95 of 100 bags lie within), where it is known. “At least” stands where some food does not say.',
      notKnown: 'not known',
      amount: (value: string, unit: string) => `${value} ${unit}`,
      atLeast: (amount: string) => `at least ${amount}`,
      spread: (amount: string, spread: string) => `${amount} ± ${spread}`,
    },
    keeping: {
      title: 'Keeping and feeding',
      useBy: 'Use by <b></b>',
      dry: 'Dry enough to keep',
      unsure: 'Perhaps too damp to keep',
      damp: 'Too damp to keep',
      sources: 'Where this comes from',
      useByTerm: 'Use by',
      moistureTerm: 'Moisture',
    },
    moisture: {
      damp: (water: number, most: number) =>
        `The mix holds about ${f.number(water, 1)} % water, above the ${f.number(most)} % at which it keeps: dry the dampest foods on, use less of them, or keep it in the freezer.`,
      dampAtLeast: (water: number, most: number) =>
        `The mix holds at least ${f.number(water, 1)} % water, above the ${f.number(most)} % at which it keeps: dry the dampest foods on, use less of them, or keep it in the freezer.`,
      unknown: (percent: number) =>
        `Moisture is known for only ${f.number(percent)} % of the mix, so nobody can say whether it keeps.`,
      unsure: (water: number, most: number) =>
        `The mix holds about ${f.number(water, 1)} % water; it may be more than the ${f.number(most)} % at which it keeps. Keep it in a glass and look for damp.`,
      dry: (water: number, most: number) =>
        `The mix holds about ${f.number(water, 1)} % water and keeps (at most ${f.number(most)} %).`,
    },
    keep: {
      jar: 'Keep it in a closed jar or tin, cool, dark and dry.',
      look: 'Use glass, or look in often: damp on the inside means dry it again now; mould means throw all of it away.',
      small: 'Pack small amounts: every opening lets damp air in.',
      rancid:
        'Fat seeds and nuts turn rancid in warmth, light and air: what is not used within a month is better off in the freezer.',
      smell: 'Smell it before you feed it; throw it away when it smells of old oil or paint.',
      thaw: 'Let a frozen jar reach the warmth of the room before you open it, or water will settle on the food.',
    },
    /** Kinds of food, many of each. */
    kinds: {
      nut: 'shelled nuts',
      'nut in shell': 'nuts in the shell',
      'oil seed': 'whole oil seeds',
      'crushed oil seed': 'crushed oil seeds and nuts',
      grain: 'whole grains',
      'crushed grain': 'flakes, meal and flour of whole grains',
      legume: 'dried peas, beans and lentils',
      vegetable: 'dried vegetables',
      fruit: 'dried fruit',
      herb: 'dried herbs and flowers',
      animal: 'dried insects and other animal food',
      other: 'other dry food',
    },
    useBy: {
      pack: (food: string, pack: string) => `${food} (pack “${pack}”)`,
      bestBefore: (pack: string, day: string) => `Best before of ${pack} is ${day}.`,
      printed: 'printed on the pack',
      bought: (pack: string, day: string, n: number, kind: string) =>
        `${pack}, bought on ${day}, keeps about ${months(n)}, as ${kind} do.`,
      mixed: (food: string, n: number, kind: string) =>
        `${food} keeps about ${months(n)} from mixing, as ${kind} do.`,
      damp: (food: string, water: number, most: number, days: number) =>
        `${food} holds ${f.number(water, 1)} % water, above the ${f.number(most)} % at which it keeps: about ${f.count(days, { one: 'day', other: 'days' })}.`,
      beforeMade: (day: string, food: string) =>
        `That is before it was made on ${day}: smell and look at ${food} before you feed any.`,
      noWater: (foods: readonly string[]) =>
        `The moisture of ${foods.join(', ')} is not known and was not counted.`,
      noFat: (foods: readonly string[]) => `The fat of ${foods.join(', ')} is not known.`,
    },
    label: {
      printJar: 'Print the label for the jar',
      print: 'Print the large label',
      homeMix: (grams: number, batch: string) => `Home mix, ${f.grams(grams)}. Batch ${batch}`,
      madeOn: 'Made on',
      by: (name: string) => `by ${name}`,
      useBy: 'Use by',
      feed: 'Feed',
      keep: 'Keep',
      mind: 'Mind',
      in100g: 'In 100 g',
      foods: 'Foods, by weight',
      share: (food: string, percent: number) => `${food} ${f.fixed(percent, 1)}\u00a0%`,
      caution: (foods: readonly string[], title: string, reason: string, way: string) =>
        `${f.list(foods)}: ${title}. ${reason} ${way}`,
      why: (title: string, reason: string, way: string) => `${title}. ${reason} ${way}`,
      most: (percent: number) => `At most ${f.number(percent)} % of the mix.`,
      mostTogether: (percent: number) => `At most ${f.number(percent)} % of the mix together.`,
      notComplete: 'Not veterinary advice. A home mix never replaces a complete food.',
      notCompleteAlone: 'Not a complete food.',
      notCompleteBeside: (foods: readonly string[]) =>
        `Not a complete food: feed it beside ${f.list(foods)}.`,
      andMore: (n: number) => `${f.count(n, { one: 'more animal', other: 'more animals' })}: see the record.`,
    },
    ownMoisture: 'as the keeper says',
    dampTable: { cereal: 'cereal', soybean: 'soybean; taken for want of a table of its own' },
  };
};

export type Batch = ReturnType<typeof batch>;
