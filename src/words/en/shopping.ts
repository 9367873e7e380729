/** The shopping list, prices and sellers, and weights as packs print them. */
import type { Figures } from '../figures.ts';

export const shopping = (f: Figures) => {
  const packs = { one: 'pack', other: 'packs' };
  return {
    title: 'To buy',
    mix: 'Mix',
    forMix: (mix: string) => `for ${mix}`,
    /** @param lasts for how long, and for whom */
    sizeOf: (batch: string, lasts: string | undefined) =>
      lasts === undefined ? `For ${batch} of the mix.` : `For ${batch} of the mix: ${lasts}.`,
    changeSize: 'Change how much',
    sharesNotWhole: (total: number) =>
      `The shares of this mix add up to ${f.percent(total)}, not 100 %, so nobody can say how much to buy. <fit>Make the mix fit</fit> first.`,
    notInRange: '<verdict></verdict> <fit>Make the mix fit</fit> before you buy for it.',
    list: {
      label: 'Shopping list',
      count: (n: number) => `${f.count(n, { one: 'food', other: 'foods' })} to get`,
      nothing: 'Nothing to buy: all of it is in your stock.',
      hint: 'Grams are what the batch takes, rounded up. Ticks are kept and show on your other devices too.',
      groups: {
        seed: 'Seeds, grains and nuts',
        legume: 'Beans, peas and lentils',
        vegetable: 'Herbs and vegetables',
        fruit: 'Fruit',
        animal: 'Animal protein',
        other: 'Other foods',
        beside: 'Fed beside the mix',
      },
      got: (food: string, amount: string) => `${food}, ${amount}`,
      fresh: (amount: string) => `${amount} fresh`,
      freshAtLeast: (amount: string) => `over ${amount} fresh`,
      dried: (grams: string) => `${grams} dried`,
      how: (food: string) => `How you get it: ${food}`,
      bought: 'Bought',
      home: 'At home',
      dry: 'I dry it',
      more: (food: string) => `More about ${food}`,
      gives: (grams: string) => `gives ${grams} dried`,
      partly: (grams: string) => `${grams} more in your stock`,
      freshUnknown: 'fresh weight not known',
      trimUnknown: 'what is trimmed off is not known',
      notCounted: (n: number) => `${f.count(n, packs)} not counted`,
      weight: 'Weight you have, if it is another',
      weightHint: 'As it goes into your stock.',
    },
    stocked: {
      summary: (n: number) => `In your stock already (${f.number(n)})`,
    },
    bar: {
      label: 'Put into your stock',
      ticked: (n: number, all: number) => `${f.number(n)} of ${f.number(all)} ticked`,
      all: 'All bought today',
      only: (n: number) => `Only what is ticked (${f.number(n)})`,
      ask: (n: number) =>
        f.form(n, {
          one: 'One food goes into your stock. Was it frozen against insects already?',
          other: `${f.number(n)} foods go into your stock. Were the dry ones frozen against insects already?`,
        }),
      askHint:
        'Dry goods can bring insects in. One answer for the whole basket; you can change it for each pack later.',
      no: 'No, or I am not sure: I freeze them first',
      seller: 'Yes, by the seller',
      self: 'Yes, by me at home',
      frozenBySeller: 'frozen already by the seller',
      frozenByMe: 'frozen already at home',
      put: 'Put into my stock',
      notYet: 'Not yet',
    },
    told: {
      label: 'Bought just now',
      kept: (n: number) => `In your stock: ${f.count(n, packs)}.`,
      keptNamed: (packs: string) => `In your stock: ${packs}.`,
      back: (packs: string) => `Taken back: ${packs}.`,
      which: 'Which',
      pack: (name: string, grams: string) => `${name}, ${grams}`,
      notKept: (names: string, why: string) => `Not kept: ${names}. ${why}`,
      stillThere: (names: string, why: string) => `Still in your stock: ${names}. ${why}`,
      noWeight: (names: string) =>
        `Not put into your stock, since nobody knows how much it is: ${names}. Say its weight under “More”.`,
      home: 'What was at home stands with today’s date; change it in its pack if it is older.',
      rest: 'Try the rest again',
      plan: 'Plan the freezing',
    },
    apart: (seller: string) =>
      `What else was to come from ${seller} is planned anew, as an order of its own with delivery and minimum order.`,
    waiting: (n: number) =>
      f.form(n, {
        one: 'One pack in your stock still has to be frozen against insects.',
        other: `${f.number(n)} packs in your stock still have to be frozen against insects.`,
      }),
    freezer: 'Freezing',
    papers: {
      print: 'Print the list',
      copy: 'Copy as text',
      copied: 'Copied.',
      noCopy: 'This browser does not let the page copy; print the list instead.',
    },
    size: {
      label: 'Size of the batch',
      next: 'Size of the next batch',
      inGrams: 'By weight',
      inDays: 'In days',
      days: 'Days it is to last',
      notWhole: (days: number) => `Days it is to last: ${f.number(days)} is not a whole number of days.`,
      weight: 'Weight of the batch',
      /** @param lasts days, or less than one @param daily grams a day of all animals together */
      lasts: (days: number, over: boolean, names: readonly string[], daily: string) => {
        const whole = f.count(days, { one: 'day', other: 'days' });
        const time = days < 1 ? 'less than a day' : over ? `a little over ${whole}` : whole;
        return `${time} for ${f.list(names)}, who ${f.form(names.length, { one: 'eats', other: 'eat' })} ${daily} of it a day`;
      },
      noPart:
        'What is fed beside the mix makes up the whole ration, so a day takes none of the mix. <mix>Change the ration</mix>.',
      noAnimal:
        'This mix is made for no animal yet, so days say nothing about grams. <mix>Choose its animals</mix>, or say the weight of the batch.',
      notKnown:
        'How much <who></who> eats a day is not known. <page></page>: then days and the price of a day are known.',
      notKnownNeeded:
        'How much <who></who> eats a day is not known. <page></page>, or say the weight of the batch.',
      page: (animal: string) => `Say it on ${animal}’s page`,
    },
    stock: {
      label: (food: string) => `${food} in your stock`,
      from: (grams: string) => `${grams} from <lot></lot>`,
      fromFresh: (grams: string, dried: string) => `${grams} from <lot></lot>, ${dried} once dried`,
      bought: (day: string) => `bought ${day}`,
      freshFirst: 'fresh: dry it first',
      fromTrays: (grams: string) => `About ${grams} from <run></run>`,
      onTrays: (lot: string) => `${lot} on the trays`,
      passed: (grams: string) => `Not counted: ${grams} of <lot></lot>; <why></why>.`,
      passedTrays: (grams: string) => `Not counted: ${grams} of <lot></lot> on the trays; <why></why>.`,
    },
    prices: {
      summary: 'Prices and sellers',
      hint: 'For those who compare. Say under “More” at a food who sells it and for how much; then whole packs are chosen and the batch has a price.',
      label: 'Prices',
      aim: 'Choose packs for',
      cost: 'Least money',
      waste: 'Least left over',
      toPay: 'To pay now',
      batch: 'Price of this batch',
      perKg: f.massUnit === 'g' ? 'Of a kilogram' : 'Of a pound',
      dayOf: (animal: string) => `Of a day for ${animal}`,
      dayOfAll: 'Of a day for all',
      note: 'The batch costs what goes into it; the rest of a pack stays yours. What is fed beside the mix is not counted.',
      noteDelivery:
        'The batch costs what goes into it, delivery left out; the rest of a pack stays yours. What is fed beside the mix is not counted.',
      unknown: (n: number) => `Price not known in full (${f.number(n)})`,
      unknownFoods: (foods: string) =>
        `${foods}. What a seller asks, or the price of the pack in your stock, makes it known.`,
      notProven: 'The search ended before it was shown that no better choice of packs exists.',
      atLeast: (price: string) => `at least ${price}`,
      notKnown: 'not known',
      noOffers: 'not known: no sellers yet',
      nothing: 'nothing',
      without: (price: string, foods: string) => `${price}, without ${foods}`,
      foods: (n: number) => f.count(n, { one: 'food', other: 'foods' }),
      bySeller: 'By seller',
      noneYet: 'Nothing to order yet: say who sells a food.',
      noOrder: 'Nothing to order.',
      delivery: 'Delivery',
      inAll: 'In all',
      least: (goods: string, seller: string, least: string) =>
        `Goods for ${goods}; ${seller} sends nothing below ${least}.`,
      bought: 'Bought',
      boughtAll: (n: number) => `Bought all ${f.number(n)}`,
      wholeOrder: (words: string, seller: string) => `${words}: the whole order at ${seller}`,
      pack: (n: number, each: string) => `${f.number(n)} × ${each}`,
      packFresh: (n: number, each: string) => `${f.number(n)} × ${each} fresh`,
      packFrom: (pack: string, seller: string, price: string) => `${pack} from ${seller}: ${price}`,
      inBatch: (price: string) => `In this batch: ${price}`,
      noneLeft: 'Nothing is left over.',
      left: (grams: string) => `${grams} is left over.`,
      leftDried: (grams: string) => `${grams} is left over once dried.`,
    },
    sellers: {
      label: 'Sellers',
      summary: (n: number) =>
        `Delivery and minimum order (${f.count(n, { one: 'seller', other: 'sellers' })})`,
      hint: 'Left empty, a seller asks for neither.',
      delivery: 'Delivery',
      minimum: 'Minimum order',
      none: 'none',
    },
    offers: {
      title: 'Who sells it',
      /** "Alder Mill, 500 g for € 0.80". */
      line: (seller: string, pack: string, price: string) => `${seller}, ${pack} for ${price}`,
      lineFresh: (seller: string, pack: string, price: string) => `${seller}, ${pack} fresh for ${price}`,
      per: (price: string) => (f.massUnit === 'g' ? `${price} per kg as sold` : `${price} per lb as sold`),
      change: (offer: string) => `Change the price: ${offer}`,
      erase: (offer: string) => `Delete the price: ${offer}`,
      deleted: (offer: string) => `Deleted: ${offer}.`,
      putBack: 'Put it back',
      add: 'Add a seller',
      addOf: (food: string) => `Add a seller of ${food}`,
      form: (food: string) => `Price of ${food}`,
      formNew: (food: string) => `New seller of ${food}`,
      seller: 'Seller',
      sellerEmpty: 'Seller is empty: say who sells it.',
      weight: 'Weight of a pack',
      weightEmpty: 'Weight of a pack is empty: write it like 500 g, 1.5 kg or 2 lb.',
      weightWrong: (why: string) => `Weight of a pack ${why}.`,
      weightExample: '500 g, 2 lb, 12 x 40 g',
      price: 'Price of a pack',
      priceEmpty: 'Price of a pack is empty: it is needed to compare sellers.',
      sold: 'Sold',
      dry: 'Dry',
      fresh: 'Fresh',
      countsOnceDried: (food: string) =>
        `It counts once you choose “I dry it” for ${food}: how much is left of it dried follows from that.`,
      save: 'Save the price',
    },
    dryAtHome: {
      title: 'You dry it',
      from: (water: string) => `Dried from <fresh></fresh>, ${water} <source></source>.`,
      water: (percent: number) => `which is ${f.percent(percent)} water`,
      waterUnknown: 'of which the water is not known',
      lost: 'The fresh food that was chosen is not to be found; choose another.',
      cannot:
        'How much of it is left dried cannot be worked out. Choose a food with its water known, or <food>enter it</food>.',
      moisture: 'Water when dried',
      moistureHint: (percent: number) => `${f.percent(percent)} is common practice, no source.`,
      trim: 'Trimmed off, as you weighed it',
      trimTable: (percent: number) => `${f.number(percent)} (table)`,
      notKnown: 'not known',
      trimmed: (percent: number, parts: string | undefined) =>
        parts === undefined
          ? `${f.percent(percent)} is trimmed off`
          : `${f.percent(percent)} is trimmed off: ${parts}`,
      lostFresh:
        'How much fresh food it takes is not known: the fresh food is not to be found; choose it anew.',
      noWater: (fresh: string) =>
        `How much fresh food it takes is not known, since the water of ${fresh} is not known.`,
      tooDry: (fresh: string, water: number, moisture: number) =>
        `How much fresh food it takes is not known, since ${fresh} holds ${f.percent(water)} water, no more than the ${f.percent(moisture)} it is dried to.`,
      needs: (dried: string, prepared: string, purchased: string) =>
        `${dried} dried takes ${prepared} ready to dry, ${purchased} as bought.`,
      needsMore: (dried: string, prepared: string) =>
        `${dried} dried takes ${prepared} ready to dry, and more than that as bought.`,
    },
    paper: {
      title: (mix: string) => `Shopping list: ${mix}`,
      home: 'At home already',
      inAll: (seller: string, price: string) => `${seller}: ${price} in all`,
      inAllDelivery: (seller: string, price: string, delivery: string) =>
        `${seller}: ${price} in all, with ${delivery} for delivery`,
      from: (packs: string, seller: string) => `${packs}, ${seller}`,
    },
    /** Why something is not counted or cannot be bought: without a capital or a full stop. */
    why: {
      pastBest: (day: string) => `it was best before ${day}; look at it and smell it before you keep it`,
      fresh: (why: string) => `it is fresh, and ${why}`,
      barred: (why: string) => `it is not to be used (${why})`,
      trimUnknown: (food: string) => `what is trimmed off ${food} is unknown; weigh some before and after`,
      yieldUnknown: (food: string) =>
        `how much of ${food} is left after drying is unknown; say which fresh food it is dried from`,
      waterUnknown: (fresh: string) => `the water of ${fresh} is unknown; enter it first`,
      tooDry: (fresh: string, water: number, moisture: number) =>
        `${fresh} holds ${f.percent(water)} water, no more than the ${f.percent(moisture)} it is to hold dried; choose the fresh food`,
      freshYield: 'it is sold fresh, and how much of it is left after drying is unknown',
      minimum: (seller: string, least: string) =>
        `${seller} sends nothing below ${least}, and nothing needed from there costs anything`,
      noSeller: (food: string) => `No seller is known for ${food}.`,
      notCounted: (food: string, reasons: readonly string[]) =>
        `${food} is sold, but cannot be counted: ${reasons.join('; ')}.`,
      noChoice: (food: string) => `No choice of packs was found for ${food}; leave out some sellers.`,
      noDaily: (animal: string) =>
        `how much ${animal} eats a day is unknown; say it on its page, or say the weight of the batch`,
    },
    /** What is wrong with a weight that somebody typed; comes behind the text in quotes. */
    weight: {
      wrong: (text: string, why: string) => `"${text}": ${why}`,
      examples: 'write it like "500 g", "1.5 kg", "12 x 40 g" or "2 lb 4 oz"',
      empty: (examples: string) => `no weight is written; ${examples}`,
      noPacks: '0 packs weigh nothing; write how many there are',
      noUnit: (examples: string) => `the unit is missing; ${examples}`,
      notOne: (rest: string, examples: string) => `"${rest}" is not a weight; ${examples}`,
      unknownUnit: (word: string) => `"${word}" is not a unit of weight; use mg, g, kg, oz or lb`,
      volume: (word: string) =>
        `"${word}" is not a unit of weight; use mg, g, kg, oz or lb (a volume says nothing about the weight: weigh it)`,
      unitAfter: (last: string, unit: string) =>
        `after ${last} comes no ${unit}; only pounds and ounces are written together ("2 lb 4 oz")`,
      twoWays: (text: string, more: string, less: string) =>
        `"${text}" could be ${more} or ${less}; write it without the mark, or in another unit`,
      nothing: 'a pack must weigh more than 0',
      tooLarge: 'the weight is too large',
    },
  };
};

export type Shopping = ReturnType<typeof shopping>;
