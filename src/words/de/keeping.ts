import type { Keeping } from '../en/keeping.ts';
import type { Figures } from '../figures.ts';

export const keeping = (_f: Figures): Keeping => ({
  title: 'Haushalt',
  parts: {
    changes: 'Änderungen',
    backups: 'Sicherungen',
    files: 'Dateien',
    table: 'Eigene Tabelle',
    devices: 'Geräte',
    language: 'Sprache',
  },
  language: {
    title: 'Sprache und Einheiten',
    ofThisDevice: 'Nur für dieses Gerät. Andere Geräte behalten ihre eigenen.',
    language: 'Sprache',
    weights: 'Gewichte',
    grams: 'Gramm (g)',
    ounces: 'Unzen (oz)',
    heat: 'Temperaturen',
    celsius: 'Celsius (°C)',
    fahrenheit: 'Fahrenheit (°F)',
    currency: 'Währung',
    currencies: { EUR: 'Euro', GBP: 'Pfund', USD: 'US-Dollar', CHF: 'Schweizer Franken' },
    example: (written) => `So sieht es dann aus: ${written}`,
    prices: 'Eine andere Währung ändert nur das Zeichen. Notierte Preise werden nicht umgerechnet.',
    save: 'So verwenden',
  },
});
