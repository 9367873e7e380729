import type { Terms } from '../en/terms.ts';
import type { Figures } from '../figures.ts';

export const terms = (_f: Figures): Terms => ({
  fibre: {
    word: 'ruwe celstof',
    help: 'Wat van plantenvezels overblijft na koken in zuur en loog. Etiketten en bereiken voor hamsters bedoelen deze waarde.',
  },
  dietaryFibre: {
    word: 'voedingsvezel',
    help: 'Alle vezels in een ingrediënt, zoals tabellen voor mensen ze tellen. Het is altijd meer dan de ruwe celstof, vaak twee keer zoveel; de twee worden nooit gemengd.',
  },
  asFed: {
    word: 'zoals gevoerd',
    help: 'Het voer zoals het in de bak ligt, met het water dat erin zit.',
  },
  dryMatter: {
    word: 'droge stof',
    help: 'Wat er van een ingrediënt overblijft zonder het water. Zo zijn vers en gedroogd te vergelijken.',
  },
  ash: {
    word: 'ruwe as',
    help: 'De mineralen: wat overblijft als een ingrediënt wordt verbrand.',
  },
  protein: {
    word: 'ruw eiwit',
    help: 'Eiwit zoals etiketten het tellen: stikstof maal 6,25.',
  },
  ration: {
    word: 'hele rantsoen',
    help: 'Alles wat je dier op een dag krijgt: het mengsel, de brokjes en wat er verder bij komt, naar gewicht.',
  },
  share: {
    word: 'aandeel',
    help: 'Hoeveel een ingrediënt van het mengsel uitmaakt, naar gewicht: 5 % van 300 g is 15 g.',
  },
  sure: {
    word: 'hoe zeker het moet zijn',
    help: 'Geen pak is gelijk. Hoe zekerder je wilt zijn dat het voer binnen bereik ligt, hoe verder het mengsel van de grenzen blijft.',
  },
  mayBeLeft: {
    word: 'elk ingrediënt mag blijven liggen',
    help: 'Kijkt of wat gegeten wordt binnen bereik blijft als je dier één ingrediënt laat liggen.',
  },
  pack: {
    word: 'pak',
    help: 'Eén pak zoals je het kocht, met zijn eigen datum. Zo weet je wat in welke batch zat.',
  },
  batch: {
    word: 'batch',
    help: 'Wat je in één keer afweegt en mengt.',
  },
  freezing: {
    word: 'invriezen',
    help: 'Een paar dagen in de vriezer doden insecten en hun eitjes in graan en zaden.',
  },
});
