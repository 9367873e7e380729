import type { PelletStock } from '../en/pellet-stock.ts';
import type { Figures } from '../figures.ts';

export const pelletStock = (f: Figures): PelletStock => {
  const days = (n: number) => f.count(n, { one: 'Tag', other: 'Tage' });
  const onDays = (n: number) => f.count(n, { one: 'Tag', other: 'Tagen' });
  return {
    title: 'Pellets',
    section: 'Neben der Mischung gefüttert',
    about:
      'Pellets und was du sonst aus der Packung fütterst. Sie werden nicht eingefroren und kommen nicht in eine Mischung.',
    lasts: (n, until) => `Reicht ${days(n)}, bis ${until}.`,
    lastsAbout: (n, until) => `Reicht ungefähr ${days(n)}, bis ${until}.`,
    buyBy: (day) => `Nachkaufen bis ${day}.`,
    buyNow: 'Jetzt nachkaufen.',
    tooMuch: (grams) =>
      `Etwa ${grams} sind bis dahin über dem Mindesthaltbarkeitsdatum und zählen nicht mit.`,
    state: {
      inUse: 'in Gebrauch: wird als Nächstes gefüttert',
      kept: 'bereit',
      past: 'über dem Mindesthaltbarkeitsdatum: ansehen und riechen, besser eine neue öffnen',
      shouldBeEmpty: 'müsste jetzt leer sein: wieg nach',
    },
    left: (left, all) => `${left} übrig von ${all}`,
    leftAbout: (left, all) => `etwa ${left} übrig von ${all}`,
    pack: {
      title: 'Was noch da ist',
      fromBought: (start, day) => `Gezählt ab ${start} am ${day}, als es ins Haus kam.`,
      fromWeighed: (start, day) => `Gezählt ab ${start} am ${day}, als gewogen wurde.`,
      fed: (grams) => `${grams} sind seitdem als gefüttert notiert.`,
      guessed: (grams) =>
        `${grams} mehr für Tage ohne Notiz, nach dem, was die Tiere jetzt am Tag bekommen. Das ist geschätzt: Wieg die Packung, um sicher zu sein.`,
      over: (grams) =>
        `${grams} mehr sind als gefüttert notiert, als in der Packung war. Wieg sie, oder berichtige ihr Gewicht.`,
      weigh: 'Wiegen, was noch da ist',
      weighHint: 'Bevor das Futter von heute genommen wird.',
      notWeighed: 'nicht gewogen',
      allGone: 'Alles weg',
      saidLeft: (grams) => `Notiert: ${grams} übrig.`,
      saidGone: 'Notiert: Es ist nichts mehr davon da.',
      open: 'Heute geöffnet',
      opened: (day) => `Geöffnet am ${day}.`,
    },
    keeping: {
      text: 'Einmal offen: gut verschließen, trocken, dunkel und höchstens bei Zimmerwärme aufheben und in etwa 3 Monaten aufbrauchen (übliche Praxis, ohne Quelle). Heb die Vorderseite der Packung auf: Ihre Nummer sagt, ob ein Rückruf deine betrifft.',
      source:
        'Gut gelagertes Trockenfutter kann bis etwa 6 Monate nach der Herstellung verwendet werden; Wärme über 21 °C, Feuchte, Licht und Luft lassen es früher verderben (National Research Council 1996, Guide for the Care and Use of Laboratory Animals, S. 39).',
      more: 'Wie lange es sich hält',
      openLong: (n) =>
        `Die Packung ist seit ${onDays(n)} offen: Die Vitamine lassen nach. Riech daran, und öffne besser eine neue (übliche Praxis, ohne Quelle).`,
    },
    shop: {
      hint: (n) =>
        `Für ${days(n)}, so lange wie diese Charge reicht, weniger das, was in deinen Packungen noch da ist.`,
      unknown: (foods) =>
        `Wie viel du von ${f.list(foods)} kaufen musst, weiß niemand: <animals>Sag, was jedes Tier am Tag bekommt</animals>.`,
    },
    days: {
      title: 'Was neben der Mischung gefüttert wird',
      runsOut: (food) => `${food} geht aus`,
      buy: (food) => `${food} kaufen`,
      buyNow: (food) => `${food} jetzt kaufen`,
      row: (food) => `${food}: aus der Packung`,
      estimate: 'geschätzt',
      noPack: (food) =>
        `Von ${food} ist keine Packung im Vorrat, deshalb weiß niemand, wann es ausgeht. <stock>Eine Packung eintragen</stock>`,
      fileRunsOut: (food) => `${food} geht aus`,
      fileBuy: (food) => `${food} kaufen`,
      fileText: (grams, aDay) => `${grams} übrig, ${aDay} werden am Tag gefüttert.`,
      category: 'Futter',
    },
    stop: {
      region: 'Nicht füttern',
      sure: {
        recalled: 'Nicht füttern: zurückgerufen',
        infested: 'Nicht füttern: Insekten darin',
        spoiled: 'Nicht füttern: verdorben oder schimmelig',
        other: 'Nicht füttern',
      },
      maybe: {
        recalled: 'Vielleicht nicht füttern: Eine zurückgerufene Packung kann darin sein',
        infested: 'Vielleicht nicht füttern: Eine Packung mit Insekten kann darin sein',
        spoiled: 'Vielleicht nicht füttern: Eine verdorbene Packung kann darin sein',
        other: 'Vielleicht nicht füttern: Eine Packung, die nicht mehr verwendet wird, kann darin sein',
      },
      holds: (grams, why, day) =>
        `Darin sind ${grams} aus <pack></pack>, nicht mehr verwendet seit ${day}: ${why}.`,
      holdsSome: (why, day) => `Darin ist etwas aus <pack></pack>, nicht mehr verwendet seit ${day}: ${why}.`,
      mayHold: (why, day) =>
        `Darin kann etwas aus <pack></pack> sein, nicht mehr verwendet seit ${day}: ${why}. Niemand hat notiert, welche Packung hineinkam, oder es wurde wieder herausgenommen.`,
      doIt: 'Nimm den Tieren weg, was davon noch da ist, auch aus Näpfen und Verstecken, und gib gleich anderes Futter: Pellets allein genügen, wenn sie ein Alleinfutter sind.',
      hold: 'Gib besser etwas anderes, bis du weißt, welche Packung hineinkam.',
      vet: 'Geh in die Tierarztpraxis, wenn ein Tier, das davon gefressen hat, weniger frisst, weichen Kot hat, schwer atmet oder krank wirkt. Das ist kein tierärztlicher Rat.',
      noAmounts: 'Dafür werden keine Tagesmengen angegeben.',
      eaten: 'Es ist nichts mehr von ihr da. Es war darin.',
      eatenMaybe: 'Es ist nichts mehr von ihr da. Es war vielleicht darin.',
      gone: 'Es ist nichts mehr davon da',
      saidGone: 'Notiert: Es ist nichts mehr davon da.',
      givenUp: 'Sie wurde aufgegeben und nicht gefüttert.',
      undo: 'Wenn die Packung aus Versehen gesperrt wurde: Öffne die Packung und verwende sie wieder.',
      label: 'Nicht füttern',
      labelMaybe: 'Vielleicht nicht füttern',
      labelWhy: (pack, why, day) => `${pack}: ${why}, ${day}.`,
      tag: 'nicht füttern',
      tagMaybe: 'vielleicht nicht füttern',
      plan: (batch) =>
        `${batch} wird nicht mehr gefüttert, weil eine Packung darin nicht mehr verwendet wird. Sie zählt nicht als Futter, das da ist.`,
      planMaybe: (batch) =>
        `In ${batch} kann eine Packung sein, die nicht mehr verwendet wird. Sie zählt noch als Futter, das da ist; sieh in ihr Protokoll.`,
      record: 'Ihr Protokoll ansehen',
    },
    animal: {
      batch: (batch) => `<batch>${batch}</batch>: nicht füttern.`,
      batchMaybe: (batch) =>
        `In <batch>${batch}</batch> kann eine Packung sein, die nicht mehr verwendet wird. Gib besser etwas anderes, bis du es weißt.`,
      pack: (why, from, to) =>
        `<pack></pack> wird nicht mehr verwendet: ${why}. Davon wurde vom ${from} bis ${to} gefüttert. Nimm weg, was davon noch da ist, auch aus Verstecken.`,
      packMaybe: (why, from, to) =>
        `<pack></pack> wird nicht mehr verwendet: ${why}. Davon kann zwischen ${from} und ${to} gefüttert worden sein; niemand hat notiert, aus welcher Packung. Nimm weg, was noch da ist, auch aus Verstecken.`,
    },
    reach: {
      title: 'Tiere, die aus der Packung gefüttert wurden',
      none: 'Keine Fütterung daraus ist notiert, und die Packung war nicht in Gebrauch.',
      sure: (grams, from, to, n) => `<animal></animal>: ${grams} an ${onDays(n)}, ${from} bis ${to}`,
      maybe: (from, to, n) => `<animal></animal>: vielleicht, an ${onDays(n)} ohne Notiz, ${from} bis ${to}`,
      clear:
        'Nimm weg, was davon in Näpfen, Gehegen und Verstecken liegt. Wenn nichts mehr da ist, drück oben auf „Alles weg“: Dann wird nicht mehr daran erinnert.',
    },
  };
};
