import type { Shared } from '../en/shared.ts';
import type { Figures } from '../figures.ts';

export const shared = (_f: Figures): Shared => ({
  number: {
    needed: (label) => `${label}: Hier fehlt eine Zahl.`,
    none: (label, typed) => `${label}: „${typed}“ ist keine Zahl; zum Beispiel 6,25 oder 6.25 schreiben.`,
    tooLow: (label, typed, least) => `${label}: ${typed} ist zu wenig; erlaubt ist ${least} oder mehr.`,
    tooHigh: (label, typed, most) => `${label}: ${typed} ist zu viel; erlaubt ist höchstens ${most}.`,
  },
});
