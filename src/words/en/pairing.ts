/** The page on which a device is paired. */
import type { Figures } from '../figures.ts';

export const pairing = (_f: Figures) => ({
  title: 'Pair this device',
  opening: 'Opening the household…',
  intro:
    'This household opens only on paired devices. You pair each one once, and can remove it later from any other.',
  where:
    'You see the code where Pouchful was started, and on a paired device under <b>Household › Devices</b> when you press <b>Pair a device</b>.',
  code: 'Pairing code',
  codeExample: 'ABCD-EFGH',
  typeCode: 'Type the code.',
  byLink: 'The link brought the code along.',
  name: 'What is this device called?',
  example: 'Kitchen phone',
  nameless: 'Give it a name, such as Kitchen phone.',
  nameHint: 'The name stands beside what is changed here.',
  typeInstead: 'Type a code instead',
  pairing: 'Pairing…',
  tablet: 'Tablet',
  phone: 'Phone',
  computer: 'Computer',
});

export type Pairing = ReturnType<typeof pairing>;
