import type { Frame } from '../en/frame.ts';
import type { Figures } from '../figures.ts';

export const frame = (_f: Figures): Frame => ({
  places: {
    today: { long: 'Nu', short: 'Nu' },
    foods: { long: 'Wat zit erin', short: 'Inhoud' },
    targets: { long: 'Behoefte', short: 'Nodig' },
    mix: { long: 'Mengsels', short: 'Mengsels' },
    calendar: { long: 'Keuken', short: 'Keuken' },
    animals: { long: 'Dieren', short: 'Dieren' },
    household: { long: 'Huishouden', short: 'Huis' },
  },
  kitchen: {
    calendar: 'Dagen',
    shopping: 'Inkoop',
    cupboard: 'Voorraad',
    drying: 'Drogen',
    weigh: 'Weegschaal',
  },
  mainNav: 'Plekken',
  kitchenNav: 'Keuken',
  skip: 'Naar de inhoud',
  opening: 'Het huishouden wordt geopend…',
  notOpened: 'Het huishouden kon niet worden geopend',
  unsentPart: 'Wat nog niet is verzonden',
  worker: {
    title: 'Het uitrekenen van mengsels hapert',
    stopAndTry: 'Stoppen en opnieuw proberen',
    gone: (why) =>
      `Het deel van deze pagina dat mengsels uitrekent en ingrediënten zoekt, is gestopt (${why}). Wat bewaard is, is veilig. Nieuws wordt pas weer uitgerekend als het loopt.`,
    lacking: (why) => `${why} Zonder dat wordt er niets uitgerekend.`,
    slow: 'Het uitrekenen duurt langer dan het zou moeten.',
  },
  newer: {
    title: 'Een nieuwere Pouchful',
    text: 'Pouchful is vernieuwd: op de server draait een andere dan op deze pagina. Laad die als er niets meer te bewaren is.',
    load: 'Opnieuw laden',
  },
  storage:
    'Deze browser onthoudt niets meer voor deze pagina: zijn opslag is uitgezet, vol of kapot. Wat op de server staat, is veilig. Laat de pagina open tot er staat dat alles bewaard is.',
  typed: {
    title: 'Getypt voordat de pagina opnieuw werd geladen',
    text: 'Voordat deze pagina opnieuw werd geladen, was dit getypt en misschien niet bewaard:',
    done: 'Ik heb het niet meer nodig',
    field: 'Een veld',
    here: 'Wat hier getypt was',
  },
  failed: {
    page: 'Pouchful kon niet worden getoond',
    screen: 'Dit scherm kon niet worden getoond',
    inPage: (why) => `Er ging iets mis: ${why}. Wat op de server bewaard is, blijft zoals het was.`,
    inScreen: (why) =>
      `Er ging iets mis op dit scherm: ${why}. Wat bewaard is, blijft zoals het was, en de andere schermen werken gewoon.`,
    openAnew: 'Pouchful opnieuw openen',
    reload: 'Pagina opnieuw laden',
    copied: 'Het verslag is gekopieerd.',
    notCopied: 'Het kon niet worden gekopieerd: markeer het hieronder.',
    copy: 'Verslag kopiëren',
    lately:
      'Begon het met iets wat pas gewijzigd is? <changes>Kijk wat er gewijzigd is, en maak het ongedaan</changes>.',
    others: 'Andere schermen',
    report: 'Het verslag',
  },
});
