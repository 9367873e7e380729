import type { Store } from '../en/store.ts';
import type { Figures } from '../figures.ts';

export const store = (f: Figures): Store => ({
  server: {
    silent: 'Der Pouchful-Server antwortet nicht. Läuft er noch?',
    failed: (status) => `Der Server hat einen Fehler gemeldet (${status}).`,
    stranger: 'Hier antwortet etwas anderes als Pouchful. Läuft der Server, und stimmt die Adresse?',
    otherVersion: 'Pouchful hat sich geändert, seit diese Seite geöffnet wurde. Lade die Seite neu.',
  },
  lettersLeft: (left, most) =>
    left === 0
      ? `Mehr passt nicht hinein: höchstens ${f.number(most)} Zeichen.`
      : `Noch ${f.count(left, { one: 'Zeichen passt', other: 'Zeichen passen' })} hinein.`,
  leaving: {
    title: 'Hier steht etwas, das nicht gespeichert ist',
    words: 'Wenn du jetzt gehst, ist es weg.',
    stay: 'Hier bleiben',
    leave: 'Ohne Speichern gehen',
  },
  unsent: {
    onDevice: (n, why) =>
      `Noch nicht gesendet: ${f.count(n, { one: 'Änderung', other: 'Änderungen' })}, auf diesem Gerät aufgehoben. ${why}`,
    onPage: (n, why) =>
      `Noch nicht gesendet: ${f.count(n, { one: 'Änderung', other: 'Änderungen' })}. Dieses Gerät kann sie nicht aufheben, lass also die Seite offen. ${why}`,
    refused: (thing, why) => `Deine Änderung wurde nicht gespeichert (${thing}): ${why}`,
  },
  conflict: {
    label: 'An zwei Stellen geändert',
    title: (thing) => `An zwei Stellen geändert: ${thing}`,
    who: (when, device) => ` (${when}, ${device})`,
    deletedHere: (who) => `Hier hast du es gelöscht; anderswo wurde es inzwischen geändert${who}.`,
    deletedThere: (who) => `Hier hast du es geändert; anderswo wurde es inzwischen gelöscht${who}.`,
    choose: 'Wähle, was gilt. Was nur auf einer Seite geändert wurde, bleibt von beiden.',
    what: 'Was',
    here: (when) => `Hier (${when})`,
    elsewhere: (who) => `Anderswo${who}`,
    deleteAllTheSame: 'Trotzdem löschen',
    keepWithMine: 'Mit meiner Änderung behalten',
    keepMine: 'Meines behalten',
    keepIt: 'Behalten',
    letGo: 'Gelöscht lassen',
    takeTheirs: 'Das andere nehmen',
    more: (n) => `Danach noch ${f.number(n)}.`,
  },
  value: {
    nothing: 'nichts',
    yes: 'ja',
    no: 'nein',
    oneOfThem: 'eines davon',
  },
  device: {
    browser: 'Ein Browser',
    on: (browser, system) => `${browser} auf ${system}`,
    iphone: 'einem iPhone',
    ipad: 'einem iPad',
    mac: 'einem Mac',
  },
  worker: {
    stopped: 'Der Teil dieser Seite, der rechnet, läuft nicht mehr. Starte ihn oben neu.',
    endedEarly: 'Er wurde beendet, bevor er eine Antwort hatte.',
    notLoaded: 'sein Programm ließ sich nicht laden',
    unreadable: 'eine Antwort von ihm war nicht lesbar',
    couldNotLoad: (what, why) => `${what} ließ sich nicht laden: ${why}`,
    foods: 'Die Tabelle der Zutaten',
    solver: 'Der Teil, der Mischungen ausrechnet,',
    answered: (status) => `der Server antwortete ${status}`,
    broke: (why) => `Der Teil, der Mischungen ausrechnet, ist ausgefallen: ${why}`,
  },
});
