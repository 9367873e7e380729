import type { Store } from '../en/store.ts';
import type { Figures } from '../figures.ts';

export const store = (f: Figures): Store => ({
  server: {
    silent: 'De Pouchful-server antwoordt niet. Draait hij nog?',
    failed: (status) => `De server meldde een fout (${status}).`,
    stranger: 'Hier antwoordt iets anders dan Pouchful. Draait de server, en klopt het adres?',
    otherVersion: 'Pouchful is nieuwer dan deze pagina. Laad de pagina opnieuw.',
  },
  lettersLeft: (left, most) =>
    left === 0
      ? `Meer past er niet in: hoogstens ${most} tekens.`
      : `Er ${f.form(left, { one: 'past', other: 'passen' })} nog ${f.count(left, { one: 'teken', other: 'tekens' })} in.`,
  leaving: {
    title: 'Hier staat iets dat niet is bewaard',
    words: 'Als je nu weggaat, is het weg.',
    stay: 'Hier blijven',
    leave: 'Weggaan zonder te bewaren',
  },
});
