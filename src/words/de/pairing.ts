import type { Pairing } from '../en/pairing.ts';
import type { Figures } from '../figures.ts';

export const pairing = (_f: Figures): Pairing => ({
  title: 'Dieses Gerät koppeln',
  opening: 'Der Haushalt wird geöffnet…',
  intro:
    'Dieser Haushalt öffnet sich nur auf gekoppelten Geräten. Jedes koppelst du einmal und kannst es später von jedem anderen aus entfernen.',
  where:
    'Der Code steht dort, wo Pouchful gestartet wurde, und auf einem gekoppelten Gerät unter <b>Haushalt › Geräte</b>, wenn du <b>Gerät koppeln</b> drückst.',
  code: 'Code zum Koppeln',
  codeExample: 'ABCD-EFGH',
  typeCode: 'Tippe den Code ein.',
  byLink: 'Der Link hat den Code mitgebracht.',
  name: 'Wie heißt dieses Gerät?',
  example: 'Küchenhandy',
  nameless: 'Gib ihm einen Namen, zum Beispiel Küchenhandy.',
  nameHint: 'Der Name steht bei dem, was hier geändert wird.',
  typeInstead: 'Lieber einen Code eintippen',
  pairing: 'Wird gekoppelt…',
  tablet: 'Tablet',
  phone: 'Telefon',
  computer: 'Computer',
});
