import type { Verdict } from '../en/verdict.ts';
import type { Figures } from '../figures.ts';

export const verdict = (f: Figures): Verdict => {
  const others = (n: number) =>
    n === 0 ? '' : ` Das gilt auch für ${f.count(n, { one: 'weitere Zutat', other: 'weitere Zutaten' })}.`;
  return {
    title: 'Urteil',
    state: {
      sure: 'Sicher im Bereich',
      if: 'Im Bereich, wenn …',
      out: 'Außerhalb des Bereichs',
      none: 'Keine Mischung hält diese Regeln ein',
      working: 'Wird berechnet',
      fault: 'Die Mischung ist nicht lesbar',
    },
    working: 'Wird berechnet…',
    stop: 'Anhalten',
    stopped:
      'Angehalten. Was bis dahin gefunden war, bleibt; ändere die Mischung oder drück „Passend machen“, damit es weitergeht.',
    made: 'Passt: Jede Grenze ist eingehalten.',
    nothingFits: 'Keine Mischung hält diese Regeln ein. Was im Weg ist, steht darunter.',
    makeFit: 'Passend machen',
    caution:
      'Kein tierärztlicher Rat. Eine eigene Mischung ersetzt nie ein Alleinfutter. Stell Futter langsam um, über 10 bis 14 Tage (übliche Praxis, ohne Quelle). Geh bei Gewichtsverlust oder Krankheit zum Tierarzt.',
    head: {
      sure: 'Sicher im Bereich',
      ifKnown: 'Im Bereich, wenn das Unbekannte günstig ausfällt',
      ifFigures: 'Im Bereich, wenn die Werte stimmen',
      ifAverage: 'Im Bereich, wenn die Packungen dem Durchschnitt gleichen',
      out: 'Außerhalb des Bereichs',
    },
    told: (head, rest) => `${head}. ${rest}`,
    of: {
      mix: (nutrients) => `${nutrients} der Mischung`,
      ration: (nutrients) => `${nutrients} der ganzen Ration`,
    },
    amount: (value, unit) => `${f.figure(value)} ${unit}`,
    noRuleBroken: 'Keine Regel ist verletzt.',
    notWhole: (total) => `Die Anteile ergeben zusammen ${f.percent(total)}, nicht 100 %.`,
    moreBroken: (n) =>
      `${f.count(n, { one: 'weitere Regel ist verletzt', other: 'weitere Regeln sind verletzt' })}.`,
    noSpread: 'Wie stark diese Zutaten von Packung zu Packung schwanken, ist nicht bekannt.',
    chance: (chance) =>
      `Zutaten schwanken von Packung zu Packung: Alle Grenzen werden mit ${f.percent(100 * chance, 0)} Wahrscheinlichkeit zugleich eingehalten.`,
    unproven: {
      ratio: (top, bottom) => `${top} zu ${bottom}`,
      bare: (what) => `${what}: nicht belegt.`,
      saysAtLeast: (what, food, amount, more) =>
        `${what}: nicht belegt. Bei „${food}“ steht mindestens ${amount}; es kann beliebig mehr sein.${others(more)}`,
      saysAtMost: (what, food, amount, more) =>
        `${what}: nicht belegt. Bei „${food}“ steht höchstens ${amount}; es kann beliebig weniger sein.${others(more)}`,
      nobodySays: (what, nutrient, food, more) =>
        `${what}: nicht belegt. Wie viel ${nutrient} in „${food}“ steckt, ist nicht bekannt.${others(more)}`,
    },
    moreUnproven: (n) =>
      `${f.count(n, { one: 'weitere Grenze ist', other: 'weitere Grenzen sind' })} nicht belegt.`,
    settle: {
      most: (nutrient, food) =>
        `<food>Trag für „${food}“ ein, wie viel ${nutrient} höchstens drin ist</food>.`,
      mostEnough: (nutrient, food, amount) =>
        `<food>Trag für „${food}“ ein, wie viel ${nutrient} höchstens drin ist</food>: Mit ${amount} oder weniger ist das geklärt.`,
      least: (nutrient, food) =>
        `<food>Trag für „${food}“ ein, wie viel ${nutrient} mindestens drin ist</food>.`,
      leastEnough: (nutrient, food, amount) =>
        `<food>Trag für „${food}“ ein, wie viel ${nutrient} mindestens drin ist</food>: Mit ${amount} oder mehr ist das geklärt.`,
    },
  };
};
