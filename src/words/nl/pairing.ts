import type { Pairing } from '../en/pairing.ts';
import type { Figures } from '../figures.ts';

export const pairing = (_f: Figures): Pairing => ({
  title: 'Dit apparaat koppelen',
  opening: 'Het huishouden wordt geopend…',
  intro:
    'Dit huishouden gaat alleen open op gekoppelde apparaten. Elk koppel je één keer, en later kun je het vanaf elk ander weghalen.',
  where:
    'De code staat waar Pouchful is gestart, en op een gekoppeld apparaat onder <b>Huishouden › Apparaten</b> als je op <b>Apparaat koppelen</b> drukt.',
  code: 'Koppelcode',
  codeExample: 'ABCD-EFGH',
  typeCode: 'Typ de code.',
  byLink: 'De link heeft de code meegebracht.',
  name: 'Hoe heet dit apparaat?',
  example: 'Keukentelefoon',
  nameless: 'Geef het een naam, bijvoorbeeld Keukentelefoon.',
  nameHint: 'De naam staat bij wat hier wordt gewijzigd.',
  typeInstead: 'Liever een code typen',
  pairing: 'Wordt gekoppeld…',
  tablet: 'Tablet',
  phone: 'Telefoon',
  computer: 'Computer',
});
