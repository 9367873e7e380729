/** What the reader of labels says: of each line, of what is left open, and of figures that can hardly be true. */
import type { Figures } from '../figures.ts';

export const labelReading = (f: Figures) => {
  /** To three digits. */
  const short = (n: number) => f.number(Number(n.toPrecision(3)), 12);
  return {
    short,
    /** "12.3 g protein". */
    told: (amount: number, unit: string, what: string) => `${short(amount)} ${unit} ${what}`,
    line: {
      amountsAre: (quantities: string) => `amounts are ${quantities}`,
      left: {
        daily: 'shares of a daily intake left out',
        energy: 'shares of the energy left out',
        prepared: 'figures of the food as prepared left out',
      },
      notRead: (part: string, why: string) => `not read: “${part}”: ${why}`,
      blank: 'blank',
      together: 'read together with the lines beside it',
      noFigure: 'a nutrient without a figure; put both on one line',
      counts: 'no amount: a count of servings or a share of a daily intake',
      nothing: 'no figure in it',
      range: (low: number, high: number) => `${f.number(low, 6)} to ${f.number(high, 6)}`,
      least: (low: number) => `at least ${f.number(low, 6)}`,
      most: (high: number) => `at most ${f.number(high, 6)}`,
      aFigure: 'a figure',
      per: (amount: string, grams: number) => `${amount} per ${f.number(grams)} g`,
      inDry: (amount: string) => `${amount} in dry matter`,
      open: (amount: string) => `${amount} (a question is open)`,
      noted: (amount: string, note: string) => `${amount} (${note})`,
      dailyShare: 'share of a daily intake',
      energyShare: 'share of the energy',
      salt: 'salt',
      available: 'available carbohydrate',
    },
    why: {
      noName: 'a figure without a nutrient before it; put the name and its figure on one line',
      traces: 'traces are no figure; leave it out, or write the most it can be, such as “<0.1 g”',
      shared: (first: string, second: string, end: string) => `“${first}” and “${second}” ${end}`,
      sharedEnd: 'share one figure; give each its own',
      advice: 'advice for use or a weight of the pack, no analysis',
      cut: 'a name follows the figure and has none of its own; put a comma between, or each on its own line',
      notKnown: (said: string) => `“${said}” is not known here; give the nutrient and its figure alone`,
      twoBases: 'one figure has two bases; give it one',
      twoQuantities: 'one figure has two quantities; give it one',
      twoBoundsBeside: 'two of minimum and maximum beside one figure; use one',
      twoBoundsBefore: 'two of minimum and maximum before one figure; use one',
      listShare: 'a share in the list of ingredients, not what the food contains',
      noLineSays: (figures: number) =>
        `${f.number(figures)} figures, but no line says what each is per; give one figure for each`,
      someColumns: (figures: number, columns: number) =>
        `${f.number(figures)} figures, but ${f.count(columns, { one: 'column', other: 'columns' })} to say what each is per; give one figure for each`,
      figuresForColumns: (figures: number, columns: number) =>
        `${f.number(figures)} figures for ${f.count(columns, { one: 'column', other: 'columns' })}; give one figure for each`,
      minus: 'a minus before a figure; an amount is 0 or more',
      plusMinus: 'a plus or minus before a figure; an amount is 0 or more',
      halfRange: 'a range with one end; write both',
      twoUnits: 'a range with two units; use one',
      falling: 'a range that falls; write the smaller figure first',
      noUnit: (figure: string) =>
        `${figure} has no unit that is known here; write it after the figure, such as “g” or “%”`,
      betweenUnits: (figure: string) =>
        `${figure} stands between two units; write each figure with its own unit after it`,
      oneOrTwo: (figure: string) => `${figure} may be one figure or two; write it without the space`,
      rangeAndBound: 'a range and a minimum or maximum at once; use one',
      shareOfDaily: 'a share of a daily intake is given in %; an amount stands without that word',
      shareOfEnergy: 'a share of the energy is given in %; an amount stands without that word',
      boundBeforeName: 'a minimum or maximum stands before a name, not before its figure',
      unitTooMany: (unit: string) =>
        `“${unit}” is one unit too many; write each figure with its own unit after it`,
      plusOrMinus: '± is not known here; write the range, such as “16-18 %”',
      noFigureFor: (what: string) => `“${what}” has no figure`,
      nameOrFigure: (text: string) => `${text} may end with the name or begin the figure; close it up (“D3”)`,
      runsTogether: (text: string) => `${text} runs letters and figures together; part them`,
      tooLong: (text: string) => `${text}... is too long for an amount`,
      noNumber: (text: string) => `${text} is no number that can be read; write it with a decimal point`,
      oneMark: (text: string) => `${text} is no number that can be read; write it with one decimal mark`,
      mixed: (text: string) => `${text} mixes letters and digits, as a scan does; type the figure`,
      headless: (text: string) =>
        `${text} begins with a decimal mark; write the nought before it, or a space after it`,
      raised: 'a raised figure; write it plainly',
      otherScript: (text: string) => `${text} is a digit of another script; write it plainly`,
      daily: 'a share of a daily intake is no amount',
      traceInPercent: (what: string) =>
        `${what} in % is a share of a daily need, not an amount; write it in mg, µg or IU`,
      noWeight: (what: string, per: string) =>
        `${what} is given ${per}, which is no weight; write it per 100 g`,
      notSold: (what: string, how: string) => `${what} is given ${how}, not for the food as sold`,
      basisUnsaid: (what: string) => `whether ${what} is of the food as sold is not said`,
      tooMuch: (what: string, amount: number, unit: string) =>
        `${what} of ${f.number(amount, 6)} ${unit} is more than a food can hold`,
      tooMuchPer: (what: string, amount: number, unit: string, grams: number) =>
        `${what} of ${f.number(amount, 6)} ${unit} per ${f.number(grams)} g is more than a food can hold`,
      vitaminForm: (what: string) => `${what} in IU depends on the form of the vitamin; write it in mg`,
      wrongUnit: (what: string, unit: string) => `${what} is not measured in ${unit}; check the unit`,
    },
    asPrepared: 'as prepared',
    energyShares: '... shares of the energy',
    notes: {
      about: 'printed as approximate',
      onlyReading: (printed: string, value: number) =>
        `${printed} read as ${f.number(value, 6)}, the only reading a food can have`,
      byMark: (printed: string, value: number, mark: string) =>
        `${printed} read as ${f.number(value, 6)}, as the label writes decimals with “${mark}”`,
      fromSalt: 'sodium reckoned from salt, which is 2.5 times the sodium',
      fromDry: (moisture: number) =>
        `amounts in dry matter brought to the food as sold with ${f.number(moisture)} % moisture`,
      withFibre: 'carbohydrate reckoned as the available carbohydrate printed and the dietary fibre together',
      leastOnly: 'carbohydrate is known as “at least” only: the label leaves the fibre out',
    },
    ask: {
      which: (heard: string, names: readonly string[]) =>
        `“${heard}” may mean ${f.either(names)}; which is it?`,
      serving: (grams: number) => `a serving of ${f.number(grams)} g`,
      perWhat: 'No line says what these amounts are per; how many grams of the food hold them?',
      servingGrams: (text: string) => `How many grams is one serving (“${text}”)?`,
      volume: (text: string) => `How many grams does the food of “${text}” weigh?`,
      other: (text: string) => `Amounts are given “${text}”; how many grams of the food is that?`,
      number: (printed: string, unit: string, what: string, answers: readonly string[]) =>
        `Is ${printed} ${unit} of ${what} ${f.either(answers)}?`,
      percent: (what: string) =>
        `Is the percentage of ${what} a share of the food’s weight, or of a daily intake or the energy?`,
      ofWeight: 'Share of the food’s weight',
      ofDaily: 'Share of a daily intake or of the energy (then it is no amount)',
      list: 'Is this line an analysis of the food, or a list of what is in it?',
      content: 'An analysis: what the food contains',
      ingredient: 'Ingredients and their shares (then they are no amounts)',
      basis: (said: string) => `The label says “${said}”; what are these amounts of?`,
      sold: 'Of the food as sold',
      dry: 'Of its dry matter',
      none: 'Of something else, such as the food once cooked or made up; leave them out',
      column: (what: string, columns: number) =>
        `The line gives ${what} once, for ${f.number(columns)} columns; which column is it?`,
      differ: (what: string, said: readonly string[]) =>
        `${what} is given as ${said.join(' and as ')}, which differ beyond rounding; which is right?`,
      neither: 'Neither; leave it out',
      carbohydrate:
        'Does the carbohydrate on this label hold the fibre (as in the USA) or leave it out (as in Europe)?',
      holds: 'It holds the fibre',
      leavesOut: 'Fibre is left out; counted beside it, or as “at least” when none is printed',
      moisture:
        'Amounts are given in dry matter, and no moisture is printed; what percent of the food as sold is water?',
      notOne: (message: string, answer: string, wanted: string) => `${message} “${answer}” is not ${wanted}.`,
      oneOf: (answers: readonly string[]) => answers.join(', '),
      aboveNought: 'a number above 0',
      belowHundred: 'a number from 0 to below 100',
    },
    faults: {
      needsMoisture:
        'Amounts in dry matter need the moisture, exactly and not as a limit; give it, or choose “as fed”.',
      moisture: (water: number) => `Moisture is ${f.number(water)} %; it must be below 100 %.`,
      checkFed: (grams: number) =>
        `Check the amount as typed, the quantity (${f.number(grams)} g) and that it is as fed.`,
      checkDry: (grams: number) =>
        `Check the amount as typed, the quantity (${f.number(grams)} g) and that it is in dry matter.`,
      tooHeavy: (what: string, amount: string, unit: string, wayOut: string) =>
        `${what} comes to ${amount} ${unit} in 100 g, more than the food weighs. ${wayOut}`,
      crossed: (what: string, said: string, wayOut: string) =>
        `${what} is given as ${said}; both cannot be. ${wayOut}`,
      part: (what: string, amount: string) => `${what} ${amount}`,
      carbohydrate: (amount: string) => `carbohydrate with fibre ${amount}`,
      sum: (sum: string, parts: readonly string[], wayOut: string) =>
        `The parts add up to ${sum} g in 100 g: ${parts.join(', ')}. ${wayOut}`,
      fibre: (crude: string, dietary: string) =>
        `Crude fibre (${crude}) is above dietary fibre (${dietary}), of which it is a part; check which of the two the label prints.`,
    },
    checks: {
      bounds: (what: string, low: number, high: number) =>
        `${what} is at least ${short(low)} and at most ${short(high)}, which cannot both be; check minimum and maximum.`,
      belowLeast: (what: string, value: number, low: number) =>
        `${what} is ${short(value)}, below its own minimum of ${short(low)}.`,
      aboveMost: (what: string, value: number, high: number) =>
        `${what} is ${short(value)}, above its own maximum of ${short(high)}.`,
      sum: (sum: number, parts: readonly string[]) =>
        `100 g cannot hold ${short(sum)} g: ${parts.join(' + ')}. One of them may be per another weight.`,
      part: (part: string, whole: string) => `${part} is more than the ${whole} it is part of.`,
      fibre: (crude: number, dietary: number) =>
        `Crude fibre ${short(crude)} g is above dietary fibre ${short(dietary)} g, yet it is always the smaller; the two may be swapped.`,
      energy: (energy: number, general: number, modified: number) =>
        `Energy is ${short(energy)} kcal per 100 g, but protein, fat and carbohydrate give about ${short(general)} (4/9/4) or ${short(modified)} (3.5/8.5/3.5, fibre left out). Is the energy in kJ, or per another weight?`,
      damp: (most: number, water: number) =>
        `A dried food keeps below about ${f.number(most)} % moisture, and this has ${short(water)} %; the figures may be of the fresh food.`,
      thin: (solids: number) =>
        `Protein, fat and carbohydrate make only ${short(solids)} g of 100 g, so over a third would be water; a dried food has less. The figures may be of the fresh food.`,
      nearlyFresh: (food: string, water: number, own: string, its: number) =>
        `These are nearly the figures of ${food} with ${short(water)} % water (${own} against ${short(its)}); dried, each would be several times higher.`,
      beside: (own: string, its: number, food: string) => `${own} beside ${short(its)} in ${food},`,
      besideDry: (own: string, its: number, food: string) =>
        `${own} beside ${short(its)} in ${food}, moisture set equal,`,
      tenHigh: (beside: string) => `${beside} looks ten times too high; look for a slipped decimal mark.`,
      tenLow: (beside: string) => `${beside} looks ten times too low; look for a slipped decimal mark.`,
      thousandHigh: (beside: string) =>
        `${beside} looks a thousand times too high; look whether g, mg and µg were mixed up.`,
      thousandLow: (beside: string) =>
        `${beside} looks a thousand times too low; look whether g, mg and µg were mixed up.`,
      per250: (food: string) =>
        `All main figures are about two and a half times those of ${food}; they may be per 250 g and not per 100 g.`,
      per40: (food: string) =>
        `All main figures are about two fifths of those of ${food}; they may be per 40 g and not per 100 g.`,
    },
    impossible: {
      correctOne: (said: string) => `${said}; correct one of them or leave it out`,
      weighs: (told: string, grams: number, unit: string) =>
        `${told} weigh ${short(grams)} g, more than the 100 g they are in; check the unit, which is ${unit} per 100 g`,
      energy: (kcal: number) =>
        `${short(kcal)} kcal in 100 g is more than pure fat has (902); is it in kJ? Divide by 4.184`,
      together: (sum: number, parts: readonly string[]) =>
        `100 g cannot hold ${short(sum)} g: ${parts.join(' + ')}; amounts are per 100 g as fed, so one may be per another weight`,
      grams: (grams: number, what: string) => `${short(grams)} g ${what}`,
      minerals: 'minerals',
    },
  };
};

export type LabelReading = ReturnType<typeof labelReading>;
