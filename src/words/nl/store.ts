import type { Store } from '../en/store.ts';
import type { Figures } from '../figures.ts';

export const store = (f: Figures): Store => ({
  server: {
    silent: 'De Pouchful-server antwoordt niet. Draait hij nog?',
    failed: (status) => `De server meldde een fout (${status}).`,
    stranger: 'Hier antwoordt iets anders dan Pouchful. Draait de server, en klopt het adres?',
    otherVersion: 'Pouchful is veranderd sinds deze pagina werd geopend. Laad de pagina opnieuw.',
  },
  lettersLeft: (left, most) =>
    left === 0
      ? `Meer past er niet in: hoogstens ${f.number(most)} tekens.`
      : `Er ${f.form(left, { one: 'past', other: 'passen' })} nog ${f.count(left, { one: 'teken', other: 'tekens' })} in.`,
  leaving: {
    title: 'Hier staat iets dat niet is bewaard',
    words: 'Als je nu weggaat, is het weg.',
    stay: 'Hier blijven',
    leave: 'Weggaan zonder te bewaren',
  },
  unsent: {
    onDevice: (n, why) =>
      `Nog niet verstuurd: ${f.count(n, { one: 'wijziging', other: 'wijzigingen' })}, bewaard op dit apparaat. ${why}`,
    onPage: (n, why) =>
      `Nog niet verstuurd: ${f.count(n, { one: 'wijziging', other: 'wijzigingen' })}. Dit apparaat kan ze niet bewaren, laat deze pagina dus open. ${why}`,
    refused: (thing, why) => `Je wijziging is niet bewaard (${thing}): ${why}`,
  },
  conflict: {
    label: 'Op twee plekken gewijzigd',
    title: (thing) => `Op twee plekken gewijzigd: ${thing}`,
    who: (when, device) => ` (${when}, ${device})`,
    deletedHere: (who) => `Je hebt het hier verwijderd; intussen is het elders gewijzigd${who}.`,
    deletedThere: (who) => `Je hebt het hier gewijzigd; intussen is het elders verwijderd${who}.`,
    choose: 'Kies wat geldt. Wat maar op één plek is gewijzigd, blijft van beide.',
    what: 'Wat',
    here: (when) => `Hier (${when})`,
    elsewhere: (who) => `Elders${who}`,
    deleteAllTheSame: 'Toch verwijderen',
    keepWithMine: 'Houden met mijn wijziging',
    keepMine: 'Die van mij houden',
    keepIt: 'Houden',
    letGo: 'Verwijderd laten',
    takeTheirs: 'De andere nemen',
    more: (n) => `Hierna nog ${f.number(n)}.`,
  },
  value: {
    nothing: 'niets',
    yes: 'ja',
    no: 'nee',
    oneOfThem: 'een ervan',
  },
  device: {
    browser: 'Een browser',
    on: (browser, system) => `${browser} op ${system}`,
    iphone: 'een iPhone',
    ipad: 'een iPad',
    mac: 'een Mac',
  },
  worker: {
    stopped: 'Het deel van deze pagina dat rekent, is gestopt. Start het hierboven opnieuw.',
    endedEarly: 'Het werd gestopt voordat het een antwoord had.',
    notLoaded: 'zijn programma kon niet worden geladen',
    unreadable: 'een antwoord ervan was niet te lezen',
    couldNotLoad: (what, why) => `${what} kon niet worden geladen: ${why}`,
    foods: 'De tabel met ingrediënten',
    solver: 'Het deel dat mengsels uitrekent',
    answered: (status) => `de server antwoordde ${status}`,
    broke: (why) => `Het deel dat mengsels uitrekent, is uitgevallen: ${why}`,
  },
});
