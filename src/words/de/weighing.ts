import type { Weighing } from '../en/weighing.ts';
import type { Figures } from '../figures.ts';

export const weighing = (f: Figures): Weighing => ({
  title: (mix) => `Abwiegen: ${mix}`,
  allBatches: 'Alle Chargen',
  backToMix: 'Zurück zur Mischung',
  noMix: 'Es gibt noch keine Mischung',
  notKept: 'Diese Charge gibt es hier nicht',
  toMix: '<mix>Geh zur Mischung</mix> und wiege von dort aus ab.',
  at: (day, time) => `${day} um ${time}`,
  working: 'Was als Nächstes kommt, wird ausgerechnet…',
  notWorkedOut: (why) => `Die Charge ließ sich nicht ausrechnen: ${why}`,
  notDeleted: (why) => `Nicht gelöscht: ${why}`,

  total: {
    region: 'Bisher in der Schüssel',
    inBowl: (total, of) => `<b>${f.grams(total)}</b> von ${f.grams(of)} in der Schüssel`,
    bar: 'Bisher abgewogen',
  },
  status: {
    'as planned': 'Wie geplant',
    corrected: 'Angepasst: andere Mengen als geplant',
    grown: (total) => `Auf ${f.grams(total)} vergrößert: andere Mengen als geplant`,
    changedSize: (total) => `Auf ${f.grams(total)} geändert: andere Mengen als geplant`,
    asked: 'Jetzt entscheidest du',
  },

  step: {
    now: 'Jetzt',
    more: 'Noch mehr',
    instead: (food) => (food === undefined ? 'Statt aufzuhören' : `Statt ${food}`),
    ofIt: (target) => `auf der Waage, davon ${f.grams(target)} von dieser Zutat`,
    insteadHelp:
      'Nimm so viel du willst; die anderen richten sich danach. Schon drin? Schreib auf, was hineinkam.',
    outHelp: 'Näher geht es nicht; die Charge bleibt außerhalb des Bereichs.',
    reading: `Die Waage zeigt, in ${f.massUnit}`,
    right: (grams) => `${f.grams(grams)}, stimmt`,
    poured: 'Hineingegeben',
    pouredGrams: (grams) => `Hineingegeben: ${f.grams(grams)}`,
    oneMore: (step) => `${f.grams(step)} mehr`,
    oneLess: (step) => `${f.grams(step)} weniger`,
    noMore: 'Davon ist nichts mehr da',
    leaveOut: 'Weglassen',
    leaveOutSure: (food) => `Ja, ohne ${food}`,
    leaveOutMoreSure: (food) => `Ja, nicht noch mehr ${food}`,
    leaveOutHelp: 'Die anderen gleichen das aus, so weit es geht.',
    backTo: (food) => (food === undefined ? 'Zurück zum Ende' : `Zurück zu ${food}`),
    other: 'Etwas anderes kam hinein oder kommt zuerst',
    choose: 'Hier auswählen',
    stranger: 'Etwas, das nicht in dieser Mischung ist',
    strangerHelp:
      'Nimm alles davon wieder heraus und mach weiter. Was die Mischung nicht kennt, lässt sich nicht ausrechnen: Bleibt etwas davon drin, gib diese Charge unten auf und fang neu an.',
    reads: 'Was die Waage zeigt',
    readsFood: 'nur diese Zutat (vorher auf null stellen)',
    readsBowl: 'alles in der Schüssel',
  },
  reading: {
    missing: `Schreib, was die Waage zeigt, in ${f.massUnit}.`,
    missingNoMore: `Schreib zuerst, was die Waage davon zeigt, in ${f.massUnit}. Gar nichts? Drück „Weglassen“.`,
    noNumber: `Das ist keine Zahl; schreib zum Beispiel 15 oder 15,5, in ${f.massUnit}.`,
    belowZero: (grams) =>
      `${f.grams(grams)} liegt unter 0. Stell die leere Waage auf null und wiege noch einmal.`,
    lessThanBowl: (grams, inBowl) =>
      `${f.grams(grams)} ist weniger als die ${f.grams(inBowl)}, die schon in der Schüssel lagen. Wenn die Waage auf null gestellt war, wähl „nur diese Zutat“.`,
    nothing: 'Es kam nichts hinein. Soll es ohne gehen, drück „Weglassen“.',
  },
  tolerance: {
    none: 'Keine Menge davon bringt die ganze Ration in den Bereich; näher geht es nicht.',
    only: (g, onScale) =>
      `Nur ${f.grams(g)}${onScale ? ' auf der Waage' : ''} halten die ganze Ration im Bereich.`,
    upTo: (g, onScale) =>
      `Alles bis ${f.grams(g)}${onScale ? ' auf der Waage' : ''} hält die ganze Ration im Bereich.`,
    between: (low, high, onScale) =>
      `Alles von ${f.number(f.mass(low))} bis ${f.grams(high)}${onScale ? ' auf der Waage' : ''} hält die ganze Ration im Bereich.`,
    grows: (total) => `Die Charge wächst dann auf ${f.grams(total)}.`,
    comesTo: (total) => `Die Charge kommt dann auf ${f.grams(total)}.`,
    orWider: (low, high, total) =>
      low === 0
        ? `Bis ${f.grams(high)}, wenn die Charge auf ${f.grams(total)} kommt.`
        : `Von ${f.number(f.mass(low))} bis ${f.grams(high)}, wenn die Charge auf ${f.grams(total)} kommt.`,
  },

  changed: {
    more: (food, g) => `Noch ${f.grams(g)} ${food} dazugeben.`,
    leftOut: (food, from) => `${food} weglassen, bisher ${f.grams(from)}.`,
    instead: (food, to, from) => `${food}: ${f.grams(to)} statt ${f.grams(from)}.`,
  },
  after: {
    region: 'Nach dem letzten Abwiegen',
    poured: (food, g) => `${f.grams(g)} ${food}`,
    takenOut: (food, g) => `${f.grams(g)} ${food} herausgenommen`,
    leftOut: (food) => `${food} weggelassen`,
    lost: (what) => `${what}: Die Charge ist außerhalb des Bereichs.`,
    asked: (what) => `${what}: Die Charge kann nicht bleiben wie geplant.`,
    done: (what, total) => `${what}: Alles ist drin, ${f.grams(total)} im Bereich.`,
    grown: (what, others, again, total, planned) =>
      `${what}: ${othersChange(others, again)}; die Charge kommt auf ${f.grams(total)} statt ${f.grams(planned)}.`,
    goesOn: (what, others, again) =>
      `${what}: ${othersChange(others, again)}, und die Charge bleibt im Bereich.`,
    changes: (n) => `Was sich ändert (${f.number(n)})`,
  },
  spoonBack: (food, out) =>
    `Oder nimm ${f.grams(out)} ${food} wieder heraus: Dann bleibt die Charge so groß wie geplant.`,
  takenOut: (out) => `${f.grams(out)} herausgenommen`,

  ask: {
    heading: (planned) => `Mit ${f.grams(planned)} geht es nicht mehr in den Bereich`,
    grow: (total, planned) => `Eine Charge von ${f.grams(total)} statt ${f.grams(planned)} wäre im Bereich.`,
    without: (foods) => `Ohne ${f.list(foods)} wäre sie im Bereich.`,
    growWithout: (total, planned, foods) =>
      `Eine Charge von ${f.grams(total)} statt ${f.grams(planned)}, ohne ${f.list(foods)}, wäre im Bereich.`,
    doGrow: (total) => `Auf ${f.grams(total)} vergrößern`,
    doWithout: (foods) => `${f.list(foods)} weglassen`,
    doGrowWithout: (total, foods) => `Auf ${f.grams(total)} vergrößern und ${f.list(foods)} weglassen`,
    doTakeOut: (out, food) => `${f.grams(out)} ${food} wieder herausnehmen`,
    takeOutHelp: (out, food) => `Nimm jetzt ${f.grams(out)} ${food} aus der Schüssel, dann drück die Taste.`,
    takeOutDone: (out) => `${f.grams(out)} herausgenommen`,
    takeOutNotYet: 'Zurück zur Auswahl',
    doKeep: (planned) => `Bei ${f.grams(planned)} bleiben, außerhalb des Bereichs`,
    missed: 'Wenn sie so bleibt:',
  },

  lost: {
    region: 'Außerhalb des Bereichs',
    heading: 'Das lässt sich nicht mehr in den Bereich bringen',
    noSteps: 'In ganzen Schritten der Waage kommt diese Charge nicht in den Bereich.',
    sentence: 'Mit dem, was da ist, kommt diese Charge nicht mehr in den Bereich. Näher geht es nicht:',
    larger: (total) => `Eine Charge von ${f.grams(total)} wäre im Bereich.`,
    largerWith: (total, needed) =>
      `Eine Charge von ${f.grams(total)} wäre im Bereich; dafür fehlen in den Packungen ${f.list(needed.map((n) => `${f.grams(n.grams)} ${n.name}`))}.`,
    grow: (total) => `Doch auf ${f.grams(total)} vergrößern`,
    growWithMore: 'Die Charge vergrößern; ich habe mehr davon',
    goOn: 'Oder mach unten weiter: Die nächsten Mengen sind die nächstbesten.',
    why: 'Die Schüssel so annehmen, weil',
    whyMissing: 'Schreib den Grund; er bleibt bei der Charge.',
    accept: 'So annehmen und abschließen',
    again: 'Neu anfangen',
    againSure: 'Ja, Schüssel leeren und neu anfangen',
    againHelp:
      'Diese Charge wird dann geschlossen und als „nicht verfüttern“ vermerkt; eine neue nach demselben Plan beginnt.',
    againFailed: (why) => `Es wurde keine neue Charge begonnen: ${why}`,
    startedAgain: 'mit leerer Schüssel neu angefangen',
  },

  finish: {
    region: 'Alles ist drin',
    heading: (total) => `Alles ist drin: ${f.grams(total)}`,
    press: 'Charge abschließen',
    madeBy: 'Gemacht von (wenn du magst)',
  },
  giveUp: {
    press: 'Diese Charge aufgeben',
    emptyHelp: 'Es ist noch nichts drin, also geht nichts verloren.',
    help: 'Was hineinkam, bleibt vermerkt und fehlt in seinen Packungen; die Charge wird geschlossen und nicht verfüttert.',
    why: 'Warum (wenn du magst; es bleibt bei der Charge)',
    noReason: 'ohne Angabe eines Grundes',
    yesDelete: 'Ja, löschen',
    yes: 'Ja, aufgeben',
    no: 'Nein, weitermachen',
  },
  takeBack: (food, g) => `Letzten Eintrag zurücknehmen (${f.grams(g)} ${food}), er war falsch geschrieben`,
  usedUp: (food) => `Von ${food} ist nichts mehr da: Danach wird nicht mehr gefragt.`,
  moreAfterAll: (food) => `Von ${food} ist doch noch etwas da`,

  list: {
    region: 'Alle Zutaten der Charge',
    heading: 'Alle Zutaten',
    done: (done, all) => `${f.number(done)} von ${f.number(all)} fertig`,
    state: { poured: 'drin', 'left out': 'weggelassen', now: 'jetzt', 'to come': 'kommt noch' },
    planned: (g) => `geplant ${f.grams(g)}`,
    otherToCome: (food, g) => `${food}, ${f.grams(g)} kommen noch`,
    otherMore: (food, g) => `mehr ${food}, ${f.grams(g)} in der Schüssel`,
    otherLeftOut: (food) => `${food}, jetzt weggelassen`,
    otherNotPlanned: (food) => `${food}, nicht geplant`,
  },

  save: {
    saving: (g, food) => `${f.grams(g)} ${food} wird gespeichert…`,
    savingChange: 'Deine letzte Änderung wird gespeichert…',
    savingEnd: 'Das Ende der Charge wird gespeichert…',
    waits: (pours) =>
      `${f.count(pours, { one: 'Eintrag wartet', other: 'Einträge warten' })} aufs Senden. Mach einfach weiter; nichts geht verloren.`,
    changeWaits: 'Deine letzte Änderung wartet aufs Senden. Mach einfach weiter; nichts geht verloren.',
    endWaits: 'Das Ende der Charge wartet aufs Senden; nichts geht verloren.',
    tryNow: 'Jetzt versuchen',
    refused: (g, food, why) =>
      `<b>Nicht vermerkt:</b> ${f.grams(g)} ${food}. ${why} Hier steht die Charge, wie sie gespeichert ist; schau in die Schüssel, bevor du weitermachst.`,
    refusedChange: (why) =>
      `<b>Nicht vermerkt:</b> deine letzte Änderung. ${why} Hier steht die Charge, wie sie gespeichert ist; schau in die Schüssel, bevor du weitermachst.`,
    refusedEnd: (why) =>
      `<b>Nicht vermerkt:</b> das Ende der Charge. ${why} Hier steht die Charge, wie sie gespeichert ist; schau in die Schüssel, bevor du weitermachst.`,
    asked: 'Ein anderes Gerät hat inzwischen dasselbe an dieser Charge geändert: Wähl oben, was gelten soll.',
  },

  lots: {
    from: (packs) => `Aus ${packs.join(', dann ')}.`,
    bought: (pack, day) => `${pack}, ${day}`,
    grams: (pack, g) => `${pack} (${f.grams(g)})`,
    rest: (g) => `Für die übrigen ${f.grams(g)} ist keine Packung bereit.`,
    none: 'Davon ist keine Packung zum Abwiegen bereit.',
    passed: 'Packungen, die nicht bereit sind',
    why: (grams, why, wayOut) => `(${f.grams(grams)}): ${why} ${wayOut}`,
    goAhead: (pack) => `${pack} ohne Einfrieren abwiegen…`,
  },

  scaleSteps: 'Die Waage zeigt in Schritten von',
  scaleStep: (g) => f.grams(g),
  order: {
    why: 'Warum in dieser Reihenfolge',
    free: (food) => `${food}: Hier ist keine Regel im Weg, es kann jederzeit hinein.`,
    early: (food, on) =>
      `${food} kommt früh, denn es wirkt am stärksten (${on}); was danach kommt, kann noch ausgleichen.`,
    between: (food, on) => `${food} kommt in der Mitte, denn es wirkt ein wenig (${on}).`,
    late: (food, on) =>
      `${food} kommt spät: Ein wenig daneben schadet kaum (${on}), und danach kommt nicht mehr viel zum Ausgleichen.`,
  },

  begin: {
    running: 'Wird gerade abgewogen',
    goOn: (name) => `Weiter abwiegen: ${name}`,
    finished: 'Fertig',
    record: (name) => `Aufzeichnung: ${name}`,
    region: 'Eine neue Charge',
    weight: 'Gewicht der Charge',
    working: 'Wird ausgerechnet…',
    fitFirst: 'Mach die Mischung erst passend; dann kannst du sie abwiegen.',
    press: (g) => `Mit ${f.grams(g)} anfangen`,
    busy: 'Wird ausgerechnet…',
    failed: (why) => `Die Charge wurde nicht begonnen: ${why}`,
    notReady: 'Packungen, die nicht bereit sind',
    notReadyHeading: 'Noch nicht bereit zum Abwiegen',
    notReadyHelp: 'Diese Packungen zählen nicht mit, und ohne sie reicht es nicht.',
    withoutCounting: 'Was fehlt, habe ich: anfangen, ohne die Packungen zu zählen',
    thisBatch: 'Diese Charge',
    batches: 'Chargen',
    made: (when, g) => `${when}, ${f.grams(g)}`,
    madeOf: (when, g, of) => `${when}, ${f.grams(g)} von ${f.grams(of)}`,
  },

  sheet: {
    print: 'Wiegezettel drucken',
    heading: (grams, step, batch, day) =>
      `Abzuwiegen: ${f.grams(grams)} in Schritten von ${f.grams(step)}. Charge ${batch}, begonnen am ${day}.`,
    weighed: 'Abgewogen am <day></day> von <name></name>',
    food: 'Zutat und ihre Packung',
    pour: `hinein, ${f.massUnit}`,
    range: 'von–bis',
    total: `zusammen, ${f.massUnit}`,
    weighedColumn: `gewogen, ${f.massUnit}`,
    span: (low, high) => `${low} bis ${high}`,
    rangeHelp:
      'Von–bis: Die Charge bleibt im Bereich, solange diese Zutat dazwischen liegt und alle anderen wie gedruckt sind. Liegt eine außerhalb oder weichen mehrere ab, trag es auf der Seite ein: Dann ändern sich die anderen.',
    short: (food, g) => `${food}: ${f.grams(g)} fehlen.`,
    caution: (foods, way) => `<b>${f.list(foods)}:</b> ${way}`,
    notComplete: 'Kein tierärztlicher Rat. Eine eigene Mischung ersetzt nie ein Alleinfutter.',
  },
});

function othersChange(n: number, again: boolean): string {
  if (n === 0) return 'Sonst ändert sich nichts';
  const amounts = n === 1 ? 'Eine andere Menge ändert sich' : `${n} andere Mengen ändern sich`;
  return again ? `${amounts}, und von schon Abgewogenem braucht es mehr` : amounts;
}
