import type { Refusals } from '../en/refusals.ts';
import type { Figures } from '../figures.ts';

export const refusals = (f: Figures): Refusals => ({
  heading: 'Wenn etwas liegen bleibt',
  foods: 'Zutaten der Mischung',
  takeBack: 'Zurücknehmen',
  refuses: (animal, food, mixes) => `${animal} verweigert ${food}: nicht mehr in ${f.list(mixes)}.`,
  mayBeFed: (animal, food) => `${animal} darf wieder bekommen: ${food}.`,
  first: {
    none: 'Keine Mischung hält diese Regeln ein. Was nicht zusammenpasst und was hilft, steht weiter oben. Danach steht hier, was geschieht, wenn eine Zutat liegen bleibt, und was sie ersetzen kann.',
    out: 'Die Mischung ist so nicht im Bereich. Mach sie zuerst passend. Danach steht hier, was geschieht, wenn eine Zutat liegen bleibt, und was sie ersetzen kann.',
  },
  safety: {
    safe: 'Jede einzelne Zutat darf liegen bleiben: Was gefressen wird, bleibt im Bereich.',
    unsafe:
      'Bleiben manche Zutaten liegen, ist die Ration außerhalb des Bereichs; welche und wie, steht unten.',
    impossible:
      'Mit diesen Zutaten bleibt keine Mischung im Bereich, egal welche liegen bleibt. Was nicht zusammenpasst und was hilft, steht weiter oben auf dieser Seite; oder gib den Wunsch hier auf.',
    wanted: 'Von dieser Mischung ist verlangt, dass jede einzelne Zutat liegen bleiben darf.',
    giveUp: 'Das aufgeben',
    makeSafe: 'Sicher machen',
    looking: 'Sucht eine Mischung, die im Bereich bleibt, egal welche Zutat liegen bleibt…',
    noAnswer: 'Es kam keine Antwort; versuch es noch einmal.',
    changed: 'Die Mischung hat sich inzwischen geändert; frag noch einmal.',
    isSafe: 'Die Mischung passt neu: Jede einzelne Zutat darf liegen bleiben.',
    gaveUp: 'Bleibt eine Zutat liegen, darf die Mischung aus dem Bereich geraten.',
  },
  food: {
    share: (share) => f.percent(share, 1),
    mayBeLeft: '✓ darf liegen bleiben',
    breaks: (wrong) => `! ${wrong}`,
    spokenSafe: (food, share) => `${food}, ${f.percent(share, 1)}: darf liegen bleiben`,
    spoken: (food, share, wrong) => `${food}, ${f.percent(share, 1)}: ${wrong}`,
    fine: 'Auch ohne bleibt das, was gefressen wird, im Bereich.',
    refusesThis: (animal) => `${animal} verweigert das`,
    leaves: () => 'Dann kommt es aus jeder Mischung für dieses Tier heraus.',
    low: (what) => `${what} zu niedrig`,
    high: (what) => `${what} zu hoch`,
    aRule: 'eine Regel',
    aShare: 'ein Anteil',
    ratio: (over, under) => `${over} zu ${under}`,
    andMore: (first, more) => `${first} und ${f.number(more)} weitere`,
  },
  swap: {
    heading: 'Was sie ersetzen kann',
    heldHint: 'Dieser Anteil ist festgehalten. Lass ihn los, dann steht hier, was diese Zutat ersetzen kann.',
    othersHeld: 'Festgehaltene Zutaten behalten beim Tausch ihren Anteil.',
    done: (out, other) =>
      `${out} ist gegen ${other} getauscht; ${out} bleibt mit 0 % in der Liste. „Rückgängig“ nimmt es zurück.`,
    further: (share, all) => `zusätzlich ${share}, dann insgesamt ${f.percent(all, 1)}`,
    unsure: 'manches darin ist nicht bekannt, die Regeln könnten also nicht gelten',
    swap: 'Tauschen',
    swapOf: (out, other) => `${out} gegen ${other} tauschen`,
    inMix: 'in der Mischung',
    fromTables: 'aus den Tabellen',
    listed: 'in der Liste, mit 0 %',
    hardly: (share) => `${f.percent(share)} (kaum ein anderer Anteil)`,
    upTo: (share, high) => `${f.percent(share)} (bis ${f.percent(high)})`,
    from: (share, low, high) => `${f.percent(share)} (${f.number(low)} bis ${f.percent(high)})`,
  },
});
