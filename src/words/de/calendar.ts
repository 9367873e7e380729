import type { Calendar } from '../en/calendar.ts';
import type { Figures } from '../figures.ts';

export const calendar = (f: Figures): Calendar => {
  const days = (n: number) => f.count(n, { one: 'Tag', other: 'Tage' });
  return {
    title: 'Tage',
    move: {
      isDone: (step) => `${step} ist getan und bleibt, wo es ist; verschieb, was danach kommt.`,
      hasBegun: (step) => `${step} hat begonnen und bleibt, wo es ist; verschieb, was danach kommt.`,
      withItsPack: (step) => `${step} hat seinen Tag bei den Packungen: Verschieb es dort.`,
      stillFreezing: (step, day, first) =>
        `${step} kann nicht am ${day} beginnen: Was eingefroren ist, ist bis dahin nicht fertig. Der erste mögliche Tag ist der ${first}.`,
      beforePlan: (step, day, begin, first) =>
        `${step} kann nicht am ${day} beginnen: Das ist vor dem ${begin}, dem ersten Tag des Plans. Der erste mögliche Tag ist der ${first}.`,
      fixedUntil: (step, day, other, until, first) =>
        `${step} kann nicht am ${day} beginnen: ${other} dauert bis ${until}. Der erste mögliche Tag ist der ${first}, oder verschieb zuerst jenen Schritt.`,
      goesOnUntil: (step, day, other, until, first) =>
        `${step} kann nicht am ${day} beginnen: ${other} dauert bis ${until}. Der erste mögliche Tag ist der ${first}, oder gib jenem Schritt weniger Tage.`,
      tooEarlyFor: (step, day, other, needed, begin, first) =>
        `${step} kann nicht am ${day} beginnen: ${other} müsste am ${needed} beginnen, vor dem ${begin}. Der erste mögliche Tag ist der ${first}, oder gib den Schritten dazwischen weniger Tage.`,
      beforeLasts: (step, day, before, until) =>
        `${step} kann nicht am ${day} beginnen: ${before} davor dauert bis ${until}. Das ist der erste mögliche Tag, außer du verschiebst zuerst jenen Schritt.`,
      firstDay: (step, day, first) =>
        `${step} kann nicht am ${day} beginnen: Der erste mögliche Tag ist der ${first}.`,
      noRoom: (step, day, full, grams, room) =>
        `${step} kann nicht am ${day} beginnen: Am ${full} lägen ${f.weight(grams)} im Gefrierfach, und Platz ist für ${f.weight(room)}.`,
      nextRoom: (day) => `Der nächste Tag mit Platz ist der ${day}.`,
      nowBegins: (step, day) => `${step} beginnt jetzt am ${day}.`,
      stays: (step, day) => `${step} bleibt am ${day}.`,
      nothingElse: 'Sonst verschiebt sich nichts.',
      to: (step, day) => `${step} auf den ${day}`,
      withIt: (moves) => `Mit verschoben: ${f.list(moves)}.`,
      nowLate: (end, due) => `Der Plan endet jetzt am ${end}, nach dem ${due}.`,
      stepGone: (day) =>
        `Ein Schritt, den du auf den ${day} gelegt hast, ist nicht mehr im Plan; dein Tag dafür entfällt.`,
      dropped: (why) => `Dein Tag für einen Schritt entfällt. ${why}`,
      begins: (day) => `Beginnt am ${day}`,
      take: (day) => `${day} nehmen`,
      seeFreezer: 'Alles ansehen, was ins Gefrierfach kommt',
      anotherDay: 'Ein anderer Tag',
      put: 'Dorthin verschieben',
      earlier: 'Einen Tag früher',
      later: 'Einen Tag später',
      done: 'Fertig',
      from: (day) => `Ab ${day}.`,
      by: (day) => `Spätestens am ${day}.`,
      with: (foods) => `Mit ${foods}.`,
    },

    screen: {
      noShares: (mix) =>
        `${mix} hat noch keine Zutat mit einem Anteil: <mix>Gib ihr welche unter Mischungen</mix>, dann gibt es etwas zu planen.`,
      for: (batch, mix) => `Für ${batch} von ${mix}.`,
      forGrams: (batch, mix, grams) => `Für ${batch} von ${mix}, ${f.grams(grams)}.`,
      toBuy: 'Wie viel, und was zu kaufen ist',
      inShort: 'Der Plan in Kürze',
      beginPassed: 'Der erste Tag, den du angegeben hast, ist vorbei; der Plan beginnt heute.',
      overdue: (foods, step, day) =>
        `${foods}: ${step} war am ${day} vorbei und ist nicht abgehakt; was folgt, wird später. <tick>Abhaken</tick>`,
      packWithoutDays: (pack) =>
        `${pack} hat noch keine Tage im Gefrierfach; die Tage unten wissen nicht, wie viel Platz da ist. <plan>Das Einfrieren für den Platz planen, den es gibt</plan>`,
      packsWithoutDays: (n) =>
        `${f.number(n)} Packungen haben noch keine Tage im Gefrierfach; die Tage unten wissen nicht, wie viel Platz da ist. <plan>Das Einfrieren für den Platz planen, den es gibt</plan>`,
      whenRunsOut: '<animals>Zu den Tieren</animals> oder <now>den Rest wiegen</now>.',
      takeBack: 'Deine eigenen Tage zurücknehmen',
      ready: 'Fertig',
      readyToWeigh: 'Bereit zum Abwiegen',
      readyFoods: (foods) => `${f.list(foods)}.`,
    },
    goBy: {
      section: 'Wonach sich die Tage richten',
      question: 'Wonach richtest du dich?',
      today: 'Ich fange heute an',
      from: 'Ich fange an einem anderen Tag an',
      runsOut: (name, day) => `Fertig, wenn ${name} zu Ende geht, ${day}`,
      until: 'Fertig bis zu einem Tag, den ich wähle',
      beginning: 'Jeder Schritt kommt so früh wie möglich.',
      end: 'Jeder Schritt kommt so spät wie möglich.',
      firstDay: 'Erster Tag',
      fromPassed: 'Der ist vorbei: Heute zählt.',
      doneBy: 'Alles fertig bis',
      untilPassed: 'Der ist vorbei: Wähl einen späteren Tag, oder fang heute an.',
    },
    list: {
      section: 'Schritte nach Tagen',
      title: 'Schritt für Schritt',
      onDay: (weekday, day) => `${weekday}, ${day}`,
      today: (day) => `${day} (heute)`,
      deadline: (day) => `${day}: Bis dahin muss alles fertig sein.`,
      doneSoFar: (n) => `Bisher getan (${f.number(n)})`,
      on: (day) => `am ${day}`,
      span: (from, to) => `${from} bis ${to}`,
      begun: (when) => `${when}, hat begonnen`,
      done: (when) => `${when}, getan`,
      setsPace: 'bestimmt das Tempo',
      withPack: 'der Tag steht bei der Packung',
      yourDay: 'dein Tag',
      change: 'Ändern',
      close: 'Schließen',
      changeDay: (step) => `Den Tag ändern: ${step}`,
      closeDay: (step) => `Schließen: ${step}`,
    },
    picture: {
      bowl: 'In die Schüssel',
      freeze: 'Gefrierfach',
      thaw: 'taut',
      dry: 'trocknet',
      weigh: 'abwiegen',
      change: 'vom alten Futter zum neuen',
      buy: 'kaufen',
      setsPace: 'dicke Linie: bestimmt das Tempo, ein verlorener Tag hier geht allen verloren',
      waits: 'gepunktet: wartet',
      done: 'getan',
      today: 'heute',
      due: (day) => `${day}: alles muss fertig sein`,
    },
    lengths: {
      title: 'Wie lange jeder Schritt dauert',
      about:
        'Für alles, was noch keine Tage hat. Eine Packung mit Tagen im Gefrierfach behält sie, bis ihr Einfrieren neu geplant wird; ein großer Beutel bekommt mehr.',
      unit: 'Tage',
      buy: 'Einkaufen',
      freeze: 'Einfrieren, jedes Mal',
      thaw: 'Auftauen, jedes Mal',
      dry: 'Trocknen',
      weigh: 'Abwiegen',
      'change-over': 'Umstellen',
    },
    file: {
      title: 'Für deinen eigenen Kalender',
      about:
        'Eine Datei, die Kalenderprogramme lesen (.ics). Eine spätere Datei derselben Charge ersetzt eine frühere.',
      reminder: 'Mit Erinnerung um 9 Uhr morgens an jedem ersten Tag',
      save: 'Kalenderdatei speichern',
      saved: (name) => `Gespeichert als ${name}: Öffne sie mit deinem Kalender.`,
      failed: (why) => `Die Datei ließ sich nicht schreiben: ${why}`,
      fileName: (batch) => `pouchful-${batch}`,
      entryOf: (step, made) => `${step}: ${made}`,
      check: (food) => `Wenden und prüfen: ${food}`,
      checkText: (n, of) =>
        `Prüfung ${f.number(n)} von ${f.number(of)}. Fertig, wenn nichts mehr weich oder klebrig ist (übliche Praxis, ohne Quelle).`,
      forBatch: (made, foods) => `Für ${made}: ${foods}.`,
      beginBy: (day) => `Bis ${day} beginnen.`,
      setsPace: 'Bestimmt das Tempo: Ein verlorener Tag hier geht allen verloren.',
      room: (n) => `${days(n)} zwischen dem frühesten und dem spätesten Tag.`,
      category: {
        buy: 'Einkauf',
        freeze: 'Einfrieren',
        thaw: 'Einfrieren',
        dry: 'Trocknen',
        weigh: 'Abwiegen',
        'change-over': 'Futterumstellung',
      },
    },
  };
};
