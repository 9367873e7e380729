import type { BodyWeight } from '../en/body-weight.ts';
import type { Figures } from '../figures.ts';

export const bodyWeight = (f: Figures): BodyWeight => ({
  title: 'Gewicht',
  weigh: (name) => `${name} wiegen`,
  moment: (day, time) => `${day}, ${time}`,
  last: {
    none: (name) => `${name} wurde noch nicht gewogen.`,
    today: (grams, time) => `Heute um ${time} gewogen: ${f.grams(grams, 1)}.`,
    yesterday: (grams) => `Gestern gewogen: ${f.grams(grams, 1)}.`,
    on: (grams, day) => `Zuletzt gewogen am ${day}: ${f.grams(grams, 1)}.`,
  },
  gone: (name) => `${name} steht nur noch in den Aufzeichnungen. Was gewogen wurde, bleibt unten stehen.`,
  pad: {
    title: 'Was die Waage zeigt',
    press: 'Ein Druck behält das Gewicht. Das umrahmte ist das wahrscheinlichste.',
    pressTub: (tub) => `Drück, was die Waage mit der Dose zeigt. Ihre ${f.grams(tub, 1)} werden abgezogen.`,
    button: (grams) => `${f.grams(grams)}`,
    net: (grams) => `→ ${f.grams(grams, 1)}`,
    likeliest: 'am wahrscheinlichsten',
    other: 'Ein anderes Gewicht',
    otherTub: 'Ein anderes Gewicht, mit der Dose',
    keep: 'Behalten',
    belowTub: (tub) =>
      `Das ist nicht mehr, als die Dose allein wiegt (${f.grams(tub, 1)}). Sitzt das Tier darin? Oder zieht deine Waage die Dose selbst ab?`,
    first: 'Nach der ersten Wiegung stehen hier Knöpfe rund um das letzte Gewicht.',
  },
  kept: (grams) => `${f.grams(grams, 1)} behalten.`,
  keptTub: (grams, onScale) =>
    `${f.grams(grams, 1)} behalten: ${f.grams(onScale, 1)} auf der Waage, ohne die Dose.`,
  keptAfterOther: (grams, before) =>
    `${f.grams(grams, 1)} behalten. Die ${f.grams(before, 1)} von eben bleiben auch in der Liste.`,
  ask: {
    title: 'Stimmt das?',
    today: (grams, last) => `${f.grams(grams, 1)}? Heute waren es schon ${f.grams(last, 1)}.`,
    yesterday: (grams, last) => `${f.grams(grams, 1)}? Gestern waren es ${f.grams(last, 1)}.`,
    on: (grams, last, day) => `${f.grams(grams, 1)}? Am ${day} waren es ${f.grams(last, 1)}.`,
    kind: (grams, low, high) =>
      `${f.grams(grams, 1)}? Ein ausgewachsenes Tier dieser Art wiegt ${f.grams(low)} bis ${f.grams(high)}.`,
    likely: (grams, low, high) =>
      `${f.grams(grams, 1)}? Nach allem, was bekannt ist, sind ${f.grams(low, 0)} bis ${f.grams(high, 0)} wahrscheinlich.`,
    correct: 'Berichtigen',
    right: 'Es stimmt',
    rightAlarm: 'Stimmt es und hat das Tier so viel verloren, geh noch heute in die Tierarztpraxis.',
  },
  questions: {
    title: 'Stimmt das?',
    of: (grams, day) =>
      `${f.grams(grams, 1)} am ${day} liegt weit weg von den Gewichten davor und danach. Es zählt erst, wenn du sagst, dass es stimmt.`,
    right: (grams, day) => `Es stimmt: ${f.grams(grams, 1)} am ${day}`,
    correct: (grams, day) => `Berichtigen: ${f.grams(grams, 1)} am ${day}`,
    said: (grams) => `${f.grams(grams, 1)} zählt von jetzt an.`,
  },
  tub: {
    switch: 'In einer Dose gewogen',
    hint: 'Eine kleine Dose hält das Tier auf der Waage. Lass das aus, wenn deine Waage die Dose selbst abzieht (Tara).',
    weigh: 'Gewicht der leeren Dose',
    once: 'Wieg die leere Dose einmal, trocken und ohne Einstreu.',
    same: (grams) => `Wie beim letzten Mal: ${f.grams(grams, 1)}`,
    now: (grams) => `Die Dose wiegt ${f.grams(grams, 1)}.`,
    again: 'Dose neu wiegen',
    keep: 'Gewicht der Dose behalten',
  },
  alerts: {
    title: 'Was zu beachten ist',
    none: 'Nichts fällt auf.',
    doubt:
      'Die letzte Wiegung ist fraglich, darum lässt sich noch nichts sagen. Wieg noch einmal oder beantworte die Frage oben.',
    few: 'Noch zu wenige Wiegungen, um zu sagen, ob etwas auffällt.',
    vet: {
      today: 'Geh heute in die Tierarztpraxis',
      days: 'Geh in den nächsten Tagen in die Tierarztpraxis',
      'next visit': 'Sag es beim nächsten Besuch in der Tierarztpraxis',
    },
    fast: {
      loss: (name, percent) =>
        `${name} hat innerhalb von Tagen ${f.percent(percent, 0)} an Gewicht verloren.`,
      gain: (name, percent) => `${name} hat innerhalb von Tagen ${f.percent(percent, 0)} zugenommen.`,
    },
    shift: {
      loss: (name, percent) =>
        `${name} wiegt ${f.percent(percent, 0)} weniger als früher, und das bleibt so.`,
      gain: (name, percent) => `${name} wiegt ${f.percent(percent, 0)} mehr als früher, und das bleibt so.`,
    },
    slow: {
      loss: (name, percent) => `${name} nimmt langsam ab, bisher um ${f.percent(percent, 0)}.`,
      gain: (name, percent) => `${name} nimmt langsam zu, bisher um ${f.percent(percent, 0)}.`,
    },
    growth: {
      loss: (name) => `${name} ist noch jung und nimmt nicht zu, wie es sein sollte.`,
      gain: (name) => `${name} ist noch jung und nimmt schneller zu, als zu erwarten war.`,
    },
    fromTo: (from, to, since) =>
      `Davor waren es ${f.grams(from, 0)}, jetzt sind es ${f.grams(to, 0)}; begonnen hat es etwa am ${since}.`,
    expectedIs: (from, to, on) =>
      `Mindestens ${f.grams(from, 0)} waren zu erwarten; am ${on} waren es ${f.grams(to, 0)}.`,
    weighAgain: 'Wieg jetzt noch einmal, damit die Zahl sicher stimmt. Stimmt sie, warte nicht.',
    look: 'Schau, ob das Tier frisst, trinkt und sich bewegt wie sonst, sieh dir Zähne, Bauch und Kot an, und erzähl das in der Tierarztpraxis.',
    gain: 'Eine Zunahme kann auch einen Verlust an Muskeln verdecken, oder Wasser oder Nachwuchs sein. Taste den Rücken entlang und frag in der Tierarztpraxis.',
    noDiagnosis: 'Das sagt, dass sich das Gewicht geändert hat, nicht warum.',
    foundToo: 'Auch auf andere Weise gefunden:',
    moreCertain: 'Wie oft so eine Warnung falsch ist',
    oneIn: (animals) =>
      `Bei etwa einem von ${f.number(animals, 0)} Tieren kommt diese Warnung in einem Jahr ohne Grund.`,
    timesAYear: (times) =>
      `Bei jedem Tier kommt diese Warnung etwa ${f.number(times, 1)}-mal im Jahr ohne Grund.`,
    hardlyEver: 'Bei weniger als einem von 1000 Tieren kommt diese Warnung in einem Jahr ohne Grund.',
  },
  expected: {
    title: 'Zu erwarten',
    autumn: (name) =>
      `${name} lebt bei Tageslicht und die Tage werden kurz: Ein sinkendes Gewicht gehört zur Jahreszeit. Das ist hier eingerechnet.`,
    spring: (name) =>
      `Die Tage werden länger: ${name} nimmt wieder zu, was zum Winter verloren ging. Das ist hier eingerechnet.`,
    'short days': (name) =>
      `In kurzen Tagen nimmt ein Tier dieser Art zu. Für ${name} ist das hier eingerechnet.`,
    growth: (name) => `${name} wächst noch: Ein steigendes Gewicht ist richtig so.`,
    pregnancy: (name) => `${name} ist trächtig: Ein steigendes Gewicht ist richtig so.`,
    nursing: (name) => `${name} säugt: Damit geht das Gewicht auf und ab.`,
    birth: (name) => `${name} hat geworfen: Davon kommt der plötzliche Abfall.`,
    anyway: 'Frisst das Tier weniger oder wirkt es krank, geh trotzdem in die Tierarztpraxis.',
  },
  beside: {
    title: 'Zum Vergleich',
    kind: (species) => `Ausgewachsen, ${species}`,
    range: (low, high) => `${f.grams(low)} bis ${f.grams(high)}`,
    noKind: 'Für diese Tierart gibt es hier keine Zahl.',
    usual: (name) => `${name}, gesund`,
    usualNone: 'Noch nicht gesagt',
    sayUsual: 'Unter „Über“ angeben',
    lately: 'Letzte 90 Tage',
    latelyRange: (low, high) =>
      low === high ? `etwa ${f.grams(low, 0)}` : `${f.grams(low, 0)} bis ${f.grams(high, 0)}`,
    own: 'Es zählt, wie sich das eigene Gewicht des Tieres ändert. Gesunde Tiere einer Art wiegen sehr verschieden.',
  },
  picture: {
    title: 'Bild',
    choose: 'Eine Wiegung im Bild',
    none: 'Keine Wiegung in dieser Zeit.',
    at: (day, grams) => `${day}: ${f.grams(grams, 1)}.`,
    week: (day, low, high) => `Woche ab ${day}: ${f.grams(low, 1)} bis ${f.grams(high, 1)}.`,
    trend: (grams, low, high) =>
      `Verlauf ${f.bodyGrams(grams)} (${f.bodyGrams(low)} bis ${f.bodyGrams(high)}).`,
    unlikely: 'Wirkt unwahrscheinlich, zählt nicht.',
    said: (from, to, first, last, n) =>
      `Gewichte vom ${from} bis ${to}: ${f.count(n, { one: 'Wiegung', other: 'Wiegungen' })}, Verlauf von ${f.grams(first, 0)} zu ${f.grams(last, 0)}.`,
    key: {
      dot: 'gewogen',
      dots: 'niedrigstes bis höchstes einer Woche',
      trend: 'Verlauf, und wie sicher er ist',
      unlikely: 'unwahrscheinlich, zählt nicht',
      alert: 'etwas zu beachten',
      range: 'ausgewachsene Tiere der Art',
    },
    table: 'Dasselbe als Tabelle',
    columns: { day: 'Tag', week: 'Woche ab', weighed: 'Gewogen', trend: 'Verlauf', between: 'Zwischen' },
    weighedRange: (low, high) => `${f.number(f.mass(low), 1)} bis ${f.grams(high, 1)}`,
    trendRange: (low: number, high: number) => `${f.bodyGrams(low)} bis ${f.bodyGrams(high)}`,
  },
  list: {
    title: 'Frühere Wiegungen',
    none: 'Noch keine.',
    add: 'Eine von einem anderen Tag eintragen',
    item: (grams) => f.grams(grams, 1),
    tub: (onScale, tub) => `${f.grams(onScale, 1)} auf der Waage, Dose ${f.grams(tub, 1)}`,
    unlikely: 'unwahrscheinlich, zählt nicht',
    sure: 'wirkte unwahrscheinlich, als richtig bestätigt',
    change: 'Berichtigen',
    changeOf: (grams, moment) => `${f.grams(grams, 1)} berichtigen, ${moment}`,
    deleteOf: (grams, moment) => `${f.grams(grams, 1)} löschen, ${moment}`,
    deleted: (grams) => `${f.grams(grams, 1)} gelöscht.`,
    corrected: (grams) => `Jetzt ${f.grams(grams, 1)}.`,
    added: (grams) => `${f.grams(grams, 1)} eingetragen.`,
  },
  form: {
    add: 'Eine Wiegung von einem anderen Tag',
    change: (moment) => `Wiegung berichtigen: ${moment}`,
    weight: 'Gewicht',
    weightTub: (tub) => `Auf der Waage, mit der Dose von ${f.grams(tub, 1)}`,
    day: 'Tag',
    time: 'Uhrzeit',
    note: 'Notiz',
    noWeight: 'Sag, was das Tier wog.',
    noDay: 'Sag, an welchem Tag.',
    ahead: 'Das liegt in der Zukunft: Eine Wiegung hat einen Tag und eine Uhrzeit, die vorbei sind.',
  },
});
