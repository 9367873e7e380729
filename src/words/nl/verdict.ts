import type { Verdict } from '../en/verdict.ts';
import type { Figures } from '../figures.ts';

export const verdict = (f: Figures): Verdict => {
  const others = (n: number) =>
    n === 0
      ? ''
      : ` Dat geldt ook voor ${f.count(n, { one: 'ander ingrediënt', other: 'andere ingrediënten' })}.`;
  return {
    title: 'Oordeel',
    state: {
      sure: 'Zeker binnen bereik',
      if: 'Binnen bereik, als …',
      out: 'Buiten bereik',
      none: 'Geen mengsel voldoet aan deze regels',
      working: 'Wordt berekend',
      fault: 'Het mengsel is niet te lezen',
    },
    working: 'Wordt berekend…',
    stop: 'Stoppen',
    stopped:
      'Gestopt. Wat al gevonden was blijft staan; verander het mengsel of druk op “Passend maken” om door te gaan.',
    made: 'Het past: het mengsel blijft binnen alle grenzen.',
    nothingFits: 'Geen mengsel voldoet aan deze regels. Wat in de weg zit, staat hieronder.',
    makeFit: 'Passend maken',
    caution:
      'Geen diergeneeskundig advies. Een eigen mengsel vervangt nooit een compleet voer. Stap langzaam over, in 10 tot 14 dagen (gangbare praktijk, geen bron). Ga bij gewichtsverlies of ziekte naar de dierenarts.',
    head: {
      sure: 'Zeker binnen bereik',
      ifKnown: 'Binnen bereik als wat niet bekend is meevalt',
      ifFigures: 'Binnen bereik als de cijfers kloppen',
      ifAverage: 'Binnen bereik als de pakken gemiddeld zijn',
      out: 'Buiten bereik',
    },
    told: (head, rest) => `${head}. ${rest}`,
    of: {
      mix: (nutrients) => `${nutrients} van het mengsel`,
      ration: (nutrients) => `${nutrients} van het hele rantsoen`,
    },
    amount: (value, unit) => `${f.figure(value)} ${unit}`,
    noRuleBroken: 'Geen regel is geschonden.',
    notWhole: (total) => `De aandelen zijn samen ${f.percent(total)}, geen 100 %.`,
    moreBroken: (n) => `Nog ${f.count(n, { one: 'regel is geschonden', other: 'regels zijn geschonden' })}.`,
    noSpread: 'Hoeveel deze ingrediënten van pak tot pak verschillen, is niet bekend.',
    chance: (chance) =>
      `Ingrediënten verschillen van pak tot pak: de kans dat het mengsel binnen alle grenzen tegelijk blijft is ${f.percent(100 * chance, 0)}.`,
    unproven: {
      ratio: (top, bottom) => `${top} tot ${bottom}`,
      bare: (what) => `${what} is niet bewezen.`,
      saysAtLeast: (what, food, amount, more) =>
        `${what} is niet bewezen: bij ${food} staat minstens ${amount}, en het kan veel meer zijn.${others(more)}`,
      saysAtMost: (what, food, amount, more) =>
        `${what} is niet bewezen: bij ${food} staat hoogstens ${amount}, en het kan veel minder zijn.${others(more)}`,
      nobodySays: (what, nutrient, food, more) =>
        `${what} is niet bewezen: hoeveel ${nutrient} ${food} bevat, is niet bekend.${others(more)}`,
    },
    moreUnproven: (n) => `Nog ${f.count(n, { one: 'grens is', other: 'grenzen zijn' })} niet bewezen.`,
    settle: {
      most: (nutrient, food) =>
        `<food>Vul in hoeveel ${nutrient} ${food} hoogstens bevat</food> om het te weten.`,
      mostEnough: (nutrient, food, amount) =>
        `<food>Vul in hoeveel ${nutrient} ${food} hoogstens bevat</food>: met ${amount} of minder is dit duidelijk.`,
      least: (nutrient, food) =>
        `<food>Vul in hoeveel ${nutrient} ${food} minstens bevat</food> om het te weten.`,
      leastEnough: (nutrient, food, amount) =>
        `<food>Vul in hoeveel ${nutrient} ${food} minstens bevat</food>: met ${amount} of meer is dit duidelijk.`,
    },
  };
};
