/** What an animal is fed a day, and how long that lasts. */
import type { Figures } from '../figures.ts';

export const dailyFood = (f: Figures) => {
  const grams = (g: number) => f.grams(g, 1);
  const span = (low: number, high: number) =>
    grams(low) === grams(high) ? `about ${grams(low)}` : `${grams(low)} to ${grams(high)}`;
  return {
    title: 'How much a day',
    fed: (name: string, g: number) => `${name} is fed ${grams(g)} a day, mix and pellet together.`,
    nobodySaid: (name: string) =>
      `Nobody has said yet what ${name} is fed a day. Weigh it before you scatter it, or take a figure from below.`,
    standing: {
      within: 'That lies within the range by energy.',
      under: (name: string) =>
        `That is less than the range by energy. Weigh ${name} every week; if it loses weight, offer more and see a vet.`,
      over: 'That is more than the range by energy. This is no reason to feed less: food is carried off and stored. Look for the hoard, and weigh the animal every week.',
    },
    falling: {
      today: (name: string) =>
        `${name} is fed less than the range and is losing weight. Offer more, and see a vet today.`,
      days: (name: string) =>
        `${name} is fed less than the range and is losing weight. Offer more, and see a vet within days.`,
      'next visit': (name: string) =>
        `${name} is fed less than the range and is losing weight. Offer more, and tell the vet at the next visit.`,
    },
    picture: 'Grams a day, side by side',
    span,
    rows: {
      equation: 'By the energy it needs',
      intake: 'What its kind was seen to eat',
      handouts: 'Vets’ handouts',
      practice: 'What keepers do',
      memory: 'What keepers do',
      fed: 'What it is fed now',
    },
    notes: {
      equation: (weight: number, low: number, high: number) =>
        `For ${f.bodyGrams(weight)} of body weight. ${span(low, high)} of it is dry matter.`,
      estimate:
        'There is no figure for this kind: it is carried over from golden hamsters, rats and mice by body weight. An estimate, and wide because of that.',
      intake: (dry: number) => `${grams(dry)} of dry matter a day, on average.`,
      intakeFood: 'On average, of a dry pellet.',
      noWater: 'How much food that is depends on its water, which is not known.',
      handouts: 'Commonly found in handouts; no study behind it is named.',
      practice: 'Common practice, no source.',
      memory: 'Common practice, from memory; no source.',
      upTo: (g: number) => `With what raises it: up to ${grams(g)}.`,
    },
    take: (g: number) => `Take ${grams(g)}`,
    taken: (name: string, g: number) => `${name} is now fed ${grams(g)} a day.`,
    takenLess:
      'That is less than before. Weigh the animal every few days for two weeks; if it loses weight, go back and see a vet.',
    back: (g: number) => `Back to ${grams(g)}`,
    backToNone: 'Back to “not known”',
    stage: {
      growing:
        'It is still growing: the range is larger than for a grown one. Let it eat as much as it likes.',
      pregnant: 'It is pregnant: the range is larger. Let it eat as much as it likes.',
      nursing: 'It is nursing: the range is much larger. Let it eat as much as it likes.',
      breeding:
        'It is pregnant or nursing: the range is larger, up to four times while nursing. Let it eat as much as it likes.',
    },
    weighAgain: (day: string) => `This rests on the weighing of ${day}. Weigh again to be sure.`,
    vetFirst: 'What a vet has said about its food comes before every figure here.',
    missing: {
      title: 'No range by energy yet',
      weight: (name: string) => `The body weight of ${name} is missing. <weigh>Weigh ${name}</weigh>`,
      noFood: 'What is in its food is not known: it is fed no batch, and there is no finished mix for it.',
      parts: (amounts: readonly string[]) =>
        `Of its food ${f.list(amounts)} ${f.form(amounts.length, { one: 'is', other: 'are' })} not known well enough. The label or the maker of the pellet may say.`,
      working: 'Working out the energy of its food…',
    },
    raises: {
      title: 'What makes it need more',
      wheel: 'A running wheel: golden hamsters with one ate from hardly more to nearly twice as much.',
      cold: (celsius: number) =>
        `A cold room (${f.degrees(celsius)}): it needs more to keep warm. How much more is not known for its kind.`,
      coldNursing: (celsius: number, percent: number) =>
        `A cold room (${f.degrees(celsius)}): nursing striped hamsters ate ${f.percent(percent, 0)} more at ${f.degrees(5)} than at ${f.degrees(30)}.`,
      coldWinterWhite: (celsius: number, low: number, high: number) =>
        `A cold room (${f.degrees(celsius)}): at ${f.degrees(-2)} winter white hamsters took up ${f.number(low, 0)} to ${f.number(high, 0)} kJ a day, and those with the least lost weight.`,
      growing: (low: number, high: number) =>
        `Growing: ${f.number(low, 1)} to ${f.number(high, 1)} times what a grown one of its weight needs, found with rats and mice.`,
      pregnant: (low: number, high: number) =>
        `Pregnant: ${f.number(low, 1)} to ${f.number(high, 1)} times as much, found with rats and mice.`,
      nursing: (low: number, high: number) =>
        `Nursing: ${f.number(low, 1)} to ${f.number(high, 1)} times as much, more as the young grow, found with rats and mice.`,
      young: (n: number) =>
        `More young need more (${f.number(n)} here), but there is no figure for each of them.`,
    },
    why: {
      title: 'Why these figures',
      need: (low: number, high: number, kcalLow: number, kcalHigh: number) =>
        `It needs about ${f.number(low, 0)} to ${f.number(high, 0)} kJ a day. A gram of its food gives ${f.number(kcalLow, 2) === f.number(kcalHigh, 2) ? f.number(kcalLow, 2) : `${f.number(kcalLow, 2)} to ${f.number(kcalHigh, 2)}`} kcal, and 1 kcal is ${f.number(4.184, 3)} kJ.`,
      perKg: (low: number, high: number) =>
        `For a grown animal ${f.number(low, 0)} to ${f.number(high, 0)} kJ are reckoned for each kilogram of body weight to the power of ${f.number(0.75)}.`,
      atwater:
        'The energy of the food is reckoned as for pet food (modified Atwater: 3.5 kcal a gram of protein and carbohydrate, 8.5 of fat). Golden hamsters got more than that out of a cereal food, so the range may lie a little high.',
      start: 'All of this is a place to start. What counts is how the animal’s own weight goes on.',
      sources: 'Sources',
    },
    portions: {
      title: 'Today’s portions',
      none: 'No batch is being fed to it, so there is nothing to share out yet.',
      times: 'How often do you scatter food?',
      options: { '1': 'Once, in the evening', '2': 'Twice', '3': 'Three times' },
      portion: 'Portion',
      together: 'Together',
      of: (n: number) => `Portion ${f.number(n)}`,
      unknown: 'not known',
      steps: (step: number) => `In whole steps of ${f.grams(step)}, as the scale shows them.`,
      coarse:
        'The scale’s step is coarse for so little. Weigh out the food of a week at once and share it out by eye.',
      scatter:
        'Scatter it widely: searching for food is what it does all night. Small portions are hoarded less.',
      changing: (day: number, of: number) =>
        `Its food is changing: day ${f.number(day)} of ${f.number(of)}. A part still comes from the batch before.`,
      changingNoOld: (day: number, of: number) =>
        `Its food is changing: day ${f.number(day)} of ${f.number(of)}. Mix in some of what it was fed before, if there is any.`,
      olderBatch: (name: string) => `${name} (before)`,
    },
    stop: {
      pack: (pack: string, why: string) => `Do not feed ${pack}: it is not to be used any more (${why}).`,
      besideUpset: (foods: readonly string[], name: string) =>
        `${f.list(foods)} upset ${name}. Do not feed it to ${name}.`,
      besideRefused: (foods: readonly string[], name: string) =>
        `${name} refuses ${f.list(foods)}. What is left of it was not eaten: look for it.`,
      recalled: (batch: string, pack: string, why: string) =>
        `Do not feed “${batch}”: it holds ${pack}, which is not to be used any more (${why}).`,
      'maybe recalled': (batch: string, pack: string, why: string) =>
        `Do not feed “${batch}” before you are sure: it may hold ${pack}, which is not to be used any more (${why}).`,
      upset: (batch: string, foods: readonly string[], name: string) =>
        `“${batch}” holds ${f.list(foods)}, which upset ${name}. Do not feed it to ${name}.`,
      refused: (batch: string, foods: readonly string[], name: string) =>
        `“${batch}” holds ${f.list(foods)}, which ${name} refuses. What is left of it was not eaten: look for it.`,
    },
    lasts: {
      title: 'How long it lasts',
      batch: (name: string, days: number, day: string) =>
        `“${name}” lasts ${f.count(days, { one: 'more day', other: 'more days' })}, until ${day}.`,
      over: (name: string) => `“${name}” should have run out by now. Weigh what is left of it.`,
      unknown: (name: string) =>
        `How long “${name}” lasts is not known: not everything is said of those who eat it.`,
      perDay: (g: number, names: readonly string[]) => `${f.list(names)} eat ${grams(g)} of it a day.`,
      perDayOne: (g: number, name: string) => `${name} eats ${grams(g)} of it a day.`,
      pellet: (food: string, g: number, week: number) =>
        `${food}: ${grams(g)} a day for all who eat it, ${f.weight(week)} in 30 days.`,
      none: 'No batch is being fed to it.',
    },
    cautions: {
      title: 'Always',
      water: 'Fresh water every day: dry food makes thirsty.',
      slowly: 'Change food slowly, over ten days or two weeks, and keep some of the old.',
      bowl: 'An empty bowl does not mean that it was eaten: food is carried off and hoarded.',
      weigh:
        'Weigh it every week. A small rodent that eats less or loses weight needs a vet soon; never let it go hungry so that it eats something.',
    },
  };
};

export type DailyFood = ReturnType<typeof dailyFood>;
