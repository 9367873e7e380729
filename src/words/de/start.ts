import type { Start } from '../en/start.ts';
import type { Figures } from '../figures.ts';

export const start = (f: Figures): Start => ({
  title: 'Selbst anfangen',
  lead: 'In drei Schritten zu deiner ersten Mischung. Du kannst später alles ändern.',
  isDone: '(erledigt)',
  doThisNow: 'Jetzt machen',
  changeStep: (step) => `Ändern: ${step}`,
  mixName: 'Meine Mischung',
  mixFor: (animal) => `Mischung für ${animal}`,
  animal: {
    title: 'Dein Tier',
    done: (names, grams) =>
      grams === undefined ? f.list(names) : `${f.list(names)}, ${f.grams(grams, 1)} Futter am Tag`,
    name: 'Name',
    nameless: 'Gib dem Tier einen Namen.',
    species: 'Was für ein Tier?',
    lifeStage: 'Wie alt?',
    daily: 'Trockenfutter am Tag',
    notKnown: 'nicht bekannt',
    suggested: {
      handouts: (low, high) =>
        `Mischung und Pellets zusammen. Merkblätter aus Tierarztpraxen nennen für ein ausgewachsenes Tier meist ${f.grams(low)} bis ${f.grams(high)}.`,
      memory: (low, high) =>
        `Mischung und Pellets zusammen. Etwa ${f.grams(low)} bis ${f.grams(high)} für ein ausgewachsenes Tier (übliche Praxis, aus dem Gedächtnis; ohne Quelle). Wiege, was deins frisst.`,
    },
    noSuggestion:
      'Mischung und Pellets zusammen. Lass das Feld leer, wenn du es nicht weißt: Wiege, was gefressen wird.',
    keep: 'Tier speichern',
  },
  pellet: {
    title: 'Deine Pellets',
    why: 'Die Hälfte des Futters ist ein Alleinfutter aus dem Laden, die Pellets; die andere Hälfte ist die Mischung. Was in den Pellets steckt, bestimmt, was die Mischung bringen muss.',
    name: 'Wie nennst du sie?',
    usualName: 'Meine Pellets',
    nameless: 'Gib einen Namen an.',
    noFigures: 'Füge das Etikett ein oder schreib mindestens einen der Werte.',
    keep: 'Pellets speichern',
    done: (names) => f.list(names),
  },
  label: {
    pellet: 'Das Etikett deiner Pellets',
    food: 'Das Etikett dieser Zutat',
    hint: 'Füge ein oder tippe, was auf der Packung steht, zum Beispiel „Rohprotein min. 16 %, Rohfett min. 4 %, Rohfaser max. 9 %“.',
    source: 'Etikett',
    read: (amounts) => `Gelesen, in 100 g: ${amounts.join('; ')}.`,
    nothingRead: 'Noch nichts verstanden. Schreib zum Beispiel „Protein 16 %“.',
    unread: (lines) =>
      f.form(lines, {
        one: 'Eine Zeile wurde nicht verstanden.',
        other: `${f.number(lines)} Zeilen wurden nicht verstanden.`,
      }),
    lineByLine: 'Zeile für Zeile',
    recheck: 'Prüf diese Zeile des Etiketts.',
    tooLong: (letters, most) =>
      `Das Etikett hat ${f.number(letters)} Zeichen, ${f.number(most)} lassen sich behalten; lass die Zeilen ohne Werte weg.`,
    orType: 'Kein Etikett zum Einfügen? Schreib, was auf der Packung steht:',
    missing: 'Das lässt dein Etikett offen. Schreib, was du weißt; der Hersteller kann es dir sagen.',
    fatAtLeast: (least) =>
      `Auf deinem Etikett steht mindestens ${f.percent(least)}. Bleibt das Feld leer, kann die Mischung nicht sicher im Bereich sein.`,
    saysAtLeast: (least) => `Auf deinem Etikett steht mindestens ${f.percent(least)}.`,
    saysAtMost: (most) =>
      `Auf deinem Etikett steht höchstens ${f.percent(most)}. Bleibt das Feld leer, zählt es als nichts, und die Mischung muss alles bringen.`,
    least: { PROCNT: 'Protein mindestens', FAT: 'Fett mindestens', FIBC: 'Rohfaser mindestens' },
    most: { PROCNT: 'Protein höchstens', FAT: 'Fett höchstens', FIBC: 'Rohfaser höchstens' },
    amount: { PROCNT: 'Protein', FAT: 'Fett', FIBC: 'Rohfaser' },
    notKnown: 'nicht bekannt',
  },
  foods: {
    title: 'Deine Zutaten',
    box: 'Welche Zutaten hast du?',
    hint: 'Eine je Zeile, zum Beispiel „Haferflocken, 5 %“, „Hirse 15 g“ oder einfach „Linsen“. Enter fügt hinzu. Du kannst auch eine Liste oder Tabelle einfügen. 20 bis 30 Zutaten geben eine gute Mischung (übliche Praxis, ohne Quelle).',
    add: 'Hinzufügen',
    makeFit: 'Passend machen',
    working: 'Wird ausgerechnet…',
    lookingUp: 'Sie werden gesucht…',
    told: (added, there) =>
      [
        added === 0
          ? ''
          : f.form(added, {
              one: 'Eine Zutat kam dazu.',
              other: `${f.number(added)} Zutaten kamen dazu.`,
            }),
        there.length === 0 ? '' : `Schon in der Mischung: ${f.list(there)}.`,
      ]
        .filter(Boolean)
        .join(' '),
    count: (n) =>
      f.form(n, { one: 'Eine Zutat in der Mischung.', other: `${f.number(n)} Zutaten in der Mischung.` }),
    left: (line, why) => `„${line}“: ${why}`,
    faults: {
      nameless: 'Hier steht keine Zutat; schreib den Namen zum Wert.',
      unitless: 'Sind das Prozent oder Gramm? Schreib „5 %“ oder „5 g“.',
      range: 'Schreib einen Wert, nicht mehrere.',
      over: 'Mehr als 100 % der Mischung geht nicht.',
      nothing: 'Davon wäre nichts in der Mischung; lass die Zeile weg oder den Wert.',
      long: 'Der Name ist zu lang.',
    },
    tableName: 'meine eigene Tabelle',
    unsure: 'Welche Zutat ist gemeint?',
    unsureHint: 'Diese sind noch nicht in der Mischung.',
    noFood: 'In den Tabellen heißt keine Zutat so.',
    takeFor: (food, typed) => `${food} für „${typed}“`,
    leaveOut: 'Weglassen',
    leaveOutFood: (typed) => `„${typed}“ weglassen`,
    or: 'oder:',
    makeOwn: 'Eigene',
    makeOwnOf: (food) => `${food} als eigene Zutat anlegen, nach dem Etikett`,
    keepOwn: 'Zutat speichern',
    rows: 'Zutaten in der Mischung',
    wanted: (share) => `etwa ${f.percent(share)}`,
    typed: (typed) => `für „${typed}“`,
    fresh: 'frisch: erst trocknen, dann in die Mischung',
    instead: (other, food) => `${other} statt ${food}`,
    removeFood: (food) => `${food} entfernen`,
    removed: (food) => `Herausgenommen: ${food}.`,
  },
  table: {
    title: 'Zu deiner Tabelle',
    hint: (n) =>
      f.form(n, {
        one: 'Eine Frage, bevor deine Tabelle übernommen wird.',
        other: `${f.number(n)} Fragen, bevor deine Tabelle übernommen wird.`,
      }),
    other: 'Oder ein anderer Wert',
  },
});
