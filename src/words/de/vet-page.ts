import type { VetPage } from '../en/vet-page.ts';
import type { Figures } from '../figures.ts';

export const vetPage = (_f: Figures): VetPage => ({
  title: 'Für die Tierarztpraxis',
});
