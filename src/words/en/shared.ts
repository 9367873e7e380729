import type { Figures } from '../figures.ts';

export const shared = (_f: Figures) => ({
  number: {
    needed: (label: string) => `${label} needs a number.`,
    none: (label: string, typed: string) =>
      `${label}: “${typed}” is not a number; write for example 6.25 or 6,25.`,
    tooLow: (label: string, typed: string, least: string) =>
      `${label}: ${typed} is too low; it may be ${least} or more.`,
    tooHigh: (label: string, typed: string, most: string) =>
      `${label}: ${typed} is too high; it may be ${most} at most.`,
  },
});

export type Shared = ReturnType<typeof shared>;
