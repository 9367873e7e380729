import type { Keeping } from '../en/keeping.ts';
import type { Figures } from '../figures.ts';

export const keeping = (_f: Figures): Keeping => ({
  title: 'Huishouden',
  parts: {
    changes: 'Wijzigingen',
    backups: 'Back-ups',
    files: 'Bestanden',
    table: 'Eigen tabel',
    devices: 'Apparaten',
    language: 'Taal',
  },
  language: {
    title: 'Taal en eenheden',
    ofThisDevice: 'Alleen voor dit apparaat. Andere apparaten houden hun eigen keuze.',
    language: 'Taal',
    weights: 'Gewichten',
    grams: 'gram (g)',
    ounces: 'ons, Engels (oz)',
    heat: 'Temperaturen',
    celsius: 'Celsius (°C)',
    fahrenheit: 'Fahrenheit (°F)',
    currency: 'Munt',
    currencies: { EUR: 'Euro', GBP: 'Pond', USD: 'Amerikaanse dollar', CHF: 'Zwitserse frank' },
    example: (written) => `Zo ziet het er dan uit: ${written}`,
    prices:
      'Een andere munt verandert alleen het teken. Prijzen die je hebt genoteerd, worden niet omgerekend.',
    save: 'Zo gebruiken',
  },
});
