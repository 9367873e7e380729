import type { Store } from '../en/store.ts';
import type { Figures } from '../figures.ts';

export const store = (f: Figures): Store => ({
  server: {
    silent: 'Der Pouchful-Server antwortet nicht. Läuft er noch?',
    failed: (status) => `Der Server hat einen Fehler gemeldet (${status}).`,
    stranger: 'Hier antwortet etwas anderes als Pouchful. Läuft der Server, und stimmt die Adresse?',
    otherVersion: 'Pouchful ist neuer als diese Seite. Lade die Seite noch einmal.',
  },
  lettersLeft: (left, most) =>
    left === 0
      ? `Mehr passt nicht hinein: höchstens ${most} Zeichen.`
      : `Noch ${f.count(left, { one: 'Zeichen passt', other: 'Zeichen passen' })} hinein.`,
  leaving: {
    title: 'Hier steht etwas, das nicht gespeichert ist',
    words: 'Wenn du jetzt gehst, ist es weg.',
    stay: 'Hier bleiben',
    leave: 'Ohne Speichern gehen',
  },
});
