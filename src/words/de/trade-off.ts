import type { TradeOff } from '../en/trade-off.ts';
import type { Figures } from '../figures.ts';

export const tradeOff = (f: Figures): TradeOff => ({
  heading: 'Vom einen mehr, vom anderen weniger',
  intro:
    'Zwei Wünsche auf einmal ziehen oft in verschiedene Richtungen. Jeder Punkt unten ist eine Mischung, die alle Regeln einhält; keine andere ist in beidem besser. Die Punkte dazwischen zeigen, wie viel ein wenig mehr vom einen beim anderen kostet.',
  one: 'Ein Wunsch',
  against: 'Gegen',
  price: 'Der Preis lässt sich wählen, sobald jede Zutat einen hat (siehe Einzelheiten jeder Zutat).',
  missing: (axis) =>
    `${axis}: Für einen Teil der Zutaten fehlen Zahlen, es ist also mindestens so viel, wie das Bild zeigt.`,
  noConflict: 'Diese beiden kommen sich nicht in die Quere:',
  noConflictMore: 'Eine Mischung ist in beidem die beste.',
  noPlace: 'Wo die jetzige Mischung liegt, lässt sich nicht sagen: Eine Zahl fehlt.',
  outside:
    'Die jetzige Mischung verletzt eine Regel und kann darum dort liegen, wo keine liegen kann, die alle Regeln einhält.',
  look: 'Diese Mischung ansehen',
  taken: 'Übernommen: Die Mischung hat jetzt diese Anteile. „Rückgängig“ bringt die alten zurück.',
  count: (n, seconds) =>
    `${f.count(n, { one: 'Mischung', other: 'Mischungen' })}, berechnet in ${f.number(seconds, 1)} s. In jeder gelten alle Regeln.`,
  countHeld: (n, seconds) =>
    `${f.count(n, { one: 'Mischung', other: 'Mischungen' })}, berechnet in ${f.number(seconds, 1)} s. In jeder gelten alle Regeln, und Festgehaltenes bleibt, wo es ist.`,
  goals: {
    near: 'nah an meinen Wünschen',
    nearAxis: 'Wie viel der Mischung von den gewünschten Anteilen abweicht',
    nearShort: 'Weicht von den Wünschen ab um',
    nearer: 'näher',
    varied: 'abwechslungsreich',
    variedAxis: 'Abwechslung: wie bei so vielen Zutaten zu gleichen Teilen',
    variedShort: 'So abwechslungsreich wie',
    moreVaried: 'abwechslungsreicher',
    foods: 'Zutaten',
    equalFoods: 'Zutaten zu gleichen Teilen',
    cheap: 'günstig',
    cheapAxis: 'Preis',
    cheaper: 'günstiger',
    perKg: 'je kg',
    less: (what) => `weniger ${what}`,
    more: (what) => `mehr ${what}`,
    ofMix: (what) => `${what} in der Mischung`,
    ofRation: (what) => `${what} in der ganzen Ration`,
    group: (group) => `${group} in der Mischung`,
    lessWord: 'weniger',
    moreWord: 'mehr',
    value: (what, value, unit) => `${what} ${f.figure(value)} ${unit}`,
    both: (first, second) => `${first}, ${second}`,
  },
  point: {
    label: 'Die gewählte Mischung',
    chosen: (what) => `Gewählt: ${what}.`,
    same: 'Das ist die jetzige Mischung.',
    against: 'Gegenüber der jetzigen Mischung:',
    change: (from, to) => `${f.fixed(from, 1)} auf ${f.fixed(to, 1)} %`,
    rest: (n) =>
      f.form(n, {
        one: 'Ein weiterer Anteil ändert sich, um nicht mehr als diese.',
        other: `${f.number(n)} weitere Anteile ändern sich, jeder um nicht mehr als diese.`,
      }),
    take: 'Diese Mischung nehmen',
  },
  table: {
    same: 'Dasselbe als Tabelle',
    mix: 'Mischung',
    head: (what, unit) => `${what} (${unit})`,
    lookAt: 'Ansehen',
    look: 'Ansehen',
    shown: 'Gezeigt',
    lookOf: (k, what) => `Ansehen: Mischung ${f.number(k)}, ${what}`,
    shownOf: (k, what) => `Gezeigt: Mischung ${f.number(k)}, ${what}`,
  },
  picture: {
    axis: (what, unit) => `${what}, ${unit}`,
    all: 'Die besten Mischungen entlang der Linie; mit den Pfeiltasten gehst du sie entlang',
    mix: (k, n, what) => `Mischung ${f.number(k)} von ${f.number(n)}: ${what}`,
    best: 'eine beste Mischung',
    present: (what) => `die jetzige Mischung (${what})`,
  },
});
