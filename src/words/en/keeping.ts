import type { Figures } from '../figures.ts';

export const keeping = (_f: Figures) => ({
  title: 'Household',
  parts: {
    changes: 'Changes',
    backups: 'Backups',
    files: 'Files',
    table: 'Own table',
    devices: 'Devices',
    language: 'Language',
  },
  language: {
    title: 'Language and units',
    ofThisDevice: 'For this device only. Other devices keep their own.',
    language: 'Language',
    weights: 'Weights',
    grams: 'grams (g)',
    ounces: 'ounces (oz)',
    heat: 'Temperatures',
    celsius: 'Celsius (°C)',
    fahrenheit: 'Fahrenheit (°F)',
    currency: 'Currency',
    currencies: { EUR: 'Euro', GBP: 'Pound', USD: 'US dollar', CHF: 'Swiss franc' },
    example: (written: string) => `It will look like this: ${written}`,
    prices: 'Another currency changes only the sign. Prices you have noted are not converted.',
    save: 'Use these',
  },
});

export type Keeping = ReturnType<typeof keeping>;
