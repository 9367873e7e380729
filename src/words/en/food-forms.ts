/** What is said of forms that are worked out, of sources that are combined or disagree, and of how figures vary. */
import type { Figures } from '../figures.ts';

export const foodForms = (f: Figures) => {
  const part = (share: number) => `${f.number(100 * share, 0)} %`;
  return {
    source: {
      dried: (source: string, moisture: number) =>
        `${source}, dried to ${f.number(moisture)} % moisture by calculation`,
      by: (source: string, table: string, code: string, title: string) =>
        `${source}, with ${table}, code ${code} ${title}`,
    },
    no: {
      sprouted:
        'No published factors say what sprouting changes; look for a measured sprouted food in the reference instead.',
      blanched: (kind: string) =>
        `There are no published factors for blanched food of this kind (no row for ${kind}, blanched); look for a measured food in the tables instead.`,
      roasted: (kind: string) =>
        `There are no published factors for roasted food of this kind (no row for ${kind}, roasted); look for a measured food in the tables instead.`,
      kinds: {
        leaf: 'leaf',
        root: 'root',
        potato: 'potato',
        herb: 'herb',
        vegetable: 'vegetable',
        legume: 'legume',
        nut: 'nut',
        fruit: 'fruit',
        seed: 'seed',
        animal: 'animal',
        none: 'a food without a group',
      },
      weights:
        'Blanching washes dry matter into the water, so moisture alone does not give the amounts: weigh before and after (drained) and give both.',
    },
    notes: {
      asGiven: 'as given',
      asChosen: 'as chosen',
      rounded: (percent: number) =>
        `${f.number(percent)} % kept, to the nearest 5 %; its spread is not published`,
      boiled: (percent: number) =>
        `${f.number(percent)} % kept after boiling, to the nearest 5 %; its spread is not published; a short blanch keeps more`,
      noFactor: 'not given: no published factor',
      conserved: 'dry matter conserved (no published factor)',
      rawNone: 'the raw food has none',
      freshNone: 'the fresh food has none',
      boundsOnly: 'limits only: no published factor; it cannot have lost more than all dry matter lost',
      nothingKnown: 'not given: no dried food and no table of factors says how much drying leaves',
      dryConserved: 'dry matter conserved',
      keptBy: (kept: number, source: string, code: string) => `${part(kept)} kept (${source}, code ${code})`,
      keptMedian: (kept: number) =>
        `${part(kept)} kept, the median of foods that USDA SR28 holds fresh and dried (no published factor)`,
      spread: (kept: string, sd: number, figures: number) =>
        `${kept}; the usual spread is ${part(sd)} of the value, from ${f.number(figures)} measured figures`,
      tooWide: (kept: string, figures: number) =>
        `${kept}, but ${f.number(figures)} measured figures lie too far apart for one figure: limits only`,
    },
    combined: {
      mean: (sources: number, names: string) =>
        `mean of ${f.number(sources)} sources (random effects, DerSimonian and Laird 1986): ${names}`,
      chosen: (names: string) => `${names}, chosen by the keeper`,
      contradictory: (said: string) =>
        `${said}. The guaranteed least and most contradict one another and are left out`,
    },
    slips: {
      salt: 'salt may be given as sodium (salt is 2.5 times its sodium)',
      quantity: 'the larger may be for 250 g, or the smaller for 40 g',
      energy: 'kilojoules may stand for kilocalories',
      ten: 'a decimal point may have slipped, or per kg may stand for per 100 g',
      hundred: 'a decimal point may have slipped two places',
      thousand: 'mg may stand for g, or ug for mg',
    },
    apart: {
      figure: (source: string, amount: string, unit: string) => `${source} ${amount} ${unit}`,
      said: (what: string, one: string, other: string, cause: string) =>
        `${what}: ${one}, ${other}. ${cause}`,
      saidDry: (what: string, one: string, other: string, cause: string) =>
        `${what}: ${one}, ${other} (compared on dry matter). ${cause}`,
      crudeAsDietary: (less: string, more: string) =>
        `${less} looks like crude fibre written as dietary fibre, which is larger by about that much. Enter it as crude fibre (FIBC), or follow ${more}.`,
      dietaryAsCrude: (more: string, less: string) =>
        `${more} looks like dietary fibre written as crude fibre: ${less} gives nearly the same as dietary. Enter it as dietary fibre (FIBTG), or follow ${less}.`,
      slip: (more: string, factor: number, less: string, cause: string) =>
        `${more} is about ${f.number(factor, 3)} times ${less}: ${cause}. Check unit and quantity at both, correct the wrong one, or choose the source to follow.`,
      tooFar:
        'They lie further apart than one food usually varies. Check that both mean the same variety, part and preparation, or choose the source to follow.',
      twoFoods: 'Keep them as two foods, or bring the moist one’s figures to the moisture of the dry.',
      agreeDry: (fresh: string, dry: string, wayOut: string) =>
        `On dry matter they agree: ${fresh} looks like the moist food (fresh or cooked), ${dry} like the dry. ${wayOut}`,
      allTimes: (dry: string, factor: string, fresh: string, wayOut: string) =>
        `All of ${dry} is about ${factor} times ${fresh}: the first looks like the dry food, the second like the moist (fresh or cooked), or one is for another quantity. Enter both moistures to be sure. ${wayOut}`,
      crudeAbove: (crude: string, dietary: string, other: string, one: string) =>
        `Fibre: ${crude} as crude, ${dietary} as dietary. Crude fibre is a part of dietary fibre and cannot be more. ${other} may print crude fibre as dietary, or ${one} dietary as crude: correct the name of one.`,
      belowLeast: (what: string, figure: string, other: string, least: string) =>
        `${what}: ${figure}, but ${other} guarantees at least ${least}. Check that both are the same product; else follow ${other}, or leave its guarantee out.`,
      aboveMost: (what: string, figure: string, other: string, most: string) =>
        `${what}: ${figure}, but ${other} guarantees at most ${most}. Check that both are the same product; else follow ${other}, or leave its guarantee out.`,
      crossed: (what: string, one: string, least: string, other: string, most: string) =>
        `${what}: ${one} guarantees at least ${least}, ${other} at most ${most}. No food keeps both: they are two products, or one is misread.`,
    },
  };
};

export type FoodForms = ReturnType<typeof foodForms>;
