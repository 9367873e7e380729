import type { Shared } from '../en/shared.ts';
import type { Figures } from '../figures.ts';

export const shared = (_f: Figures): Shared => ({
  number: {
    needed: (label) => `${label}: hier ontbreekt een getal.`,
    none: (label, typed) => `${label}: “${typed}” is geen getal; schrijf bijvoorbeeld 6,25 of 6.25.`,
    tooLow: (label, typed, least) => `${label}: ${typed} is te weinig; het mag ${least} of meer zijn.`,
    tooHigh: (label, typed, most) => `${label}: ${typed} is te veel; het mag hoogstens ${most} zijn.`,
  },
});
